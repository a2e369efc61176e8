#include "show.hpp"

#include "generator.hpp"
#include "measure.hpp"

#include <fmt/format.h>

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::bench {

namespace {

struct Times {
    std::vector<double> wall{};
    std::vector<double> core{};

    void add(Took const& took) {
        wall.push_back(took.wall);
        core.push_back(took.core);
    }
};

void print(std::string_view title, Times const& times) {
    fmt::print("{:28}{:>12.2f}{:>12.2f}\n", title, median(times.wall) * 1e3, median(times.core) * 1e3);
}

} // namespace

void show_start(Options const& options, Goals& goals) {
    if (options.program.empty()) {
        return;
    }
    constexpr int pairs = 50;
    Workshop const workshop;
    auto const week = generate_week();
    auto const file = workshop.at("week.swim");
    write(file, week.notation);
    std::vector<std::string> const nothing{"/bin/true"};
    std::vector<std::string> const tally{options.program.string(), "tally", file.string()};

    Times idle;
    Times totals;
    for (int i = -5; i < pairs; ++i) { // the first five warm the caches
        auto const of_nothing = run_well(nothing);
        auto const of_tally = run_well(tally);
        if (of_tally.output.find("week 1") == std::string::npos) {
            throw std::runtime_error{"tally printed no totals of week 1"};
        }
        if (i >= 0) {
            idle.add(of_nothing.took);
            totals.add(of_tally.took);
        }
    }
    auto const ratio = median_ratio(totals.wall, idle.wall);
    goals.add({"tally of a week, ms", median(totals.wall) * 1e3, Bound::at_most, 10});
    goals.add({"the same beside nothing at all", median(totals.wall) * 1e3, Bound::at_most, 4, "true",
               median(idle.wall) * 1e3, ratio, true});
    if (!options.details) {
        return;
    }
    fmt::print("\na week's file ({} bytes) from process start to printed totals, {} pairs\n\n",
               week.notation.size(), pairs);
    fmt::print("{:28}{:>12}{:>12}\n", "", "clock, ms", "core, ms");
    print("true", idle);
    print("lengthwise tally week.swim", totals);
    fmt::print("{:28}{:>12.2f}{:>12.2f}\n", "times true, pair by pair", ratio,
               median_ratio(totals.core, idle.core));
}

} // namespace lengthwise::bench
