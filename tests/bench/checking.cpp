#include "composing.hpp"
#include "generator.hpp"
#include "measure.hpp"
#include "show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

namespace lengthwise::bench {

namespace {

struct Median {
    double wall = 0;
    double core = 0;
    double resident = 0; ///< the most of all runs
};

/// `check` may end with 1: what it finds is no fault of the run.
Median median_of(std::vector<std::string> const& command, int rounds) {
    std::vector<double> wall;
    std::vector<double> core;
    std::int64_t resident = 0;
    for (int i = 0; i <= rounds; ++i) { // the first warms the caches
        auto const one = run_well(command, 1);
        if (i > 0) {
            wall.push_back(one.took.wall);
            core.push_back(one.took.core);
            resident = std::max(resident, one.resident);
        }
    }
    return {median(wall), median(core), static_cast<double>(resident)};
}

void check_one(Options const& options, Workshop const& workshop, Goals& goals) {
    auto const file = workshop.at("one.swim");
    auto const text = generate(1'000'000, false).notation;
    write(file, text);
    auto const checked = median_of({options.program.string(), "check", file.string()}, options.rounds);
    goals.add({"check 1 MB, ms", checked.core * 1e3, Bound::at_most, 100});

    constexpr std::size_t season = 20'000;
    std::size_t end = 0;
    for (std::size_t line = 0; line < season; ++line) {
        end = text.find('\n', end) + 1;
    }
    write(file, std::string_view{text}.substr(0, end));
    auto const lines = median_of({options.program.string(), "check", file.string()}, options.rounds);
    goals.add({"check 20 000 lines, s", lines.core, Bound::at_most, 0.3});
    goals.add({"check 20 000 lines, MB resident", lines.resident / 1e6, Bound::at_most, 64});
}

void check_many(Options const& options, Workshop const& workshop, Goals& goals) {
    constexpr std::size_t many = 2000;
    auto const folder = workshop.at("many");
    std::filesystem::create_directory(folder);
    auto const text = composed_plan(20'000);
    std::vector<std::string> count{"wc", "-l"};
    for (std::size_t i = 0; i < many; ++i) {
        count.push_back(folder / fmt::format("{}.swim", i));
        write(count.back(), text);
    }
    std::vector<std::string> const check{options.program.string(), "check", folder.string()};
    auto one_core = check;
    one_core.insert(one_core.begin(), {"taskset", "-c", "0"});
    auto const files = static_cast<double>(many);
    auto const lines = files / median_of(count, 3).core;
    auto const alone = files / median_of(one_core, 3).core;
    auto const all = files / median_of(check, 3).wall;
    goals.add(
        {"check plans of 20 kB a second, 1 core", alone, Bound::none, 0, "wc -l", lines, alone / lines});
    goals.add({"the same by the clock, all cores", all, Bound::none, 0, "one core", alone, all / alone});
    std::filesystem::remove_all(folder);
}

} // namespace

void measure_check(Options const& options, Goals& goals) {
    if (options.program.empty()) {
        return;
    }
    Workshop const workshop;
    check_one(options, workshop, goals);
    check_many(options, workshop, goals);
}

} // namespace lengthwise::bench
