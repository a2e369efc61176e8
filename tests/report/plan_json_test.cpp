#include "report/plan_json.hpp"

#include "calc/timeline.hpp"
#include "export_samples.hpp"
#include "report/deck_view.hpp"
#include "report/tally_json.hpp"
#include "support/generate.hpp"
#include "support/outside.hpp"
#include "support/plan_text.hpp"
#include "tailor/swimmer.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

/// JSON held against docs/plan.schema.json by Python's jsonschema, and read back by jq: programs that share
/// no code with this one.
namespace lengthwise::report {
namespace {

using support::jq;

std::string json(plan::Plan const& plan, ExportOptions const& options = {}) {
    std::string text;
    plan_json(plan, options, [&](std::string_view piece) { text += piece; });
    return text;
}

std::string json(std::string_view text) {
    auto const read = support::read_plan(std::string{text});
    REQUIRE(read.error() == "");
    return json(read.plan());
}

std::string verdicts(std::vector<std::string> const& documents) {
    return support::schema_verdicts("docs/plan.schema.json", documents);
}

std::vector<std::string> generated(std::uint64_t plans) {
    std::vector<std::string> documents;
    for (std::uint64_t seed = 1; seed <= plans; ++seed) {
        documents.push_back(json(test::generate({.seed = seed}).text));
    }
    return documents;
}

void all_accepted(std::vector<std::string> const& documents) {
    CHECK(verdicts(documents) == std::string(documents.size(), '+'));
}

constexpr auto lines = "[.plan.weeks[].sessions[].sections[].lines[]";

} // namespace

TEST_CASE("the schema accepts every plan that export writes", "[programs]") {
    auto documents = generated(100);
    for (auto const& text :
         {std::string{test::heron_ford}, std::string{}, std::string{"session \"x\"\nmain\n100\n"},
          std::string{"set \"a\" = 100\n"}, test::plan_called(test::nasty)}) {
        documents.push_back(json(text));
    }
    documents.push_back(plan_json_errors("bad.swim", 2));
    all_accepted(documents);
}

TEST_CASE("the schema accepts a thousand plans", "[programs][long]") {
    all_accepted(generated(1000));
}

TEST_CASE("the schema refuses what export does not write", "[programs]") {
    auto const good = json(test::heron_ford);
    auto const first = std::string{".plan.weeks[0].sessions[0].sections[0].lines[0]"};
    std::vector<std::string> documents{good};
    for (auto const& change :
         {std::string{".schema = \"lengthwise.tally/1\""}, std::string{"del(.plan.weeks)"},
          std::string{".plan.race.date = null"}, std::string{"del(.plan.weeks[0].sessions[0].pool)"},
          std::string{".plan.weeks[0].sessions[0].day = \"Tuesday\""},
          std::string{".plan.weeks[0].sessions[0].paces = []"}, std::string{".plan.swimmers[0].lane = 0"},
          "del(" + first + ".set)", "del(" + first + ".metres)", first + ".row = 0",
          first + ".kind = \"swum\"", first + ".times[0].start = 3", first + ".count = 0"}) {
        documents.push_back(jq(good, change));
    }
    CHECK(verdicts(documents) == "+" + std::string(documents.size() - 1, '-'));
}

TEST_CASE("jq reads sets, rows and lanes", "[programs]") {
    auto const text = json(test::heron_ford);
    CHECK(
        jq(text, lines + std::string{"|[.row, .first_lane, .kind, .set]][:9]"}) ==
        R"([[1,null,"swim","200 choice easy"],[2,null,"swim","4 x 50 as 25 drill \"zip\" / 25 crawl with fins"],)"
        R"([null,null,"note","\"watch the clock\""],[3,1,"swim","3 x 100 crawl on 2:15"],)"
        R"([4,2,"swim","2 x 100 crawl hard"],[null,null,"pause","pause 1min \"drink\""],)"
        R"([5,null,"swim","200, 100 crawl"],[null,null,"swim","2 x 25 sprint"],[6,null,"swim","3min easy"]])"
        "\n");
    CHECK(
        jq(text, "[.plan.weeks[].sessions[]|[.date, .time, .slot_seconds, .pool.length_metres]]") ==
        R"([["2027-06-08","19:15",2700,25],["2027-06-10",null,null,33.3333],["2027-06-15","19:15",null,25]])"
        "\n");
    CHECK(
        jq(text, ".plan.weeks[0].sessions[0]|[.notes, .kit, [.paces[]|[.lane, .threshold]]]") ==
        R"([["Gate code at the desk"],["fins"],[[1,"threshold 1:50 per 100m"],[2,"threshold 2:05 per 100m"]]])"
        "\n");
    CHECK(jq(text, ".plan|[.race, .before]") ==
          R"([{"name":"Heron Ford","kind":"sprint","metres":750,"date":"2027-06-20"},)"
          R"({"longest_rep_metres":300,"week_metres":900}])"
          "\n");
}

