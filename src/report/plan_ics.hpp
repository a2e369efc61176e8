#pragma once

#include "plan/plan.hpp"
#include "report/export_options.hpp"
#include "report/json.hpp"

#include <cstdint>
#include <string>

/// A plan's sessions and its race day as a calendar (RFC 5545).
namespace lengthwise::report {

/// What stands around the events of all plans; without an event it is no calendar.
[[nodiscard]] std::string ics_begin();
[[nodiscard]] std::string ics_end();

struct IcsCount {
    std::uint64_t events = 0;
    std::uint64_t sessions = 0; ///< asked for
    std::uint64_t undated = 0;  ///< of them: no day of the calendar, so no event
};

/// Each session with a date is an event, at its time (no time zone: the clock on the wall there) and for its
/// slot, else for as long as it takes at the slow end of its slowest lane; without a time of day, or if the
/// race, for a whole day. Race day is left out where only a week or a session is asked for.
///
/// UID: the plan's name (or else its file's), week and place in the week, and the lane or swimmer asked for.
/// It stays when a session is written anew or moved, so that a calendar that has it already changes it.
/// DTSTAMP, which has to be there, is the day of the event: there is no clock here, and the same plan must
/// give the same bytes.
IcsCount plan_ics(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink);

/// "warning: 2 of 6 sessions have no date and are left out", "no session has a date, so there is no
/// calendar", and what gives them one.
[[nodiscard]] std::string undated_text(std::uint64_t undated, std::uint64_t sessions, bool calendar);

} // namespace lengthwise::report
