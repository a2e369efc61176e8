#pragma once

#include "plan/plan.hpp"
#include "report/export_options.hpp"
#include "report/json.hpp"

#include <cstdint>
#include <string>

namespace lengthwise::report {

enum class CsvRows : std::uint8_t { line, session, week };

/// The names of the columns, as a row; `file` is the first where several files are exported.
[[nodiscard]] std::string csv_head(CsvRows rows, bool several);

/// A row for each line, session or week, columns as above (docs/export.md). Distances are metres, times
/// seconds. Sums are those of the lowest lane, as everywhere; a line's times are those of the lowest lane
/// that swims it.
void plan_csv(plan::Plan const& plan, ExportOptions const& options, CsvRows rows, TextSink const& sink);

} // namespace lengthwise::report
