#pragma once

#include "calc/threshold.hpp"
#include "grammar/diagnostic.hpp"
#include "report/paint.hpp"

#include <string>
#include <string_view>
#include <vector>

/// What is said about test swims and the threshold that they give.
namespace lengthwise::report {

/// Stands beside every threshold and every call for another test.
inline constexpr std::string_view all_out_caution =
    "swim all out only if healthy and cleared by a doctor, with a lifeguard watching";

/// A remark in words.
struct Saying {
    std::string_view kind; ///< for programs: "short-swim"
    Severity severity = Severity::note;
    std::string message;
    std::string hint; ///< may be empty
};
/// What stops a figure first, then warnings, then notes.
[[nodiscard]] std::vector<Saying> sayings(calc::Trials const& trials, calc::Verdict const& verdict,
                                          bool ascii = false);

/// "lengthwise: warning: 100 m in 1:40 is under 2 min", the hint below; ends in a line feed.
[[nodiscard]] std::string saying_text(Saying const& saying, Paint const& paint);

/// "1:55 per 100 m".
[[nodiscard]] std::string pace_per_100(Duration pace, Unit unit);

/// A figure half up to a second; to a tenth of one.
[[nodiscard]] Duration to_second(calc::Exact const& seconds);
[[nodiscard]] Duration to_tenth(calc::Exact const& seconds);

} // namespace lengthwise::report
