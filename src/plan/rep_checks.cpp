#include "plan/rep_checks.hpp"

#include "plan/amounts.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <string>
#include <string_view>

namespace lengthwise::plan {
namespace {

using grammar::Kind;

/// The words of this kind behind an amount or group.
Span place_of(Behind const& behind, Kind kind) {
    auto i = behind.first;
    while (i < behind.end && behind.tree.nodes[i].kind != kind) {
        i = behind.tree.next(i);
    }
    return i < behind.end ? clause_of(behind.tree, i) : behind.tree.span(behind.first - 1);
}

/// One item's check; stops at its first finding, so that one slip is one error.
class Check {
  public:
    Check(Work& work, Item const& reps, Behind const& behind, Pool const& pool)
        : work_(work), plan_(work.plan), reps_(reps), behind_(behind), pool_(pool) {}

    void run() {
        auto const& base = plan_.terms[reps_.terms];
        if (needs_none(base)) {
            return;
        }
        auto const errors = work_.report.errors();
        auto const ladder = reps_.is_ladder();
        for (std::uint32_t k = 0; k < (ladder ? reps_.count : 1) && work_.report.errors() == errors; ++k) {
            rep(ladder ? plan_.rungs[reps_.body + k] : reps_.amount, k);
        }
    }

  private:
    /// Most items: nothing here can go wrong.
    bool needs_none(Terms const& terms) const {
        return terms.parts.empty() && terms.broken.piece == 0 && terms.selections.empty() &&
               terms.manner.mode != Mode::tread && terms.manner.effort.kind != Effort::Kind::hold &&
               !(reps_.is_timed() && terms.recovery.kind == Recovery::Kind::on);
    }

    void rep(std::int64_t amount, std::uint32_t number) {
        auto const& base = plan_.terms[reps_.terms];
        if (number == 0 && (!split(amount, base) || !broken(amount, base))) {
            return;
        }
        if (!send_off(amount, number, base)) {
            return;
        }
        std::uint32_t chosen = 0;
        for (auto i = base.selections.first; i < base.selections.end(); ++i) {
            auto const& selection = plan_.selections[i];
            chosen += selection.count;
            if (!manner(plan_.terms[selection.terms])) {
                return;
            }
        }
        if (chosen < reps_.count) {
            (void)manner(base);
        }
    }

    /// Treading needs a time; `hold` needs a distance whose parts do not say their own.
    bool manner(Terms const& terms) {
        if (!reps_.is_timed() && treads(terms)) {
            return fault(code::pairing, reps_.span, "tread needs a time: no distance is swum",
                         "write how long: 1min tread");
        }
        if (terms.manner.effort.kind != Effort::Kind::hold) {
            return true;
        }
        if (reps_.is_timed()) {
            return fault(code::pairing, reps_.span,
                         "hold is the time of a distance; this rep is a time already",
                         "write the distance, or say how hard: easy, steady, hard");
        }
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            if (plan_.parts[i].said.effort.said()) {
                return fault(code::pairing, reps_.span,
                             "hold is the time of the whole rep; a part has its own effort",
                             "keep one of them", {{plan_.parts[i].span, "this part"}});
            }
        }
        return true;
    }

    bool treads(Terms const& terms) const {
        if (terms.parts.empty()) {
            return terms.manner.mode == Mode::tread;
        }
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            if (plan_.parts[i].manner.mode == Mode::tread) {
                return true;
            }
        }
        return false;
    }

