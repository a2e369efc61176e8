#include "calc/factors.hpp"
#include "calc/fits.hpp"
#include "calc/lane.hpp"
#include "calc/lane_hand.hpp"
#include "calc/reserve.hpp"
#include "calc/timeline.hpp"
#include "report/tally_text.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"
#include "units/pace.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <cmath>
#include <fstream>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// Reckons anew what docs/time.md shows, table by table.
namespace lengthwise {
namespace {

using Row = std::vector<std::string>;

std::vector<std::string> page() {
    std::ifstream file{LENGTHWISE_ROOT "/docs/time.md"};
    REQUIRE(file);
    std::vector<std::string> lines;
    for (std::string line; std::getline(file, line);) {
        lines.push_back(line);
    }
    return lines;
}

std::string trimmed(std::string text) {
    for (auto const* const around : {" ", "`"}) {
        while (!text.empty() && text.front() == *around) {
            text.erase(0, 1);
        }
        while (!text.empty() && text.back() == *around) {
            text.pop_back();
        }
    }
    return text;
}

Row cells(std::string const& line) {
    Row row;
    for (std::size_t at = 1; at < line.size();) {
        auto const end = line.find('|', at);
        row.push_back(trimmed(line.substr(at, end - at)));
        at = end + 1;
    }
    return row;
}

/// The rows below a table's head; a page has one table of that head.
std::vector<Row> table(std::string const& head) {
    auto const lines = page();
    std::vector<Row> rows;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines[i] == head) {
            for (i += 2; i < lines.size() && lines[i].rfind("| ", 0) == 0; ++i) {
                rows.push_back(cells(lines[i]));
            }
        }
    }
    INFO(head);
    REQUIRE_FALSE(rows.empty());
    return rows;
}

/// The first fenced block of that tag.
std::string block(std::string const& tag) {
    std::string text;
    bool inside = false;
    for (auto const& line : page()) {
        if (line.rfind("```", 0) == 0) {
            if (inside) {
                return text;
            }
            inside = line == "```" + tag;
        } else if (inside) {
            text += line + '\n';
        }
    }
    return text;
}

std::string clocks(Band<Duration> const& band) {
    return spell::clock(band.low) + ' ' + spell::clock(band.expected) + ' ' + spell::clock(band.high);
}

/// The head that a line needs, under what is usual; a pool or threshold of its own takes the usual one's
/// place.
std::string head_with(std::string const& own) {
    return "pool 25m\n" + std::string{own.rfind("threshold", 0) == 0 ? "" : "threshold 1:40\n"} + own + '\n';
}

calc::RepTime rep(std::string const& line, std::string const& own_head = "") {
    auto const read = support::read_plan(support::session_with(line, head_with(own_head)));
    INFO(own_head << ": " << line);
    CHECK(read.error() == "");
    auto const& plan = read.plan();
    auto const& item = plan.items[plan.sections.front().body];
    return calc::Clock{plan}.rep(0, 0, item.terms, item.amount, item.is_timed());
}

/// A percentage with the decimals it needs.
std::string percent(calc::Exact const& share) {
    return fmt::format("{:.6g}", (share * calc::Exact{100}).approximate());
}

Row percents(Band<calc::Exact> const& band) {
    return {percent(band.low), percent(band.expected), percent(band.high)};
}

Duration seconds(std::string const& text) {
    return Duration::seconds(std::stoll(text));
}

/// 700 m at "1:40" for 100 m.
calc::LaneSwim swim(std::string const& pace) {
    auto const clock = std::stoll(pace) * 60 + std::stoll(pace.substr(pace.find(':') + 1));
    return {calc::Exact{clock * 1000, Distance::metres(100).units()}, Distance::metres(700)};
}

Row columns(Row const& row, std::size_t first) {
    return {row.begin() + static_cast<std::ptrdiff_t>(first),
            row.begin() + static_cast<std::ptrdiff_t>(first) + 3};
}

} // namespace

TEST_CASE("docs/time.md times its session as the program does") {
    auto const read = support::read_plan(block("swim"));
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    auto const rows = table("| line | leaves | ends | next leaves |");
    auto const lines = calc::Clock{plan}.lines(0, 0);
    REQUIRE(rows.size() == lines.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        auto const text = std::string{read.bundle->root().source.slice(plan.items[lines[i].item].span)};
        CHECK(rows[i] == Row{text, clocks(*lines[i].start), clocks(*lines[i].end), clocks(*lines[i].leave)});
    }
}

