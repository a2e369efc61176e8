#include "diagnostic.hpp"

#include "limits.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise {

bool Diagnostics::keeps(Severity severity) const {
    return kept_counts_[index(severity)] < limits::findings_shown;
}

void Diagnostics::add(Diagnostic finding) {
    auto const severity = finding.severity;
    count_only(severity);
    if (!keeps(severity)) {
        return;
    }
    ++kept_counts_[index(severity)];
    kept_.push_back(std::move(finding));
}

void Diagnostics::append(Diagnostics const& other) {
    for (auto const& finding : other.kept_) {
        if (keeps(finding.severity)) {
            ++kept_counts_[index(finding.severity)];
            kept_.push_back(finding);
        }
    }
    for (std::size_t i = 0; i < severities; ++i) {
        counts_[i] += other.counts_[i];
    }
}

void Diagnostics::sort_by_place() {
    std::ranges::stable_sort(kept_, {}, [](Diagnostic const& d) { return d.span.begin; });
}

void Diagnostics::sort_by_severity() {
    std::ranges::stable_sort(kept_, {}, [](Diagnostic const& d) {
        return std::pair{d.severity, d.span.begin};
    });
}

} // namespace lengthwise
