#include "tailor/pool.hpp"

#include "grammar/write.hpp"
#include "plan/spell.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace lengthwise;
using support::read_plan;
using Lines = std::vector<std::string>;

namespace {

Pool const m25 = Pool::of(Distance::metres(25), Unit::metre);
Pool const m50 = Pool::of(Distance::metres(50), Unit::metre);
Pool const m33 = Pool::of(Distance::units(1'000'000), Unit::metre);
Pool const yd25 = Pool::of(Distance::yards(25), Unit::yard);

/// The lines of the main section once the only session is made to fit; `*` in front of those
/// that changed, `*!` where a time stays.
Lines fitted(std::string const& lines, tailor::Wanted const& wanted,
             std::string const& head = "race sprint on 2027-06-13\npool 25m\n") {
    auto const read = read_plan(head + "session\n  main\n" + lines);
    REQUIRE(read.error() == "");
    auto const result = tailor::fit(read.plan(), 0, wanted);
    Lines all;
    auto const items = plan::items_from(result.plan, result.plan.sections[0].body);
    for (auto item = items.begin(); item != items.end(); ++item) {
        auto const among = [&](auto const& indexes) {
            return std::find(indexes.begin(), indexes.end(), item.index()) != indexes.end();
        };
        auto const mark = std::string{among(result.changed) ? "*" : ""} + (among(result.timed) ? "!" : "");
        all.push_back(mark + plan::spell_line(result.plan, result.session(), *item));
    }
    return all;
}

std::string written(tailor::Tailored const& tailored) {
    return grammar::write(plan::spell(tailored.plan));
}

} // namespace

TEST_CASE("figures that stay are not called changed", "[tailor]") {
    CHECK(fitted("    200 crawl\n    4 x 50 kick\n    4 x 25 crawl sprint\n", {yd25}) ==
          Lines{"200 crawl", "4 x 50 kick", "4 x 25 crawl sprint"});
    CHECK(fitted("    8 lengths crawl\n", {yd25}) == Lines{"8 lengths crawl"});
    CHECK(fitted("    200 crawl\n", {m33}) == Lines{"200 crawl"});
}

TEST_CASE("what reads otherwise is called changed", "[tailor]") {
    CHECK(fitted("    750 crawl\n    100, 200, 400 back\n", {yd25}) ==
          Lines{"*850 crawl", "*100, 200, 450 back"});
    CHECK(fitted("    400, 200, 100 back\n", {yd25}) == Lines{"*450, 200, 100 back"}); // the first rung alone
    CHECK(fitted("    100m crawl\n", {yd25}) == Lines{"*100 crawl"});
    CHECK(fitted("    8 lengths crawl\n", {m50}) == Lines{"*4 lengths crawl"});
    CHECK(fitted("    4 x 25 crawl\n", {m50}) == Lines{"*4 x 50 crawl"});
}

TEST_CASE("a pool of odd length has its reps in lengths", "[tailor]") {
    CHECK(fitted("    4 x 50 crawl\n    100, 200, 400 crawl\n", {m33}) ==
          Lines{"*4 x 2 lengths crawl", "*2, 6, 12 lengths crawl"});
    CHECK(fitted("    200, 100, 400 crawl\n", {m33}) == Lines{"*6, 2, 12 lengths crawl"});
    CHECK(fitted("    6 lengths crawl\n", {m25}, "pool 33 1/3m\n") == Lines{"*8 lengths crawl"});
    CHECK(fitted("    133 crawl\n", {m25}, "pool 33 1/3m\n") == Lines{"*150 crawl"});
}

TEST_CASE("times, counts and rest stay", "[tailor]") {
    CHECK(fitted("    4 x 3min swim rest 15s\n    pause 1min\n    \"look up\"\n    2 x 300 crawl rest 1min\n",
                 {yd25}) ==
          Lines{"4 x 3min swim rest 15s", "pause 1min", "\"look up\"", "*2 x 350 crawl rest 1min"});
}

TEST_CASE("a changed rep with a send-off or a time to hold is pointed out", "[tailor]") {
    CHECK(fitted("    3 x 300 crawl on 7:00\n    3 x 100 crawl on 2:30\n", {yd25}) ==
          Lines{"*!3 x 350 crawl on 7:00", "3 x 100 crawl on 2:30"});
    CHECK(fitted("    2 x (300 crawl + 50 back) on 9:00\n", {yd25}) ==
          Lines{"*!2 x (350 crawl + 50 back) on 9:00"});
    CHECK(fitted("    2 x 300 crawl, last hold 6:00\n", {yd25}) == Lines{"*!2 x 350 crawl, last hold 6:00"});
    CHECK(fitted("    2 x (300 crawl hold 6:00 + 50 back) rest 1min\n", {yd25}) ==
          Lines{"*!2 x (350 crawl hold 6:00 + 50 back) rest 1min"});
    CHECK(fitted("    2 x (300 crawl + 300 back) hold 6:00, last easy\n", {yd25}) ==
          Lines{"*!2 x (350 crawl + 350 back) hold 6:00, last easy"}); // the first round has it
}

