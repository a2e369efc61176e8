#pragma once

#include "units/pool.hpp"

#include <type_traits>
#include <vector>

/// Private to the spelling of plans.
namespace lengthwise::plan {

/// A piece of a plan, as it was read in a pool.
template <typename T>
struct Version {
    T const* what = nullptr;
    Pool const* pool = nullptr;
};

/// One piece of text, once for each pool that it was read in: what a named set holds has the
/// same words wherever the set is used, and other quantities. All else has a single version.
template <typename T>
using Versions = std::vector<Version<T>>;

/// The first version: words are the same in all of them.
template <typename T>
[[nodiscard]] T const& words(Versions<T> const& versions) {
    return *versions.front().what;
}

/// What `of` finds in each version.
template <typename T, typename Of>
[[nodiscard]] auto each(Versions<T> const& versions, Of const& of) {
    Versions<std::remove_cvref_t<decltype(of(words(versions)))>> found;
    found.reserve(versions.size());
    for (auto const& [what, pool] : versions) {
        found.push_back({&of(*what), pool});
    }
    return found;
}

} // namespace lengthwise::plan