    bool split(std::int64_t amount, Terms const& terms) {
        if (terms.parts.empty()) {
            return true;
        }
        std::int64_t sum = 0;
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            auto const& part = plan_.parts[i];
            if (part.timed != reps_.is_timed()) {
                return fault(code::split, part.span,
                             reps_.is_timed() ? "the rep is a time, this part a distance"
                                              : "the rep is a distance, this part a time",
                             {}, {{amount_at(), "the rep"}});
            }
            if (part.amount == 0) {
                return false; // it could not be read, and was reported
            }
            sum += part.amount;
        }
        if (sum <= amount && amount % sum == 0) {
            return true;
        }
        return fault(code::split, place_of(behind_, Kind::split),
                     fmt::format("the parts make {}, the rep is {}", spelled(sum), spelled(amount)),
                     "parts add up to the rep, or go into it a whole number of times",
                     {{amount_at(), "the rep"}});
    }

    bool broken(std::int64_t amount, Terms const& terms) {
        auto const& broken = terms.broken;
        if (broken.piece == 0) {
            return true;
        }
        auto const at = place_of(behind_, broken_kind(terms));
        if (broken.timed != reps_.is_timed()) {
            return fault(code::split, at,
                         reps_.is_timed() ? "the rep is a time, so it is broken at a time"
                                          : "the rep is a distance, so it is broken at a distance",
                         {}, {{amount_at(), "the rep"}});
        }
        if (broken.piece >= amount) {
            return fault(
                code::split, at,
                fmt::format("broken at {}, but the rep is {}", spelled(broken.piece), spelled(amount)),
                "break it before its end", {{amount_at(), "the rep"}});
        }
        if (!broken.timed && pool_.has_length() && broken.piece % pool_.length.units() != 0) {
            return fault(code::split, at,
                         fmt::format("{} is not a whole number of {} lengths", spelled(broken.piece),
                                     spelled(pool_.length.units())),
                         "a break is taken at a wall", {{amount_at(), "the rep"}});
        }
        return true;
    }

    /// A timed rep must be over when the next one leaves.
    bool send_off(std::int64_t amount, std::uint32_t number, Terms const& terms) {
        auto const& recovery = terms.recovery;
        if (!reps_.is_timed() || recovery.kind != Recovery::Kind::on) {
            return true;
        }
        auto swim = Duration::ms(amount);
        if (terms.broken.piece > 0) {
            swim += terms.broken.pause * ((amount - 1) / terms.broken.piece);
        }
        auto const stepped = recovery.steps == reps_.count && recovery.steps > 1;
        auto const first = stepped && reps_.is_ladder() ? number : 0;
        auto const last = stepped && !reps_.is_ladder() ? recovery.steps : first + 1;
        for (auto step = first; step < last; ++step) {
            auto const leave = plan_.send_offs[recovery.first_step + step];
            if (swim > leave) {
                return fault(code::count, place_of(behind_, Kind::on),
                             fmt::format("{} of swimming do not fit a send-off of {}", spell::duration(swim),
                                         spell::duration(leave)),
                             "give a later send-off", {{amount_at(), "the rep"}});
            }
        }
        return true;
    }

    bool fault(std::string_view code, Span at, std::string message, std::string hint,
               std::vector<Related> related = {}) {
        work_.report.error(code, at, std::move(message), std::move(hint), std::move(related));
        return false;
    }

    std::string spelled(std::int64_t amount) const {
        return reps_.is_timed() ? spell::duration(Duration::ms(amount))
                                : spell::distance(Distance::units(amount), pool_.unit);
    }

    static Kind broken_kind(Terms const& terms) {
        return terms.broken.timed ? Kind::broken_time : Kind::broken;
    }

    Span amount_at() const { return behind_.tree.span(behind_.first - 1); }

    Work& work_;
    Plan const& plan_;
    Item const& reps_;
    Behind const& behind_;
    Pool const& pool_;
};

} // namespace

void check_reps(Work& work, Item const& reps, Behind const& behind, Pool const& pool) {
    Check{work, reps, behind, pool}.run();
}

void check_count(Work& work, Terms const& terms, Behind const& behind) {
    auto const reps = behind.owner == Owner::item ? "rep" : "round";
    auto const s = behind.count == 1 ? "" : "s";
    auto const steps = terms.recovery.kind == Recovery::Kind::on ? terms.recovery.steps : 1;
    if (steps > 1 && steps != behind.count) {
        work.report.error(code::count, place_of(behind, Kind::on),
                          fmt::format("{} send-offs for {} {}{}", steps, behind.count, reps, s),
                          "give one for all, or one each");
    }
    auto const cycle = terms.shape.last;
    if (cycle > 1 && behind.count % cycle != 0) {
        work.report.error(code::count, place_of(behind, Kind::descend),
                          fmt::format("descend 1-{} over {} {}{}: the cycles do not come out even", cycle,
                                      behind.count, reps, s),
                          fmt::format("make it a multiple of {}, or write descend alone", cycle));
    }
}

} // namespace lengthwise::plan
