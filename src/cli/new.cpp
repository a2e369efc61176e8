#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

namespace lengthwise::cli {

namespace {

/// One week in two sessions that shows what most plans need. `{}` is where its date goes.
constexpr std::string_view first_plan =
    R"(# A first plan, to change as you like. Behind a # stands what only people read.
# Swim where a lifeguard watches; whoever has been ill or is in doubt asks a doctor first.
plan "A first plan"
# your race in place of the next line: race "Its name" sprint on 2027-08-15
allow race-rep "no race yet"
pool 25m  # one length; 25yd, 50m and 33 1/3 m are pools too
threshold about 2:30 per 100m  # a guess: lengthwise pace finds yours
rest 20-30s  # for every rep that says nothing else
before longest 150m week 1100m  # what the group swims today

week 1{}
  session Tue 19:00 for 45min "Long and calm"
    warm-up easy
      100 choice
      2 x 25 kick with board  # breathe out under water, all the time
    drill
      4 x 25 crawl "as few strokes as you can"
    main
      4 x 50 crawl steady
      100 back easy rest 1min  # whoever coughs or is short of breath gets out
    cool-down easy
      50 choice
  session Thu 19:00 for 45min "Without a stop"
    warm-up easy
      100 choice
    drill
      2 x 50 as 25 drill "fist" / 25 crawl
    main
      150 crawl easy rest 1min  # the longest rep: slower than you think
      4 x 25 crawl steady, evens hard
    cool-down easy
      50 choice
)";

/// The first Monday on or after a day.
Date monday(Date day) {
    auto const behind = std::chrono::weekday{day} - std::chrono::Monday;
    return behind.count() == 0 ? day : day + (std::chrono::days{7} - behind);
}

std::string from(std::optional<Date> today) {
    return today && within_calendar(monday(*today)) ? " from " + spell::iso(monday(*today)) : "";
}

} // namespace

int new_plan(New const& options, Files&, Console& console) {
    console.out.write(fmt::format(first_plan, from(options.today)));
    console.summary = "one week, two sessions";
    if (*options.target.file != "-") {
        console.below = fmt::format("next: lengthwise check {}\n", report::visible(*options.target.file));
    }
    return fine;
}

} // namespace lengthwise::cli
