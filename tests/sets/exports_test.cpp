#include "support/outside.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <libical/ical.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <memory>

/// The samples as people export them, each read by a program that knows what it should be.
namespace lengthwise {
namespace {

std::string const folder = LENGTHWISE_ROOT "/sets";

std::string exported(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "export");
    auto const ending = support::run({.arguments = std::move(arguments)});
    INFO(ending.err);
    CHECK(ending.code == 0);
    CHECK(ending.err.empty());
    return ending.out;
}

/// The sample plans, without the library of sets.
std::vector<std::string> plans() {
    std::vector<std::string> plans;
    for (auto const& file : std::filesystem::directory_iterator{folder}) {
        if (file.path().extension() == ".swim" && file.path().stem() != "library") {
            plans.push_back(file.path().string());
        }
    }
    std::ranges::sort(plans);
    return plans;
}

} // namespace

TEST_CASE("samples as JSON and CSV agree with each other", "[programs]") {
    auto const json = exported({folder, "--as", "json"});
    auto const documents = std::ranges::count(json, '\n');
    REQUIRE(documents > 3);
    std::vector<std::string> lines;
    for (std::size_t begin = 0; begin < json.size(); begin = json.find('\n', begin) + 1) {
        lines.push_back(json.substr(begin, json.find('\n', begin) + 1 - begin));
    }
    CHECK(support::schema_verdicts("docs/plan.schema.json", lines) ==
          std::string(static_cast<std::size_t>(documents), '+'));
    auto const rows = exported({folder, "--as", "csv", "--rows", "session"});
    auto const read =
        support::python("import csv, io, sys\n"
                        "text = sys.stdin.buffer.read().decode('utf-8')\n"
                        "for row in csv.DictReader(io.StringIO(text, newline=''), strict=True):\n"
                        "    print('[%s,%s,%s]' % (row['metres'], row['reps'], row['expected_seconds']))\n",
                        rows);
    CHECK(std::ranges::count(read, '\n') > 10);
    CHECK(support::jq(json, ".plan.weeks[].sessions[]|[.metres, .reps, .seconds.expected]") == read);
}

TEST_CASE("samples as a calendar, for libical") {
    auto const text = exported({folder, "--as", "ics"});
    std::unique_ptr<icalcomponent, void (*)(icalcomponent*)> const calendar{
        icalparser_parse_string(text.c_str()), icalcomponent_free};
    REQUIRE(calendar);
    icalrestriction_check(calendar.get());
    CHECK(icalcomponent_count_errors(calendar.get()) == 0);
    CHECK(icalcomponent_count_components(calendar.get(), ICAL_VEVENT_COMPONENT) > 10);
}

TEST_CASE("samples as pages, for xmllint, and as Markdown, for cmark", "[programs]") {
    support::TempFolder const pages;
    for (auto const& plan : plans()) {
        INFO(plan);
        auto const page = pages.file("page.html", exported({plan, "--as", "html"}));
        CHECK(std::system(("xmllint --noout '" + page + "'").c_str()) == 0);
        auto const text = pages.file("plan.md", exported({plan, "--as", "md"}));
        auto const read = support::output_of("cmark '" + text + "'");
        CHECK(read.starts_with("<h1>"));
        CHECK(read.find("omitted") == std::string::npos); // what cmark says instead of HTML that it was given
    }
}

TEST_CASE("the same plan gives the same bytes, wherever it is exported") {
    for (auto const* kind : {"html", "md", "ics", "csv", "json"}) {
        std::vector<std::string> const arguments{"export", folder + "/showpiece.swim", "--as", kind};
        auto const elsewhere = [] {
            setenv("TZ", "Pacific/Auckland", 1);
            setenv("LC_ALL", "de_DE.UTF-8", 1);
            setenv("SOURCE_DATE_EPOCH", "1", 1);
        };
        auto const here = support::run({.arguments = arguments}).out;
        CHECK(!here.empty());
        CHECK(support::run({.arguments = arguments, .before = elsewhere, .folder = "/"}).out == here);
    }
}

} // namespace lengthwise
