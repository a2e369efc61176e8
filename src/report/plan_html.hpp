#pragma once

#include "plan/plan.hpp"
#include "report/export_options.hpp"
#include "report/json.hpp"

namespace lengthwise::report {

/// A plan as one page that needs nothing else: HTML that is well-formed XML too. Its weekly chart stands in
/// it where the whole plan is asked for. It has no script, and forbids any by its content security policy.
void plan_html(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink);

} // namespace lengthwise::report
