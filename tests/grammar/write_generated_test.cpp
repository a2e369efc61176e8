#include "bench/random.hpp"
#include "grammar/parse.hpp"
#include "grammar/write.hpp"
#include "plan/spell.hpp"
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

/// The text after a few slips of the hand: pieces of another text put in, taken out, lines copied.
std::string with_slips(std::string text, std::string const& other, std::uint64_t seed) {
    bench::Random random{seed};
    auto const place = [&](std::string const& in) {
        return static_cast<std::size_t>(random.below(static_cast<int>(in.size() + 1)));
    };
    for (int slips = random.between(1, 3); slips > 0; --slips) {
        auto const at = place(text);
        auto const size = static_cast<std::size_t>(random.between(1, 12));
        switch (random.below(3)) {
        case 0:
            text.erase(at, size);
            break;
        case 1:
            text.insert(at, other.substr(place(other), size));
            break;
        default: {
            auto const line = text.substr(at, text.find('\n', at) - at);
            text.insert(std::min(text.find('\n', place(text)), text.size()), "\n" + line);
        }
        }
    }
    return text;
}

/// Tidying, spelling and untidy_lines on whatever can still be read; 1 if it could.
int check_slips(std::uint64_t seed) {
    auto const wanted = [&](std::uint64_t number) {
        return test::generate({.seed = number, .untidy = seed % 2 == 0, .weeks = 1, .sessions = 1}).text;
    };
    auto const text = with_slips(wanted(seed), wanted(seed + 1'000'000), seed);
    Source const source{"plan.swim", text};
    auto const parsed = grammar::parse(source);
    (void)grammar::untidy_lines(parsed.tree); // comes back, even from a tree with lines that were not read
    if (parsed.findings.has_errors()) {
        return 0;
    }
    auto const written = grammar::write(parsed.tree);
    INFO("seed " << seed << "\n" << text);
    Source const again{"tidy.swim", written};
    auto const reparsed = grammar::parse(again);
    REQUIRE_FALSE(reparsed.findings.has_errors());
    REQUIRE(reparsed.tree.comments.size() == parsed.tree.comments.size());
    REQUIRE(grammar::write(reparsed.tree) == written);
    REQUIRE(grammar::untidy_lines(reparsed.tree).empty());

    auto const before = support::read_plan(text);
    auto const after = support::read_plan(written);
    REQUIRE(before.error().empty() == after.error().empty());
    if (before.error().empty()) {
        REQUIRE(plan::same_meaning(before.plan(), after.plan()));
        auto const spelled = support::read_plan(grammar::write(plan::spell(before.plan())));
        REQUIRE(spelled.error() == "");
        REQUIRE(plan::same_meaning(before.plan(), spelled.plan()));
    }
    return 1;
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

TEST_CASE("write: what is still well formed after slips of the hand keeps its meaning") {
    int read = 0;
    for (std::uint64_t seed = 0; seed < 4000; ++seed) {
        read += check_slips(seed);
    }
    CHECK(read > 100);
}

TEST_CASE("write: so it does over 200 000 slips", "[long]") {
    for (std::uint64_t seed = 4000; seed < 204'000; ++seed) {
        check_slips(seed);
    }
}
