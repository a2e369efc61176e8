#include "check/register.hpp"
#include "report/findings_json.hpp"
#include "support/read_plan.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <fstream>

using namespace lengthwise;

namespace {

Source const source{"a.swim", "main\n  100 \"放\" crwal\n"};

Diagnostics some() {
    Diagnostics findings;
    findings.add({Severity::error, "syntax-word", {17, 22}, "no word \"crwal\"", "", {}});
    findings.add({Severity::warning,
                  "lanes",
                  {0, 4},
                  "lane 2 has no line",
                  "give it one",
                  {{{7, 10}, "the \x1b other"}}});
    return findings;
}

} // namespace

TEST_CASE("findings for programs") {
    CHECK(report::findings_json(some(), {&source}, {}) ==
          R"({"schema":"lengthwise.check/1","findings":[)"
          R"({"rule":"syntax-word","severity":"error","file":"a.swim","line":2,"column":12,"offset":17,)"
          R"("message":"no word \"crwal\"","hint":null},)"
          R"({"rule":"lanes","severity":"warning","file":"a.swim","line":1,"column":1,"offset":0,)"
          R"("message":"lane 2 has no line","hint":"give it one","related":[)"
          R"({"file":"a.swim","line":2,"column":3,"offset":7,"message":"the \u001b other"}]}],"waived":[],)"
          R"("summary":{"errors":1,"warnings":1,"notes":0,"sessions":null,"race":null,"waivers":0}})"
          "\n");
    CHECK(report::findings_json({}, {&source}, {.file = "a.swim"}) ==
          R"({"schema":"lengthwise.check/1","file":"a.swim","findings":[],"waived":[],)"
          R"("summary":{"errors":0,"warnings":0,"notes":0,"sessions":null,"race":null,"waivers":0}})"
          "\n");
}

namespace {

/// What `check --format json` writes of a plan.
std::string checked(std::string const& text) {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    return report::findings_json(check::check(read.plan()), {&read.bundle->root().source},
                                 {.file = "a.swim",
                                  .plan = &read.plan(),
                                  .outlook = check::outlook(read.plan()),
                                  .waivers = check::waivers(read.plan())});
}

std::string const race = "race 400m on 2027-05-16\npool 25m\nbefore longest 300m\n";
std::string const week = "week 1 from 2027-05-03\nallow shape \"one line\"\nsession Tue\nmain\n";

std::string part(std::string const& document, std::string const& from, std::string const& to) {
    auto const begin = document.find(from);
    return begin == std::string::npos ? "" : document.substr(begin, document.find(to, begin) - begin);
}

} // namespace

TEST_CASE("how a plan stands to its race, for programs") {
    CHECK(part(checked(race + week + "350\n"), "\"race\":", ",\"waivers\"") ==
          R"("race":{"metres":400,"asked_metres":400,"longest_rep_metres":350,"missing_metres":50,)"
          R"("who":null,"reached":null,"trend":{"metres_a_week":50,"week":2,"weeks_after_race":0}})");
    CHECK(part(checked(race + week + "400\n"), "\"race\":", ",\"waivers\"") ==
          R"("race":{"metres":400,"asked_metres":400,"longest_rep_metres":400,"missing_metres":0,)"
          R"("who":null,"reached":{"week":1,"session":null,"date":"2027-05-04"},"trend":null})");
    CHECK(
        part(checked(race + week + "400\n"), "\"waived\":", ",\"summary\"") ==
        R"("waived":[{"rule":"shape","reason":"one line","file":"plan.swim","line":5,"column":1,"offset":76}])");
}

TEST_CASE("findings for programs meet their schema, as Python's jsonschema reads it") {
    auto const accepts = [](std::string const& document) {
        support::TempFolder const folder;
        auto const command = "python3 -m jsonschema -i '" + folder.file("document.json", document) +
                             "' " LENGTHWISE_ROOT "/docs/check.schema.json >/dev/null 2>&1";
        return std::system(command.c_str()) == 0;
    };
    auto const good = report::findings_json(some(), {&source}, {.file = "a.swim"});
    CHECK(accepts(good));
    CHECK(accepts(checked(race + week + "350\n")));
    CHECK(accepts(checked(race + week + "400\n")));
    CHECK(accepts(checked(race + week + "200\n")));
    auto const without = [&good](std::string const& part) {
        auto text = good;
        auto const at = text.find(part);
        REQUIRE(at != std::string::npos);
        return text.erase(at, part.size());
    };
    CHECK_FALSE(accepts(without(R"("line":2,)")));
    CHECK_FALSE(accepts(without(R"(,"hint":null)")));
    CHECK_FALSE(accepts(without(R"(,"notes":0)")));
    CHECK_FALSE(accepts(without("/1")));
    CHECK_FALSE(accepts(without(R"(,"race":null)")));
    CHECK_FALSE(accepts(without(R"("waived":[],)")));
}
