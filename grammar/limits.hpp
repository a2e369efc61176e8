#pragma once

#include <cstdint>

/// Every size at which lengthwise stops reading on. A text that passes one gets
/// an error that names the limit and the value found; nothing is cut silently.
/// docs/notation.md lists them; tests/limits_test.cpp tries both sides of each.
namespace lengthwise::limits {

inline constexpr std::uint64_t file_bytes = 256ULL << 20;    ///< one file: 256 MiB
inline constexpr std::uint64_t bundle_bytes = 1024ULL << 20; ///< a file and all it includes: 1 GiB
inline constexpr std::uint32_t line_bytes = 64U << 10;       ///< one line, its end not counted: 64 KiB
inline constexpr int nesting = 32;                      ///< parentheses in parentheses; a `use` counts as one
inline constexpr int include_depth = 16;                ///< files that include files
inline constexpr int include_files = 1000;              ///< files of one bundle
inline constexpr std::uint32_t session_sections = 1000; ///< headings of one session
inline constexpr std::uint32_t repeat = 9999;           ///< the N of `N x`
inline constexpr std::int64_t rep_km = 100;             ///< one rep
inline constexpr std::int64_t session_km = 1000;        ///< one session, each lane
inline constexpr std::int64_t session_reps = 1'000'000'000; ///< reps of a session over all its lines
inline constexpr std::int64_t session_hours = 10'000;       ///< time of a session over all its lines
inline constexpr std::uint32_t session_contexts = 65'536; ///< further readings of shared sets in one session
inline constexpr std::uint32_t file_contexts = 1U << 20;  ///< the same over a whole file
inline constexpr std::uint32_t lanes = 100;               ///< the highest lane
inline constexpr std::uint32_t weeks = 999;               ///< the highest week number
inline constexpr std::uint32_t findings_shown = 50;       ///< findings a file; the rest are counted

} // namespace lengthwise::limits