TEST_CASE("docs/time.md shows its session as tally does") {
    auto const read = support::read_plan(block("swim"));
    REQUIRE(read.error() == "");
    auto const screen = report::tally_text(read.plan(), {}, report::Paint{false});
    CHECK(block("text") == screen);
    calc::Clock clock{read.plan()};
    std::string rows;
    for (auto const& section : clock.sections(0, 0)) {
        rows += spell::clock(section.swum.time.expected) + ' ';
    }
    CHECK(rows == "4:10 16:39.405 2:08.225 ");
    CHECK(clocks(clock.session(0, 0).time) == "21:45.08 22:57.63 24:17.9");
}

TEST_CASE("docs/time.md corrects courses as the program does") {
    auto const pool = [](std::string const& words) {
        return support::read_plan("pool " + words + "\n").plan().settings.back().pool.value();
    };
    for (auto const& row : table("| a pace of | in | takes |")) {
        auto const ratio = calc::Exact{course_ratio(pool(row[1]), pool(row[0]))};
        CHECK(row[2] == fmt::format("{:.2f} %", (ratio * calc::Exact{100}).approximate()));
    }
}

TEST_CASE("docs/time.md has the factors of the program, all of them") {
    std::map<std::string, int> words;
    calc::Factors const factors;
    for (auto const& row : table("| word | low | expected | high | source |")) {
        INFO(row[0]);
        ++words[row[0]];
        auto const is_gear_word = is_gear(find_word(row[0].substr(0, row[0].find(' '))));
        auto const on_kick = row[0] == "fins on kick";
        auto const line =
            on_kick ? "100 kick with fins" : "100 " + std::string{is_gear_word ? "with " : ""} + row[0];
        auto const read = support::read_plan(support::session_with(line, "pool 25m\n"));
        REQUIRE(read.error() == "");
        auto const& manner =
            read.plan().terms[read.plan().items[read.plan().sections.front().body].terms].manner;
        auto band = manner.effort.said() ? factors.effort(manner.effort) : factors.form(manner);
        if (on_kick) {
            plan::Manner kicked;
            kicked.mode = Mode::kick;
            auto const kick = factors.form(kicked);
            band = {band.low / kick.low, band.expected / kick.expected, band.high / kick.high};
        }
        CHECK(columns(row, 1) == percents(band));
        CHECK_FALSE(row[4].empty());
    }
    for (auto word = static_cast<int>(Word::crawl); word <= static_cast<int>(Word::wetsuit); ++word) {
        auto const w = static_cast<Word>(word);
        if ((is_stroke(w) || is_mode(w) || is_effort(w) || is_gear(w)) && w != Word::tread) {
            INFO(spelling(w));
            CHECK(words[std::string{spelling(w)}] == 1);
        }
    }
}

TEST_CASE("docs/time.md times its reps as the program does") {
    for (auto const& row : table("| in the head | rep | low | expected | high |")) {
        auto const time = rep(row[1], row[0]).swim;
        INFO(row[0] << ": " << row[1]);
        CHECK(columns(row, 2) ==
              Row{spell::clock(time.low), spell::clock(time.expected), spell::clock(time.high)});
    }
    for (auto const& row : table("| effort | distance | low | expected | high |")) {
        auto const time = rep(row[1] + ' ' + row[0]).swim;
        calc::Exact const at_threshold{std::stoll(row[1]) * 1000};
        auto const share = [&](Duration ms) { return calc::Exact{ms.ms()} / at_threshold; };
        CHECK(columns(row, 2) == percents({share(time.low), share(time.expected), share(time.high)}));
    }
    for (auto const& row : table("| rep | goes |")) {
        CHECK(row[1] == spell::distance(rep(row[0]).estimated, Unit::metre));
    }
}

TEST_CASE("docs/time.md times its sets as the program does") {
    for (auto const& row : table("| lines | they end the session | a rep follows |")) {
        auto const seconds = [&](std::string const& more) {
            auto const read = support::read_plan(
                support::session_with(row[0] + more, "pool 25m\nthreshold 1:40\nfactor steady 100%\n"));
            CHECK(read.error() == "");
            return calc::Clock{read.plan()}.session(0, 0).time.expected.ms() / 1000;
        };
        CHECK(row[1] == std::to_string(seconds("")));
        CHECK(row[2] == std::to_string(seconds("\n100") - 100));
    }
}