TEST_CASE("splits and breaks follow the rep", "[tailor]") {
    CHECK(fitted("    750 as 250 crawl easy / 500 crawl hard\n", {yd25}) ==
          Lines{"*850 as 275 crawl easy / 575 crawl hard"});
    CHECK(fitted("    200 as 25 kick / 25 crawl\n", {yd25}) == Lines{"200 as 25 kick / 25 crawl"});
    CHECK(fitted("    200 as 25 kick / 25 crawl\n", {m33}) ==
          Lines{"*200 as 1 length kick / 1 length crawl"});
    CHECK(fitted("    750 crawl broken at 250 for 15s\n", {yd25}) ==
          Lines{"*850 crawl broken at 300 for 15s"});
    CHECK(fitted("    50 crawl broken at 25 for 5s\n", {m50}) == Lines{"*50 crawl"});
    CHECK(fitted("    4 x 300 as 100 kick / 200 crawl, odds easy\n", {yd25}) ==
          Lines{"*4 x 350 as 125 kick / 225 crawl, odds easy"});
}

TEST_CASE("groups, rounds and sets change with what is inside", "[tailor]") {
    CHECK(fitted("    2 x (300 crawl + 50 back), last easy\n", {yd25}) ==
          Lines{"*2 x (350 crawl + 50 back), last easy"});
    auto const head =
        "race sprint on 2027-06-13\nset \"long\" = 2 x 300 crawl\nset \"short\" = 50 back\npool 25m\n";
    CHECK(fitted("    use \"long\"\n    use \"short\"\n    2 x use \"long\"\n", {yd25}, head) ==
          Lines{"*use \"long\"", "use \"short\"", "*2 x use \"long\""});
}

TEST_CASE("a share is rounded the same way", "[tailor]") {
    CHECK(fitted("    750 crawl\n    4 x 200 back\n    4 x 25 crawl\n    4min swim\n", {{}, 80}) ==
          Lines{"*600 crawl", "*4 x 150 back", "4 x 25 crawl", "4min swim"});
    CHECK(fitted("    200 as 50 kick / 150 crawl\n", {{}, 50}) == Lines{"*100 as 25 kick / 75 crawl"});
    CHECK(fitted("    400 crawl\n", {yd25, 80}) == Lines{"*350 crawl"});
    CHECK(fitted("    100 crawl\n", {{}, 75}, "") == Lines{"*75 crawl"});
}

TEST_CASE("nothing asked, and the pool it is in, leave a session as it is", "[tailor]") {
    for (tailor::Wanted const& wanted : {tailor::Wanted{}, tailor::Wanted{m25}}) {
        CHECK(fitted("    110 crawl\n    4 x 25 crawl\n", wanted) == Lines{"110 crawl", "4 x 25 crawl"});
    }
}

TEST_CASE("the session stands alone, in its week, in the new pool", "[tailor]") {
    auto const read = read_plan(R"(plan "Two weeks"
set "long" = 300 crawl
pool 25m
threshold 2:00 per 100m
week 1 from 2027-04-19
  session Tue "One"
    main
      use "long"
week 2 "Second"
  session Tue "Two"
    pool 33 1/3m
    threshold 2:05
    main
      use "long"
  session Thu "Three"
    main
      50 crawl
)");
    REQUIRE(read.error() == "");
    auto const result = tailor::fit(read.plan(), 1, {yd25});
    CHECK(written(result) == R"(plan "Two weeks"
pool 25m
threshold 2:00 per 100m
set "long" = 325 crawl

week 2 from 2027-04-26 "Second"
  session Tue "Two"
    pool 25yd
    threshold 2:05 per 100m in 33 1/3 m
    main
      use "long"
)");
    REQUIRE(result.session().date == read.plan().sessions[1].date);
}

TEST_CASE("a fitted session reads back as the same plan", "[tailor]") {
    auto const read = read_plan(R"(race "Mill Pond" sprint on 2027-06-13
set "in" = (100 crawl + 50 back as 20 kick / 30)
set "out" = (2 x use "in" rest 20s + 33m fly)
pool 25m
threshold 2:00
session Tue 07:00 "All"
  threshold 2:10
  warm-up easy rest 10s
    7 lengths choice
    use "out" hard
    3 x (2 x 50 + 300), first with fins
    100, 150, 200 back, last with fins
  main crawl
    750 as 100 kick / 200 / 450
    lane 1: 6 x 300 as 100 easy / 200 hard on 7:00, odds with fins
    1000 broken at 150 for 10s
    300 threshold plus 5s
    4 x 100 at 1:55 per 100
    if time: 2 x 12 1/2 sprint
)");
    REQUIRE(read.error() == "");
    for (tailor::Wanted const& wanted : {tailor::Wanted{yd25}, tailor::Wanted{m50}, tailor::Wanted{m33},
                                         tailor::Wanted{{}, 80}, tailor::Wanted{yd25, 50}}) {
        auto const result = tailor::fit(read.plan(), 0, wanted);
        INFO(written(result));
        auto const again = read_plan(written(result));
        REQUIRE(again.error() == "");
        CHECK(plan::same_meaning(again.plan(), result.plan));
        CHECK(result.changed.size() >= 3);
    }
}
