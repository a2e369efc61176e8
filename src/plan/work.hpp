#pragma once

#include "grammar/bundle.hpp"
#include "grammar/tree.hpp"
#include "plan/plan.hpp"
#include "plan/report.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

/// What the resolver's files share while one plan is made. Private to src/plan.
namespace lengthwise::plan {

/// What comes down to a rep from outside: two places with equal contexts read a set alike.
struct Context {
    Index pool = 0; ///< of Plan::pools
    std::optional<Range<Duration>> rest;
    Manner manner;

    friend bool operator==(Context const&, Context const&) = default;
};
using ContextId = std::uint32_t;

/// Gives equal contexts equal numbers.
class Contexts {
  public:
    [[nodiscard]] ContextId id_of(Context const& context);
    [[nodiscard]] Context const& at(ContextId id) const { return known_[id]; }

  private:
    std::vector<Context> known_;
    std::unordered_multimap<std::size_t, ContextId> by_hash_;
};

struct Work {
    grammar::Bundle const& bundle;
    Plan& plan;
    Report report;
    Contexts contexts;

    Work(grammar::Bundle const& from, Plan& to) : bundle(from), plan(to), report(from.findings) {}

    /// The text of a STRING leaf, escapes undone.
    [[nodiscard]] Text text_of(grammar::Tree const& tree, std::uint32_t node);

    /// The number of an equal pool in Plan::pools.
    [[nodiscard]] Index pool_index(Pool const& pool);
};

/// Mixes a value into a hash.
template <typename T>
void mix(std::size_t& seed, T const& value) {
    seed ^= std::hash<T>{}(value) + 0x9e3779b97f4a7c15ULL + (seed << 6) + (seed >> 2);
}

} // namespace lengthwise::plan
