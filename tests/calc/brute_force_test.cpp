#include "calc/breakdown.hpp"
#include "calc/longest.hpp"
#include "calc/totals.hpp"
#include "support/expand.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

/// Closed forms against plans unrolled rep by rep. A failure names its seed.
namespace lengthwise {
namespace {

calc::Totals unrolled(plan::Plan const& plan, plan::Run sessions, support::Swimmer swimmer) {
    support::Adder adder{plan};
    for (auto i = sessions.first; i < sessions.end(); ++i) {
        support::expand(plan, plan.sessions[i], swimmer, [&](auto const& rep) { adder.add(rep); });
    }
    return adder.totals();
}

calc::Totals unrolled(plan::Plan const& plan, plan::Session const& session, plan::Section const& section,
                      support::Swimmer swimmer) {
    support::Adder adder{plan};
    support::expand(plan, session, swimmer, [&](auto const& rep) {
        if (rep.section == &section) {
            adder.add(rep);
        }
    });
    return adder.totals();
}

/// Lane 0 swims the unlabelled lines; so does a lane that is not named.
std::vector<int> swimmers(calc::LaneSet const& lanes) {
    auto all = calc::numbers(lanes);
    all.insert(all.end(), {0, 99});
    return all;
}

void check_sums(plan::Plan const& plan, calc::Sums const& sums, plan::Run sessions) {
    for (int const lane : swimmers(calc::lanes_of(plan))) {
        CAPTURE(lane);
        REQUIRE(sums.swum(lane) == unrolled(plan, sessions, {lane, false}));
        REQUIRE(sums.if_time(lane) == unrolled(plan, sessions, {lane, true}));
    }
}

void check_session(plan::Plan const& plan, calc::Reckoner& reckoner, plan::Index index) {
    auto const& session = plan.sessions[index];
    check_sums(plan, reckoner.of_session(session), {index, 1});
    REQUIRE(reckoner.of_session(session).lanes() == calc::lanes_of(plan, session));
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        auto const& section = plan.sections[i];
        auto const sums = reckoner.of_section(session, section);
        for (int const lane : swimmers(calc::lanes_of(plan, session))) {
            REQUIRE(sums.swum(lane) == unrolled(plan, session, section, {lane, false}));
            REQUIRE(sums.if_time(lane) == unrolled(plan, session, section, {lane, true}));
        }
    }
}

void check_longest(plan::Plan const& plan, calc::Sums const& sums) {
    for (int const lane : swimmers(calc::lanes_of(plan))) {
        auto const longest = calc::longest_of_plan(plan, lane);
        REQUIRE(longest.distance == sums.swum(lane).longest);
        REQUIRE((longest.item == plan::no_index) == longest.distance.zero());
        if (longest.session != plan::no_index) {
            REQUIRE(calc::longest_of_session(plan, longest.session, lane).item == longest.item);
            auto const before = calc::longest_before(plan, longest.session, lane);
            REQUIRE((!before || plan.before || before->distance < longest.distance));
        }
    }
}

void check_words(plan::Plan const& plan, calc::By by, int lane) {
    calc::Breakdown breakdown;
    calc::BreakdownReader reader{plan, by, lane};
    support::WordAdder adder{plan, by};
    for (auto const& session : plan.sessions) {
        reader.add_session(session, breakdown);
        support::expand(plan, session, {lane, false}, [&](auto const& rep) { adder.add(rep); });
    }
    std::map<std::string, calc::Totals> words;
    for (auto const& word : breakdown.words) {
        words[calc::word_of(by, word.key)] = word.totals;
    }
    REQUIRE(words == adder.words());
}

void check_plan(std::uint64_t seed) {
    CAPTURE(seed);
    test::Wanted wanted;
    wanted.seed = seed;
    auto const read = support::read_plan(test::generate(wanted).text);
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    calc::Reckoner reckoner{plan};
    for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
        check_session(plan, reckoner, i);
    }
    for (auto const& week : plan.weeks) {
        check_sums(plan, reckoner.of_week(week), week.sessions);
        REQUIRE(reckoner.of_week(week).lanes() == calc::lanes_of(plan, week));
    }
    auto const sums = reckoner.of_plan();
    check_sums(plan, sums, {0, static_cast<plan::Index>(plan.sessions.size())});
    check_longest(plan, sums);
    for (auto const by :
         {calc::By::stroke, calc::By::mode, calc::By::effort, calc::By::gear, calc::By::section}) {
        CAPTURE(calc::spelling(by));
        check_words(plan, by, calc::lowest(sums.lanes()));
    }
}

} // namespace

TEST_CASE("sums of generated plans are those of their reps one by one") {
    for (std::uint64_t seed = 1; seed <= 1'000; ++seed) {
        check_plan(seed);
    }
}

TEST_CASE("sums of many generated plans are those of their reps one by one", "[long]") {
    for (std::uint64_t seed = 2'000; seed <= 22'000; ++seed) {
        check_plan(seed);
    }
}

} // namespace lengthwise
