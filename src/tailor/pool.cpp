#include "tailor/pool.hpp"

#include "tailor/amounts.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::tailor {
namespace {

using plan::Index;
using plan::Item;
using plan::Plan;
using plan::Run;
using plan::Terms;
using plan::WrittenUnit;

/// An amount as it is read: a figure and what it counts.
struct Reading {
    Distance amount;
    WrittenUnit unit = WrittenUnit::bare;
};

bool same_reading(Reading const& was, Reading const& now, Fit const& fit) {
    if (was.unit != now.unit) {
        return false;
    }
    switch (was.unit) {
    case WrittenUnit::bare:
        return was.amount * one(fit.to.unit).units() == now.amount * one(fit.from.unit).units();
    case WrittenUnit::lengths:
        return Distance::whole(was.amount, fit.from.length) == Distance::whole(now.amount, fit.to.length);
    default:
        return was.amount == now.amount;
    }
}

/// How today's amount is written: as before where that can be, else in the new pool's own terms.
WrittenUnit unit_today(WrittenUnit was, Distance now, Pool const& pool) {
    auto const own = pool.unit == Unit::yard ? WrittenUnit::yards : WrittenUnit::metres;
    bool const walls = pool.has_length() && Distance::divides(pool.length, now);
    if (was == own) {
        return own;
    }
    if (walls && (was == WrittenUnit::lengths || !Distance::divides(one(pool.unit), now))) {
        return WrittenUnit::lengths;
    }
    return WrittenUnit::bare;
}

/// Changes the session's items in place. What several places share is reached once: it reads
/// the same from each of them, for they are swum in one pool.
class Fitter {
  public:
    Fitter(Tailored& result, Fit const& fit)
        : result_(result), plan_(result.plan), fit_(fit), seen_(plan_.items.size(), Seen::not_yet),
          set_bodies_(plan_.sets.size(), plan::no_index) {}

    void session() {
        auto const sections = result_.session().sections;
        for (auto i = sections.first; i < sections.end(); ++i) {
            auto const items = plan::items_from(plan_, plan_.sections[i].body);
            for (auto item = items.begin(); item != items.end(); ++item) {
                if (changes(item.index())) {
                    result_.changed.push_back(item.index());
                }
            }
        }
        keep_used_sets();
    }

  private:
    enum class Seen : std::uint8_t { not_yet, same, changed };

    /// Fits an item and all inside it; true when something in it reads otherwise.
    bool changes(Index index) {
        if (seen_[index] == Seen::not_yet) {
            auto& item = plan_.items[index];
            bool const other = item.is_leaf() ? leaf(item) : item.is_swum() && rounds(item);
            seen_[index] = other ? Seen::changed : Seen::same;
            result_.times_stay |= other && has_times(plan_.terms[item.terms]);
        }
        return seen_[index] == Seen::changed;
    }

    bool rounds(Item const& item) {
        bool other = body(item, item.body);
        auto const selections = plan_.terms[item.terms].selections;
        for (auto i = selections.first; i < selections.end(); ++i) {
            if (plan_.selections[i].body != plan::no_index) {
                other |= body(item, plan_.selections[i].body);
            }
        }
        return other;
    }

    bool body(Item const& item, Index first) {
        if (item.kind == Item::Kind::use) {
            auto& of_set = set_bodies_[static_cast<Index>(item.amount)];
            of_set = of_set == plan::no_index ? first : of_set;
            return changes(first);
        }
        bool other = false;
        auto const items = plan::items_from(plan_, first);
        for (auto inner = items.begin(); inner != items.end(); ++inner) {
            other |= changes(inner.index());
        }
        return other;
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
        auto const now = today(was);
        item.set(now.amount);
        item.unit = now.unit;
        bool const inside = terms(item.terms, was.amount, now.amount);
        return inside || !same_reading(was, now, fit_);
    }

