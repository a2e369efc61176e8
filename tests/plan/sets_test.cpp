#include "grammar/limits.hpp"
#include "support/plan_text.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <array>
#include <string>
#include <vector>

/// Named sets: `use "A"` means `( ITEM )` written there (docs/notation.md, "Named sets").
namespace lengthwise {
namespace {

using support::faults;
using support::meanings;
using support::read_plan;
using support::session_with;

std::vector<std::string> with_sets(std::string_view sets, std::string_view lines,
                                   std::string_view pool = "pool 25m\n") {
    auto const read = read_plan(session_with(lines, std::string{pool} + std::string{sets}));
    CHECK(read.error() == "");
    return meanings(read.plan());
}

/// s1 uses s0, s2 uses s1 …; the last is s`count - 1`.
std::string chain(int count, std::string_view of = "use \"s{}\"") {
    std::string sets = "set \"s0\" = 100\n";
    for (int i = 1; i < count; ++i) {
        sets += fmt::format("set \"s{}\" = ", i) + fmt::format(fmt::runtime(of), i - 1) + "\n";
    }
    return sets;
}

} // namespace

TEST_CASE("units, lengths and defaults come from the place of use") {
    auto const sets = "set \"A\" = 4 x 50 kick rest 10s\n";
    CHECK(with_sets(sets, "    use \"A\"") == std::vector<std::string>{"1 x {4 x 50 m kick rest 10s}"});
    CHECK(with_sets(sets, "    2 x use \"A\" easy rest 1min") ==
          std::vector<std::string>{"2 x {4 x 50 m kick easy rest 10s} rest 1min"});
    CHECK(with_sets(sets, "    use \"A\"", "pool 25yd\n") ==
          std::vector<std::string>{"1 x {4 x 45.72 m kick rest 10s}"});
    CHECK(with_sets("set \"L\" = 2 lengths\n", "    use \"L\"", "pool 50m\n") ==
          std::vector<std::string>{"1 x {1 x 100 m}"});
}

TEST_CASE("selectors of a use choose its rounds") {
    CHECK(with_sets("set \"A\" = 100, 50 back\n", "    3 x use \"A\" odds easy") ==
          std::vector<std::string>{"3 x {100 m, 50 m back} [1+2k x2: {100 m, 50 m back easy}]"});
}

TEST_CASE("definition in any order, sets in sets, groups in sets") {
    CHECK(with_sets("set \"B\" = 2 x use \"A\"\nset \"A\" = (100 + 50)\n", "    use \"B\"") ==
          std::vector<std::string>{"1 x {2 x {1 x {1 x 100 m + 1 x 50 m}}}"});
}

TEST_CASE("a set is shared: one reading a context, however often it is used") {
    std::string lines;
    for (int i = 0; i < 50; ++i) {
        lines += "    use \"A\"\n";
    }
    auto const read = read_plan(session_with(lines, "pool 25m\nset \"A\" = (100 + 50 + 25)\n"));
    CHECK(read.plan().items.size() == 50 + 4);
    CHECK(read.plan().sets.size() == 1);
    auto const& items = read.plan().items;
    CHECK(items.front().body == items.back().body);
}

TEST_CASE("doubling chains cost what they say, not what they come to") {
    // 2^26 reps from 27 sets of two uses each: read once each, then refused for their number only where
    // limits are.
    auto const doubled = chain(27, "(use \"s{0}\" + use \"s{0}\")");
    auto const read = read_plan(session_with("    use \"s12\"", "pool 25m\n" + doubled));
    CHECK(read.error() == "");
    CHECK(read.plan().items.size() < 100);
    auto const found = faults(session_with("    use \"s15\"", "pool 25m\n" + doubled));
    CHECK(found ==
          std::vector<std::string>{"syntax-limit | use \"s15\" | with this line the session's distance comes "
                                   "to 3277 km; 1000 km are read"});
}

TEST_CASE("a use counts as one parenthesis of the nesting") {
    auto const deep = chain(40);
    CHECK(faults(session_with("    use \"s31\"", "pool 25m\n" + deep)).empty());
    CHECK(faults(session_with("    use \"s32\"", "pool 25m\n" + deep)) ==
          std::vector<std::string>{
              "syntax-limit | \"s0\" | parentheses and uses stand 33 deep here; 32 are read"});
    // the same when the deep set was read before from a shallower place
    CHECK(faults(session_with("    use \"s31\"\n    (use \"s31\" + 100)", "pool 25m\n" + deep)) ==
          std::vector<std::string>{
              "syntax-limit | \"s31\" | parentheses and uses stand 33 deep here; 32 are read"});
}

TEST_CASE("names: twice, missing, misspelt") {
    CHECK(faults("set \"A\" = 100\nset \"A\" = 50\n") ==
          std::vector<std::string>{"syntax-twice | \"A\" | two sets are named \"A\""});
    CHECK(faults(session_with("    use \"B\"", "set \"A\" = 100\npool 25m\n")) ==
          std::vector<std::string>{"syntax-name | \"B\" | no set is named \"B\""});
    CHECK(faults("set \"A\" = use \"B\"\n") ==
          std::vector<std::string>{"syntax-name | \"B\" | no set is named \"B\""});
    // bytes decide: case matters
    CHECK(faults(session_with("    use \"a\"", "set \"A\" = 100\npool 25m\n")) ==
          std::vector<std::string>{"syntax-name | \"a\" | no set is named \"a\""});
}

TEST_CASE("a set that stands in a wrong place is not missed as well") {
    auto const sessions = "pool 25m\nsession\n  main\n    use \"a\"\n    use \"b\"\n";
    CHECK(faults(std::string{sessions} + "set   \"a\" = 4 x 50\n") ==
          std::vector<std::string>{"syntax-name | \"b\" | no set is named \"b\"",
                                   "syntax-place | set | \"set\" stands before the first week or session"});
}

TEST_CASE("a cycle stands at the use that closes it, sets walked in the order of their text") {
    CHECK(faults("set \"A\" = use \"A\"\n") ==
          std::vector<std::string>{"syntax-name | \"A\" | the set \"A\" would hold itself"});
    auto const read =
        read_plan("set \"A\" = use \"B\"\nset \"B\" = use \"C\"\nset \"C\" = (100 + use \"A\")\n");
    auto const& found = read.resolved.findings.kept();
    REQUIRE(found.size() == 1);
    CHECK(found[0].message == "the set \"A\" would hold itself");
    CHECK(read.bundle->root().source.locate(found[0].span.begin).line == 3);
    REQUIRE(found[0].related.size() == 1);
    CHECK(read.bundle->root().source.locate(found[0].related[0].span.begin).line == 1);
    // used or not, it is one finding
    CHECK(faults(session_with("    use \"A\"\n    use \"A\"", "pool 25m\nset \"A\" = use \"A\"\n")).size() ==
          1);
}

TEST_CASE("findings inside a set stand at its text, once, with the use beside them") {
    auto const read = read_plan(session_with("    use \"A\"\n    use \"A\" easy\n    2 x use \"A\"",
                                             "pool 25m\nset \"A\" = 200 as 75 kick / 50 crawl\n"));
    auto const& found = read.resolved.findings.kept();
    REQUIRE(found.size() == 1);
    CHECK(found[0].message == "the parts make 125 m, the rep is 200 m");
    CHECK(read.bundle->root().source.locate(found[0].span.begin).line == 2);
    REQUIRE(found[0].related.size() == 2);
    CHECK(found[0].related[1].message == "used here");
    CHECK(read.bundle->root().source.locate(found[0].related[1].span.begin).line == 5);
}

TEST_CASE("an unused set keeps one modifier of a class; what needs a pool waits for a use") {
    CHECK(faults("set \"A\" = 4 lengths as 75 / 50\n").empty());
    CHECK(faults("set \"A\" = (100 crawl back + 50)\n") ==
          std::vector<std::string>{"syntax-twice | back | crawl and back are two strokes"});
    CHECK(faults("set \"A\" = 100 as 50 kick swim / 50\n") ==
          std::vector<std::string>{"syntax-twice | swim | kick and swim are two modes"});
    CHECK(faults("set \"A\" = 4 x 50 odds easy hard\n") ==
          std::vector<std::string>{"syntax-twice | hard | easy and hard are two efforts"});
}

TEST_CASE("sets from included files") {
    auto const read = read_plan("pool 25m\ninclude \"lib/sets.swim\"\nsession\n  main\n    use \"A\"\n",
                                {{"/lib/sets.swim", "set \"A\" = 4 x 50 kick\n"}});
    CHECK(read.error() == "");
    CHECK(meanings(read.plan()) == std::vector<std::string>{"1 x {4 x 50 m kick}"});
}

TEST_CASE("too many readings of shared sets in one session are an error at the use or selector") {
    // Twenty sets one inside the other; each lays one of four classes over its last round. Innermost wins, so
    // the set at the bottom is read in 6 x 6 x 6 x 6 contexts. Contexts that come out equal are read once:
    // without that it would be 2^20.
    auto const sets = [](int items) {
        std::string text = "set \"s0\" = (0:00.1";
        for (int i = 1; i < items; ++i) {
            text += " + 0:00.1";
        }
        text += ")\n";
        for (std::size_t i = 1; i <= 20; ++i) {
            auto const says =
                i % 4 == 0   ? fmt::format("at {}%", 80 + i)
                : i % 4 == 1 ? fmt::format("drill \"{}\"", i)
                : i % 4 == 2
                    ? fmt::format("with {}", std::array{"fins", "buoy", "board", "band", "paddles"}[i / 4])
                    : std::string{std::array{"crawl", "back", "breast", "fly", "choice"}[i / 4]};
            text += fmt::format("set \"s{}\" = 2 x use \"s{}\" last {}\n", i, i - 1, says);
        }
        return text;
    };
    auto const few = read_plan(session_with("    use \"s20\"", "pool 25m\n" + sets(20)));
    CHECK(few.error() == "");
    CHECK(few.plan().items.size() > 20'000);
    auto const found = faults(session_with("    use \"s20\"", "pool 25m\n" + sets(60)));
    REQUIRE(found.size() == 1);
    CHECK_THAT(
        found[0],
        Catch::EndsWith("the shared sets of this session would be read in more than 65536 further ways"));
}

} // namespace lengthwise
