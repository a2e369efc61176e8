#pragma once

#include "plan/plan.hpp"
#include "units/pool.hpp"

#include <string>
#include <vector>

/// How a card says what a rep is like: short, class by class, nothing said twice.
namespace lengthwise::report {

/// "200"; with its unit where that is not the pool's: "220yd". Counted lengths become metres or yards.
[[nodiscard]] std::string amount_words(Distance distance, plan::WrittenUnit unit, Pool const& pool);

/// The classes of `manner` that `held` does not hold already: "crawl", "pull", "steady", "with buoy".
/// A drill is called by its name. Empty where nothing differs.
[[nodiscard]] std::vector<std::string> manner_words(plan::Manner const& manner, plan::Manner const& held,
                                                    Pool const& pool);

/// "rest 20–40s", "rest as needed", "rest 3 breaths", "on 2:25, 2:20"; empty for none.
[[nodiscard]] std::string recovery_words(plan::Plan const& plan, plan::Recovery const& recovery);
[[nodiscard]] std::string rest_words(Range<Duration> const& rest);

/// "odds steady, evens hard"; empty without selectors.
[[nodiscard]] std::string selector_words(plan::Plan const& plan, plan::Terms const& terms, Pool const& pool);

/// "descend 1–3", "negative split"; empty for none and for `build`, which is said with the classes.
[[nodiscard]] std::string shape_words(plan::Shape const& shape);

/// "broken at 250 for 15s"; empty for a rep that is not broken.
[[nodiscard]] std::string broken_words(plan::Broken const& broken, Pool const& pool);

/// Those of Plan::texts, safe to print.
[[nodiscard]] std::vector<std::string> note_words(plan::Plan const& plan, plan::Run notes);

/// All parts, with `between` between them; empty ones left out.
[[nodiscard]] std::string joined(std::vector<std::string> const& parts, std::string_view between);

} // namespace lengthwise::report
