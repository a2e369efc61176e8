#include "show.hpp"

#include "generator.hpp"
#include "measure.hpp"

#include <fmt/format.h>

#include <vector>

namespace lengthwise::bench {

void show_start(Options const& options) {
    if (options.program.empty()) {
        fmt::print("\nno lengthwise program was built, so its start is not measured\n");
        return;
    }
    constexpr int pairs = 50;
    Workshop const workshop;
    auto const week = generate_week();
    auto const file = workshop.at("week.swim");
    write(file, week.notation);
    std::vector<std::string> const nothing{"/bin/true"};
    std::vector<std::string> const tally{options.program.string(), "tally", file.string()};

    std::vector<double> idle;
    std::vector<double> totals;
    for (int i = -5; i < pairs; ++i) { // the first five warm the caches
        auto const of_nothing = run_well(nothing).took.wall;
        auto const of_tally = run_well(tally);
        if (of_tally.output.find("total") == std::string::npos) {
            throw std::runtime_error{"tally printed no total"};
        }
        if (i >= 0) {
            idle.push_back(of_nothing);
            totals.push_back(of_tally.took.wall);
        }
    }
    auto const ratio = median_ratio(totals, idle);
    fmt::print("\na week's file ({} bytes) from process start to printed totals, {} pairs\n\n",
               week.notation.size(), pairs);
    fmt::print("{:28}{:>8.2f} ms\n", "true", median(idle) * 1e3);
    fmt::print("{:28}{:>8.2f} ms\n", "lengthwise tally week.swim", median(totals) * 1e3);
    fmt::print("{:28}{:>8.2f}     at most 4: {}\n", "times true, pair by pair", ratio,
               ratio <= 4 ? "met" : "MISSED");
}

} // namespace lengthwise::bench
