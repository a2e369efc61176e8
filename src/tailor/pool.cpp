#include "tailor/pool.hpp"

#include "tailor/reading.hpp"
#include "tailor/terms.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::tailor {
namespace {

using plan::Index;
using plan::Item;
using plan::Plan;
using plan::Terms;
using plan::WrittenUnit;

/// Changes the session's items in place. What several places share is reached once: it reads
/// the same from each of them, for they are swum in one pool.
class Fitter {
  public:
    Fitter(Tailored& result, Fit const& fit)
        : result_(result), plan_(result.plan), fit_(fit), seen_(plan_.items.size(), Change::unknown),
          set_bodies_(plan_.sets.size(), plan::no_index) {}

    void session() {
        auto const sections = result_.session().sections;
        for (auto i = sections.first; i < sections.end(); ++i) {
            auto const items = plan::items_from(plan_, plan_.sections[i].body);
            for (auto item = items.begin(); item != items.end(); ++item) {
                note(item.index(), change_of(item.index()));
            }
        }
        keep_used_sets();
    }

  private:
    /// What becomes of an item and all inside it.
    enum class Change : std::uint8_t { unknown, none, figures, figures_under_a_time };

    void note(Index line, Change change) {
        if (change >= Change::figures) {
            result_.changed.push_back(line);
        }
        if (change == Change::figures_under_a_time) {
            result_.timed.push_back(line);
        }
    }

    /// Fits an item and all inside it, once.
    Change change_of(Index index) {
        if (seen_[index] == Change::unknown) {
            auto& item = plan_.items[index];
            auto change = Change::none;
            if (item.is_leaf()) {
                change = leaf(item) ? Change::figures : Change::none;
            } else if (item.is_swum()) {
                change = rounds(item);
            }
            bool const under_a_time = change != Change::none && has_times(plan_.terms[item.terms]);
            seen_[index] = under_a_time ? Change::figures_under_a_time : change;
        }
        return seen_[index];
    }

    Change rounds(Item const& item) {
        auto change = body(item, item.body);
        auto const selections = plan_.terms[item.terms].selections;
        for (auto i = selections.first; i < selections.end(); ++i) {
            if (plan_.selections[i].body != plan::no_index) {
                change = std::max(change, body(item, plan_.selections[i].body));
            }
        }
        return change;
    }

    Change body(Item const& item, Index first) {
        if (item.kind == Item::Kind::use) {
            auto& of_set = set_bodies_[static_cast<Index>(item.amount)];
            of_set = of_set == plan::no_index ? first : of_set;
            return change_of(first);
        }
        auto change = Change::none;
        auto const items = plan::items_from(plan_, first);
        for (auto inner = items.begin(); inner != items.end(); ++inner) {
            change = std::max(change, change_of(inner.index()));
        }
        return change;
    }

    bool leaf(Item& item) {
        switch (item.kind) {
        case Item::Kind::reps:
            return reps(item);
        case Item::Kind::ladder:
            return ladder(item);
        default:
            return false;
        }
    }

    bool reps(Item& item) {
        Reading const was{item.distance(), item.unit};
        auto const now = rep_today(was, fit_);
        item.set(now.amount);
        item.unit = now.unit;
        bool const inside = fit_terms(plan_, item.terms, was.amount, now.amount, fit_);
        return inside || !same_reading(was, now, fit_);
    }

    bool ladder(Item& item) {
        std::vector<Reading> rungs;
        bool other = false;
        bool by_length = false;
        for (Index i = item.body; i < item.body + item.count; ++i) {
            Reading const was{Distance::units(plan_.rungs[i]), plan_.rung_units[i]};
            rungs.push_back(rep_today(was, fit_));
            by_length |= rungs.back().unit == WrittenUnit::lengths;
        }
        auto const first = static_cast<Index>(plan_.rungs.size());
        for (Index i = 0; i < item.count; ++i) {
            auto& now = rungs[i];
            now.unit = by_length ? WrittenUnit::lengths : now.unit; // one unit governs a ladder
            Reading const was{Distance::units(plan_.rungs[item.body + i]), plan_.rung_units[item.body + i]};
            other |= !same_reading(was, now, fit_);
            plan_.rungs.push_back(now.amount.units());
            plan_.rung_units.push_back(now.unit);
        }
        item.body = first;
        return other;
    }

