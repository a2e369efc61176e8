#include "show.hpp"

#include "contest.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <iterator>
#include <string>
#include <string_view>
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

std::string verdict(double here, double wanted) {
    return wanted == 0 ? "-" : fmt::format("{} {}", wanted, here >= wanted ? "met" : "MISSED");
}

void print_goal(std::string_view title, double here, double wanted, double stretch) {
    fmt::print("{:48}{:>8.{}f}{:>12}{:>12}\n", title, here, here < 20 ? 2 : 0, verdict(here, wanted),
               verdict(here, stretch));
}

void print_goals(Contest const& contest) {
    auto const& parse = contest.row("parse");
    auto const& road = contest.row("road");
    auto const over = [&](std::string_view peer) { return median_ratio(contest.row(peer).core, parse.core); };
    fmt::print("\n{:48}{:>8}{:>12}{:>12}\n", "", "here", "goal", "stretch");
    print_goal("parse, MB/s", parse.speed(), 250, 400);
    print_goal("parse to tally, MB/s", road.speed(), 150, 200);
    print_goal("parse to tally with times, MB/s", contest.row("timed").speed(), 120, 0);
    print_goal("parse over Boost.JSON monotonic, sessions/s", over("boost-monotonic"), 1, 2);
    print_goal("parse over simdjson warm, sessions/s", over("simdjson"), 0, 1);
    print_goal("parse over simdjson fresh, sessions/s", over("simdjson-fresh"), 0, 1);
    fmt::print("{:48}{:>8.2f}{:>12}\n", "parse to tally, heap/byte", road.heap_a_byte(),
               road.heap_a_byte() <= 4 ? "4 met" : "4 MISSED");
}

} // namespace

void show_throughput(Options const& options) {
    Contest contest{options.bytes, options.program};
    contest.measure(options.rounds);
    auto const& plan = contest.plan();
    fmt::print("{:.1f} MB of notation, {} sessions; the same plan as JSON: {:.1f} MB\n\n",
               static_cast<double>(plan.notation.size()) / 1e6, plan.sessions,
               static_cast<double>(plan.json.size()) / 1e6);
    print_rows(contest);
    print_legend(contest);
    print_goals(contest);
}

} // namespace lengthwise::bench
