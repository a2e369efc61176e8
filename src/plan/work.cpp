#include "plan/work.hpp"

#include <algorithm>

namespace lengthwise::plan {
namespace {

std::size_t hash_of(Context const& context) {
    std::size_t seed = context.pool;
    if (context.rest) {
        mix(seed, context.rest->low.ms());
        mix(seed, context.rest->high.ms());
    }
    auto const& manner = context.manner;
    mix(seed, static_cast<int>(manner.stroke));
    mix(seed, static_cast<int>(manner.mode));
    mix(seed, static_cast<int>(manner.gear.words) * 2 + static_cast<int>(manner.gear.said));
    mix(seed, manner.drill);
    mix(seed, static_cast<int>(manner.effort.kind) * 8 + static_cast<int>(manner.effort.word));
    mix(seed, manner.effort.number);
    mix(seed, manner.effort.shift.ms());
    mix(seed, manner.effort.time.ms());
    mix(seed, manner.effort.per.units());
    return seed;
}

} // namespace

ContextId Contexts::id_of(Context const& context) {
    if (!known_.empty() && known_.back() == context) {
        return static_cast<ContextId>(known_.size() - 1);
    }
    auto const hash = hash_of(context);
    auto const [from, to] = by_hash_.equal_range(hash);
    for (auto it = from; it != to; ++it) {
        if (known_[it->second] == context) {
            return it->second;
        }
    }
    auto const id = static_cast<ContextId>(known_.size());
    known_.push_back(context);
    by_hash_.emplace(hash, id);
    return id;
}

Text Work::text_of(grammar::Tree const& tree, std::uint32_t node) {
    auto const raw = tree.raw_string(node);
    if (raw.find('\\') == std::string_view::npos) {
        return raw;
    }
    return plan.kept->emplace_back(grammar::unescape(raw));
}

Index Work::pool_index(Pool const& pool) {
    auto const found = std::ranges::find(plan.pools, pool);
    if (found != plan.pools.end()) {
        return static_cast<Index>(found - plan.pools.begin());
    }
    plan.pools.push_back(pool);
    return static_cast<Index>(plan.pools.size() - 1);
}

} // namespace lengthwise::plan
