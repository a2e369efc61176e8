#include "plan/plan.hpp"

#include <algorithm>
#include <unordered_set>

namespace lengthwise::plan {
namespace {

/// Two plans side by side. Tables may be ordered differently, so what indices point to is
/// compared, never the indices.
class Comparison {
  public:
    Comparison(Plan const& a, Plan const& b) : a_(a), b_(b) {}

    bool same() {
        return a_.name == b_.name && same(a_.race, b_.race) && same(a_.before, b_.before) &&
               all(a_.swimmers, b_.swimmers) && same_settings(a_.file_settings, b_.file_settings) &&
               all(a_.weeks, b_.weeks);
    }

  private:
    // --- what stands alone ---

    static bool same(Race const& a, Race const& b) {
        return a.name == b.name && a.kind == b.kind && a.distance == b.distance && a.unit == b.unit &&
               a.on == b.on;
    }
    static bool same(Before const& a, Before const& b) { return a.longest == b.longest && a.week == b.week; }
    static bool same(Swimmer const& a, Swimmer const& b) {
        return a.name == b.name && same(a.threshold, b.threshold) && a.lane == b.lane && a.share == b.share;
    }
    static bool same(Threshold const& a, Threshold const& b) {
        return a.time == b.time && a.per == b.per && a.per_unit == b.per_unit && a.course == b.course &&
               a.reserve == b.reserve && a.about == b.about;
    }
    static bool same(Limit const& a, Limit const& b) {
        return a.rule == b.rule && a.low == b.low && a.high == b.high;
    }
    static bool same(Allow const& a, Allow const& b) { return a.rule == b.rule && a.reason == b.reason; }
    static bool same(Heading const& a, Heading const& b) {
        return a.name == b.name && a.said == b.said && a.said_rest == b.said_rest;
    }
    static bool same(Broken const& a, Broken const& b) {
        return a.piece == b.piece && a.timed == b.timed && a.pause == b.pause;
    }

    template <typename T>
    static bool same(std::optional<T> const& a, std::optional<T> const& b) {
        return a.has_value() == b.has_value() && (!a || same(*a, *b));
    }

    template <typename T>
    bool all(std::vector<T> const& a, std::vector<T> const& b) {
        return std::ranges::equal(a, b, [&](T const& x, T const& y) { return same(x, y); });
    }

    // --- weeks, sessions, sections ---

    bool same(Week const& a, Week const& b) {
        return a.number == b.number && a.from == b.from && a.said_from == b.said_from && a.name == b.name &&
               same_settings(a.settings, b.settings) &&
               runs(a_.sessions, a.sessions, b_.sessions, b.sessions);
    }

    bool same(Session const& a, Session const& b) {
        return a.name == b.name && a.date == b.date && a.day == b.day && a.said_date == b.said_date &&
               a.at == b.at && a.slot_ms == b.slot_ms && same_settings(a.settings, b.settings) &&
               a_.pool_of(a) == b_.pool_of(b) && same(threshold(a_, a), threshold(b_, b)) &&
               runs(a_.sections, a.sections, b_.sections, b.sections);
    }

    static std::optional<Threshold> threshold(Plan const& plan, Session const& session) {
        return session.threshold == no_index ? std::nullopt
                                             : std::optional{plan.thresholds[session.threshold]};
    }

    /// How deep a heading is indented is no part of the meaning.
    bool same(Section const& a, Section const& b) {
        return a.kind == b.kind && same(a_.heading_of(a), b_.heading_of(b)) && siblings(a.body, b.body);
    }

    bool same_settings(Index a, Index b) {
        auto const& x = a_.settings[a];
        auto const& y = b_.settings[b];
        return x.pool == y.pool && x.rest == y.rest && same(x.threshold, y.threshold) &&
               x.factors == y.factors && all(x.limits, y.limits) && all(x.allows, y.allows) &&
               x.notes == y.notes;
    }

