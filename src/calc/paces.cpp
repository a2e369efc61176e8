#include "calc/paces.hpp"

#include <algorithm>
#include <bit>
#include <functional>

namespace lengthwise::calc {
namespace {

constexpr std::uint64_t golden = 0x9e3779b97f4a7c15ULL;

/// Room for several times the reps that are likely to differ, or they would push each other out.
std::size_t room_for(std::size_t items) {
    return std::bit_ceil(std::clamp<std::size_t>(items, 64, 16'384));
}

} // namespace

std::size_t Paces::PlaceHash::operator()(Place const& place) const {
    std::hash<void const*> const hash;
    return (hash(place.threshold) * golden ^ hash(place.factors)) * golden ^ place.pool;
}

Paces::Paces(plan::Plan const& plan, plan::Threshold const* assumed)
    : plan_(plan), assumed_(assumed), lanes_(plan), alike_(plan), remembered_(room_for(plan.items.size())) {
    any_factors_ =
        std::ranges::any_of(plan.settings, [](auto const& scope) { return !scope.factors.empty(); });
}

/// Equal tables are there once, wherever they were said.
Factors const& Paces::factors(plan::Session const& session) {
    if (!any_factors_) {
        return table_;
    }
    auto said = factors_of(plan_, session);
    if (said.empty()) {
        return table_;
    }
    std::ranges::sort(said, {}, &plan::Factor::word);
    auto const [known, is_new] = changed_.try_emplace(said);
    if (is_new) {
        known->second = Factors{said};
    }
    return known->second;
}

PacingId Paces::of(plan::Session const& session, int lane) {
    auto const* const own = pace_of(plan_, lanes_, session, lane);
    Place const place{own != nullptr ? own : assumed_, session.pool, &factors(session)};
    auto const next = static_cast<PacingId>(pacings_.size());
    auto const [known, is_new] = known_.try_emplace(place, next);
    if (is_new) {
        pacings_.emplace_back(place.threshold, plan_.pools[place.pool], *place.factors);
    }
    return known->second;
}

RepTime const& Paces::rep(PacingId pacing, plan::Index terms, std::int64_t amount, bool timed) {
    auto const place = std::uint64_t{pacing} << 32U | alike_.first(terms);
    auto const key = timed ? -amount : amount;
    auto const hash = (place * golden ^ static_cast<std::uint64_t>(key)) * golden;
    auto& slot = remembered_[(hash >> 32U) & (remembered_.size() - 1)];
    if (slot.place != place || slot.amount != key) {
        slot = {place, key, rep_time(plan_, pacings_[pacing], plan_.terms[terms], amount, timed)};
    }
    return slot.time;
}

} // namespace lengthwise::calc
