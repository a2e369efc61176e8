#include "calc/swim_time.hpp"

#include "calc/band.hpp"
#include "calc/part_swim.hpp"
#include "units/checked.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

using plan::Effort;
using plan::Manner;

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
        : plan_(plan), pacing_(pacing), terms_(terms), amount_(amount), swim_(pacing, terms) {}

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
                visit(part.manner,
                      std::optional{exactly(held) + times(swim_.stops(part.amount), part.repeats)});
            } else if (auto const one = swim_.time(part)) {
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
            auto const one = swim_.distance(part);
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
            is_bounded = is_bounded || (timed ? swim_.bounded_distance(part) : swim_.bounded_time(part));
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
                expected.distance = swim_.distance(part).value_or(Exact{0}).approximate();
            } else {
                expected.ms = static_cast<double>(swim_.time(part).value_or(Band<Duration>{}).expected.ms());
                expected.distance = static_cast<double>(part.amount);
            }
            swim_.empty(expected, part, timed);
            visit(expected);
        });
    }

  private:
    /// Of a held time what lies before this much of the rep: its parts add up to it.
    Duration held_until(std::int64_t amount) const {
        auto const time = terms_.manner.effort.time.ms();
        return Duration::ms((Exact{time} * Exact{amount, amount_}).rounded());
    }

    static Band<Duration> times(Band<Duration> const& once, std::int64_t n) {
        return figurewise([&](Duration time) { return capped(checked_mul(time, n)); }, once);
    }

    plan::Plan const& plan_;
    Pacing const& pacing_;
    plan::Terms const& terms_;
    std::int64_t amount_;
    PartSwim swim_;
};

} // namespace

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
