#include "support/hostile.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

// What a text costs goes by its size, whatever it is made of: twice the text, twice the time.
namespace {

using hostile::times;
using lengthwise::support::run;
using lengthwise::support::TempFolder;

using Words = std::vector<std::string>;

/// Texts of one make, of about so many bytes.
struct Family {
    std::string name;
    std::function<std::string(std::size_t bytes)> text;
    bool by_lane = false; ///< costs its share for each of the hundred lanes: no more than twice for twice
};

constexpr char const* head = "pool 25m\nthreshold 2:00\n";
constexpr char const* session = "session\n  main\n";

/// One piece after the other, each made from its number.
std::string pieces(std::string text, std::size_t bytes,
                   std::function<std::string(std::size_t)> const& piece) {
    for (std::size_t i = 0; text.size() < bytes; ++i) {
        text += piece(i);
    }
    return text;
}

Family of_lines(std::string name, std::string const& line, bool by_lane = false) {
    return {std::move(name),
            [line](std::size_t bytes) {
                return pieces(head, bytes, [&](std::size_t) { return session + times(100, line); });
            },
            by_lane};
}

Family of_text(std::string name, std::string const& text) {
    return {std::move(name), [text](std::size_t bytes) { return times(bytes / text.size(), text); }};
}

Family of_pieces(std::string name, std::string const& before, std::function<std::string(std::size_t)> piece) {
    return {std::move(name),
            [before, piece = std::move(piece)](std::size_t bytes) { return pieces(before, bytes, piece); }};
}

/// Half of the text is one set, half of it are sessions that use it.
Family of_uses(std::string name, std::string const& line, std::string const& use) {
    return {std::move(name), [line, use](std::size_t bytes) {
                auto const set = "set \"a\" = (\n" + times(bytes / 2 / line.size(), line) + ")\n";
                return pieces(head + set, bytes, [&](std::size_t) { return session + use; });
            }};
}

std::string swimmers(std::size_t count) {
    std::string text = head;
    for (std::size_t i = 1; i <= count; ++i) {
        text += fmt::format("swimmer \"{}\" lane 1 distance {}%\n", i, i);
    }
    return text;
}

std::vector<Family> families() {
    return {
        of_lines("lines", "    4 x 25 crawl easy rest 20s\n"),
        of_lines("groups", "    2 x (25 + 25)\n"),
        of_lines("deep groups", "    " + times(31, "(") + "25" + times(31, ")") + "\n"),
        of_lines("splits", "    250 as 25" + times(9, " / 25") + "\n"),
        of_lines("ladders", "    25" + times(9, ", 50") + "\n"),
        of_lines("send-offs", "    10 x 25 on 1:00" + times(9, ", 1:00") + "\n"),
        of_lines("selectors", "    9 x 25, odds easy, evens hard\n"),
        of_lines("notes", "    25 \"a\"\n"),
        of_lines("if time", "    if time: 25\n"),
        of_lines("one lane", "    lane 1: 25\n"),
        of_lines("lanes by turns", "    lane 1: 25\n    lane 2: 25\n    lane 3: 25\n"),
        of_lines("a hundred lanes", "    lane 1-100: 25\n    25\n", true),
        of_text("blank lines", "\n"),
        of_text("comments", "# a\n"),
        of_text("empty sessions", "session\n"),
        of_text("wrong words", "crwal\n"),
        of_text("wrong items", "session\nmain\n4 x 50 crwal\n"),
        of_text("open groups", "session\nmain\n2 x (50 +\n"),
        of_text("open strings", "session\nmain\n50 \"a\n"),
        of_uses("uses of a long set", "25 easy\n", "    use \"a\"\n"),
        of_uses("a word for a long set", "25\n", "    use \"a\" easy\n"),
        of_uses("a word that a long set does not need", "25 easy\n", "    use \"a\" hard\n"),
        of_uses("a hold of a long set", "25\n", "    use \"a\" hold 0:30\n"),
        of_uses("selectors over a long set", "25 easy\n", "    2 x (use \"a\"), odds hard\n"),
        of_uses("rests of a long set", "1s\n", "    2 x use \"a\" rest 10s\n"),
        of_pieces("sets", "", [](std::size_t i) { return fmt::format("set \"{}\" = 50\n", i); }),
        of_pieces("sets in the wrong place", "session\nmain\n",
                  [](std::size_t i) { return fmt::format("set \"{}\" = 50\nuse \"{}\"\n", i, i); }),
        of_pieces("sets that are not there", "session\nmain\n",
                  [](std::size_t i) { return fmt::format("use \"{}\"\n", i); }),
        of_pieces("swimmers", head, [](std::size_t i) { return fmt::format("swimmer \"{}\" lane 1\n", i); }),
        of_pieces("pools", head,
                  [](std::size_t i) {
                      return fmt::format("session\n  pool {}m\n  main\n    {}\n", i % 1000 + 1, i % 1000 + 1);
                  }),
        of_pieces("thresholds", head,
                  [](std::size_t i) {
                      return fmt::format("session\n  threshold {}:{:02}\n  main\n    50\n", i / 60 % 5 + 1,
                                         i % 60);
                  }),
        of_pieces("dates", head, [](std::size_t) { return "session 2027-05-03\n  main\n    50\n"; }),
        of_pieces("sections", head,
                  [](std::size_t i) {
                      return (i % 1000 == 0 ? "session\n" : "") + std::string{"  main\n    25\n"};
                  }),
        of_pieces("swimmers with a share", swimmers(20),
                  [](std::size_t) { return std::string{session} + "    lane 1: 200\n"; }),
    };
}

// Instrumented builds need several times the time and memory.
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__) || !defined(NDEBUG)
constexpr double most_seconds_a_mib = 15;
constexpr long most_kib = 1'500'000;
#else
constexpr double most_seconds_a_mib = 1;
constexpr long most_kib = 256 << 10;
#endif
constexpr double most_for_twice = 2.5;
constexpr double too_short = 0.03; ///< to be measured