    template <typename T>
    bool runs(std::vector<T> const& all_a, Run a, std::vector<T> const& all_b, Run b) {
        for (Index i = 0; i < a.count && a.count == b.count; ++i) {
            if (!same(all_a[a.first + i], all_b[b.first + i])) {
                return false;
            }
        }
        return a.count == b.count;
    }

    // --- items ---

    bool siblings(Index a, Index b) {
        for (; a != no_index && b != no_index; a = after(a_, a), b = after(b_, b)) {
            if (!same(a_.items[a], b_.items[b])) {
                return false;
            }
        }
        return a == b;
    }

    static Index after(Plan const& plan, Index item) {
        return plan.items[item].last ? no_index : plan.after(item);
    }

    /// What several places share is compared once: sets of sets could be reached without end.
    bool bodies(Index a, Index b) {
        bool const known = !compared_.insert(std::uint64_t{a} << 32U | b).second;
        return known || siblings(a, b);
    }

    bool same(Item const& a, Item const& b) {
        return a.kind == b.kind && a.count == b.count && a.first_lane == b.first_lane &&
               a.last_lane == b.last_lane && a.optional == b.optional && same_content(a, b) &&
               same(a_.terms[a.terms], b_.terms[b.terms]);
    }

    bool same_content(Item const& a, Item const& b) {
        switch (a.kind) {
        case Item::Kind::reps:
        case Item::Kind::timed_reps:
            return a.amount == b.amount;
        case Item::Kind::ladder:
        case Item::Kind::timed_ladder:
            return std::equal(a_.rungs.begin() + a.body, a_.rungs.begin() + a.body + a.count,
                              b_.rungs.begin() + b.body);
        case Item::Kind::group:
            return bodies(a.body, b.body);
        case Item::Kind::use:
            return a_.set_of(a).name == b_.set_of(b).name && bodies(a.body, b.body);
        case Item::Kind::pause:
            return a.amount == b.amount && text(a_, a.body) == text(b_, b.body);
        case Item::Kind::note:
            return text(a_, a.body) == text(b_, b.body);
        }
        return false;
    }

    static std::optional<Text> text(Plan const& plan, Index index) {
        return index == no_index ? std::nullopt : std::optional{plan.texts[index]};
    }

    // --- terms ---

    bool same(Terms const& a, Terms const& b) {
        return a.said == b.said && a.manner == b.manner && a.shape == b.shape && a.stops == b.stops &&
               same(a.said_recovery, b.said_recovery) && same(a.recovery, b.recovery) &&
               same(a.broken, b.broken) && runs(a_.parts, a.parts, b_.parts, b.parts) &&
               texts(a.notes, b.notes) && runs(a_.selections, a.selections, b_.selections, b.selections);
    }

    bool same(Recovery const& a, Recovery const& b) {
        return a.kind == b.kind && a.number == b.number && a.rest == b.rest && a.steps == b.steps &&
               std::equal(a_.send_offs.begin() + a.first_step, a_.send_offs.begin() + a.first_step + a.steps,
                          b_.send_offs.begin() + b.first_step);
    }

    bool same(Part const& a, Part const& b) {
        return a.amount == b.amount && a.timed == b.timed && a.build == b.build && a.said == b.said &&
               a.manner == b.manner && texts(a.notes, b.notes);
    }

    bool same(Selection const& a, Selection const& b) {
        return a.word == b.word && a.number == b.number && a.first == b.first && a.step == b.step &&
               a.count == b.count && bodies(a.body, b.body) && same(a_.terms[a.terms], b_.terms[b.terms]);
    }

    bool texts(Run a, Run b) {
        return std::equal(a_.texts.begin() + a.first, a_.texts.begin() + a.end(), b_.texts.begin() + b.first,
                          b_.texts.begin() + b.end());
    }

    Plan const& a_;
    Plan const& b_;
    std::unordered_set<std::uint64_t> compared_; ///< pairs of bodies that agree, as far as is known yet
};

} // namespace

bool same_meaning(Plan const& a, Plan const& b) {
    return Comparison{a, b}.same();
}

} // namespace lengthwise::plan