TEST_CASE("a line starts where the one before it let go", "[programs]") {
    // by hand: 4 x 100 at 2:00 with 20 s between, 20 s before the next line
    auto const text = json("pool 25m\nthreshold 2:00 per 100m\nrest 20s\nsession\nmain\n"
                           "4 x 100 at 2:00 per 100\nlane 2: 50 at 2:00 per 100\n100 at 2:00 per 100\n");
    CHECK(jq(text, lines + std::string{"|[.row, (.times[]|[.lane, .start.high, .end.high])]]"}) ==
          "[[1,[2,0,540]],[2,[2,560,620]],[3,[2,640,760]]]\n");
}

TEST_CASE("the figures are those of tally, the rows and times those of deck", "[programs]") {
    std::string documents;
    std::string tallies;
    std::string expected;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        auto const read = support::read_plan(test::generate({.seed = seed}).text);
        REQUIRE(read.error() == "");
        documents += json(read.plan());
        tallies += tally_json(read.plan(), {});
        for (plan::Index i = 0; i < read.plan().sessions.size(); ++i) {
            for (auto const& section : deck_view(read.plan(), {.session = i}).sections) {
                for (auto const& row : section.rows) {
                    for (std::size_t lane = 0; lane < row.start.size() && row.number > 0; ++lane) {
                        if (row.swum[lane]) {
                            auto const start = row.start[lane];
                            expected += "[" + std::to_string(row.number) + "," +
                                        (start ? spell::json_seconds(*start) : "null") + "]\n";
                        }
                    }
                }
            }
        }
    }
    REQUIRE(expected.size() > 1000);
    CHECK(jq(documents, ".plan.weeks[].sessions[].sections[].lines[]|select(.row)|.row as $row|.times[]|"
                        "[$row, .start.expected]") == expected);
    auto const totals =
        "[.plan, .plan.weeks[], .plan.weeks[].sessions[], .plan.weeks[].sessions[].sections[]"
        "|[.metres, .lengths, .reps, .longest_rep_metres, .seconds, .estimated_metres, .lanes]]";
    CHECK(jq(documents, totals) == jq(tallies, totals));
}

TEST_CASE("a section's lines add up to it, lane by lane", "[programs]") {
    std::string documents;
    std::string all;
    for (auto const& document : generated(60)) {
        documents += document;
        all += "true\n";
    }
    CHECK(jq(documents,
             "[.plan.weeks[].sessions[].sections[]"
             "|. as $section|($section.lanes // [$section + {lane: null}])[]|. as $lane"
             "|([$section.lines[]|select(.kind == \"swim\" and (.if_time|not)"
             " and (.first_lane == null or (.first_lane <= $lane.lane and .last_lane >= $lane.lane)))"
             "|.reps]|add // 0) == $lane.reps]|all") == all);
}

TEST_CASE("names come back as they were written", "[programs]") {
    auto const text = json(test::plan_called(test::nasty));
    CHECK(jq(text,
             "[.plan.name, .plan.race.name, .plan.swimmers[0].name, .plan.notes[0], .plan.weeks[0].name,"
             " .plan.weeks[0].sessions[0].name]|unique|length") == "1\n");
    auto const name =
        support::python("import sys, json\nprint(json.load(sys.stdin)['plan']['name'], end='')\n", text);
    CHECK(name == std::string{test::nasty});
    for (char const c : text.substr(0, text.size() - 1)) {
        CHECK(static_cast<unsigned char>(c) >= 0x20);
    }
    CHECK(text.find("\xE2\x80\xAE") == std::string::npos); // a terminal would turn round
}

TEST_CASE("one lane, one week, one swimmer", "[programs]") {
    auto const read = support::read_plan(std::string{test::heron_ford});
    auto const& plan = read.plan();
    auto const one = json(plan, {.lane = 2});
    CHECK(jq(one, lines + std::string{"|select(.first_lane == 1)]|length"}) == "0\n");
    auto const week = json(plan, {.scope = {Scope::Kind::week, 1}});
    CHECK(jq(week, "[.plan.weeks[]|.number]") == "[2]\n");
    auto const own = tailor::swum_by(plan, 1);
    auto const olu = json(own, {.lane = 2, .swimmer = &plan.swimmers[1]});
    CHECK(jq(olu, ".plan.swimmer") == "{\"name\":\"Olu\",\"lane\":2,\"share_percent\":80}\n");
    CHECK(
        jq(olu, lines + std::string{"|select(.row)|.set][:4]"}) ==
        R"(["150 choice easy","4 x 50 as 25 drill \"zip\" / 25 crawl with fins","2 x 100 crawl hard","150, 100 crawl"])"
        "\n");
    all_accepted({one, week, olu});
}

} // namespace lengthwise::report
