#include "calc/pacing.hpp"

#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pace.hpp"

#include <algorithm>

namespace lengthwise::calc {

using plan::Effort;

namespace {

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

} // namespace

bool is_hard(Effort const& effort) {
    return (effort.kind == Effort::Kind::word && effort.word == EffortWord::hard) ||
           (effort.kind == Effort::Kind::rpe && effort.number == 8);
}

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

} // namespace lengthwise::calc
