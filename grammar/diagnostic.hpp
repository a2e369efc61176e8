#pragma once

#include "span.hpp"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise {

/// `error`: cannot be read or swum, or misses the plan's purpose; `warning`: look
/// before you swim it; `note`: good to know.
enum class Severity : std::uint8_t { error, warning, note };
inline constexpr std::size_t severities = 3;

/// A second place that a finding names ("first said here").
struct Related {
    Span span;
    std::string message;
};

/// One finding, as data. Where and how it is drawn is the report's business.
struct Diagnostic {
    Severity severity = Severity::error;
    std::string_view rule; ///< a static name: a check's rule or a `syntax-…` code
    Span span;
    std::string message; ///< one sentence in the coach's words, lower case, no full stop
    std::string hint;    ///< what to type instead; may be empty
    std::vector<Related> related{};
};

/// Collects findings; keeps the first limits::findings_shown of each severity
/// and counts the rest, so that a huge broken file costs no memory.
class Diagnostics {
  public:
    void add(Diagnostic finding);

    /// False when a further finding of this severity would only be counted;
    /// callers then need not build its message.
    [[nodiscard]] bool keeps(Severity severity) const;

    /// Counts a finding without keeping it.
    void count_only(Severity severity) { ++counts_[index(severity)]; }

    [[nodiscard]] std::vector<Diagnostic> const& kept() const { return kept_; }
    [[nodiscard]] std::uint64_t count(Severity severity) const { return counts_[index(severity)]; }
    [[nodiscard]] bool has_errors() const { return count(Severity::error) > 0; }

    /// Appends another stage's findings.
    void append(Diagnostics const& other);

    /// Orders the kept ones by place in the text (stable).
    void sort_by_place();

    /// Orders the kept ones by severity, the worst first, then by place (stable).
    void sort_by_severity();

  private:
    [[nodiscard]] static std::size_t index(Severity severity) { return static_cast<std::size_t>(severity); }

    std::vector<Diagnostic> kept_;
    std::array<std::uint64_t, severities> counts_{};
    std::array<std::uint64_t, severities> kept_counts_{};
};

} // namespace lengthwise
