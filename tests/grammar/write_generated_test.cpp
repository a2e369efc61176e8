#include "grammar/parse.hpp"
#include "grammar/write.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

using namespace lengthwise;

namespace {

std::string tidied(std::string const& text) {
    Source const source{"plan.swim", text};
    return grammar::write(grammar::parse(source).tree);
}

/// The text without the generator's comments, which are "#: " and a number: a line of its own goes,
/// any other leaves its line behind.
struct Stripped {
    std::string text;
    std::vector<int> comments;
};

Stripped strip(std::string_view text) {
    Stripped result;
    while (!text.empty()) {
        auto const end = text.find('\n');
        auto line = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        auto const at = line.find("#: ");
        if (at != std::string_view::npos) {
            result.comments.push_back(std::stoi(std::string{line.substr(at + 3)}));
            line = line.substr(0, at);
            if (line.find_first_not_of(' ') == std::string_view::npos) {
                continue;
            }
            REQUIRE(line.ends_with("  "));
            line.remove_suffix(2);
        }
        result.text.append(line).append("\n");
    }
    return result;
}

/// The first line that differs, of both; nothing when none does.
std::string difference(std::string_view a, std::string_view b) {
    auto const [x, y] = std::ranges::mismatch(a, b);
    if (x == a.end() && y == b.end()) {
        return "";
    }
    auto const line = [at = x - a.begin()](std::string_view text) {
        auto const begin = text.substr(0, static_cast<std::size_t>(at)).rfind('\n') + 1;
        return std::string{text.substr(begin, text.find('\n', begin) - begin)};
    };
    return line(a) + "\n" + line(b);
}

/// The untidy text of a seed comes out as its tidy text, with all comments, and means the same.
void check_seed(std::uint64_t seed) {
    auto const tidy = test::generate({.seed = seed, .include = seed % 5 == 0});
    auto const untidy = test::generate({.seed = seed, .untidy = true, .include = seed % 5 == 0});
    auto const written = tidied(untidy.text);
    INFO("seed " << seed);

    auto const [text, comments] = strip(written);
    REQUIRE(difference(text, tidy.text) == "");
    REQUIRE(comments.size() == static_cast<std::size_t>(untidy.comments));
    for (std::size_t i = 0; i < comments.size(); ++i) {
        REQUIRE(comments[i] == static_cast<int>(i) + 1);
    }
    REQUIRE(difference(tidied(written), written) == "");
    REQUIRE(difference(tidied(tidy.text), tidy.text) == "");

    auto const before = support::read_plan(untidy.text, {{"/library.swim", untidy.library}});
    auto const after = support::read_plan(written, {{"/library.swim", tidied(untidy.library)}});
    REQUIRE(before.error() == "");
    REQUIRE(after.error() == "");
    REQUIRE(plan::same_meaning(before.plan(), after.plan()));
}

} // namespace

TEST_CASE("write: plans written by many hands come out in one spelling") {
    for (std::uint64_t seed = 0; seed < 2000; ++seed) {
        check_seed(seed);
    }
}

TEST_CASE("write: 50 000 plans written by many hands come out in one spelling", "[long]") {
    for (std::uint64_t seed = 2000; seed < 52'000; ++seed) {
        check_seed(seed);
    }
}
