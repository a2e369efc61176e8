#include "calc/stretch.hpp"

#include "calc/band.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

constexpr Band<Duration> capped(Band<Duration> const& band) {
    return figurewise([](Duration time) { return std::min(time, longest_time); }, band);
}

constexpr plan::Index first_of(plan::Index a, plan::Index b) {
    return a == plan::no_index ? b : a;
}

// `times` multiplies before it caps.
static_assert(longest_time.ms() * 2 < INT64_MAX / (limits::repeat + 1));
static_assert(farthest.units() < INT64_MAX / (limits::repeat + 1));

} // namespace

void Stretch::then(Stretch const& next) {
    auto const start = slots + gap;
    slots = capped(start + next.slots);
    end = capped(start + next.end);
    gap = next.gap;
    swimming = capped(swimming + next.swimming);
    estimated = std::min(estimated + next.estimated, farthest);
    untimed = first_of(untimed, next.untimed);
    unmeasured = first_of(unmeasured, next.unmeasured);
    assumed = first_of(assumed, next.assumed);
}

Stretch Stretch::times(std::int64_t n) const {
    auto all = *this;
    auto const before_last = (slots + gap) * (n - 1);
    all.slots = capped(before_last + slots);
    all.end = capped(before_last + end);
    all.swimming = capped(swimming * n);
    all.estimated = std::min(estimated * n, farthest);
    return all;
}

void Stretch::leave_on(Duration send_off) {
    slots = at_least(slots, send_off);
    gap = {};
}

Stretch stretch_of(RepTime const& rep, plan::Index item) {
    Stretch stretch;
    stretch.slots = rep.swim;
    stretch.end = rep.swim;
    stretch.swimming = rep.swim - exactly(rep.breaks);
    stretch.estimated = rep.estimated;
    stretch.untimed = rep.timed ? plan::no_index : item;
    stretch.unmeasured = rep.measured ? plan::no_index : item;
    stretch.assumed = rep.assumed ? item : plan::no_index;
    return stretch;
}

void recover(Stretch& one, plan::Plan const& plan, plan::Item const& item, std::uint32_t number) {
    auto const& recovery = plan.terms[item.terms].recovery;
    if (recovery.kind == plan::Recovery::Kind::on) {
        one.leave_on(plan.send_offs[recovery.first_step + (recovery.steps > 1 ? number : 0)]);
    } else if (recovery.kind != plan::Recovery::Kind::none) {
        one.gap = gap_of(recovery);
    }
}

Band<Duration> gap_of(plan::Recovery const& recovery) {
    using Kind = plan::Recovery::Kind;
    switch (recovery.kind) {
    case Kind::rest:
        return band_of(recovery.rest);
    case Kind::as_needed:
        return band_of({Duration::seconds(10), Duration::seconds(60)});
    case Kind::breaths:
        return capped(
            band_of({Duration::seconds(2) * recovery.number, Duration::seconds(4) * recovery.number}));
    case Kind::none:
    case Kind::on:
        break;
    }
    return {};
}

} // namespace lengthwise::calc
