#include "cli/put_weeks.hpp"

#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>

/// Weeks in the place of others.
namespace lengthwise::cli {
namespace {

std::string const weeks = "\n# new\nweek 2\n  session Tue\n    main\n      50\n";

struct Put {
    std::string text;
    Rest rest;
};

Put put(std::string const& text, std::uint32_t behind = 1) {
    auto const read = support::read_plan(text);
    REQUIRE(read.bundle->findings.kept().empty());
    auto const& root = read.bundle->root();
    auto const rest = behind_week(root, behind);
    return {with_weeks(root, rest, weeks), rest};
}

std::string const one = "pool 25m\n\n# mine\nweek 1\n  session Tue # wet\n    main\n      100\n";

TEST_CASE("all behind a week goes, all before stays byte for byte") {
    auto const found =
        put(one + "\nweek 2\n  session Tue\n    main\n      \"a note\"\n      100 # why\nweek 3\n");
    CHECK(found.text == one + weeks);
    CHECK(found.rest.sessions == 1);
    CHECK(found.rest.remarks == 2);
    CHECK(put(one).text == one + weeks);
    CHECK(put(one).rest.sessions == 0);
}

TEST_CASE("comments just above the next week go with it") {
    CHECK(put(one + "\n# about two\n# and more\nweek 2\n").text == one + weeks);
    CHECK(put(one + "# about two\nweek 2\n").text == one + weeks);
    CHECK(put(one + "\n# about two\nweek 2\n").rest.remarks == 1);
}

TEST_CASE("comments of the week that stays are not the next one's") {
    auto const kept = one + "      # went well\n";
    CHECK(put(kept + "week 2\n").text == kept + weeks);
    auto const apart = one + "# went well\n\n";
    CHECK(put(apart + "week 2\n").text == apart + weeks.substr(1));
}

TEST_CASE("line ends are the file's own") {
    auto const crlf = [](std::string text) {
        for (auto at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 2)) {
            text.insert(at, "\r");
        }
        return text;
    };
    CHECK(put(crlf(one + "\nweek 2\n")).text == crlf(one + weeks));
    CHECK(put(one.substr(0, one.size() - 1)).text == one + weeks);
}

TEST_CASE("a byte order mark stays") {
    CHECK(put("\xEF\xBB\xBF" + one + "week 2\n").text == "\xEF\xBB\xBF" + one + weeks);
    CHECK(put("week 1\nweek 2\n").text == "week 1\n" + weeks);
}

} // namespace
} // namespace lengthwise::cli
