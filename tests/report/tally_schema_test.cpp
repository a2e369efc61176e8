#include "report/tally_json.hpp"
#include "support/generate.hpp"
#include "support/outside.hpp"
#include "support/read_plan.hpp"
#include "tally_samples.hpp"

#include <catch2/catch.hpp>

/// JSON held against docs/tally.schema.json by Python's jsonschema, and read back by jq:
/// programs that share no code with this one.
namespace lengthwise::report {
namespace {

using support::jq;

std::string json(std::string text, std::optional<calc::By> by = {}) {
    auto const read = support::read_plan(std::move(text));
    REQUIRE(read.error() == "");
    return tally_json(read.plan(), {{}, {}, by, 60, false, ""});
}

std::string verdicts(std::vector<std::string> const& documents) {
    return support::schema_verdicts("docs/tally.schema.json", documents);
}

} // namespace

TEST_CASE("the schema accepts what tally writes") {
    std::vector<std::string> documents{json(std::string{test::otter_cove}), json(""),
                                       json(std::string{test::otter_cove}, calc::By::gear),
                                       tally_json_errors("bad.swim", 2)};
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        test::Wanted wanted;
        wanted.seed = seed;
        documents.push_back(json(test::generate(wanted).text, calc::By::effort));
    }
    CHECK(verdicts(documents) == std::string(documents.size(), '+'));
}

TEST_CASE("the schema accepts swimmers, alone and side by side") {
    auto const read = support::read_plan("swimmer \"Ann\" lane 2 distance 80%\nswimmer \"Bo\"\npool 25m\n"
                                         "session\nmain\nlane 1: 200\nlane 2: 100\n");
    REQUIRE(read.error() == "");
    TallyOptions options;
    options.swimmer = &read.plan().swimmers.front();
    auto const alone = tally_json(read.plan(), options);
    CHECK(jq(alone, ".plan.swimmer") == "{\"name\":\"Ann\",\"lane\":2,\"share_percent\":80}\n");
    options.swimmer = nullptr;
    options.by_swimmer = true;
    auto const all = tally_json(read.plan(), options);
    CHECK(jq(all, "[.plan.by[] | [.swimmer.name, .swimmer.lane, .metres]]") ==
          "[[\"Ann\",2,100],[\"Bo\",null,200]]\n");
    CHECK(verdicts({alone, all, jq(all, "del(.plan.by[0].swimmer)"), jq(all, "del(.plan.by[0].metres)"),
                    jq(alone, ".plan.swimmer.lane = 0"), jq(alone, "del(.plan.swimmer.name)")}) == "++----");
}

TEST_CASE("the schema refuses what tally does not write") {
    auto const good = json("pool 25m\nsession\nmain\nlane 1: 100\n");
    std::vector<std::string> documents{good};
    for (auto const* change :
         {".schema = \"lengthwise.tally/2\"", "del(.plan.metres)", ".plan.lengths = 4.5", ".plan.weeks = []",
          ".plan.weeks[0].number = 0", ".plan.weeks[0].from = \"1 May\"",
          "del(.plan.weeks[0].sessions[0].date)", ".plan.weeks[0].sessions[0].name = 7",
          ".plan.weeks[0].sessions[0].sections[0].kind = \"swim\"", ".plan.lanes = []",
          ".plan.lanes[0].lane = 101", ".plan.seconds = {\"low\": 1}", "del(.plan.estimated_metres)",
          ".plan.longest_rep_metres = -1", "del(.plan)", ".errors = 1 | .file = \"a\" | del(.schema)"}) {
        documents.push_back(jq(good, change));
    }
    CHECK(verdicts(documents) == "+" + std::string(documents.size() - 1, '-'));
}

TEST_CASE("jq reads the totals back and adds them up") {
    auto const text = json(std::string{test::otter_cove});
    CHECK(jq(text, ".schema") == "\"lengthwise.tally/1\"\n");
    CHECK(jq(text, "[.plan.metres, .plan.lengths, .plan.longest_rep_metres, .plan.reps]") ==
          "[1866.6667,71,300,20]\n");
    CHECK(jq(text, "[.plan.weeks[].sessions[].name]") == "[\"Long glide\",\"Thirds\",\"By lane\"]\n");
    CHECK(jq(text, "[.plan.lanes[] | {(.lane | tostring): .metres}] | add") ==
          "{\"1\":1866.6667,\"2\":1666.6667,\"3\":1666.6667}\n");
    CHECK(jq(text, "[.plan.weeks[].sessions[] | .reps == ([.sections[].reps] | add)] | all") == "true\n");
    CHECK(jq(text, "[.plan.weeks[].sessions[] | .lengths == ([.sections[].lengths] | add)] | all") ==
          "true\n");
}

TEST_CASE("jq reads names of any script back") {
    auto const text = json("plan \"say \\\"fist\\\" \\\\ 放松 ⅓ \\\\u\"\npool 25m\nsession\nmain\n100\n");
    CHECK(jq(text, ".plan.name") == "\"say \\\"fist\\\" \\\\ 放松 ⅓ \\\\u\"\n");
}

} // namespace lengthwise::report
