#include "generator.hpp"
#include "measure.hpp"
#include "show.hpp"

#include <fmt/format.h>

#include <array>
#include <exception>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <stdlib.h>
#include <unistd.h>

namespace {

using namespace lengthwise::bench;

constexpr std::string_view usage =
    "bench [--size MB] [--rounds N]   the report, and the goals in one table\n"
    "bench --goals [the same]         the table alone\n"
    "bench --write MB FILE            only the generated plan, to profile with\n"
    "bench --time READER FILE         one reading: seconds, sessions, heap, resident\n"
    "bench --count READER FILE        the same with the heap counted\n";

std::uint64_t megabytes(std::string const& text) {
    return std::stoull(text) * 1'000'000;
}

void report(Options const& options) {
    std::array<double, 1> load{};
    if (::getloadavg(load.data(), 1) == 1) {
        fmt::print("load {:.2f} on {} cores before; medians of {} rounds in turn\n", load[0],
                   ::sysconf(_SC_NPROCESSORS_ONLN), options.rounds);
    }
    Goals goals;
    measure_check(options, goals);
    measure_cards(options, goals);
    measure_compose(goals);
    show_start(options, goals);
    Goals readers; // the table begins with them
    show_throughput(options, readers);
    show_linearity(options, readers);
    readers.add(goals);
    readers.print();
}

Options options_of(std::vector<std::string> const& words) {
    Options options;
    options.program = LENGTHWISE_BINARY;
    options.cards = LENGTHWISE_CARDS_BINARY;
    options.details = words.empty() || words[0] != "--goals";
    for (std::size_t i = options.details ? 0 : 1; i < words.size(); i += 2) {
        if (i + 1 == words.size()) {
            throw std::runtime_error{std::string{usage}};
        }
        if (words[i] == "--size") {
            options.bytes = megabytes(words[i + 1]);
        } else if (words[i] == "--rounds") {
            options.rounds = std::stoi(words[i + 1]);
        } else {
            throw std::runtime_error{std::string{usage}};
        }
    }
    return options;
}

void run_bench(std::vector<std::string> const& words) {
    auto const is = [&](std::string_view first) { return words.size() == 3 && words[0] == first; };
    if (is("--write")) {
        write(words[2], generate(megabytes(words[1]), false).notation);
    } else if (is("--time") || is("--count")) {
        answer_reading(words[1], words[2], words[0] == "--count");
    } else {
        report(options_of(words));
    }
}

} // namespace

int main(int argc, char** argv) {
    try {
        run_bench({argv + 1, argv + argc});
        return 0;
    } catch (std::exception const& problem) {
        fmt::print(stderr, "bench: {}\n", problem.what());
        return 1;
    }
}
