#include "calc/totals.hpp"
#include "check/register.hpp"
#include "cli/files.hpp"
#include "grammar/bundle.hpp"
#include "grammar/write.hpp"
#include "plan/resolve.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <variant>
#include <vector>

// The samples are read, are swum as their authors meant them, and are clean.
namespace {

using namespace lengthwise;

std::string const folder = LENGTHWISE_ROOT "/sets";

std::string text_of(cli::Files& files, std::string const& path) {
    auto const read = files.read(path, 1U << 20U);
    REQUIRE(std::holds_alternative<grammar::Reader::Text>(read));
    return std::get<grammar::Reader::Text>(read).bytes;
}

struct Sample {
    explicit Sample(std::string const& path) : text(text_of(files, path)) {
        bundle = grammar::bundle(path, text, path, files);
        resolved = plan::resolve(bundle);
    }
    cli::Disk files;
    std::string text;
    grammar::Bundle bundle;
    plan::Resolved resolved;
};

std::vector<std::string> sample_paths() {
    cli::Disk files;
    auto const found = files.expand(folder);
    REQUIRE(std::holds_alternative<std::vector<std::string>>(found));
    return std::get<std::vector<std::string>>(found);
}

/// Counted on paper from the text, in the unit of the plan: whole hundreds and fifties.
struct Expected {
    std::string name;
    int lane; ///< 0: the plan has no lanes
    Distance unit;
    std::vector<std::int64_t> weeks;
    std::vector<std::int64_t> longest; ///< of each week; thirds of a metre cut off
    std::int64_t lengths;              ///< of the whole plan
};

std::vector<Expected> const expectations{
    {"first-week", 0, Distance::metres(1), {900}, {150}, 36},
    {"six-weeks-750",
     0,
     Distance::metres(1),
     {2000, 2150, 1500, 2300, 2450, 1250},
     {400, 500, 300, 600, 750, 300},
     466},
    // Mondays 366 lengths of 33 1/3 m are 12 200 m, Thursdays 239 of 50 m are 11 950 m.
    {"ten-weeks-1500",
     0,
     Distance::metres(1),
     {2300, 2500, 1750, 2700, 2950, 2050, 3200, 3500, 1900, 1300},
     {450, 533, 350, 700, 866, 600, 1150, 1500, 700, 400},
     366 + 239},
    {"two-lanes-yards", 1, Distance::yards(1), {1750, 1900, 2050, 1150}, {350, 400, 450, 200}, 274},
    {"two-lanes-yards", 2, Distance::yards(1), {1650, 1750, 1900, 1050}, {350, 400, 450, 200}, 254},
    {"showpiece", 1, Distance::metres(1), {2400}, {300}, 96},
    {"showpiece", 2, Distance::metres(1), {2300}, {300}, 92},
};

} // namespace

TEST_CASE("every sample is read without an error") {
    auto const paths = sample_paths();
    CHECK(paths.size() >= 6);
    for (auto const& path : paths) {
        Sample const sample{path};
        for (auto const* findings : {&sample.bundle.findings, &sample.resolved.findings}) {
            for (auto const& finding : findings->kept()) {
                FAIL_CHECK(path << ": " << finding.message);
            }
        }
    }
}

TEST_CASE("every sample is written as tidy writes it") {
    for (auto const& path : sample_paths()) {
        Sample const sample{path};
        CHECK(grammar::write(sample.bundle.root().tree) == sample.text);
    }
}

TEST_CASE("no rule has anything to say about a sample, but that one has no race") {
    for (auto const& path : sample_paths()) {
        Sample const sample{path};
        auto const findings = check::check(sample.resolved.plan);
        for (auto const& finding : findings.kept()) {
            INFO(path << ": " << finding.message);
            CHECK(finding.rule == "race-rep");
            CHECK(finding.severity == Severity::note);
            CHECK_FALSE(sample.resolved.plan.race);
        }
    }
}

TEST_CASE("the samples come to what was counted on paper") {
    for (auto const& expected : expectations) {
        INFO(expected.name << ", lane " << expected.lane);
        Sample const sample{folder + "/" + expected.name + ".swim"};
        auto const& plan = sample.resolved.plan;
        REQUIRE(plan.weeks.size() == expected.weeks.size());
        calc::Reckoner reckoner{plan};
        for (std::size_t i = 0; i < plan.weeks.size(); ++i) {
            INFO("week " << i + 1);
            auto const week = reckoner.of_week(plan.weeks[i]).swum(expected.lane);
            CHECK(week.distance == expected.weeks[i] * expected.unit);
            CHECK(Distance::whole(week.longest, expected.unit) == expected.longest[i]);
        }
        CHECK(reckoner.of_plan().swum(expected.lane).lengths == expected.lengths);
    }
}
