#include "cli/cards_program.hpp"

#include "cli/options.hpp"
#include "cli/plans.hpp"

#include <array>
#include <climits>

#include <unistd.h>

namespace lengthwise::cli {
namespace {

constexpr char const* program = "lengthwise-cards";

/// Beside the program that runs; empty where that is not known.
std::string neighbour() {
    std::array<char, PATH_MAX> self{};
    auto const length = readlink("/proc/self/exe", self.data(), self.size());
    if (length <= 0 || static_cast<std::size_t>(length) == self.size()) {
        return {};
    }
    std::string path{self.data(), static_cast<std::size_t>(length)};
    return path.substr(0, path.rfind('/') + 1) + program;
}

} // namespace

CardsCommand cards_program(std::vector<std::string> const& words) {
    return [&words](Cards const&, Files&, Console& console) {
        std::string name{program};
        std::vector<char*> arguments{name.data()};
        auto given = words;
        for (auto& word : given) {
            arguments.push_back(word.data());
        }
        arguments.push_back(nullptr);
        if (auto const beside = neighbour(); !beside.empty()) {
            execv(beside.c_str(), arguments.data());
        }
        execvp(program, arguments.data());
        console.say("cards are not installed: there is no program lengthwise-cards\n"
                    "      = install the package lengthwise-cards, or build with -DLENGTHWISE_CARDS=ON;\n"
                    "        that needs libpango1.0-dev and libcairo2-dev");
        return misused;
    };
}

} // namespace lengthwise::cli
