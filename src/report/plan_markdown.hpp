#pragma once

#include "plan/plan.hpp"
#include "report/export_options.hpp"
#include "report/json.hpp"

namespace lengthwise::report {

/// A plan for a newsletter or a message, as Markdown (CommonMark 0.30): headings for plan, weeks, sessions
/// and sections, a list item for each line.
void plan_markdown(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink);

} // namespace lengthwise::report
