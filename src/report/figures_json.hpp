#pragma once

#include "plan/plan.hpp"
#include "report/json.hpp"
#include "report/summary.hpp"
#include "units/date.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// What several JSON documents say in the same way. Each puts keys into the object that was begun,
/// or a value behind a key.
namespace lengthwise::report {

/// {"schema": …, "file": …, "plan": {"name": …: the file only where one is given, the objects left open.
void begin_plan(Json& json, std::string_view schema, std::string_view file, std::string_view name);

/// "metres" to "estimated_metres", as docs/tally.schema.json calls them.
void put_figures(Json& json, Figures const& figures, bool has_lengths);

/// The same of the scope's lowest lane, and "if_time" and "lanes" where there is something to say.
void put_tally(Json& json, Tally const& tally);

/// {"low", "expected", "high"} in seconds, or null.
void put_band(Json& json, std::optional<Band<Duration>> const& band);

/// `key` with a text, a date or a number; null where there is none.
void put_text(Json& json, std::string_view key, std::string_view text);
void put_date(Json& json, std::string_view key, std::optional<Date> date);

/// "number" and "from" of a week.
void put_week_head(Json& json, plan::Week const& week);

/// "name", "lane" and "share_percent".
void put_swimmer(Json& json, plan::Swimmer const& swimmer);

/// A document that stands in place of a file with errors.
[[nodiscard]] std::string errors_json(std::string_view schema, std::string_view file, std::uint64_t errors);

} // namespace lengthwise::report
