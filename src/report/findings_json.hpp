#pragma once

#include "grammar/diagnostic.hpp"
#include "report/findings_text.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lengthwise::report {

/// What stands beside the findings of a file.
struct FindingsSummary {
    std::string_view file;                 ///< empty: a single file, not named
    std::optional<std::uint64_t> sessions; ///< nothing: the file has errors that hide them
};

/// Findings as one line of JSON, schema `lengthwise.check/1` (docs/check.schema.json). The
/// column counts cells, the offset bytes of the file; both are those of `finding_text`.
[[nodiscard]] std::string findings_json(Diagnostics const& findings, Sources const& sources,
                                        FindingsSummary const& summary);

} // namespace lengthwise::report
