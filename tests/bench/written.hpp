#pragma once

#include <fmt/format.h>

#include <iterator>
#include <string>
#include <utility>

/// How the generator writes into a text.
namespace lengthwise::bench {

template <typename... Args>
void put(std::string& to, fmt::format_string<Args...> format, Args&&... args) {
    fmt::format_to(std::back_inserter(to), format, std::forward<Args>(args)...);
}

[[nodiscard]] inline std::string clock(int seconds) {
    return fmt::format("{}:{:02}", seconds / 60, seconds % 60);
}

/// As a coach writes it: 45s, 2min, 1:30.
[[nodiscard]] inline std::string written(int seconds) {
    if (seconds < 60) {
        return fmt::format("{}s", seconds);
    }
    return seconds % 60 == 0 ? fmt::format("{}min", seconds / 60) : clock(seconds);
}

} // namespace lengthwise::bench
