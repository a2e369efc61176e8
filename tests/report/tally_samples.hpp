#pragma once

#include <string_view>

/// Plans that the tests of the screens and of JSON share.
namespace lengthwise::test {

inline constexpr std::string_view otter_cove = R"(plan   "Two weeks to Otter Cove"
race   "Otter Cove" super-sprint on 2027-07-11
pool   25m
week 1 from 2027-06-28
  session Mon 06:30 for 60min "Long glide"
    warm-up
      200 choice easy
    drill
      4 x 50 as 25 drill "zip" / 25 crawl
    main "Even"
      300 crawl steady
      if time: 4 x 25 sprint
    cool-down
      100
  session Wed "Thirds"
    pool 33 1/3 m
    main
      4 x 67 kick
      100 with fins
week 2 "Last"
  session Mon "By lane"
    warm-up
      5min easy
    main
      lane 1: 6 x 100 crawl hard
      lane 2-3: 4 x 100 crawl hard
    cool-down
      100
)";

} // namespace lengthwise::test
