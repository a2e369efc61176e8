#include "check/register.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// A plan that nothing is said of, broken in one way at a time: each break raises its own rule and no other.
namespace lengthwise {
namespace {

constexpr std::string_view clean = R"(plan "Harbour evenings"
race "Otter Reach" 400m on 2027-06-12
pool 25m
threshold 2:00 per 100m
rest 20-30s
before longest 250m week 900m

week 2 from 2027-05-17
  session Tue 19:00 for 30min "Three hundred"
    warm-up
      3 x 50 choice easy
    main
      300 crawl steady
    cool-down
      50 choice easy
  session Thu 19:00 for 45min "In lanes"
    warm-up
      50 back easy
    drill
      4 x 25 drill "zip" on 1:10
    main
      lane 1: 2 x 100 crawl steady on 2:30
      lane 2: 2 x 100 crawl steady on 2:40
      pause 1min
      lane 1: 50 crawl hard
      lane 2: 50 crawl sprint
    cool-down
      100 breast easy
week 3
  session Tue "Three fifty"
    warm-up
      100 choice easy "slow and long"
    main
      350 crawl steady
    cool-down
      50 choice easy "float"
  session Thu "Strokes"
    warm-up
      2 x 50 choice easy
    main
      100 medley
      50 kick with board
      4 x 50 as 25 crawl / 25 back
    cool-down
      50 back easy
week 4
  session Tue "Four hundred"
    warm-up
      100 choice easy "last time before the race"
    main
      400 crawl steady
    cool-down
      50 choice easy "well done"
  session Thu "Pace"
    warm-up
      150 choice easy
    main
      3 x 100 crawl threshold
    cool-down
      50 breast easy
week 5
  session Tue "Fresh"
    warm-up
      100 choice
    main
      4 x 25 crawl steady rest 30s
      50 crawl easy
    cool-down
      50 choice
  session Thu "Fresher"
    warm-up
      100 crawl easy
    main
      2 x 50 crawl steady
    cool-down
      50 crawl easy
)";

struct Mutant {
    std::string_view rule;
    std::string_view what;
    std::string_view from; ///< stands once in the plan …
    std::string_view to;   ///< … and this stands in its place
};

std::vector<Mutant> const mutants{
    {"race-rep", "a break in the race rep", "400 crawl steady", "400 crawl steady broken at 200 for 10s"},
    {"race-rep", "swum with stops", "400 crawl steady", "400 crawl steady with stops"},
    {"race-rep", "swum with fins", "400 crawl steady", "400 crawl steady with fins"},
    {"race-rep", "pulled", "400 crawl steady", "400 crawl steady pull"},
    {"race-rep", "two halves", "      400 crawl steady\n",
     "      (200 crawl steady + 200 crawl steady) rest 30s\n"},
    {"race-rep", "no race", "race \"Otter Reach\" 400m on 2027-06-12\n", ""},
    {"race-rep", "only if time", "      400 crawl steady\n",
     "      if time: 400 crawl steady\n      400 crawl steady with snorkel, fins\n"},
    {"rep-step", "less swum today", "longest 250m", "longest 200m"},
    {"rep-step", "a week left out", "      300 crawl steady\n",
     "      200 crawl steady\n      100 crawl steady\n"},
    {"week-growth", "less swum today", "week 900m", "week 800m"},
    {"week-growth", "a long warm-up", "150 choice easy", "300 choice easy"},
    {"sessions", "more are asked for", "pool 25m", "pool 25m\nlimit sessions 3"},
    {"sessions", "an empty week", "week 2 from 2027-05-17", "week 1 from 2027-05-10\nweek 2 from 2027-05-17"},
    {"session-floor", "more is asked for", "pool 25m", "pool 25m\nlimit session-floor 700m"},
    {"session-floor", "a short warm-up", "100 choice easy \"last time before the race\"",
     "2 x 25 choice easy"},
    {"taper", "a full last week", "4 x 25 crawl steady rest 30s", "12 x 25 crawl steady rest 30s"},
    {"taper", "less is asked for", "pool 25m", "pool 25m\nlimit taper 45%"},
    {"calendar", "one day twice", "session Thu \"Strokes\"", "session Tue \"Strokes\""},
    {"calendar", "a session after the race", "session Thu \"Fresher\"", "session Sun \"Fresher\""},
    {"calendar", "a session before the one above it", "session Thu \"Strokes\"", "session Mon \"Strokes\""},
    {"calendar", "a week before the one above it", "week 4\n", "week 4 from 2027-05-10\n"},
    {"slot", "half the time booked", "for 30min", "for 9min"},
    {"slot", "the slow end only", "for 30min", "for 10min"},
    {"slot", "time kept free", "pool 25m", "pool 25m\nlimit slot 25min"},
    {"send-off", "too soon", "on 2:30", "on 2:10"},
    {"send-off", "more asked to breathe", "pool 25m", "pool 25m\nlimit send-off 30s"},
    {"send-off", "drills", "on 1:10", "on 0:35"},
    {"rest-band", "too short", "rest 20-30s", "rest 10-15s"},
    {"rest-band", "too long", "4 x 25 crawl steady rest 30s", "4 x 25 crawl steady rest 50s"},
    {"rest-band", "another band", "pool 25m", "pool 25m\nlimit rest-band 25-60s"},
    {"rest-band", "behind a rep", "300 crawl steady", "300 crawl steady rest 2min"},
    {"whole-lengths", "a rep between the walls", "100 choice easy \"slow and long\"", "110 choice easy"},
    {"whole-lengths", "reps between the walls", "4 x 50 as 25 crawl / 25 back", "4 x 45 crawl"},
    {"home-wall", "a length more", "100 choice easy \"slow and long\"", "125 choice easy"},
    {"home-wall", "a length less", "50 choice easy \"float\"", "25 choice easy"},
    {"medley", "two lengths", "100 medley", "2 x 50 medley"},
    {"medley", "six lengths", "100 medley", "150 medley"},
    {"shape", "no cool-down", "    cool-down\n      50 choice easy \"float\"\n", ""},
    {"shape", "no warm-up", "    warm-up\n      150 choice easy\n", "    drill\n      150 drill\n"},
    {"shape", "no main", "    main\n      3 x 100 crawl threshold\n", "    drill\n      3 x 100 drill\n"},
    {"lanes", "no line for lane 2", "      lane 2: 50 crawl sprint\n", ""},
    {"lanes", "no line for lane 1", "      lane 1: 50 crawl hard\n", ""},
    {"lanes", "two lines for one lane", "      lane 2: 2 x 100 crawl steady on 2:40\n",
     "      lane 2: 100 crawl steady on 2:40\n      lane 2: 100 crawl steady on 2:40\n"},
    {"lanes", "a lane nobody has a line for", "before longest", "swimmer \"Ida\" lane 3\nbefore longest"},
    {"feasible", "hard reps, hardly a rest", "3 x 100 crawl threshold", "3 x 100 crawl sprint rest 10s"},
    {"feasible", "sprints without rest", "3 x 100 crawl threshold", "3 x 100 crawl sprint on 1:55"},
    {"caution", "breath-holding", "\"slow and long\"", "\"hold your breath\""},
    {"caution", "cold water", "\"well done\"", "\"the water is cold\""},
    {"caution", "open water", "session Tue \"Fresh\"", "session Tue \"As in the lake\""},
    {"second-look", "only the last part is easy", "4 x 50 as 25 crawl / 25 back",
     "4 x 50 as 25 crawl / 25 back easy"},
    {"second-look", "an empty section", "    cool-down\n      50 choice easy \"well done\"\n",
     "    drill\n    cool-down\n      50 choice easy \"well done\"\n"},
    {"second-look", "no pool", "pool 25m\n", ""},
    {"second-look", "a pause shorter than the rest", "      50 kick with board\n",
     "      pause 10s\n      50 kick with board\n"},
    {"second-look", "a threshold nobody has", "week 3\n", "week 3\n  threshold 30:00 per 100m\n"},
    {"second-look", "a drill that is none", "    drill\n      4 x 25 drill \"zip\" on 1:10\n",
     "    drill \"zip\"\n      4 x 25 crawl on 1:10\n"},
    {"second-look", "a note that looks like a drill's name", "drill \"zip\" on", "drill crawl \"zip\" on"},
};

std::set<std::string> raised(std::string text) {
    auto const read = support::read_plan(std::move(text));
    if (!read.error().empty()) {
        return {"unreadable: " + read.error()};
    }
    std::set<std::string> rules;
    auto const findings = check::check(read.plan());
    for (auto const& finding : findings.kept()) {
        rules.emplace(finding.rule);
    }
    return rules;
}

std::string broken(Mutant const& mutant) {
    std::string text{clean};
    auto const at = text.find(mutant.from);
    REQUIRE(at != std::string::npos);
    REQUIRE(text.find(mutant.from, at + 1) == std::string::npos);
    return text.replace(at, mutant.from.size(), mutant.to);
}

} // namespace

