#include "calc/part_swim.hpp"

#include "calc/band.hpp"

#include <algorithm>

namespace lengthwise::calc {

using plan::Effort;

namespace {

Band<Duration> rounded(Band<Exact> const& ms) {
    return figurewise([](Exact const& time) { return capped(Duration::ms(time.rounded())); }, ms);
}

} // namespace

Duration capped(std::optional<Duration> time) {
    return time ? std::min(*time, longest_time) : longest_time;
}

/// The stretch of a part that is swum in one go.
std::int64_t PartSwim::in_one_go(Part const& part) const {
    return terms_.broken.piece == 0 ? part.amount : std::min(part.amount, terms_.broken.piece);
}

Band<Exact> PartSwim::stops_over(std::int64_t distance) const {
    return terms_.stops
               ? figurewise([&](Exact const& stop) { return stop * Exact{distance}; }, pacing_.stops())
               : exactly(Exact{0});
}

Band<Duration> PartSwim::stops(std::int64_t distance) const {
    return rounded(stops_over(distance));
}

/// One part of a distance: max(d R' E, d R (1 - B/q)) S M gear A + stops.
std::optional<Band<Duration>> PartSwim::time(Part const& part) const {
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
std::optional<Exact> PartSwim::distance(Part const& part) const {
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
bool PartSwim::bounded_time(Part const& part) const {
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
bool PartSwim::bounded_distance(Part const& part) const {
    auto const& effort = part.manner.effort;
    if (effort.kind == Effort::Kind::pace || part.manner.mode == Mode::tread || !paced(effort)) {
        return false;
    }
    auto const& factors = pacing_.factors();
    auto const form = factors.form(part.manner).expected;
    Exact const piece{in_one_go(part)};
    auto const allowed = piece / (pacing_.rate() * form) + Exact{pacing_.twice_reserve(effort).expected, 2};
    return allowed < piece / (pacing_.rate(effort) * factors.effort(effort).expected * form);
}

/// Is this part held to the whole reserve?
void PartSwim::empty(ExpectedPart& expected, Part const& part, bool timed) const {
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

bool PartSwim::paced(Effort const& effort) const {
    return pacing_.known() && Exact{0} < pacing_.rate(effort);
}

} // namespace lengthwise::calc