namespace {

/// Metres left behind the last of `n` reps; nothing where the reserve has run out before.
std::optional<double> left_after(int n, std::string const& rest) {
    auto const line = fmt::format("{} x 100 at 1:15 per 100 rest {}", n, rest);
    auto const read =
        support::read_plan(support::session_with(line, "pool 25m\nthreshold 1:20 reserve 25m\n"));
    REQUIRE(read.error() == "");
    calc::Clock clock{read.plan()};
    auto const over = calc::Reserve{read.plan(), clock}.over(0, 0);
    REQUIRE(over);
    return over->runs_out.empty() ? std::optional{25 - over->used} : std::nullopt;
}

std::string to_centimetres(double metres) {
    return fmt::format("{:.2f}", std::abs(metres));
}

} // namespace

TEST_CASE("docs/time.md empties its reserve as the program does") {
    for (auto const& row : table("| rest | after reps 1, 2, 3 … | out in rep | after 9999 |")) {
        INFO(row[0]);
        std::string left;
        int n = 1;
        for (; left.size() < row[1].size() && left_after(n, row[0]); ++n) {
            left += (n == 1 ? "" : " ") + to_centimetres(*left_after(n, row[0]));
        }
        CHECK(left == row[1]);
        auto const at_last = left_after(9999, row[0]);
        CHECK(row[3] == (at_last ? to_centimetres(*at_last) : "-"));
        CHECK(row[2] == (at_last ? "-" : std::to_string(n)));
        CHECK(at_last.has_value() == left_after(n, row[0]).has_value());
    }
    CHECK(std::round(100 * (1 - std::exp(-1.25 * 30 / 25))) == 78);
}

TEST_CASE("docs/time.md says at which threshold its sessions fit") {
    for (auto const& row : table("| session, pool 25 m | slot | fits at |")) {
        auto const read = support::read_plan("pool 25m\nsession for " + row[1] + "\nmain\n" + row[0] + '\n');
        REQUIRE(read.error() == "");
        auto const& plan = read.plan();
        auto const pace = calc::slowest_fitting(plan, 0, *plan.sessions.front().slot());
        CHECK(row[2] == (pace ? spell::clock(*pace) : "-"));
    }
}

TEST_CASE("docs/time.md reads the hand as the program does") {
    for (auto const& row : table("| set | away | the hand at each start |")) {
        INFO(row[0]);
        auto const read = support::read_plan(support::session_with(row[0]));
        REQUIRE(read.error() == "");
        auto const& plan = read.plan();
        auto const set = calc::SendOffReader{plan}.of(plan.items[plan.sections.front().body]);
        REQUIRE(set);
        auto const hand = calc::hand_at_starts(calc::steps_of(plan, *set), set->starts, seconds(row[1]));
        REQUIRE(hand);
        std::string marks;
        for (int const mark : hand->marks) {
            marks += fmt::format("{}{:02}", marks.empty() ? "" : " ", mark);
        }
        CHECK(row[2] == marks);
    }
}

TEST_CASE("docs/time.md says who gets away as the program does") {
    auto const head = "| swimmers | apart | pace for 100 m | they need | the first is back after |";
    for (auto const& row : table(head)) {
        CHECK(row[3] == spell::clock(seconds(row[1]) * std::stoll(row[0])));
        CHECK(row[4] == spell::clock(calc::lap_time(swim(row[2]).pace, Distance::metres(25))));
    }
}

TEST_CASE("docs/time.md says who meets whom as the program does") {
    auto const metres = [](calc::Exact const& at) {
        auto const text = fmt::format("{:.1f}", at.approximate() / Distance::per_metre);
        return text.substr(0, text.find(".0"));
    };
    for (auto const& row : table("| away first | away second | apart | they meet |")) {
        auto const first = swim(row[0]);
        auto const second = swim(row[1]);
        std::string met;
        if (auto const laps = calc::laps(first, second, seconds(row[2]), Distance::metres(25))) {
            for (std::int64_t i = 0; i < laps->times; ++i) {
                met += (i == 0 ? "the first laps at " : ", ") + metres(laps->at(i));
            }
        } else if (auto const caught = calc::caught_after(first, second, seconds(row[2]))) {
            met = "the second catches after " + metres(*caught);
        }
        CHECK(row[3] == (met.empty() ? "nowhere" : met + " m"));
    }
}

} // namespace lengthwise
