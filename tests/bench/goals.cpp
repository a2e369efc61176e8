#include "goals.hpp"

#include <fmt/format.h>

#include <string_view>

namespace lengthwise::bench {

namespace {

/// Three figures or so, as they are quoted.
std::string figure(double value) {
    auto const places = value < 10 ? 2 : value < 100 ? 1 : 0;
    return value < 100'000 ? fmt::format("{:.{}f}", value, places) : fmt::format("{:.0f}k", value / 1000);
}

/// Without zeros behind the point.
std::string bound(Goal const& goal) {
    auto const sign = goal.bound == Bound::at_least ? "≥" : "≤";
    return goal.bound == Bound::none ? ""
                                     : fmt::format("{} {}{:g}", sign, goal.of_ratio ? "×" : "", goal.wanted);
}

std::string_view verdict(Goal const& goal) {
    auto const value = goal.of_ratio ? goal.ratio : goal.here;
    return goal.bound == Bound::none                                                       ? ""
           : (goal.bound == Bound::at_least ? value >= goal.wanted : value <= goal.wanted) ? "met"
                                                                                           : "MISSED";
}

void print_row(std::string_view what, std::string_view goal, std::string_view here, std::string_view beside,
               std::string_view ratio, std::string_view verdict) {
    fmt::print("| {:35} | {:6} | {:>7} | {:20} | {:>5} | {:6} |\n", what, goal, here, beside, ratio, verdict);
}

} // namespace

void Goals::print() const {
    fmt::print("\n");
    print_row("what", "goal", "here", "beside", "ratio", "");
    fmt::print("|{:-<37}|{:-<8}|{:-<8}:|{:-<22}|{:-<6}:|{:-<8}|\n", "", "", "", "", "", "");
    for (auto const& goal : rows_) {
        auto const alone = goal.peer.empty();
        print_row(goal.what, bound(goal), figure(goal.here),
                  alone ? "" : fmt::format("{} {}", goal.peer, figure(goal.beside)),
                  alone ? "" : fmt::format("{:.2f}", goal.ratio), verdict(goal));
    }
}

} // namespace lengthwise::bench
