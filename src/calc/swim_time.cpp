#include "calc/swim_time.hpp"

#include "calc/band.hpp"
#include "units/checked.hpp"
#include "units/pace.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

using plan::Effort;
using plan::Manner;

Duration capped(std::optional<Duration> time) {
    return time ? std::min(*time, longest_time) : longest_time;
}

/// The distance that can be swum above threshold. Without `reserve` 35, 20, 10 m: 15 to 35 m in trained
/// adults is from memory, 10 m is practice. With it 6 m to either side: Scott et al. 2023, J Hum Kinet
/// 90:239-251, typical error 4 to 9 m.
Band<Distance> reserve_of(plan::Threshold const& threshold) {
    constexpr auto doubt = Distance::metres(6);
    if (!threshold.reserve) {
        return {Distance::metres(35), Distance::metres(20), Distance::metres(10)};
    }
    return {*threshold.reserve + doubt, *threshold.reserve, std::max(*threshold.reserve - doubt, Distance{})};
}

bool is_hard(Effort const& effort) {
    return (effort.kind == Effort::Kind::word && effort.word == EffortWord::hard) ||
           (effort.kind == Effort::Kind::rpe && effort.number == 8);
}

/// One part, or a rep without parts, and the stretch of it that is swum in one go.
struct Part {
    Manner const& manner;
    std::int64_t amount = 0;
    std::int64_t repeats = 1;
};

/// Calls `visit` for each part of a rep, as often as the parts stand there; without any, for the rep.
template <typename Visit>
void each_part(plan::Plan const& plan, plan::Terms const& terms, std::int64_t amount, Visit visit) {
    if (terms.parts.empty()) {
        visit(Part{terms.manner, amount, 1});
        return;
    }
    std::int64_t once = 0;
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        once += plan.parts[i].amount;
    }
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        visit(Part{plan.parts[i].manner, plan.parts[i].amount, amount / once});
    }
}

class Rep {
  public:
    Rep(plan::Plan const& plan, Pacing const& pacing, plan::Terms const& terms, std::int64_t amount)
        : plan_(plan), pacing_(pacing), terms_(terms), amount_(amount) {}

    Duration breaks() const {
        auto const& broken = terms_.broken;
        return broken.piece == 0 ? Duration{}
                                 : capped(checked_mul(broken.pause, (amount_ - 1) / broken.piece));
    }

    /// Calls `visit` with each manner and the time swum in it.
    template <typename Visit>
    void each_swim(bool timed, Visit visit) const {
        std::int64_t so_far = 0;
        each_part(plan_, terms_, amount_, [&](Part const& part) {
            auto const share = part.amount * part.repeats;
            so_far += share;
            if (timed) {
                visit(part.manner, std::optional{exactly(Duration::ms(share))});
            } else if (terms_.manner.effort.kind == Effort::Kind::hold) {
                auto const held = held_until(so_far) - held_until(so_far - share);
                visit(part.manner, std::optional{exactly(held) + times(stops(part.amount), part.repeats)});
            } else if (auto const one = swim(part)) {
                visit(part.manner, std::optional{times(*one, part.repeats)});
            } else {
                visit(part.manner, std::optional<Band<Duration>>{});
            }
        });
    }

    /// How far a timed rep goes; nothing where a pace is wanting.
    std::optional<Distance> covered() const {
        std::optional<Exact> sum{0};
        each_way([&](std::optional<Exact> const& way) {
            sum = sum && way ? std::optional{*sum + *way} : std::nullopt;
        });
        return sum ? std::optional{whole_lengths(*sum, pacing_.pool())} : std::nullopt;
    }

    /// How far each manner goes in a timed rep, in the order of `each_swim`.
    template <typename Visit>
    void each_way(Visit visit) const {
        each_part(plan_, terms_, amount_, [&](Part const& part) {
            auto const one = distance(part);
            visit(one ? std::optional{*one * Exact{part.repeats}} : std::nullopt);
        });
    }

    /// True if somewhere the reserve allows less than the effort asks.
    bool bounded(bool timed) const {
        if (!pacing_.known() || (!timed && terms_.manner.effort.kind == Effort::Kind::hold)) {
            return false;
        }
        bool is_bounded = false;
        each_part(plan_, terms_, amount_, [&](Part const& part) {
            is_bounded = is_bounded || (timed ? bounded_distance(part) : bounded_time(part));
        });
        return is_bounded;
    }

    /// Calls `visit` with each part as the reserve sees it, in their order.
    template <typename Visit>
    void each_expected(bool timed, Visit visit) const {
        each_part(plan_, terms_, amount_, [&](Part const& part) {
            ExpectedPart expected;
            expected.manner = &part.manner;
            expected.amount = part.amount;
            expected.repeats = part.repeats;
            expected.form = pacing_.factors().form(part.manner).expected.approximate();
            if (timed) {
                expected.ms = static_cast<double>(part.amount);
                expected.distance = distance(part).value_or(Exact{0}).approximate();
            } else {
                expected.ms = static_cast<double>(swim(part).value_or(Band<Duration>{}).expected.ms());
                expected.distance = static_cast<double>(part.amount);
            }
            empty(expected, part, timed);
            visit(expected);
        });
    }

