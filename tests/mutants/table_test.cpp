#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

/// The slips of mutants.txt can be made: each line stands in its file, once.
namespace lengthwise {
namespace {

std::vector<std::string> lines_of(std::string const& path) {
    std::istringstream text{support::bytes_of(std::string{LENGTHWISE_ROOT "/"} + path)};
    std::vector<std::string> lines;
    for (std::string line; std::getline(text, line);) {
        line.erase(0, line.find_first_not_of(' '));
        lines.push_back(line);
    }
    return lines;
}

struct Slip {
    std::string file;
    std::string why;
    std::string was;
    std::string now;
};

std::vector<Slip> slips() {
    std::vector<Slip> all;
    for (auto const& line : lines_of("tests/mutants/mutants.txt")) {
        if (line.empty() || line.starts_with('#')) {
            continue;
        }
        if (line.starts_with("- ")) {
            all.back().was = line.substr(2);
        } else if (line.starts_with("+ ")) {
            all.back().now = line.substr(2);
        } else {
            auto const colon = line.find(": ");
            REQUIRE(colon != std::string::npos);
            all.push_back({line.substr(0, colon), line.substr(colon + 2), {}, {}});
        }
    }
    return all;
}

} // namespace

TEST_CASE("each slip of the table can be made in one place", "[mutants]") {
    std::map<std::string, std::vector<std::string>> files;
    std::set<std::pair<std::string, std::string>> seen;
    for (auto const& [file, why, was, now] : slips()) {
        INFO(file << ": " << why);
        auto& lines = files[file];
        if (lines.empty()) {
            lines = lines_of(file);
        }
        CHECK(std::ranges::count(lines, was) == 1);
        CHECK_FALSE(now.empty());
        CHECK(now != was);
        CHECK(seen.emplace(file, now).second);
    }
    CHECK(seen.size() >= 150);
}

} // namespace lengthwise
