#include "support/hostile.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using hostile::Fit;
using hostile::Input;
using hostile::main_set;
using hostile::survive;

namespace {

/// Lines of a main set that are errors, each a row.
std::vector<Input> wrong_lines(std::vector<std::string> const& lines) {
    std::vector<Input> inputs;
    for (auto const& line : lines) {
        inputs.push_back({line, main_set(line), Fit::finding, ":4:"});
    }
    return inputs;
}

/// First lines of a file that are errors.
std::vector<Input> wrong_heads(std::vector<std::string> const& lines) {
    std::vector<Input> inputs;
    for (auto const& line : lines) {
        inputs.push_back({line, line + "\n", Fit::finding, ":1:"});
    }
    return inputs;
}

} // namespace

TEST_CASE("hostile: counts and distances", "[hostile]") {
    survive(wrong_lines({
        "0 x 100",
        "4 x 0",
        "-4 x 100",
        "4 x -100",
        "4 x",
        "x 100",
        "4 x x 100",
        "2 x 4 x 50",
        "4 50",
        "+200 crawl",
        "9999999999999999999",
        "18446744073709551616",
        "1e9",
        "0x10",
        "1_000",
        "1,000",
        "1'000",
        "1.000.000",
        "1,5",
        ".5",
        "5.",
        "1.2.3",
        "25.123m",
        "NaN",
        "inf",
        "33 1/0 m",
        "33 4/3 m",
        "33 1/7 m",
        "33 1/99999999999 m",
        "1/3 m",
        "7000001",
        "25.5yd",
        "50-100-150",
        "100, 1:30",
        "4 x (100, 200",
        "100,",
        ",100",
        ", 100 choice",
        ".   50",
    }));
    survive({
        {"leading zeros", main_set("007"), Fit::either},
        {"no thirds", main_set("33 0/3 m"), Fit::either},
        {"two units in a ladder", main_set("100m, 100yd"), Fit::either},
        {"gear twice", main_set("4 x 100 with fins, fins"), Fit::either},
        {"a thousand leading zeros", main_set(hostile::times(1000, "0") + "50"), Fit::either},
    });
}

TEST_CASE("hostile: times", "[hostile]") {
    survive(wrong_lines({
        "1:60",
        "1:2",
        "1:2:3:4",
        "1:60:00",
        "99:99:99",
        "25h",
        "24:00:01",
        "1441min",
        "99999999999999999999s",
        "0s",
        "0:00",
        "-0:30",
        "1:30.1234",
        "1:30.",
        "0:52.12345 crawl",
        "50 on 1:30.5678",
        "1min30s",
        "4 x 50 rest 40-20s",
        "4 x 50 rest 15",
        "4 x 50 rest 20-1:00",
        "4 x 50 on 0:00",
        "4 x 50 on 1:00,",
        "4 x 50 on 1:00, 0:55",
        "4 x 50 rest 10s on 1:00",
        "10min on 5:00",
        "50 at 1:10",
        "50 at 0:00 per 100",
        "50 at 29%",
        "50 at 151%",
        "50 rpe 11",
        "50 rest 0 breaths",
        "50 hold 0:00",
        "pause",
        "pause 25h",
    }));
}

TEST_CASE("hostile: groups, splits and selectors", "[hostile]") {
    survive(wrong_lines({
        "100 as 30 kick",
        "100 as 30 kick / 30 crawl",
        "100 as 25/75",
        "100 as 0 / 100",
        "100 as 1min / 50",
        "100 broken at 100 for 10s",
        "100 broken at 0 for 10s",
        "100 broken at 25",
        "4 x 100 descend 1-3",
        "4 x 100 descend 4-1",
        "4 x 100 descend 1-1",
        "4 x 100, odds",
        "4 x 100, first 5 easy",
        "4 x 100, odds easy, first 1 hard",
        "4 x 100, every 0th easy",
        "4 x 100, every 5th easy",
        "4 x 100 easy hard",
        "4 x 100 crawl back",
        "4 x 100 with nothing with fins",
        "4 x 100 with",
        "lane 0: 50",
        "lane 101: 50",
        "lane 3-1: 50",
        "lane 1: lane 2: 50",
        "lane 99999999999: 50",
        "if time: if time: 50",
        "lane 1:50",
        "use \"nobody\"",
        "use \"\"",
        "tread 100",
    }));
}

