#include "calc/factors.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

/// The factors of words, and what falls away beside others (docs/time.md).
namespace lengthwise::calc {
namespace {

using support::read_plan;
using support::session_with;

using Percent = std::vector<double>;

Percent percent(Band<Exact> const& band) {
    auto const of = [](Exact const& share) {
        return static_cast<double>((share * Exact{100'000}).rounded()) / 1000;
    };
    return {of(band.low), of(band.expected), of(band.high)};
}

/// Of the first item, with the factors of its session.
struct Read {
    support::ReadPlan plan;
    Factors factors;
    plan::Manner manner;
};

Read read(std::string const& words, std::string const& head = "") {
    auto plan = read_plan(session_with("100 " + words, "pool 25m\n" + head));
    INFO(words);
    CHECK(plan.error() == "");
    auto const& session = plan.plan().sessions.front();
    Factors factors{factors_of(plan.plan(), session)};
    auto const& item = plan.plan().items[plan.plan().sections.front().body];
    auto const manner = plan.plan().terms[item.terms].manner;
    return {std::move(plan), factors, manner};
}

Percent form(std::string const& words, std::string const& head = "") {
    auto const all = read(words, head);
    return percent(all.factors.form(all.manner));
}

Percent effort(std::string const& words, std::string const& head = "") {
    auto const all = read(words, head);
    return percent(all.factors.effort(all.manner.effort));
}

} // namespace

TEST_CASE("the table of factors") {
    CHECK(effort("easy") == Percent{110, 115, 120});
    CHECK(effort("steady") == Percent{104, 107, 110});
    CHECK(effort("") == Percent{104, 107, 110});
    CHECK(effort("threshold") == Percent{98, 100, 103});
    CHECK(effort("hard") == Percent{91, 95, 98});
    CHECK(effort("sprint") == Percent{78, 85, 92});
    CHECK(effort("at 80%") == Percent{125, 125, 125});
    CHECK(effort("at 1:50 per 100") == Percent{100, 100, 100});

    CHECK(form("") == Percent{100, 100, 100});
    CHECK(form("crawl swim") == Percent{100, 100, 100});
    CHECK(form("back") == Percent{105, 110, 120});
    CHECK(form("breast") == Percent{110, 123, 135});
    CHECK(form("fly") == Percent{107, 115, 125});
    CHECK(form("medley") == Percent{105.5, 112, 120});
    CHECK(form("choice") == Percent{100, 111.5, 123});

    CHECK(form("kick") == Percent{143, 161, 182});
    CHECK(form("pull") == Percent{99, 105, 111});
    CHECK(form("drill") == Percent{120, 135, 150});

    CHECK(form("with fins") == Percent{83, 87, 91});
    CHECK(form("with paddles") == Percent{95, 97, 98});
    CHECK(form("with buoy") == Percent{97, 100, 102});
    CHECK(form("with band") == Percent{105, 110, 118});
    CHECK(form("with board") == Percent{100, 100, 100});
    CHECK(form("with snorkel") == Percent{100, 100, 100});
    CHECK(form("with wetsuit") == Percent{89, 94, 97});
}

TEST_CASE("rpe goes by effort words where they meet, and in between by itself") {
    std::vector<Percent> const expected{{120, 125, 130}, {115, 120, 125}, {110, 115, 120}, {107, 111, 115},
                                        {104, 107, 110}, {101, 103, 106}, {98, 100, 103},  {91, 95, 98},
                                        {85, 90, 95},    {78, 85, 92}};
    for (std::size_t number = 1; number <= expected.size(); ++number) {
        CHECK(effort("rpe " + std::to_string(number)) == expected[number - 1]);
    }
    CHECK(effort("rpe 3", "factor easy 118%\n") == Percent{118, 118, 118});
    CHECK(effort("rpe 4", "factor easy 118%\n") == Percent{107, 111, 115});
}

TEST_CASE("stroke, mode and gear multiply, low with low") {
    CHECK(form("back pull with paddles") == Percent{98.753, 112.035, 130.536});
    CHECK(form("fly drill with fins, snorkel, wetsuit") == Percent{94.849, 126.963, 165.506});
}

TEST_CASE("on kick the stroke falls away, and paddles, buoy and band") {
    CHECK(form("breast kick") == form("kick"));
    CHECK(form("breast kick", "factor breast 500%\n") == form("kick"));
    CHECK(form("kick with paddles, buoy, band") == form("kick"));
    CHECK(form("kick with paddles", "factor paddles 50%\n") == form("kick"));
    CHECK(form("kick with board, wetsuit") == Percent{127.27, 151.34, 176.54});
}

TEST_CASE("fins help a kick more than a swim") {
    CHECK(form("kick with fins") == Percent{92.95, 112.7, 141.96});
    CHECK(form("kick with fins", "factor fins 80%\n") == Percent{114.4, 128.8, 145.6});
}

TEST_CASE("the band falls away beside a buoy") {
    CHECK(form("with buoy, band") == form("with buoy"));
    CHECK(form("with buoy, band", "factor band 200%\n") == form("with buoy"));
}

TEST_CASE("pull falls away beside buoy or band, unless the file says what it takes") {
    CHECK(form("pull with buoy") == form("with buoy"));
    CHECK(form("pull with band") == form("with band"));
    CHECK(form("pull with buoy, band") == form("with buoy"));
    CHECK(form("pull with buoy", "factor pull 110%\n") == Percent{106.7, 110, 112.2});
    CHECK(form("pull with band", "factor pull 100%\n") == form("with band"));
}

TEST_CASE("a factor of the file has no band") {
    CHECK(form("back", "factor back 108%\n") == Percent{108, 108, 108});
    CHECK(effort("", "factor steady 106%\n") == Percent{106, 106, 106});
    CHECK(form("", "factor crawl 101%\nfactor swim 110%\n") == Percent{111.1, 111.1, 111.1});
}

TEST_CASE("crawl and breast reach choice, and all four medley, unless these have their own") {
    CHECK(form("choice", "factor breast 110%\n") == Percent{100, 105, 110});
    CHECK(form("choice", "factor crawl 130%\n") == Percent{123, 126.5, 130});
    CHECK(form("choice", "factor breast 110%\nfactor choice 120%\n") == Percent{120, 120, 120});
    CHECK(form("medley", "factor fly 131%\n") == Percent{111.5, 116, 121.5});
    CHECK(form("medley", "factor crawl 104%\nfactor medley 115%\n") == Percent{115, 115, 115});
}

TEST_CASE("the nearest scope wins word by word") {
    auto const plan = read_plan("pool 25m\nfactor back 101%\nfactor kick 150%\nfactor easy 111%\n"
                                "week 1\nfactor back 102%\nfactor kick 160%\n"
                                "session\nfactor back 103%\nmain\n100\nsession\nmain\n100\n"
                                "week 2\nsession\nmain\n100\n");
    REQUIRE(plan.error() == "");
    auto const said = [&](std::size_t session, Word word) {
        for (auto const& factor : factors_of(plan.plan(), plan.plan().sessions[session])) {
            if (factor.word == word) {
                return factor.percent;
            }
        }
        return 0U;
    };
    CHECK(std::vector{said(0, Word::back), said(0, Word::kick), said(0, Word::easy)} ==
          std::vector{103U, 160U, 111U});
    CHECK(std::vector{said(1, Word::back), said(1, Word::kick), said(1, Word::easy)} ==
          std::vector{102U, 160U, 111U});
    CHECK(std::vector{said(2, Word::back), said(2, Word::kick), said(2, Word::easy)} ==
          std::vector{101U, 150U, 111U});
}

} // namespace lengthwise::calc