    bool ladder(Item& item) {
        std::vector<Reading> rungs;
        bool other = false;
        bool by_length = false;
        for (Index i = item.body; i < item.body + item.count; ++i) {
            Reading const was{Distance::units(plan_.rungs[i]), plan_.rung_units[i]};
            rungs.push_back(today(was));
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

    [[nodiscard]] Reading today(Reading const& was) const {
        auto const amount = rep(was.amount, fit_);
        return {amount, unit_today(was.unit, amount, fit_.to)};
    }

    /// Gives `index` terms of its own when a split, a break or a selector's has to follow the rep.
    bool terms(Index& index, Distance was, Distance now) {
        Terms terms_today = plan_.terms[index];
        bool other = split(terms_today, was, now);
        other |= pieces(terms_today, was, now);
        auto const selections = terms_today.selections;
        if (!selections.empty()) {
            auto const first = static_cast<Index>(plan_.selections.size());
            for (auto i = selections.first; i < selections.end(); ++i) {
                auto selection = plan_.selections[i];
                other |= terms(selection.terms, was, now);
                plan_.selections.push_back(selection);
            }
            terms_today.selections = {first, selections.count};
        }
        index = static_cast<Index>(plan_.terms.size());
        plan_.terms.push_back(terms_today);
        return other;
    }

    bool split(Terms& of, Distance was, Distance now) {
        auto const run = of.parts;
        if (run.empty()) {
            return false;
        }
        std::vector<Distance> written;
        for (auto i = run.first; i < run.end(); ++i) {
            written.push_back(Distance::units(plan_.parts[i].amount));
        }
        auto const dealt = parts(written, was, now, fit_);
        of.parts = {static_cast<Index>(plan_.parts.size()), dealt ? run.count : 0};
        if (!dealt) {
            return true;
        }
        bool other = false;
        for (Index i = 0; i < run.count; ++i) {
            auto part = plan_.parts[run.first + i];
            Reading const before{written[i], part.unit};
            Reading const after{(*dealt)[i], unit_today(part.unit, (*dealt)[i], fit_.to)};
            part.amount = after.amount.units();
            part.unit = after.unit;
            other |= !same_reading(before, after, fit_);
            plan_.parts.push_back(part);
        }
        return other;
    }

    bool pieces(Terms& of, Distance was, Distance now) {
        if (of.broken.piece == 0) {
            return false;
        }
        Reading const before{Distance::units(of.broken.piece), of.broken.unit};
        auto const length = piece(before.amount, was, now, fit_);
        if (!length) {
            of.broken = {};
            return true;
        }
        Reading const after{*length, unit_today(before.unit, *length, fit_.to)};
        of.broken.piece = after.amount.units();
        of.broken.unit = after.unit;
        return !same_reading(before, after, fit_);
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
            if (seen_[i] != Seen::not_yet && item.kind == Item::Kind::use) {
                item.amount = static_cast<std::uint32_t>(places[item.amount]);
            }
        }
        plan_.sets = std::move(used);
    }

    Tailored& result_;
    Plan& plan_;
    Fit const& fit_;
    std::vector<Seen> seen_;        ///< beside Plan::items
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

/// Says the pool at the session. A threshold that is written there was fixed in the pool before.
void move_to(Plan& plan, Pool const& pool) {
    auto& session = plan.sessions.front();
    auto settings = plan.settings[session.settings];
    settings.pool = pool;
    if (settings.threshold) {
        settings.threshold->said_per = true;
        settings.threshold->said_in = settings.threshold->course.kind != Pool::Kind::unsaid;
    }
    session.settings = static_cast<Index>(plan.settings.size());
    plan.settings.push_back(settings);
    session.pool = static_cast<Index>(plan.pools.size());
    plan.pools.push_back(pool);
}

} // namespace

Tailored fit(Plan const& plan, Index session, Wanted const& wanted) {
    Tailored result{plan, {}, false};
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
