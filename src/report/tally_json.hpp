#pragma once

#include "plan/plan.hpp"
#include "report/json.hpp"
#include "report/tally_text.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace lengthwise::report {

/// The totals as one line of JSON, schema `lengthwise.tally/1` (docs/tally.schema.json),
/// handed out in pieces so that a large plan costs no large text. With a scope, only its
/// weeks and sessions are listed and summed.
void tally_json(plan::Plan const& plan, TallyOptions const& options, TextSink const& sink);
[[nodiscard]] std::string tally_json(plan::Plan const& plan, TallyOptions const& options);

/// What stands in place of the totals of a file with errors.
[[nodiscard]] std::string tally_json_errors(std::string_view file, std::uint64_t errors);

} // namespace lengthwise::report
