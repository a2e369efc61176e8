#include "show.hpp"

#include "contest.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lengthwise::bench {

namespace {

void print_rows(Contest const& contest) {
    auto const sessions = static_cast<double>(contest.plan().sessions);
    fmt::print("{:28}{:>8}{:>13}{:>11}{:>12}\n", "", "MB/s", "sessions/s", "to parse", "heap/byte");
    for (auto const& row : contest.rows()) {
        fmt::print("{:28}{:>8.0f}{:>13.0f}{:>11.2f}{:>12}\n", row.title, row.speed(),
                   sessions / median(row.core), median_ratio(contest.row("parse").core, row.core),
                   row.heap == 0 ? "-" : fmt::format("{:.2f}", row.heap_a_byte()));
    }
}

/// How much longer the clock ran than a core worked: over all rows, what other programs took away.
double waiting(Contest const& contest) {
    std::vector<double> shares;
    for (auto const& row : contest.rows()) {
        std::transform(row.wall.begin(), row.wall.end(), row.core.begin(), std::back_inserter(shares),
                       std::divides{});
    }
    return median(shares);
}

void print_legend(Contest const& contest) {
    fmt::print("\nMB/s of the row's own text, by the time of the core that did it (the clock ran\n"
               "{:.2f} times as long). To parse: its sessions/s over those of the first row, round\n"
               "by round. Heap: most bytes held at once per byte of text, the text included.\n"
               "The peers only build their tree of the JSON. FILE: whole programs, start to end.\n",
               waiting(contest));
}

void add_goals(Contest const& contest, Goals& goals) {
    auto const& parse = contest.row("parse");
    auto const& lines = contest.row("wc");
    auto const sessions = static_cast<double>(contest.plan().sessions);
    auto const speed = [&](std::string what, Row const& row, double wanted) {
        goals.add({std::move(what), row.speed(), Bound::at_least, wanted, "wc -l", lines.speed(),
                   median_ratio(lines.core, row.core)});
    };
    auto const over = [&](std::string what, std::string_view name, std::string title, double wanted) {
        auto const& peer = contest.row(name);
        goals.add({std::move(what), sessions / median(parse.core), Bound::at_least, wanted, std::move(title),
                   sessions / median(peer.core), median_ratio(peer.core, parse.core), true});
    };
    speed("parse, MB/s", parse, 250);
    speed("the same, stretch", parse, 400);
    speed("parse to tally, MB/s", contest.row("road"), 150);
    speed("the same, stretch", contest.row("road"), 200);
    speed("with times, MB/s", contest.row("timed"), 120);
    goals.add({"parse to check, MB/s", contest.row("check").speed()});
    over("parse, sessions/s", "boost-monotonic", "Boost.JSON mono", 1);
    over("the same, stretch", "boost-monotonic", "Boost.JSON mono", 2);
    over("the same, stretch", "simdjson-fresh", "simdjson fresh", 1);
    over("the same, stretch", "simdjson", "simdjson warm", 1);
    goals.add({"parse to tally, heap bytes a byte", contest.row("road").heap_a_byte(), Bound::at_most, 4});
}

} // namespace

void show_throughput(Options const& options, Goals& goals) {
    Contest contest{options.bytes, options.program};
    contest.measure(options.rounds);
    add_goals(contest, goals);
    if (!options.details) {
        return;
    }
    auto const& plan = contest.plan();
    fmt::print("{:.1f} MB of notation, {} sessions; the same plan as JSON: {:.1f} MB\n\n",
               static_cast<double>(plan.notation.size()) / 1e6, plan.sessions,
               static_cast<double>(plan.json.size()) / 1e6);
    print_rows(contest);
    print_legend(contest);
}

} // namespace lengthwise::bench
