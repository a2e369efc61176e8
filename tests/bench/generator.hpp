#pragma once

#include <cstdint>
#include <string>

namespace lengthwise::bench {

/// One invented plan in both spellings.
struct Generated {
    std::string notation;
    std::string json; ///< empty unless asked for
    std::uint64_t sessions = 0;
    std::int64_t metres = 0; ///< what lane 1 swims, `if time` left out
};

/// A plan of at least `bytes` of notation, in up to 999 weeks: the archive of a large
/// club, about 380 bytes a session. Same bytes, same plan.
[[nodiscard]] Generated generate(std::uint64_t bytes, bool with_json);

/// A plan of one ordinary week: three sessions.
[[nodiscard]] Generated generate_week();

} // namespace lengthwise::bench
