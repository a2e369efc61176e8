#include "published/courses.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <string>

using namespace lengthwise;
using published::pools;
using published::races;

// GNU `units` (Debian package `units`) is a second opinion that shares no code with
// this project: it works in double precision and prints 15 digits.

namespace {

std::string first_line_of(std::string const& command) {
    std::unique_ptr<FILE, int (*)(FILE*)> const pipe{popen(command.c_str(), "r"), pclose};
    REQUIRE(pipe != nullptr);
    std::array<char, 256> line{};
    auto const* const read = std::fgets(line.data(), static_cast<int>(line.size()), pipe.get());
    std::string text = read != nullptr ? read : "";
    while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) {
        text.pop_back();
    }
    return text;
}

/// What `units` answers to "how many `want` is `have`", as it prints it.
std::string ask(std::string const& have, std::string const& want) {
    return first_line_of("LC_ALL=C units --terse --digits 15 '" + have + "' '" + want + "' 2>&1");
}

double ratio(std::string const& have, std::string const& want) {
    auto const answer = ask(have, want);
    char* end = nullptr;
    double const value = std::strtod(answer.c_str(), &end);
    CAPTURE(have, want, answer);
    REQUIRE(end != answer.c_str());
    REQUIRE(*end == '\0');
    return value;
}

void require_units() {
    auto const version = first_line_of("units --version 2>&1");
    INFO("GNU units answers: " << version);
    INFO("this test needs the program: apt-get install units");
    REQUIRE(version.find("GNU Units") != std::string::npos);
}

std::string metres(int n) {
    return std::to_string(n) + " m";
}

} // namespace

TEST_CASE("GNU units measures every pool as the same whole number of 1/30 000 m", "[published][units]") {
    require_units();
    for (auto const& pool : pools) {
        CAPTURE(pool.name);
        CHECK(ask(std::string{pool.in_units}, "1|30000 m") == std::to_string(pool.length().units()));
    }
}

TEST_CASE("GNU units has the same quotient and lengths for every race in every pool", "[published][units]") {
    require_units();
    for (auto const& pool : pools) {
        for (auto const& race : races) {
            CAPTURE(pool.name, race.word);
            auto const distance = Distance::metres(race.metres);
            auto const theirs = ratio(metres(race.metres), std::string{pool.in_units});
            auto const ours =
                static_cast<double>(distance.units()) / static_cast<double>(pool.length().units());
            CHECK(std::abs(theirs - ours) <= 1e-14 * ours);

            // Fifteen digits show on which side of a wall the race ends: a quotient that is not
            // whole is at least 1/3 000 000 away from it, the longest pool being 3 000 000 units.
            double const nearest = std::round(theirs);
            bool const at_wall = std::abs(theirs - nearest) < 1e-9;
            CHECK(Distance::divides(pool.length(), distance) == at_wall);
            CHECK(static_cast<double>(Distance::ceiling(distance, pool.length())) ==
                  (at_wall ? nearest : std::ceil(theirs)));
            CHECK(static_cast<double>(Distance::whole(distance, pool.length())) ==
                  (at_wall ? nearest : std::floor(theirs)));
        }
    }
}
