#pragma once

#include "report/export_options.hpp"
#include "report/json.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <functional>
#include <string>
#include <string_view>

/// Plans that the tests of the exports share.
namespace lengthwise::test {

/// Two lanes, two pools, an evening without a date, all kinds of lines.
inline constexpr std::string_view heron_ford = R"(plan "Down to Heron Ford"
race "Heron Ford" sprint on 2027-06-20
swimmer "Ida" threshold 1:50 per 100m lane 1
swimmer "Olu" threshold 2:05 per 100m lane 2 distance 80%
before longest 300m week 900m
pool 25m
rest 20s
week 1 from 2027-06-07 "Ease in"
  session Tue 19:15 for 45min "Two lanes"
    "Gate code at the desk"
    warm-up
      200 choice easy
    drill "Line" rest 10s
      4 x 50 as 25 drill "zip" / 25 crawl with fins
    main
      "watch the clock"
      lane 1: 3 x 100 crawl on 2:15
      lane 2: 2 x 100 crawl hard
      pause 1min "drink"
      200, 100 crawl
      if time: 2 x 25 sprint
    cool-down
      3min easy
  session Thu "Thirds"
    pool 33 1/3 m
    main
      6 x 67 kick with board
week 2
  session Tue 19:15 "No slot"
    main
      2 x (100 back + 50 pull with buoy) rest 30s
)";

/// Everything that somebody may put into a name to make another program do something: markup, formulas,
/// quotes, separators, calendar lines, characters that turn a line round or end it.
inline constexpr std::string_view nasty =
    R"(<script>alert('1')</script> & =cmd|'/c calc'!A1; "=1+1", @SUM(A1), + - ; BEGIN:VEVENT \n \\ ]]> --> )"
    "\xE2\x80\xAE" // U+202E turns what follows round
    "gnp.exe\xE2\x80\xA8"
    "END:VCALENDAR\t[x](javascript:alert(1)) ![y](z) `code` *b* _i_ ~s~ | &lt; &#0; # é放⅓\xEF\xBF\xBE";

/// As a string of the notation has it.
[[nodiscard]] inline std::string quoted(std::string_view text) {
    std::string string = "\"";
    for (char const c : text) {
        string += c == '"' || c == '\\' ? std::string{'\\', c} : std::string{c};
    }
    return string + '"';
}

/// A plan with `name` wherever a name or a note may stand.
[[nodiscard]] inline std::string plan_called(std::string_view name) {
    auto const n = quoted(name);
    return "plan " + n + "\nrace " + n + " sprint on 2027-06-20\nswimmer " + n +
           " threshold 2:00 per 100m lane 1\nset " + n + " = 100 crawl " + n + "\npool 25m\n" + n +
           "\nweek 1 from 2027-06-07 " + n + "\n  " + n + "\n  session Tue 07:00 for 60min " + n + "\n    " +
           n + "\n    main " + n + "\n      " + n + "\n      100 drill " + n + " " + n + "\n      use " + n +
           "\n      pause 1min " + n + "\n      if time: 50 " + n + "\n  session " + n +
           "\n    main\n      50 " + n + "\n";
}

/// What an export writes for a plan.
using Export = std::function<void(plan::Plan const&, report::TextSink const&)>;
[[nodiscard]] inline std::string exported(std::string text, Export const& write) {
    auto const read = support::read_plan(std::move(text));
    REQUIRE(read.error() == "");
    std::string written;
    write(read.plan(), [&](std::string_view piece) { written += piece; });
    return written;
}

} // namespace lengthwise::test
