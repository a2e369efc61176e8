#pragma once

#include "plan/plan.hpp"
#include "report/session_view.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// A session in words for people, as exports to be read share them. Safe to print, not yet escaped for
/// what reads them.
namespace lengthwise::report {

/// What a session is headed with: its name, else its day and time; below it what else there is of when and
/// where, "Tue 4 May 2027, 07:00, 45 min · pool 25 m".
struct SessionHead {
    std::string title{};
    std::string below{};
};
[[nodiscard]] SessionHead session_head(plan::Plan const& plan, plan::Index session, bool ascii = false);

/// What there is to say about a lane, part by part: "lane 2", "1250 m", "50 lengths", "longest rep 200 m",
/// "36–42 of 45 min", "1:55 per 100 m", "if time 100 m more"; empty parts have nothing to say.
[[nodiscard]] std::vector<std::string> lane_words(plan::Plan const& plan, SessionView const& view,
                                                  std::size_t place, bool ascii = false);

/// "6 x 100 crawl on 2:30", "if time: 4 x 25 sprint".
[[nodiscard]] std::string set_words(ViewLine const& line);

/// "lane 1: 6 x 100 crawl on 2:30", "if time: 4 x 25 sprint"; the lane only where several are shown.
[[nodiscard]] std::string line_words(plan::Plan const& plan, SessionView const& view, ViewLine const& line);

/// "kit: fins, board", "rest 20–40 s where a line has none", in one line.
[[nodiscard]] std::string kit_and_rest(plan::Plan const& plan, SessionView const& view, bool ascii = false);

/// "Week 2 from Mon 3 May 2027", "Week 2"; of the sessions before any week, "Before the weeks", and in a plan
/// without weeks "Sessions".
[[nodiscard]] std::string week_words(plan::Plan const& plan, plan::Week const& week);

/// "race Heron Ford, Sun 20 June 2027, 750 m".
[[nodiscard]] std::string race_words(plan::Race const& race, bool ascii = false);

/// Parts with " · " between them (", " in ASCII); empty ones are left out.
[[nodiscard]] std::string in_one_line(std::vector<std::string> const& parts, bool ascii = false);

} // namespace lengthwise::report
