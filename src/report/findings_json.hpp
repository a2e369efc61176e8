#pragma once

#include "check/inquiry.hpp"
#include "check/outlook.hpp"
#include "grammar/diagnostic.hpp"
#include "plan/plan.hpp"
#include "report/findings_text.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace lengthwise::report {

/// What stands beside the findings of a file.
struct FindingsSummary {
    std::string_view file = {};       ///< empty: a single file, not named
    plan::Plan const* plan = nullptr; ///< nothing: the file has errors that hide it
    std::optional<check::Outlook> outlook = std::nullopt;
    check::Waivers waivers = {}; ///< all that the file allows
};

/// Findings as one line of JSON, schema `lengthwise.check/1` (docs/check.schema.json). The
/// column counts cells, the offset bytes of the file; both are those of `finding_text`.
[[nodiscard]] std::string findings_json(Diagnostics const& findings, Sources const& sources,
                                        FindingsSummary const& summary);

} // namespace lengthwise::report
