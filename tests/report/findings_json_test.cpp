#include "report/findings_json.hpp"
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
    CHECK(report::findings_json(some(), {&source}, {.file = "", .sessions = 3}) ==
          R"({"schema":"lengthwise.check/1","findings":[)"
          R"({"rule":"syntax-word","severity":"error","file":"a.swim","line":2,"column":12,"offset":17,)"
          R"("message":"no word \"crwal\"","hint":null},)"
          R"({"rule":"lanes","severity":"warning","file":"a.swim","line":1,"column":1,"offset":0,)"
          R"("message":"lane 2 has no line","hint":"give it one","related":[)"
          R"({"file":"a.swim","line":2,"column":3,"offset":7,"message":"the \u001b other"}]}],)"
          R"("summary":{"errors":1,"warnings":1,"notes":0,"sessions":3}})"
          "\n");
    CHECK(report::findings_json({}, {&source}, {.file = "a.swim", .sessions = {}}) ==
          R"({"schema":"lengthwise.check/1","file":"a.swim","findings":[],)"
          R"("summary":{"errors":0,"warnings":0,"notes":0,"sessions":null}})"
          "\n");
}

TEST_CASE("findings for programs meet their schema, as Python's jsonschema reads it") {
    auto const accepts = [](std::string const& document) {
        support::TempFolder const folder;
        auto const command = "python3 -m jsonschema -i '" + folder.file("document.json", document) +
                             "' " LENGTHWISE_ROOT "/docs/check.schema.json >/dev/null 2>&1";
        return std::system(command.c_str()) == 0;
    };
    auto const good = report::findings_json(some(), {&source}, {.file = "a.swim", .sessions = 3});
    CHECK(accepts(good));
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
}
