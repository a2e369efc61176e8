#include "calc/alike.hpp"

#include <cstddef>
#include <cstdint>
#include <unordered_set>

namespace lengthwise::calc {
namespace {

void mix(std::size_t& seed, std::int64_t value) {
    seed = (seed ^ static_cast<std::size_t>(value)) * 0x9e3779b97f4a7c15ULL;
    seed ^= seed >> 32U;
}

std::size_t hash_of(plan::Terms const& terms) {
    auto const& manner = terms.manner;
    auto const& effort = manner.effort;
    std::size_t seed = terms.stops ? 1 : 0;
    for (auto const value :
         {std::int64_t{static_cast<int>(manner.stroke)}, std::int64_t{static_cast<int>(manner.mode)},
          std::int64_t{manner.gear.words}, std::int64_t{static_cast<int>(effort.kind)},
          std::int64_t{static_cast<int>(effort.word)}, std::int64_t{effort.number}, effort.shift.ms(),
          effort.time.ms(), effort.per.units(), terms.broken.piece, terms.broken.pause.ms()}) {
        mix(seed, value);
    }
    return seed;
}

bool alike(plan::Terms const& a, plan::Terms const& b) {
    return a.manner.stroke == b.manner.stroke && a.manner.mode == b.manner.mode &&
           a.manner.gear.words == b.manner.gear.words && a.manner.effort == b.manner.effort &&
           a.stops == b.stops && a.broken.piece == b.broken.piece && a.broken.pause == b.broken.pause;
}

} // namespace

/// Splits are few, and each is its own kind.
Alike::Alike(plan::Plan const& plan) {
    auto const hash = [&](plan::Index terms) { return hash_of(plan.terms[terms]); };
    auto const equal = [&](plan::Index a, plan::Index b) { return alike(plan.terms[a], plan.terms[b]); };
    std::unordered_set<plan::Index, decltype(hash), decltype(equal)> kinds(64, hash, equal);
    first_.reserve(plan.terms.size());
    for (plan::Index i = 0; i < plan.terms.size(); ++i) {
        first_.push_back(plan.terms[i].parts.empty() ? *kinds.insert(i).first : i);
    }
}

} // namespace lengthwise::calc
