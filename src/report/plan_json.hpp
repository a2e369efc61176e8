#pragma once

#include "plan/plan.hpp"
#include "report/export_options.hpp"
#include "report/json.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace lengthwise::report {

/// A whole plan with all that is worked out of it, as one line of JSON, schema `lengthwise.plan/1`
/// (docs/plan.schema.json). Texts are as the file has them.
void plan_json(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink);

/// What stands in place of a file with errors.
[[nodiscard]] std::string plan_json_errors(std::string_view file, std::uint64_t errors);

} // namespace lengthwise::report
