#include "plan/spell.hpp"

#include "grammar/write.hpp"
#include "plan/set_versions.hpp"
#include "plan/spell_items.hpp"
#include "plan/spell_modifiers.hpp"
#include "plan/spell_settings.hpp"
#include "plan/tree_builder.hpp"

#include <chrono>

namespace lengthwise::plan {
namespace {

using grammar::Kind;

/// A day as the tree has it: 20270613.
std::uint32_t digits(Date date) {
    std::chrono::year_month_day const ymd{date};
    auto const year = static_cast<std::uint32_t>(static_cast<int>(ymd.year()));
    return year * 10'000 + static_cast<unsigned>(ymd.month()) * 100 + static_cast<unsigned>(ymd.day());
}

void spell_heading(ModifierSpeller& modifiers, TreeBuilder& tree, Heading const& heading, Pool const& pool) {
    modifiers.manner({{&heading.said, &pool}});
    if (heading.said_rest) {
        tree.range(Kind::rest, Kind::rest_to, *heading.said_rest);
    }
}

class PlanSpeller {
  public:
    explicit PlanSpeller(Plan const& plan)
        : plan_(plan), pool_(pool_in(plan.file_settings, Pool{})), modifiers_(plan, tree_),
          items_(plan, tree_) {}

    grammar::Tree spell() {
        head();
        spell_settings(tree_, plan_.settings[plan_.file_settings], pool_);
        sets();
        for (auto const& each : plan_.weeks) {
            week(each);
        }
        return tree_.take();
    }

  private:
    // --- head ---

    void head() {
        if (!plan_.name.empty()) {
            tree_.line();
            tree_.leaf(Kind::plan);
            tree_.string(Kind::name, plan_.name);
        }
        if (plan_.race) {
            race(*plan_.race);
        }
        for (auto const& each : plan_.swimmers) {
            swimmer(each);
        }
        if (plan_.before) {
            before(*plan_.before);
        }
    }

    void race(Race const& race) {
        tree_.line();
        auto const node = tree_.open(Kind::race);
        name(race.name);
        if (race.kind) {
            tree_.word(Kind::race_kind, word_of(*race.kind));
        } else {
            spell_distance(tree_, Kind::race_distance, race.distance, race.unit, Pool{});
        }
        tree_.leaf(Kind::date, digits(race.on));
        tree_.close(node);
    }

    void swimmer(Swimmer const& swimmer) {
        tree_.line();
        auto const node = tree_.open(Kind::swimmer);
        tree_.string(Kind::name, swimmer.name);
        if (swimmer.threshold) {
            spell_threshold(tree_, *swimmer.threshold, pool_);
        }
        if (swimmer.lane) {
            tree_.leaf(Kind::swimmer_lane, *swimmer.lane);
        }
        if (swimmer.share) {
            tree_.leaf(Kind::swimmer_share, *swimmer.share);
        }
        tree_.close(node);
    }

    void before(Before const& before) {
        tree_.line();
        auto const node = tree_.open(Kind::before);
        spell_distance(tree_, Kind::before_longest, before.longest, pool_.unit, pool_);
        if (before.week) {
            spell_distance(tree_, Kind::before_week, *before.week, pool_.unit, pool_);
        }
        tree_.close(node);
    }

    void sets() {
        auto const versions = set_versions(plan_);
        for (Index i = 0; i < plan_.sets.size(); ++i) {
            tree_.line();
            auto const node = tree_.open(Kind::set);
            tree_.string(Kind::name, plan_.sets[i].name);
            items_.item(versions[i]);
            tree_.close(node);
        }
    }

    // --- weeks ---

    void week(Week const& week) {
        if (!week.number) {
            return sessions(week);
        }
        tree_.line(true);
        auto const node = tree_.open(Kind::week);
        tree_.leaf(Kind::week_number, *week.number);
        if (week.said_from) {
            tree_.leaf(Kind::week_from, digits(*week.from));
        }
        name(week.name);
        spell_settings(tree_, plan_.settings[week.settings], pool_in(week.settings, pool_));
        sessions(week);
        tree_.close(node);
    }

    void sessions(Week const& week) {
        for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
            session(plan_.sessions[i], !week.number || i > week.sessions.first);
        }
    }

    void session(Session const& session, bool blank_before) {
        tree_.line(blank_before);
        auto const node = tree_.open(Kind::session);
        if (session.day) {
            tree_.word(Kind::day, static_cast<Word>(static_cast<int>(Word::mon) + *session.day));
        } else if (session.said_date) {
            tree_.leaf(Kind::date, digits(*session.date));
        }
        if (session.at) {
            tree_.leaf(Kind::time_of_day, session.at->minutes);
        }
        if (session.slot()) {
            tree_.time(Kind::slot, *session.slot(), TimeStyle::with_unit);
        }
        name(session.name);
        spell_settings(tree_, plan_.settings[session.settings], plan_.pool_of(session));
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            section(plan_.sections[i], plan_.pool_of(session));
        }
        tree_.close(node);
    }

    void section(Section const& section, Pool const& pool) {
        auto const& heading = plan_.heading_of(section);
        tree_.line();
        auto const node = tree_.open(Kind::section, word_of(section.kind));
        name(heading.name);
        spell_heading(modifiers_, tree_, heading, pool);
        for (auto const& item : items_from(plan_, section.body)) {
            tree_.line();
            items_.line(item, pool);
        }
        tree_.close(node);
    }

    // --- words of several statements ---

    void name(Text name) {
        if (!name.empty()) {
            tree_.string(Kind::name, name);
        }
    }

    /// The pool in force inside a scope with these settings.
    [[nodiscard]] Pool pool_in(Index settings, Pool const& outer) const {
        return plan_.settings[settings].pool.value_or(outer);
    }

    Plan const& plan_;
    Pool pool_; ///< the file's own
    TreeBuilder tree_;
    ModifierSpeller modifiers_;
    ItemSpeller items_;
};

} // namespace

grammar::Tree spell(Plan const& plan) {
    return PlanSpeller{plan}.spell();
}

std::string spell_line(Plan const& plan, Session const& session, Item const& item, LineStyle style) {
    TreeBuilder tree;
    ItemSpeller{plan, tree, style}.line(item, plan.pool_of(session));
    return grammar::write_line(tree.take(), 0);
}

std::string spell_defaults(Heading const& heading) {
    Plan const nothing;
    Pool const unknown;
    TreeBuilder tree;
    ModifierSpeller modifiers{nothing, tree};
    auto const words = tree.open(Kind::item); // modifiers alone
    spell_heading(modifiers, tree, heading, unknown);
    tree.close(words);
    return grammar::write_line(tree.take(), 0);
}

} // namespace lengthwise::plan
