#include "report/rep_lengths.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;

namespace {

std::string reps(std::string const& line, std::size_t room = 9, bool ascii = false,
                 std::string const& head = "pool 25m\n") {
    auto const read = support::read_plan(head + "session\n  main\n    " + line + "\n");
    INFO(line);
    REQUIRE(read.error().empty());
    auto const& plan = read.plan();
    return report::rep_lengths(plan, plan.pool_of(plan.sessions[0]), plan.items[plan.sections[0].body], room,
                               ascii);
}

} // namespace

TEST_CASE("one rep in lengths", "[deck]") {
    CHECK(reps("750 crawl") == "30");
    CHECK(reps("4 x 50") == "2");
    CHECK(reps("200 as 25 kick / 25 crawl") == "8");
    CHECK(reps("110 crawl") == "5"); // rounded up, as in totals
    CHECK(reps("6 lengths") == "6");
}

TEST_CASE("ladders and groups show each rep of a round", "[deck]") {
    CHECK(reps("100, 200, 100") == "4,8,4");
    CHECK(reps("3 x (200 + 50 back)") == "8+2");
    CHECK(reps("2 x (4 x 50 + 100, 200)") == "2+4,8");
    CHECK(reps("2 x (2 x (50 + 25) + 100)") == "2+1+4");
    CHECK(reps("2 x use \"A\"", 9, false, "set \"A\" = (100 + 50)\npool 25m\n") == "4+2");
}

TEST_CASE("what is too long is shown from the shortest to the longest", "[deck]") {
    CHECK(reps("50, 100, 200, 400, 200, 50") == "2–16");
    CHECK(reps("50, 100, 200, 400, 200, 50", 9, true) == "2-16");
    CHECK(reps("100, 100, 100, 100, 100, 100") == "4");
    CHECK(reps("(400 + 10min swim + 20min swim)") == "16");
    CHECK(reps("(100 + 50 + 25)", 4) == "1–4");
}

TEST_CASE("timed reps show their time", "[deck]") {
    CHECK(reps("4 x 3min swim") == "3min");
    CHECK(reps("2 x (100 + 1min tread)") == "4+1min");
    CHECK(reps("1min, 2min, 3min, 2min") == "1–3min");
}

TEST_CASE("without a pool length there is nothing to say", "[deck]") {
    CHECK(reps("100 crawl", 9, false, "pool open water\n").empty());
    CHECK(reps("pause 1min").empty());
    CHECK(reps("\"a note\"").empty());
}

TEST_CASE("sets within sets are not unrolled", "[deck]") {
    std::string head;
    for (int i = 1; i < 13; ++i) {
        auto const inner = "use \"" + std::to_string(i - 1) + "\"";
        head += "set \"" + std::to_string(i) + "\" = (" + inner + " + " + inner + ")\n";
    }
    CHECK(reps("use \"12\"", 9, false, head + "set \"0\" = (25 as 10 kick / 15 + 50 crawl)\npool 25m\n") ==
          "1–2");
}
