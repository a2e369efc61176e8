#include "report/pace_json.hpp"

#include "support/outside.hpp"
#include "support/swims.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <string>
#include <vector>

/// JSON held against docs/pace.schema.json by Python's jsonschema, and read back by jq: programs
/// that share no code with this one.
namespace lengthwise::report {
namespace {

std::string json(std::vector<support::Timed> const& swims, Pool const& course = {},
                 std::vector<Distance> const& asked = {}) {
    auto trials = support::trials(swims, course);
    trials.asked = asked;
    return pace_json(trials, calc::judge(trials));
}

using support::jq;

/// True when the schema accepts all documents.
bool accepted(std::vector<std::string> const& documents) {
    support::TempFolder const folder;
    std::string command = "python3 -W ignore -m jsonschema";
    for (std::size_t i = 0; i < documents.size(); ++i) {
        command += " -i '" + folder.file(std::to_string(i) + ".json", documents[i]) + "'";
    }
    auto const log = folder.path("log");
    command += " " LENGTHWISE_ROOT "/docs/pace.schema.json > '" + log + "' 2>&1";
    bool const good = std::system(command.c_str()) == 0;
    REQUIRE(support::bytes_of(log).find("No module named") == std::string::npos); // python3-jsonschema
    return good;
}

std::vector<support::Timed> const three{{200, 152}, {400, 322}, {800, 668}};

TEST_CASE("the schema accepts what pace writes") {
    CHECK(accepted({
        json({{200, 212}, {400, 442}}),
        json(three, support::metres_25, {Distance::metres(100), Distance::metres(1500)}),
        json({{200, 212}, {200, 220}, {400, 442, support::metres_50}, {1500, 1750}}),
        json({{182.88, 160}, {457.2, 430}}, support::yards_25),
        json({{1000, 2100}}, Pool::open_water(), {Distance::metres(1500)}),
        json({{50, 40}}),
        json({{400, 210}, {200, 212}}),
        json({{400, 400}, {200, 212}}),
        json({{100, 10}, {200, 25}, {300, 26}}),
        json({{1'000'000, 1}, {2'000'000, 3}}),
    }));
}

TEST_CASE("the schema refuses what pace does not write") {
    auto const good = json(three, support::metres_25, {Distance::metres(1500)});
    REQUIRE(accepted({good}));
    for (auto const* change :
         {".schema = \"lengthwise.pace/2\"", "del(.swims)", ".swims = []", ".swims[0].used = 1",
          "del(.swims[0].residual_metres)", ".threshold.unit = \"km\"", "del(.threshold.bound)",
          ".threshold.course_metres = -1", ".standard_error = {}", ".predictions[0].seconds = 1",
          "del(.predictions[0].seconds.low)", ".findings = [{}]", ".line = \"pool 25m\"", "del(.caution)",
          ".metres_per_second = 0"}) {
        INFO(change);
        CHECK_FALSE(accepted({jq(good, change)}));
    }
}

TEST_CASE("jq reads the figures back, to six decimals half up") {
    auto const text = json(three, {}, {Distance::metres(750)});
    CHECK(jq(text, "[.swims[].residual_metres]") == "[-1.000791,1.492509,-0.491718]\n");
    CHECK(jq(text, "[.metres_per_second, .reserve_metres]") == "[1.161804,24.406564]\n");
    CHECK(jq(text, ".threshold") ==
          "{\"seconds_per_100\":86.073029,\"unit\":\"m\",\"course_metres\":null,\"bound\":false}\n");
    CHECK(jq(text, ".standard_error.metres_per_second") == "0.00501\n");
    CHECK(jq(text, "[.predictions[] | .metres, .seconds.expected]") == "[750,624.540249]\n");
    CHECK(jq(text, ".line") == "\"threshold 1:26 per 100m reserve 24m\"\n");
}

TEST_CASE("swims stand as they were given") {
    auto const text = json({{400, 500, support::metres_50}, {200, 238.125, support::metres_25}, {400, 520}},
                           support::metres_25);
    CHECK(jq(text, "[.swims[].seconds]") == "[500,238.125,520]\n");
    CHECK(jq(text, "[.swims[].course_metres]") == "[50,25,25]\n");
    CHECK(jq(text, "[.swims[].used]") == "[true,true,false]\n");
    CHECK(jq(text, "[.swims[].residual_metres]") == "[0,0,null]\n");
}

TEST_CASE("a bound has a pace and no more") {
    auto const text = json({{1000, 1350}}, Pool::open_water());
    CHECK(jq(text, ".threshold") ==
          "{\"seconds_per_100\":135,\"unit\":\"m\",\"course_metres\":0,\"bound\":true}\n");
    CHECK(jq(text, "[.metres_per_second, .reserve_metres, .standard_error]") == "[null,null,null]\n");
    CHECK(jq(text, ".line") == "\"threshold about 2:15 per 100m in open water\"\n");
}

TEST_CASE("no figure is null, with an error that says why") {
    auto const text = json({{400, 210}, {200, 212}});
    CHECK(jq(text, "[.threshold, .line, .metres_per_second]") == "[null,null,null]\n");
    CHECK(jq(text, "[.findings[] | select(.severity == \"error\") | .kind]") == "[\"not-slower\"]\n");
}

} // namespace
} // namespace lengthwise::report