struct Cost {
    double seconds = 1e9;
    long kib = 0;
};

/// The least of a few runs: what other programs add comes and goes.
Cost cost(TempFolder const& folder, Words const& words) {
    Cost least;
    for (int i = 0; i < 3; ++i) {
        auto const ending = run({.arguments = words, .folder = folder.path()});
        CAPTURE(ending.err.substr(0, 200));
        CHECK(ending.code >= 0);
        CHECK(ending.code <= 2);
        least = {std::min(least.seconds, ending.seconds), ending.kib};
        if (least.seconds < too_short) {
            break;
        }
    }
    return least;
}

void grows_as_its_text(Family const& family, std::vector<Words> const& commands, std::size_t bytes) {
    bytes /= family.by_lane ? 16 : 1;
    TempFolder const once;
    TempFolder const twice;
    once.file("a.swim", family.text(bytes));
    auto const text = family.text(2 * bytes);
    twice.file("a.swim", text);
    for (auto const& words : commands) {
        auto const second = cost(twice, words);
        auto const first = second.seconds < too_short ? second : cost(once, words);
        CAPTURE(family.name, words, text.size(), first.seconds, second.seconds, second.kib);
        CHECK(second.seconds <= std::max(most_for_twice * first.seconds, too_short));
        if (!family.by_lane) {
            CHECK(second.seconds <
                  most_seconds_a_mib * std::max(1.0, static_cast<double>(text.size()) / (1 << 20)));
            CHECK(second.kib < most_kib);
        }
    }
}

} // namespace

TEST_CASE("hostile: twice the text takes twice the time", "[hostile][linear]") {
    for (auto const& family : families()) {
        grows_as_its_text(family, {{"check", "a.swim"}, {"export", "--as", "json", "a.swim"}}, 64 << 10);
    }
}

TEST_CASE("hostile: twice the text takes twice the time, whatever is asked", "[hostile][linear][long]") {
    std::vector<Words> const commands{
        {"tally", "a.swim"},
        {"check", "a.swim"},
        {"deck", "a.swim"},
        {"chart", "a.swim"},
        {"tidy", "--stdout", "a.swim"},
        {"tidy", "--check", "a.swim"},
        {"export", "--as", "json", "a.swim"},
        {"export", "--as", "csv", "a.swim"},
        {"export", "--as", "html", "a.swim"},
        {"export", "--as", "ics", "a.swim"},
        {"export", "--as", "md", "a.swim"},
    };
    for (auto const& family : families()) {
        grows_as_its_text(family, commands, 512 << 10);
    }
}