  private:
    /// Is this part held to the whole reserve?
    void empty(ExpectedPart& expected, Part const& part, bool timed) const {
        auto const& effort = part.manner.effort;
        using Kind = Effort::Kind;
        if (effort.kind == Kind::pace || effort.kind == Kind::hold || is_hard(effort) || !paced(effort) ||
            part.manner.mode == Mode::tread) {
            return;
        }
        auto const rate = pacing_.rate(effort) * pacing_.factors().effort(effort).expected;
        Exact const piece{in_one_go(part)};
        Exact const reserve{pacing_.twice_reserve(effort).expected, 2};
        auto const form = pacing_.factors().form(part.manner).expected;
        if (timed) {
            expected.emptied = piece / (pacing_.rate() * form) + reserve < piece / (rate * form);
            return;
        }
        expected.emptied = rate * piece < pacing_.rate() * (piece - reserve);
        if (expected.emptied) {
            auto const asked = Exact{part.amount} * rate * form;
            expected.asked = capped(Duration::ms(asked.rounded()));
        }
    }

    /// The stretch of a part that is swum in one go.
    std::int64_t in_one_go(Part const& part) const {
        return terms_.broken.piece == 0 ? part.amount : std::min(part.amount, terms_.broken.piece);
    }

    /// Of a held time what lies before this much of the rep: its parts add up to it.
    Duration held_until(std::int64_t amount) const {
        auto const time = terms_.manner.effort.time.ms();
        return Duration::ms((Exact{time} * Exact{amount, amount_}).rounded());
    }

    static Band<Duration> rounded(Band<Exact> const& ms) {
        return figurewise([](Exact const& time) { return capped(Duration::ms(time.rounded())); }, ms);
    }

    static Band<Duration> times(Band<Duration> const& once, std::int64_t n) {
        return figurewise([&](Duration time) { return capped(checked_mul(time, n)); }, once);
    }

    Band<Exact> stops_over(std::int64_t distance) const {
        return terms_.stops
                   ? figurewise([&](Exact const& stop) { return stop * Exact{distance}; }, pacing_.stops())
                   : exactly(Exact{0});
    }
    Band<Duration> stops(std::int64_t distance) const { return rounded(stops_over(distance)); }

    /// One part of a distance: max(d R' E, d R (1 - B/q)) S M gear A + stops.
    std::optional<Band<Duration>> swim(Part const& part) const {
        auto const& effort = part.manner.effort;
        auto const add = [](Exact const& a, Exact const& b) { return a + b; };
        auto const stopped = stops_over(part.amount);
        Exact const length{part.amount};
        if (effort.kind == Effort::Kind::pace) {
            auto const exact = length * Exact{effort.time.ms(), effort.per.units()};
            return rounded(figurewise(add, exactly(exact), stopped));
        }
        if (!paced(effort)) {
            return std::nullopt;
        }
        auto const at_effort = length * pacing_.rate(effort);
        auto const at_threshold = length * pacing_.rate();
        auto const twice = 2 * in_one_go(part);
        auto const time = [&](Exact const& share, std::int64_t reserve, Exact const& form, Exact const& about,
                              Exact const& stop) {
            auto const asked = at_effort * share;
            auto const bound = at_threshold * Exact{twice - reserve, twice};
            return (asked < bound ? bound : asked) * form * about + stop;
        };
        auto const& factors = pacing_.factors();
        return rounded(figurewise(time, factors.effort(effort), pacing_.twice_reserve(effort),
                                  factors.form(part.manner), pacing_.about(), stopped));
    }

    /// One part of a time, in units of distance: min(q / (R' E form), q / (R form) + B) t / q.
    std::optional<Exact> distance(Part const& part) const {
        auto const& effort = part.manner.effort;
        Exact const time{part.amount};
        if (part.manner.mode == Mode::tread) {
            return Exact{0};
        }
        if (effort.kind == Effort::Kind::pace) {
            return time * Exact{effort.per.units(), effort.time.ms()};
        }
        if (!paced(effort)) {
            return std::nullopt;
        }
        auto const& factors = pacing_.factors();
        auto const form = factors.form(part.manner).expected;
        Exact const piece{in_one_go(part)};
        auto const asked = piece / (pacing_.rate(effort) * factors.effort(effort).expected * form);
        auto const bound = piece / (pacing_.rate() * form) + Exact{pacing_.twice_reserve(effort).expected, 2};
        return (bound < asked ? bound : asked) * time / piece;
    }

    /// In one of its three times: d R' E < d R (1 - B/q).
    bool bounded_time(Part const& part) const {
        auto const& effort = part.manner.effort;
        if (effort.kind == Effort::Kind::pace || !paced(effort)) {
            return false;
        }
        auto const rate = pacing_.rate(effort);
        auto const twice = 2 * in_one_go(part);
        auto const bound = [&](Exact const& share, std::int64_t reserve) {
            return rate * share < pacing_.rate() * Exact{twice - reserve, twice};
        };
        auto const any = figurewise(bound, pacing_.factors().effort(effort), pacing_.twice_reserve(effort));
        return any.low || any.expected || any.high;
    }