    [[nodiscard]] bool has_times(Terms const& of) const {
        auto const held = [](Terms const& some) {
            return some.recovery.kind == plan::Recovery::Kind::on ||
                   some.manner.effort.kind == plan::Effort::Kind::hold;
        };
        bool any = held(of);
        for (auto i = of.selections.first; i < of.selections.end(); ++i) {
            any |= held(plan_.terms[plan_.selections[i].terms]);
        }
        return any;
    }

    /// Sets stand for what this session makes of them; those it does not use go.
    void keep_used_sets() {
        std::vector<plan::NamedSet> used;
        std::vector<std::int64_t> places(set_bodies_.size(), 0);
        for (std::size_t i = 0; i < set_bodies_.size(); ++i) {
            if (set_bodies_[i] != plan::no_index) {
                places[i] = static_cast<std::int64_t>(used.size());
                used.push_back(plan_.sets[i]);
                used.back().body = set_bodies_[i];
            }
        }
        for (std::size_t i = 0; i < seen_.size(); ++i) {
            auto& item = plan_.items[i];
            if (seen_[i] != Change::unknown && item.kind == Item::Kind::use) {
                item.amount = static_cast<std::uint32_t>(places[item.amount]);
            }
        }
        plan_.sets = std::move(used);
    }

    Tailored& result_;
    Plan& plan_;
    Fit const& fit_;
    std::vector<Change> seen_;      ///< beside Plan::items
    std::vector<Index> set_bodies_; ///< beside Plan::sets: their reading in this session
};

/// Takes every other session out.
void leave_alone(Plan& plan, Index session) {
    auto chosen = plan.sessions[session];
    auto week = plan.weeks[chosen.week];
    week.sessions = {0, 1};
    week.said_from = week.number.has_value() && week.from.has_value();
    chosen.week = 0;
    plan.weeks = {week};
    plan.sessions = {chosen};
}

/// A copy of settings that can be changed.
plan::Settings& own_settings(Plan& plan, Index& index) {
    plan.settings.push_back(plan.settings[index]);
    index = static_cast<Index>(plan.settings.size() - 1);
    return plan.settings.back();
}

/// A threshold of the session was fixed in the pool it had. Without a pool its course is
/// unknown, which only a place without one can say: it goes up to the file.
void keep_threshold(Plan& plan) {
    auto& session = plan.sessions.front();
    auto& threshold = plan.settings[session.settings].threshold;
    if (!threshold) {
        return;
    }
    threshold->said_per = true;
    threshold->said_in = threshold->course.kind != Pool::Kind::unsaid;
    if (!threshold->said_in) {
        auto const moved = *std::exchange(threshold, std::nullopt);
        own_settings(plan, plan.weeks.front().settings).threshold.reset();
        own_settings(plan, plan.file_settings).threshold = moved;
    }
}

void move_to(Plan& plan, Pool const& pool) {
    auto& session = plan.sessions.front();
    own_settings(plan, session.settings).pool = pool;
    keep_threshold(plan);
    session.pool = static_cast<Index>(plan.pools.size());
    plan.pools.push_back(pool);
}

} // namespace

Tailored fit(Plan const& plan, Index session, Wanted const& wanted) {
    Tailored result{plan, {}, wanted.percent, {}};
    auto const from = plan.pool_of(plan.sessions[session]);
    Fit const fit{from, wanted.pool.value_or(from), wanted.percent,
                  plan.race ? plan.race->distance : Distance{}};
    leave_alone(result.plan, session);
    if (!fit.idle()) {
        if (fit.to != fit.from) {
            move_to(result.plan, fit.to);
        }
        Fitter{result, fit}.session();
    }
    return result;
}

} // namespace lengthwise::tailor
