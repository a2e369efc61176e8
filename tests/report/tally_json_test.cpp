#include "report/tally_json.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"
#include "tally_samples.hpp"

#include <catch2/catch.hpp>

/// The JSON of `tally`, letter by letter.
namespace lengthwise::report {
namespace {

std::string json(std::string text, Wish const& wish = {}, std::optional<calc::By> by = {}) {
    auto const read = support::read_plan(std::move(text));
    REQUIRE(read.error() == "");
    auto const picked = pick_scope(read.plan(), wish);
    REQUIRE(picked.problem == "");
    return tally_json(read.plan(), {picked.scope, wish.lane, by, 60, false, ""});
}

bool holds(std::string const& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

constexpr std::string_view nothing = R"("metres":0,"lengths":null,"longest_rep_metres":0,"reps":0,)"
                                     R"("seconds":{"low":0,"expected":0,"high":0},"estimated_metres":0)";

} // namespace

TEST_CASE("one session before any week, all of it") {
    CHECK(
        json("plan \"P\"\npool 33 1/3 m\nsession \"S\"\nmain \"M\"\n2 x 67\nif time: 100\n") ==
        R"({"schema":"lengthwise.tally/1","plan":{"name":"P",)"
        R"("metres":133.3333,"lengths":4,"longest_rep_metres":66.6667,"reps":2,"seconds":null,"estimated_metres":0,)"
        R"("if_time":{"metres":100,"lengths":3,"longest_rep_metres":100,"reps":1,"seconds":null,"estimated_metres":0},)"
        R"("weeks":[{"number":null,"from":null,)"
        R"("metres":133.3333,"lengths":4,"longest_rep_metres":66.6667,"reps":2,"seconds":null,"estimated_metres":0,)"
        R"("if_time":{"metres":100,"lengths":3,"longest_rep_metres":100,"reps":1,"seconds":null,"estimated_metres":0},)"
        R"("sessions":[{"name":"S","date":null,)"
        R"("metres":133.3333,"lengths":4,"longest_rep_metres":66.6667,"reps":2,"seconds":null,"estimated_metres":0,)"
        R"("if_time":{"metres":100,"lengths":3,"longest_rep_metres":100,"reps":1,"seconds":null,"estimated_metres":0},)"
        R"("sections":[{"kind":"main","name":"M",)"
        R"("metres":133.3333,"lengths":4,"longest_rep_metres":66.6667,"reps":2,"seconds":null,"estimated_metres":0,)"
        R"("if_time":{"metres":100,"lengths":3,"longest_rep_metres":100,"reps":1,"seconds":null,"estimated_metres":0}}]}]}]}})"
        "\n");
}

TEST_CASE("a file with neither weeks nor sessions has one week without a number") {
    CHECK(json("set \"A\" = 4 x 50\n") == R"({"schema":"lengthwise.tally/1","plan":{"name":null,)" +
                                              std::string{nothing} +
                                              R"(,"weeks":[{"number":null,"from":null,)" +
                                              std::string{nothing} + R"(,"sessions":[]}]}})" + "\n");
}

TEST_CASE("weeks have their number and both their dates worked out") {
    auto const text = json(std::string{test::otter_cove});
    CHECK(holds(text, R"({"number":1,"from":"2027-06-28",)"));
    CHECK(holds(text, R"({"number":2,"from":"2027-07-05",)"));
    CHECK(holds(text, R"({"name":"By lane","date":"2027-07-05",)"));
    CHECK_FALSE(holds(text, R"("number":null)"));
}

TEST_CASE("a scope without reps takes no time and adds no metres") {
    auto const text = json("pool 25m\nsession\nwarm-up\nmain\n100\n");
    CHECK(holds(text,
                R"("kind":"warm-up","name":null,"metres":0,"lengths":0,"longest_rep_metres":0,"reps":0,)"
                R"("seconds":{"low":0,"expected":0,"high":0},"estimated_metres":0})"));
}

TEST_CASE("what timed reps add is unknown without a pace, and nothing when they only tread") {
    CHECK(holds(json(support::session_with("10min\n")),
                R"("reps":1,"seconds":{"low":600,"expected":600,"high":600},"estimated_metres":null)"));
    CHECK(holds(json(support::session_with("2min tread\n")),
                R"("reps":1,"seconds":{"low":120,"expected":120,"high":120},"estimated_metres":0)"));
}

TEST_CASE("times are seconds, low, expected and high, in every scope, lane and word") {
    auto const text = json("pool 25m\nthreshold 1:40\nswimmer \"Ash\" threshold 1:50 lane "
                           "2\nsession\nwarm-up\n200 easy rest 20s\n"
                           "main\nlane 1: 100\nlane 2: 100\n5min\nif time: 100 sprint\n",
                           {}, calc::By::effort);
    // 200 easy are 1:50, 1:55, 2:00 a 100; the rest of 20 s is the warm-up's.
    CHECK(holds(text,
                R"("kind":"warm-up","name":null,"metres":200,"lengths":8,"longest_rep_metres":200,"reps":1,)"
                R"("seconds":{"low":240,"expected":250,"high":260},"estimated_metres":0)"));
    CHECK(holds(text, R"({"lane":1,"metres":300,"lengths":12,"longest_rep_metres":200,"reps":3,)"
                      R"("seconds":{"low":644,"expected":657,"high":670},"estimated_metres":275,)"
                      R"("if_time":{"metres":100,"lengths":4,"longest_rep_metres":100,"reps":1,)"
                      R"("seconds":{"low":78,"expected":85,"high":92},"estimated_metres":0}})"));
    CHECK(holds(text, R"({"lane":2,"metres":300,"lengths":12,"longest_rep_metres":200,"reps":3,)"
                      R"("seconds":{"low":676.4,"expected":690.7,"high":705},"estimated_metres":250,)"));
    // Of a word what is swum in it: without the rest.
    CHECK(holds(text, R"({"word":"easy","metres":200,"lengths":8,"longest_rep_metres":200,"reps":1,)"
                      R"("seconds":{"low":220,"expected":230,"high":240},"estimated_metres":0})"));
    CHECK(holds(text, R"({"word":"unsaid","metres":100,"lengths":4,"longest_rep_metres":100,"reps":2,)"
                      R"("seconds":{"low":404,"expected":407,"high":410},"estimated_metres":275})"));
}

TEST_CASE("lengths are null only where no session inside has a pool with a length") {
    auto const text =
        json("week 1\nsession \"Sea\"\npool open water\nmain\n1000\nsession \"Pool\"\npool 25m\nmain\n100\n"
             "week 2\n");
    CHECK(holds(text, R"({"name":"Sea","date":null,"metres":1000,"lengths":null)"));
    CHECK(holds(text, R"({"name":"Pool","date":null,"metres":100,"lengths":4)"));
    CHECK(holds(text, R"({"number":1,"from":null,"metres":1100,"lengths":4)"));
    CHECK(holds(text, R"({"number":2,"from":null,"metres":0,"lengths":null)"));
}

TEST_CASE("lanes stand where lane lines occur inside, every lane of the scope, ascending") {
    auto const text = json("pool 25m\nsession\nwarm-up\n200\nmain\nlane 3: 100\nif time: lane 1: 50\n");
    // The plain totals are lane 1's, the lowest.
    CHECK(holds(text, R"("plan":{"name":null,"metres":200,)"));
    CHECK(holds(text, R"("lanes":[{"lane":1,"metres":200,"lengths":8,"longest_rep_metres":200,"reps":1,)"
                      R"("seconds":null,"estimated_metres":0,"if_time":{"metres":50,"lengths":2,)"
                      R"("longest_rep_metres":50,"reps":1,"seconds":null,"estimated_metres":0}},)"
                      R"({"lane":3,"metres":300,"lengths":12,"longest_rep_metres":200,"reps":2,)"
                      R"("seconds":null,"estimated_metres":0}])"));
    CHECK(holds(text,
                R"("kind":"warm-up","name":null,"metres":200,"lengths":8,"longest_rep_metres":200,"reps":1,)"
                R"("seconds":null,"estimated_metres":0},)")); // no lane lines here
    CHECK(holds(text, R"("kind":"main","name":null,"metres":0,)"));
}

TEST_CASE("words asked for by --by stand in the plan") {
    CHECK(holds(json(support::session_with("100 kick\n4 x 50\n"), {}, calc::By::mode),
                R"("by":[{"word":"swim","metres":200,"lengths":8,"longest_rep_metres":50,"reps":4,)"
                R"("seconds":null,"estimated_metres":0},{"word":"kick","metres":100,"lengths":4,)"
                R"("longest_rep_metres":0,"reps":1,"seconds":null,"estimated_metres":0}],"weeks":[)"));
}

TEST_CASE("a choice lists and sums what was chosen") {
    auto const week = json(std::string{test::otter_cove}, {2, std::nullopt, std::nullopt});
    CHECK(holds(week, R"("plan":{"name":"Two weeks to Otter Cove","metres":700,)"));
    CHECK_FALSE(holds(week, R"("number":1)"));
    auto const session = json(std::string{test::otter_cove}, {std::nullopt, "Thirds", std::nullopt});
    CHECK(holds(session, R"("plan":{"name":"Two weeks to Otter Cove","metres":366.6667,)"));
    CHECK(holds(session, R"({"number":1,"from":"2027-06-28","metres":366.6667,)"));
    CHECK_FALSE(holds(session, "Long glide"));
    auto const lane = json(std::string{test::otter_cove}, {2, std::nullopt, 3});
    CHECK(holds(lane, R"("metres":500,)"));
    CHECK(holds(lane, R"("lanes":[{"lane":3,"metres":500,)"));
    CHECK_FALSE(holds(lane, R"("lane":1)"));
}

TEST_CASE("several files: each document has its file, a file with errors says how many") {
    auto const read = support::read_plan(support::session_with("100\n"));
    TallyOptions options;
    options.file = "a \"b\".swim";
    CHECK(tally_json(read.plan(), options)
              .rfind(R"({"schema":"lengthwise.tally/1","file":"a \"b\".swim","plan":{)", 0) == 0);
    CHECK(tally_json_errors("bad.swim", 3) ==
          "{\"schema\":\"lengthwise.tally/1\",\"file\":\"bad.swim\",\"errors\":3}\n");
}

TEST_CASE("metres are rounded half up to four decimals, whole ones have no point") {
    CHECK(holds(json(support::session_with("100yd\n", "pool 25yd\n")), R"("metres":91.44,)"));
    CHECK(holds(json(support::session_with("0 1/24 yd\n", "")), R"("metres":0.0381,)"));
    CHECK(holds(json(support::session_with("1000\n")), R"("metres":1000,)"));
}

} // namespace lengthwise::report
