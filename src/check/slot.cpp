#include "check/rules.hpp"
#include "check/timed_lanes.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"
#include "calc/timeline.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <memory>
#include <string>
#include <vector>

namespace lengthwise::check {

namespace {

constexpr auto nothing_kept_free = Duration{};

plan::Threshold fastest_for(Unit unit) {
    plan::Threshold threshold;
    threshold.time = calc::fastest_threshold;
    threshold.per = one(unit) * 100;
    threshold.per_unit = unit;
    return threshold;
}

/// "60 min", as the times beside it are said; "1:30" where it is no whole minutes.
std::string booked(Duration slot) {
    auto const whole = slot.ms() % Duration::minutes(1).ms() == 0;
    return whole ? minutes({slot, slot, slot}) : spell::spaced(slot);
}

/// Times at the fastest threshold for sessions that have none. Made when first asked for.
class FastestClock {
  public:
    FastestClock(plan::Plan const& plan, Unit unit) : plan_(plan), threshold_(fastest_for(unit)) {}

    Band<Duration> session(plan::Index session, int lane) {
        if (clock_ == nullptr) {
            clock_ = std::make_unique<calc::Clock>(plan_, &threshold_);
        }
        return clock_->session(session, lane).total().value_or(Band<Duration>{});
    }

  private:
    plan::Plan const& plan_;
    plan::Threshold threshold_;
    std::unique_ptr<calc::Clock> clock_;
};

/// What one lane or several have to be told.
struct Verdict {
    std::string takes;
    std::string hint;
    bool error = false;
    std::vector<int> lanes;
};

class Judge {
  public:
    explicit Judge(Inquiry& inquiry)
        : inquiry_(inquiry), lanes_(inquiry.plan), metres_(inquiry.plan, Unit::metre),
          yards_(inquiry.plan, Unit::yard) {}

    void session(plan::Index index) {
        auto const& session = inquiry_.plan.sessions[index];
        auto const limit = inquiry_.limit(session);
        kept_free_ = limit ? Duration::ms(limit->low) : nothing_kept_free;
        verdicts_.clear();
        for (int const lane : lanes_.of(session)) {
            judge(index, lane);
        }
        for (auto const& verdict : verdicts_) {
            auto const say = verdict.error ? &Inquiry::error : &Inquiry::warn;
            auto message = fmt::format("{}{}, the slot is {}", verdict.takes,
                                       lanes_.in(verdict.lanes, session), booked(*session.slot()));
            if (!kept_free_.zero()) {
                message += fmt::format(" with {} kept free", spell::spaced(kept_free_));
            }
            (inquiry_.*say)(session.slot_span, std::move(message), verdict.hint, {});
        }
    }

  private:
    void judge(plan::Index index, int lane) {
        auto const& session = inquiry_.plan.sessions[index];
        auto const room = *session.slot() - kept_free_;
        if (auto const time = inquiry_.clock().session(index, lane).total()) {
            auto const over = spell::clock(rounded_up(time->high - room));
            if (time->expected > room) {
                auto const expected = spell::clock(rounded_up(time->expected - room));
                add(lane, true, minutes(*time),
                    fmt::format("expected {} over, at the slow end {}", expected, over));
            } else if (time->high > room) {
                add(lane, false, minutes(*time), fmt::format("at the slow end {} over", over));
            }
            return;
        }
        auto& clock = inquiry_.plan.pool_of(session).unit == Unit::yard ? yards_ : metres_;
        auto const time = clock.session(index, lane);
        if (time.high > room) {
            add(lane, true, minutes(time),
                fmt::format("at no threshold it fits: even at {} per 100 {} it takes {}, {} over",
                            spell::clock(calc::fastest_threshold),
                            spell::symbol(inquiry_.plan.pool_of(session).unit),
                            spell::clock(rounded_up(time.high)), spell::clock(rounded_up(time.high - room))));
        }
    }

    /// Lanes that take the same are told once.
    void add(int lane, bool error, std::string takes, std::string hint) {
        auto verdict = std::ranges::find_if(verdicts_, [&](Verdict const& other) {
            return other.error == error && other.takes == takes && other.hint == hint;
        });
        if (verdict == verdicts_.end()) {
            verdict = verdicts_.insert(verdict, {std::move(takes), std::move(hint), error, {}});
        }
        verdict->lanes.push_back(lane);
    }

    Inquiry& inquiry_;
    TimedLanes lanes_;
    FastestClock metres_;
    FastestClock yards_;
    Duration kept_free_;
    std::vector<Verdict> verdicts_; ///< of the session in hand
};

void judge(Inquiry& inquiry) {
    auto const& sessions = inquiry.plan.sessions;
    Judge judge{inquiry};
    for (plan::Index i = 0; i < sessions.size(); ++i) {
        if (sessions[i].slot() && !inquiry.waived(sessions[i])) {
            judge.session(i);
        }
    }
}

} // namespace

Rule const slot{
    .name = "slot",
    .severity = Severity::error,
    .measures = "the session fits its booked time",
    .limit = "0s",
    .meaning =
        "The booked time holds the session in every lane: an error where the expected time is longer, a "
        "warning where only the slow end is. The limit is what is kept free for changing over. Without a "
        "pace it speaks only where no threshold would fit.",
    .why = "what does not fit the clock cuts off, and it cuts at the end: the last of the main part, and the "
           "cool-down.",
    .source =
        "times as docs/time.md estimates them; that a slot is kept: common practice, no published source",
    .good = "session Tue for 45min     that takes 39-44 min",
    .bad = "session Tue for 45min     that takes 39-46 min",
    .mend = "shorten it, let a line be \"if time\", or book more; to keep time free: limit slot 5min",
    .judge = judge,
};

} // namespace lengthwise::check