    /// q / (R form) + B < q / (R' E form), as expected.
    bool bounded_distance(Part const& part) const {
        auto const& effort = part.manner.effort;
        if (effort.kind == Effort::Kind::pace || part.manner.mode == Mode::tread || !paced(effort)) {
            return false;
        }
        auto const& factors = pacing_.factors();
        auto const form = factors.form(part.manner).expected;
        Exact const piece{in_one_go(part)};
        auto const allowed =
            piece / (pacing_.rate() * form) + Exact{pacing_.twice_reserve(effort).expected, 2};
        return allowed < piece / (pacing_.rate(effort) * factors.effort(effort).expected * form);
    }

    bool paced(Effort const& effort) const { return pacing_.known() && Exact{0} < pacing_.rate(effort); }

    plan::Plan const& plan_;
    Pacing const& pacing_;
    plan::Terms const& terms_;
    std::int64_t amount_;
};

} // namespace

Pacing::Pacing(plan::Threshold const* threshold, Pool const& pool, Factors const& factors)
    : threshold_(threshold), pool_(pool), factors_(&factors) {
    if (known()) {
        auto const pace = Exact{threshold_->time.ms(), threshold_->per.units()};
        rate_ = (pace * course_ratio(pool_, threshold_->course)).reduced();
    }
}

Exact Pacing::rate(Effort const& effort) const {
    if (effort.kind != Effort::Kind::word || effort.shift.zero()) {
        return rate_;
    }
    return rate_ + Exact{effort.shift.ms(), (one(pool_.unit) * 100).units()};
}

Band<std::int64_t> Pacing::twice_reserve(Effort const& effort) const {
    auto const reserve = reserve_of(*threshold_);
    auto const hard = is_hard(effort);
    return {reserve.low.units() * 2, reserve.expected.units() * (hard ? 1 : 2),
            reserve.high.units() * (hard ? 1 : 2)};
}

Band<Exact> Pacing::about() const {
    return known() && threshold_->about ? Band<Exact>{{9, 10}, {1}, {11, 10}} : exactly(Exact{1});
}

/// Common practice: 0, 0 and 15 s for 100 of the pool's unit.
Band<Exact> Pacing::stops() const {
    return {{0}, {0}, {Duration::seconds(15).ms(), (one(pool_.unit) * 100).units()}};
}

Distance whole_lengths(Exact const& units, Pool const& pool) {
    auto const step = pool.has_length() ? pool.length : Distance::metres(1);
    return std::min((units / Exact{step.units()}).floor(), Distance::whole(farthest, step)) * step;
}

RepTime rep_time(plan::Plan const& plan, Pacing const& pacing, plan::Terms const& terms, std::int64_t amount,
                 bool timed) {
    Rep const rep{plan, pacing, terms, amount};
    RepTime result;
    result.breaks = rep.breaks();
    result.swim = exactly(result.breaks);
    rep.each_swim(timed, [&](Manner const&, std::optional<Band<Duration>> const& swim) {
        result.timed = result.timed && swim.has_value();
        result.swim += swim.value_or(Band<Duration>{});
    });
    result.swim = figurewise([](Duration time) { return capped(time); }, result.swim);
    if (timed) {
        auto const covered = rep.covered();
        result.measured = covered.has_value();
        result.estimated = covered.value_or(Distance{});
    }
    result.assumed = pacing.known() && !pacing.threshold()->reserve && rep.bounded(timed);
    return result;
}

std::vector<PartTime> part_times(plan::Plan const& plan, Pacing const& pacing, plan::Terms const& terms,
                                 std::int64_t amount, bool timed) {
    std::vector<PartTime> parts;
    Rep const rep{plan, pacing, terms, amount};
    rep.each_swim(timed, [&](Manner const& manner, std::optional<Band<Duration>> const& swim) {
        parts.push_back({&manner, swim, std::nullopt});
    });
    if (timed) {
        auto part = parts.begin();
        rep.each_way([&](std::optional<Exact> const& way) { (part++)->goes = way; });
    }
    return parts;
}

/// A held time is swum at one speed, if all its parts were crawl.
std::vector<ExpectedPart> expected_parts(plan::Plan const& plan, Pacing const& pacing,
                                         plan::Terms const& terms, std::int64_t amount, bool timed) {
    std::vector<ExpectedPart> parts;
    auto worth = 0.0;
    Rep{plan, pacing, terms, amount}.each_expected(timed, [&](ExpectedPart const& part) {
        parts.push_back(part);
        worth += part.distance * part.form * static_cast<double>(part.repeats);
    });
    if (terms.manner.effort.kind == Effort::Kind::hold) {
        auto const held = static_cast<double>(terms.manner.effort.time.ms());
        for (auto& part : parts) {
            part.ms = held * part.distance * part.form / worth;
        }
    }
    return parts;
}

} // namespace lengthwise::calc
