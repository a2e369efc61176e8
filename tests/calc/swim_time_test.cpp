#include "calc/swim_time.hpp"
#include "calc/timeline.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

/// Times of single reps to the millisecond, and how far timed ones go (docs/time.md).
namespace lengthwise {
namespace {

using support::read_plan;
using support::session_with;

using Milliseconds = std::vector<std::int64_t>;

constexpr std::string_view usual = "pool 25m\nthreshold 1:40\n";

/// The first item of the first session, once, for the lane of nobody.
calc::RepTime rep(std::string_view line, std::string_view head = usual) {
    auto const read = read_plan(session_with(line, head));
    INFO(head << line);
    CHECK(read.error() == "");
    auto const& plan = read.plan();
    auto const& item = plan.items[plan.sections.front().body];
    return calc::Clock{plan}.rep(0, 0, item.terms, item.amount, item.is_timed());
}

Milliseconds time(std::string_view line, std::string_view head = usual) {
    auto const result = rep(line, head);
    CHECK(result.timed);
    return {result.swim.low.ms(), result.swim.expected.ms(), result.swim.high.ms()};
}

/// Metres of a timed rep.
std::int64_t goes(std::string_view line, std::string_view head = usual) {
    auto const result = rep(line, head);
    CHECK(result.measured);
    CHECK(Distance::divides(Distance::metres(1), result.estimated));
    return Distance::whole(result.estimated, Distance::metres(1));
}

} // namespace

TEST_CASE("worked reps, to the millisecond") {
    struct Worked {
        std::string_view line;
        Milliseconds ms;
        std::string_view head = usual;
    };
    std::vector<Worked> const lines{
        {"100", {104000, 107000, 110000}},
        {"100 easy", {110000, 115000, 120000}},
        {"100 at 90%", {111111, 111111, 111111}},
        {"100 rpe 4", {107000, 111000, 115000}},
        {"100 threshold plus 5s", {102900, 105000, 108150}},
        {"25 sprint", {19500, 21250, 23000}},
        {"200 sprint", {165000, 180000, 190000}},
        {"400 hard", {365000, 390000, 395000}},
        {"400 broken at 100 for 10s sprint", {342000, 370000, 398000}},
        {"400 sprint", {364000, 370000, 376000}, "pool 25m\nthreshold 1:40 reserve 30m\n"},
        {"100 back easy", {115500, 126500, 144000}},
        {"100 choice easy", {110000, 128225, 147600}},
        {"100 medley", {109720, 119840, 132000}},
        {"50 breast kick easy", {78650, 92575, 109200}},
        {"100 kick with fins, paddles", {96668, 120589, 156156}},
        {"100 pull", {102960, 112350, 122100}},
        {"100 pull with buoy, paddles", {95836, 103790, 109956}},
        {"100 with band", {109200, 117700, 129800}},
        {"50 fly drill easy", {70620, 89269, 112500}},
        {"100 with wetsuit, snorkel", {92560, 100580, 106700}},
        {"100 choice pull with buoy",
         {104915, 116844, 128357},
         "pool 25m\nthreshold 1:40\nfactor breast 110%\nfactor pull 104%\n"},
        {"200 as 25 kick / 25 crawl", {252720, 279272, 310200}},
        {"100 easy with stops", {110000, 115000, 135000}},
        {"100 easy", {99000, 115000, 132000}, "pool 25m\nthreshold about 1:40\n"},
        {"100 threshold", {96000, 97959, 100898}, "pool 25m\nthreshold 1:40 per 100m in 50m\n"},
        {"100 threshold plus 5s", {94162, 96083, 98966}, "pool 25yd\nthreshold 1:40 per 100m in 25m\n"},
        {"67 steady", {70056, 72076, 74097}, "pool 33 1/3 m\nthreshold 1:40 in 25m\n"},
        {"1000 steady with wetsuit",
         {964167, 1047708, 1111458},
         "pool open water\nthreshold 1:40 per 100m in 25m\n"},
        {"100 back at 1:50 per 100", {110000, 110000, 110000}},
    };
    for (auto const& worked : lines) {
        INFO(worked.line);
        CHECK(time(worked.line, worked.head) == worked.ms);
    }
}

TEST_CASE("worked timed reps") {
    CHECK(goes("10min") == 550);
    CHECK(goes("2min sprint") == 125);
    CHECK(goes("3min as 1min kick / 2min easy") == 125);
    CHECK(goes("5min kick with fins") == 225);
}

TEST_CASE("a distance faster than threshold is bound by the reserve") {
    // Percent of threshold time by distance: sprint and hard, with the reserve that is assumed.
    auto const percent = [](std::string const& effort, int distance) {
        auto all = time(std::to_string(distance) + " " + effort);
        std::vector<double> shares;
        for (auto const ms : all) {
            shares.push_back(static_cast<double>(ms) / (10 * distance));
        }
        return shares;
    };
    using Shares = std::vector<double>;
    CHECK(percent("sprint", 100) == Shares{78, 85, 92});
    CHECK(percent("sprint", 200) == Shares{82.5, 90, 95});
    CHECK(percent("sprint", 400) == Shares{91.25, 95, 97.5});
    CHECK(percent("sprint", 800) == Shares{95.625, 97.5, 98.75});
    CHECK(percent("hard", 200) == Shares{91, 95, 98});
    CHECK(percent("hard", 400) == Shares{91.25, 97.5, 98.75});
    CHECK(percent("hard", 800) == Shares{95.625, 98.75, 99.375});
    CHECK(percent("rpe 8", 800) == percent("hard", 800));
    CHECK(percent("rpe 10", 800) == percent("sprint", 800));
}

TEST_CASE("a small reserve has no high end below 0") {
    auto const head = "pool 25m\nthreshold 1:40 reserve 4m\n";
    CHECK(time("400 sprint", head) == Milliseconds{390000, 396000, 400000}); // 10, 4 and 0 m
    CHECK(time("400 hard", head) == Milliseconds{390000, 398000, 400000});   // 10, 2 and 0 m
}

TEST_CASE("stroke, mode and gear multiply what the reserve allows") {
    CHECK(time("400 back sprint") == Milliseconds{383250, 418000, 468000});
}

TEST_CASE("threshold plus and minus are seconds for a hundred of the pool's unit") {
    CHECK(time("200 threshold plus 5s") == Milliseconds{205800, 210000, 216300});
    CHECK(time("200 threshold minus 5s") == Milliseconds{186200, 190000, 195700});
    CHECK(time("100 threshold plus 5s", "pool 25yd\nthreshold 1:40\n") ==
          Milliseconds{102900, 105000, 108150});
    // Without a pool it is a hundred metres. The bound goes by the threshold itself: 165, 180, 190.
    CHECK(time("200m threshold minus 30s", "threshold 1:40\n") == Milliseconds{165000, 180000, 190000});
}

TEST_CASE("exact paces know neither factors nor course, about or reserve") {
    auto const head = "pool 50m\nthreshold about 1:40 per 100m in 25m\nfactor fly 200%\n";
    CHECK(time("200 fly kick with fins at 1:30 per 100", head) == Milliseconds{180000, 180000, 180000});
    CHECK(time("200 fly hold 2:51.5", head) == Milliseconds{171500, 171500, 171500});
    CHECK(time("100 at 1:00 per 75", head) == Milliseconds{80000, 80000, 80000});
    CHECK(time("100 at 1:00 per 75", "pool 25m\n") == Milliseconds{80000, 80000, 80000});
}

TEST_CASE("a time held is the whole rep's, however many parts it has") {
    CHECK(time("150 hold 2:00.001 as 25 / 25 kick / 100 back") == Milliseconds{120001, 120001, 120001});
    CHECK(time("200 hold 3:00 broken at 50 for 10s") == Milliseconds{210000, 210000, 210000});
}

TEST_CASE("stops add to exact paces too, part by part, and nothing to timed reps") {
    CHECK(time("200 at 2:00 per 100 with stops") == Milliseconds{240000, 240000, 270000});
    CHECK(time("50 hold 1:00 with stops") == Milliseconds{60000, 60000, 67500});
    CHECK(time("100 with stops", "pool 25yd\nthreshold 1:40\n") == Milliseconds{104000, 107000, 125000});
    CHECK(time("10min with stops") == Milliseconds{600000, 600000, 600000});
    CHECK(goes("10min with stops") == 550);
}

TEST_CASE("each part of a split is rounded once") {
    // 25 m at 93 % take 26 881.72 ms; eight of them, not 8 x 26 881.72.
    CHECK(time("200 as 25 at 93% / 25 at 93%") == Milliseconds{8 * 26882, 8 * 26882, 8 * 26882});
    CHECK(time("200 at 93%") == Milliseconds{215054, 215054, 215054});
}

TEST_CASE("breaks are part of the swim of a broken rep") {
    auto const broken = rep("750 broken at 250 for 15s");
    CHECK(broken.breaks == Duration::seconds(30));
    CHECK(time("750 broken at 250 for 15s") == Milliseconds{780000 + 30000, 802500 + 30000, 825000 + 30000});
    CHECK(rep("700 broken at 250 for 15s").breaks == Duration::seconds(30)); // the last piece is shorter
    CHECK(time("10min broken at 4min for 20s") == Milliseconds{640000, 640000, 640000});
    CHECK(goes("10min broken at 4min for 20s") == 550);
}

TEST_CASE("pieces of a broken rep have the reserve anew") {
    CHECK(time("800 sprint broken at 400 for 0s") == Milliseconds{730000, 760000, 780000});
    CHECK(goes("8min sprint") == 500);                        // 480 + 20 m
    CHECK(goes("8min sprint broken at 4min for 10s") == 500); // 2 x (240 + 20) m: 520
    CHECK(goes("8min sprint broken at 1min for 10s") == 550); // 8 x 60 / 0.85: 564.7
}

TEST_CASE("a pace of one pool is corrected in another, if both are named") {
    auto const at = [](std::string const& pool, std::string const& threshold) {
        return time("100m threshold", pool + "threshold 1:40" + threshold + "\n")[1];
    };
    CHECK(at("pool 25m\n", "") == 100000);
    CHECK(at("pool 25m\n", " in 25m") == 100000);
    CHECK(at("pool 50m\n", " in 25m") == 102083);           // 0.98 / 0.96
    CHECK(at("pool open water\n", " in 25m") == 104167);    // 1 / 0.96
    CHECK(at("pool 25m\n", " in open water") == 96000);     // 0.96
    CHECK(at("pool 33 1/3 m\n", " in 25m") == 101042);      // 0.97 / 0.96
    CHECK(at("pool 25m\n", " per 100m in 25yd") == 100392); // 24 / 25 : 21.86 / 22.86
    CHECK(at("pool 5m\n", " in 25m") == 93750);             // as 10 m: 0.9 / 0.96
    CHECK(at("", " in 25m") == 100000);                     // nobody knows where
}

TEST_CASE("a pace keeps the pool in which it was written") {
    auto const in_50m = [](std::string const& head) {
        auto const read = read_plan(head + "session\npool 50m\nmain\n100m threshold\n");
        CHECK(read.error() == "");
        auto const& plan = read.plan();
        auto const& item = plan.items[plan.sections.front().body];
        return calc::Clock{plan}.rep(0, 0, item.terms, item.amount, false).swim.expected.ms();
    };
    CHECK(in_50m("pool 25m\nthreshold 1:40\n") == 102083);
    CHECK(in_50m("threshold 1:40\n") == 100000); // written where no pool was
}

TEST_CASE("about widens every band by a tenth, stops aside") {
    auto const head = "pool 25m\nthreshold about 1:40\n";
    CHECK(time("100 threshold with stops", head) == Milliseconds{88200, 100000, 113300 + 15000});
    CHECK(goes("10min", head) == 550);
}

TEST_CASE("without a pace only exact times are known") {
    auto const head = "pool 25m\n";
    CHECK_FALSE(rep("100", head).timed);
    CHECK_FALSE(rep("100 at 95%", head).timed);
    CHECK_FALSE(rep("100 as 50 at 1:40 per 100 / 50 easy", head).timed);
    CHECK(time("100 as 50 at 1:40 per 100 / 50 at 2:00 per 100", head) ==
          Milliseconds{110000, 110000, 110000});
    CHECK(time("10min easy", head) == Milliseconds{600000, 600000, 600000});
    CHECK_FALSE(rep("10min easy", head).measured);
    CHECK_FALSE(rep("10min as 5min easy / 5min tread", head).measured);
    CHECK(goes("10min tread", head) == 0);
    CHECK(goes("10min at 2:00 per 100", head) == 500);
    CHECK(goes("10min as 5min at 2:00 per 100 / 5min tread", head) == 250);
}

TEST_CASE("timed reps go whole lengths, whole metres without a pool length") {
    CHECK(goes("10min", "pool 50m\nthreshold 1:40\n") == 550);
    CHECK(goes("10min", "pool open water\nthreshold 1:40\n") == 560);
    CHECK(goes("10min", "threshold 1:40\n") == 560);
    CHECK(rep("10min", "pool 25yd\nthreshold 1:40\n").estimated == Distance::yards(550));
    CHECK(goes("3min as 1min / 2min") == 150); // 56.1 + 112.1 m, rounded down together
}

TEST_CASE("times without measure stick at an end and do not wrap") {
    auto const head = "pool 1000m\nthreshold 24h per 1m\nfactor sprint 1000%\nfactor drill 1000%\n"
                      "factor fins 1000%\nfactor board 1000%\nfactor snorkel 1000%\nfactor fly 1000%\n";
    auto const slow = rep("100000m fly drill sprint with fins, board, snorkel", head);
    CHECK(slow.swim.high == calc::longest_time);
    auto const fast = rep("24h", "pool 25m\nthreshold 0:00.001 per 7000000m\n");
    CHECK(fast.estimated == calc::farthest);
}

} // namespace lengthwise
