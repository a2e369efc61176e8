#pragma once

#include <array>
#include <string_view>

/// World records in long-course freestyle as they stood in the summer of 2025: a fixed set to try
/// formulas on, not today's list. Source: the records kept by World Aquatics, as reported in the
/// press on their dates; those marked were typed from memory.
namespace published {

struct Record {
    int metres;
    double seconds;
    std::string_view date;
    bool from_memory = false;
};

struct Records {
    std::string_view who;
    std::array<Record, 6> swims;
};

inline constexpr std::array records{
    Records{"men",
            {{{50, 20.91, "2009-12-18"},
              {100, 46.40, "2024-07-31"},
              {200, 102.00, "2009-07-28"},
              {400, 219.96, "2025-04-12"},
              {800, 452.12, "2009-07-29"},
              {1500, 870.67, "2024-08-04"}}}},
    Records{"women",
            {{{50, 23.61, "2023-07-29", true},
              {100, 51.71, "2017-07-23"},
              {200, 112.23, "2024-06-12", true},
              {400, 234.18, "2025-06-07"},
              {800, 484.12, "2025-05-03", true},
              {1500, 920.48, "2018-05-16"}}}},
};

} // namespace published