TEST_CASE("hostile: dates and weeks", "[hostile]") {
    std::vector<std::string> heads;
    for (auto const* const date : {"2025-02-29", "2024-02-30", "2024-13-01", "2024-00-10", "2024-01-00",
                                   "0000-00-00", "10000-01-01", "2024-W60", "01/02/2024", "24-01-02",
                                   "2024-1-2", "tomorrow", "20240102", "-2024-01-02", "99999999999-01-01"}) {
        heads.push_back(std::string{"race sprint on "} + date);
    }
    survive(wrong_heads(heads));
    survive(wrong_heads({
        "week 0",
        "week 1000",
        "week -1",
        "week 1 from 2027-02-30",
        "week",
        "session Tue 24:00",
        "session Tue 7:60",
        "session Tue 7",
        "session Tue 99999999:00",
        "session for 0min",
        "session for 0:45",
        "session for 45",
        "session for 25h",
        "session Someday",
    }));
    survive({
        {"the last day there is", "week 1 from 9999-12-27\nsession Mon\n", Fit::either},
        {"beyond the last day", "week 1 from 9999-12-20\nweek 3\nsession Mon\n", Fit::finding},
        {"weeks that fall", "week 2\nweek 1\n"},
        {"a week twice", "week 1\nweek 1\n"},
    });
}

TEST_CASE("hostile: units, pools and other heads", "[hostile]") {
    survive(wrong_lines({
        "100y",
        "100mm",
        "1km",
        "50 ft",
        "100 furlongs",
        "100 m m",
        "100meterss",
    }));
    survive(wrong_heads({
        "pool",
        "pool 0m",
        "pool 1001m",
        "pool 0.5m",
        "pool 25 crawl",
        "pool 4 lengths",
        "pool 25s",
        "threshold 0:00",
        "threshold fast",
        "threshold 2:05 reserve 0m",
        "threshold 2:05 reserve 101m",
        "factor crawl",
        "factor crawl 0%",
        "factor crawl 1001%",
        "factor nonsense 100%",
        "limit nonsense 5%",
        "limit slot 5%",
        "limit rep-step 99999999999%",
        "allow nonsense",
        "before longest",
        "swimmer",
        "swimmer \"A\" lane 0",
        "swimmer \"A\" distance 99999999999%",
        "include",
        "set \"A\"",
        "set \"A\" =",
        "set = 50",
        "set A = 50",
    }));
    survive({
        {"lengths without a pool", "session\n  main\n    4 lengths\n"},
        {"lengths in open water", "pool open water\nsession\n  main\n    4 lengths\n"},
        {"a statement twice", "race sprint on 2027-06-13\nrace sprint on 2027-06-14\n"},
        {"a setting behind a session", "session\n  main\n    50\npool 25m\n"},
        {"the plan's name last", "pool 25m\nplan \"late\"\n"},
    });
}

TEST_CASE("hostile: sets in circles", "[hostile]") {
    std::string ring;
    for (int i = 0; i < 500; ++i) {
        ring += "set \"" + std::to_string(i) + "\" = use \"" + std::to_string((i + 1) % 500) + "\"\n";
    }
    survive({
        {"a set of itself", "set \"a\" = use \"a\"\n", Fit::finding, ":1:"},
        {"itself, deep inside", "set \"a\" = 2 x (50 + 3 x (25 + use \"a\"))\n", Fit::finding, ":1:"},
        {"two", "set \"a\" = use \"b\"\nset \"b\" = use \"a\"\n"},
        {"five hundred", ring},
        {"used from a session", "set \"a\" = use \"a\"\n" + main_set("9999 x use \"a\"")},
        {"a name twice", "set \"a\" = 50\nset \"a\" = 100\n", Fit::finding, ":2:"},
        {"a name without letters", "set \"\" = 50\n", Fit::either},
    });
}
