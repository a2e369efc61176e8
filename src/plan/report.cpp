#include "plan/report.hpp"

#include <functional>
#include <utility>

namespace lengthwise::plan {

Report::Report(Diagnostics const& earlier) {
    for (auto const& finding : earlier.kept()) {
        unreadable_.insert(finding.span.begin);
    }
}

void Report::error(std::string_view code, Span at, std::string message, std::string hint,
                   std::vector<Related> related) {
    if (unreadable_.contains(at.begin)) {
        return;
    }
    if (!uses_.empty()) {
        auto const place = std::uint64_t{at.begin} << 32 ^ std::hash<std::string_view>{}(code);
        if (!said_.insert(place).second) {
            return;
        }
        related.push_back({uses_.front(), "used here"});
    }
    found_.add({.severity = Severity::error,
                .rule = code,
                .span = at,
                .message = std::move(message),
                .hint = std::move(hint),
                .related = std::move(related)});
}

} // namespace lengthwise::plan
