#pragma once

#include "compose/ramp.hpp"
#include "compose/request.hpp"
#include "compose/ways_out.hpp"
#include "report/pace_words.hpp"
#include "report/paint.hpp"

#include <string>
#include <vector>

/// What `compose` says beside the plan that it writes. Lines are at most 60 cells wide.
namespace lengthwise::report {

/// What is asked for amiss; all of them errors.
[[nodiscard]] std::vector<Saying> refusal_sayings(compose::Request const& request,
                                                  std::vector<compose::Refusal> const& refusals,
                                                  bool ascii = false);

/// What to know about a ramp before it is swum: a race rep longer than the race, the pace that the slot
/// asks for, a session of today that does not fit. Notes, but an error where no pace is enough
/// for the slot; most ramps have none.
[[nodiscard]] std::vector<Saying> ramp_sayings(compose::Request const& request, compose::Ramp const& ramp,
                                               bool ascii = false);

/// Today, then a row a week, then the race: longest rep, week, and how much more than the highest before.
[[nodiscard]] std::string ramp_table(compose::Request const& request, compose::Ramp const& ramp,
                                     Paint const& paint, bool ascii = false);

/// Why each week is this and not its neighbour.
[[nodiscard]] std::string ramp_reasons(compose::Ramp const& ramp, Paint const& paint, bool ascii = false);

/// A wish that cannot be met: where it clashes, and what would be enough.
[[nodiscard]] std::string ways_out_text(compose::Request const& request, compose::WaysOut const& ways,
                                        Paint const& paint, bool ascii = false);

} // namespace lengthwise::report