TEST_CASE("the plan that is to be broken has nothing to mend", "[mutants]") {
    CHECK(raised(std::string{clean}).empty());
}

TEST_CASE("a plan broken in one way raises that rule and no other", "[mutants]") {
    for (auto const& mutant : mutants) {
        INFO(mutant.rule << ": " << mutant.what);
        CHECK(raised(broken(mutant)) == std::set<std::string>{std::string{mutant.rule}});
    }
}

TEST_CASE("every rule is broken in two ways at least, all in forty", "[mutants]") {
    std::map<std::string_view, int> ways;
    for (auto const& mutant : mutants) {
        ++ways[mutant.rule];
    }
    for (auto const* rule : check::rules()) {
        INFO(rule->name);
        CHECK(ways[rule->name] >= 2);
    }
    CHECK(mutants.size() >= 40);
}

TEST_CASE("what breaks a plan is silent where its rule is allowed, and is named among the waived",
          "[mutants]") {
    for (auto const& mutant : mutants) {
        INFO(mutant.rule << ": " << mutant.what);
        auto text = broken(mutant);
        auto const head = text.find("before longest");
        text.insert(head, "allow " + std::string{mutant.rule} + " \"meant so\"\n");
        CHECK(raised(text).empty());
        auto const read = support::read_plan(text);
        auto const waived = check::waived(read.plan());
        CHECK(!waived.by.empty());
        REQUIRE(waived.by.size() == waived.findings.kept().size());
        for (std::size_t i = 0; i < waived.by.size(); ++i) {
            CHECK(waived.findings.kept()[i].rule == mutant.rule);
            CHECK(waived.by[i]->reason == "meant so");
        }
    }
}

} // namespace lengthwise
