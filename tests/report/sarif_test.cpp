#include "report/sarif.hpp"
#include "support/read_plan.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <string>

using namespace lengthwise;

namespace {

std::string const swum = "race 750m on 2027-06-13\n"
                         "pool 25m\n"
                         "allow session-floor \"a first try\"\n"
                         "include \"a set.swim\"\n"
                         "session\n"
                         "  allow shape\n"
                         "  main\n"
                         "    300 crawl \"放松\"\n"
                         "    use \"A\"\n";

std::string log_of(std::string text, std::string const& set = "set \"A\" = 4 x 110 crawl\n") {
    std::string log;
    report::Sarif sarif{[&log](std::string_view piece) { log += piece; },
                        "1.2.3",
                        {{"syntax-word", "a word that the notation does not have"}}};
    auto const read = support::read_plan(std::move(text), {{"/a set.swim", set}});
    report::Sources sources;
    for (auto const& file : read.bundle->files) {
        sources.push_back(&file.source);
    }
    auto errors = read.bundle->findings;
    errors.append(read.resolved.findings);
    if (errors.has_errors()) {
        sarif.file(errors, sources, {});
    } else {
        sarif.file(check::check(read.plan()), sources, check::waived(read.plan()));
    }
    sarif.finish(true);
    return log;
}

bool accepted(std::string const& log) {
    support::TempFolder const folder;
    auto const command = "python3 -m jsonschema -i '" + folder.file("log.json", log) +
                         "' " LENGTHWISE_ROOT "/tests/report/sarif.schema.json >/dev/null 2>&1";
    return std::system(command.c_str()) == 0;
}

bool holds(std::string const& log, std::string const& part) {
    return log.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("a log of findings: rules, results, places, what is waived") {
    auto const log = log_of(swum);
    CHECK(accepted(log));
    CHECK(holds(log, R"("driver":{"name":"lengthwise","version":"1.2.3","rules":[{"id":"race-rep",)"
                     R"("shortDescription":{"text":"the race distance once, in one piece"})"));
    CHECK(holds(log,
                R"({"id":"syntax-word","shortDescription":{"text":"a word that the notation does not have"},)"
                R"("defaultConfiguration":{"level":"error"}})"));
    CHECK(holds(
        log,
        R"({"ruleId":"race-rep","level":"error","message":{"text":"longest rep is 300 m, the race is 750 m)"));
    CHECK(holds(
        log, R"("startLine":1,"startColumn":1,"endLine":1,"endColumn":24,"byteOffset":0,"byteLength":23)"));
    // A file beside the plan, and the line that uses it.
    CHECK(holds(
        log,
        R"("locations":[{"physicalLocation":{"artifactLocation":{"uri":"a%20set.swim"},)"
        R"("region":{"startLine":1,"startColumn":11,"endLine":1,"endColumn":24,"byteOffset":10,"byteLength":13}}}],)"
        R"("relatedLocations":[{"physicalLocation":{"artifactLocation":{"uri":"plan.swim"},)"
        R"("region":{"startLine":9,"startColumn":5,)"));
    // What is allowed is there, and says so.
    CHECK(holds(log,
                R"("suppressions":[{"kind":"inSource","justification":"a first try","location":)"
                R"({"physicalLocation":{"artifactLocation":{"uri":"plan.swim"},"region":{"startLine":3,)"));
    CHECK(holds(
        log,
        R"({"ruleId":"shape","level":"warning","message":{"text":"this session has no warm-up or cool-down)"));
    CHECK(holds(log, R"("suppressions":[{"kind":"inSource","location":)")); // without a reason
    CHECK(log == log_of(swum));
}

TEST_CASE("a log counts columns in code points and offsets in bytes") {
    auto const log = log_of("session\n  main\n    100 choice \"放松\" crwal\n");
    CHECK(accepted(log));
    CHECK(holds(log, R"("ruleId":"syntax-word")"));
    CHECK(holds(
        log, R"("startLine":3,"startColumn":21,"endLine":3,"endColumn":26,"byteOffset":39,"byteLength":5)"));
}

TEST_CASE("a byte order mark is in no column, but among the bytes") {
    auto const log = log_of("\xEF\xBB\xBFplan \"x\" crwal\n");
    CHECK(holds(
        log, R"("startLine":1,"startColumn":10,"endLine":1,"endColumn":15,"byteOffset":12,"byteLength":5)"));
}

TEST_CASE("a log says what it does not list, and tells lines that are alike apart") {
    std::string text = "pool 25m\nallow shape\nsession\nmain\n";
    for (int i = 0; i < 60; ++i) {
        text += "110 crawl\n";
    }
    auto const log = log_of(text);
    CHECK(accepted(log));
    CHECK(holds(log, R"("toolExecutionNotifications":[{"level":"note","message":{"text":)"
                     R"("plan.swim: 10 more warnings not listed"}}])"));
    CHECK(holds(log, ":1\"}"));
    CHECK(holds(log, ":50\"}"));
}

TEST_CASE("a fingerprint stays when lines come and go above") {
    auto const print = [](std::string const& text) {
        auto const log = log_of(text);
        auto const at = log.find("ruleAndLine/v1", log.find(R"("ruleId":"whole-lengths")"));
        return log.substr(at, 40);
    };
    std::string const tail = "session\nmain\n110 crawl\n";
    CHECK(print("pool 25m\n" + tail) == print("# a line more\npool 25m\n\n" + tail));
    CHECK(print("pool 25m\n" + tail) == print("pool 25m\nsession\nmain\n    110 crawl\n"));
    CHECK(print("pool 25m\n" + tail) != print("pool 25m\nsession\nmain\n111 crawl\n"));
}

TEST_CASE("the schema that logs are held against finds what is missing") {
    auto const log = log_of("pool 25m\nsession\nmain\n110 crawl\n");
    REQUIRE(accepted(log));
    auto const without = [&log](std::string const& part) {
        auto text = log;
        auto const at = text.find(part);
        REQUIRE(at != std::string::npos);
        return text.erase(at, part.size());
    };
    CHECK_FALSE(accepted(without(R"("version":"2.1.0",)")));
    CHECK_FALSE(accepted(without(R"("columnKind":"unicodeCodePoints",)")));
    CHECK_FALSE(accepted(without(R"("startLine":4,"startColumn":1,)")));
    CHECK_FALSE(accepted(without(R"("executionSuccessful":true)")));
}
