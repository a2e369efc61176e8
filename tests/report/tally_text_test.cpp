#include "report/tally_text.hpp"
#include "report/width.hpp"
#include "support/generate.hpp"
#include "support/plan_text.hpp"
#include "support/read_plan.hpp"
#include "tally_samples.hpp"

#include <catch2/catch.hpp>

#include <sstream>

/// The screens of `tally`, letter by letter.
namespace lengthwise::report {
namespace {

struct Asked {
    Wish wish{};
    std::optional<calc::By> by{};
    bool ascii = false;
    bool colour = false;
};

std::string screen(std::string text, Asked const& asked = {}) {
    auto const read = support::read_plan(std::move(text));
    REQUIRE(read.error() == "");
    auto const picked = pick_scope(read.plan(), asked.wish, asked.ascii);
    REQUIRE(picked.problem == "");
    TallyOptions options{picked.scope, asked.wish.lane, asked.by, 60, asked.ascii, ""};
    return tally_text(read.plan(), options, Paint{asked.colour});
}

std::string otter_cove(Asked const& asked = {}) {
    return screen(std::string{test::otter_cove}, asked);
}

Asked session(std::string name) {
    return {{std::nullopt, std::move(name), std::nullopt}};
}

Asked week(std::uint32_t number, std::optional<int> lane = {}) {
    return {{number, std::nullopt, lane}};
}

Asked by(calc::By word, std::optional<std::uint32_t> number = {}) {
    return {{number, std::nullopt, std::nullopt}, word};
}

} // namespace

TEST_CASE("one session: a row a section, the total, the longest rep, optional lines apart") {
    CHECK(otter_cove(session("Long glide")) ==
          R"(Long glide · Mon 28 June 2027, 06:30, 1 h · pool 25 m

                m  lengths
warm-up       200        8
drill         200        8
main Even     300       12
cool-down     100        4

total         800       32
longest rep   300       12
if time      +100       +4

time unknown: the file has no threshold.
Fits 1 h at a threshold of 5:56 per 100 m or faster.
)");
}

TEST_CASE("thirds hang outside, and what does not exist is a dash") {
    CHECK(otter_cove(session("Thirds")) == R"(Thirds · Wed 30 June 2027 · pool 33⅓ m

               m   lengths
main         366⅔       11

total        366⅔       11
longest rep    -         -

time unknown: the file has no threshold.
)");
}

TEST_CASE("lanes stand side by side, equal ones together, timed reps as time") {
    CHECK(otter_cove(session("By lane")) == R"(By lane · Mon 5 July 2027 · pool 25 m

                          lane 1           lanes 2, 3
               m  lengths  timed    m  lengths  timed
warm-up        -        -   5:00    -        -   5:00
main         600       24      -  400       16      -
cool-down    100        4      -  100        4      -

total        700       28   5:00  500       20   5:00
longest rep  100        4         100        4

time unknown: the file has no threshold.
)");
}

TEST_CASE("one lane alone, when it is asked for") {
    auto asked = session("By lane");
    asked.wish.lane = 3;
    CHECK(otter_cove(asked) == R"(By lane · Mon 5 July 2027 · pool 25 m

                          lane 3
               m  lengths  timed
warm-up        -        -   5:00
main         400       16      -
cool-down    100        4      -

total        500       20   5:00
longest rep  100        4

time unknown: the file has no threshold.
)");
}

TEST_CASE("lanes that find no room beside each other stand below") {
    CHECK(screen("pool 25m\nsession \"Four\"\nmain\nlane 1: 100\nlane 2: 200\nlane 3: 300\nlane 4: 400\n") ==
          R"(Four · pool 25 m

                   lane 1        lane 2        lane 3
               m  lengths    m  lengths    m  lengths
main         100        4  200        8  300       12

total        100        4  200        8  300       12
longest rep  100        4  200        8  300       12

                   lane 4
               m  lengths
main         400       16

total        400       16
longest rep  400       16

time unknown: the file has no threshold.
)");
}

TEST_CASE("a week: a row a session, its sum, the week before") {
    CHECK(otter_cove(week(1)) == R"(Week 1 from Mon 28 June 2027 · race in 13 days · 400 m

                           m   lengths  longest m
Mon 28 Jun  Long glide   800        32        300
Wed 30 Jun  Thirds       366⅔       11          -

week 1                  1166⅔       43        300
if time                 +100        +4

11 lengths are of 33⅓ m

time unknown: the file has no threshold.
Every slot fits at a threshold of 5:56 per 100 m or faster.
)");
}

TEST_CASE("a week with lanes: a sum for each lane that differs, and whose it is") {
    CHECK(otter_cove(week(2)) == R"(Week 2 from Mon 5 July 2027 · Last · race in 6 days · 400 m

                             m   lengths  longest m  timed
Mon 5 Jul  By lane         700        28        100   5:00

week 2     in lane 1       700        28        100   5:00
           in lanes 2, 3   500        20        100   5:00
week 1                    1166⅔       43        300      -

time unknown: the file has no threshold.
)");
    CHECK(otter_cove(week(2, 2)).find("week 2     in lane 2   500") != std::string::npos);
}

TEST_CASE("a plan: a row a week, longest m to be read down to the race") {
    CHECK(otter_cove() == R"(Two weeks to Otter Cove · lane 1

               from    sessions     m   lengths  longest m  timed
week 1         28 Jun         2  1166⅔       43        300      -
week 2   Last  5 Jul          1   700        28        100   5:00

total                         3  1866⅔       71        300   5:00
if time                          +100        +4
race           11 Jul                                  400

lanes 2, 3 swim 200 m less in week 2;
11 lengths are of 33⅓ m

time unknown: the file has no threshold.
Every slot fits at a threshold of 5:56 per 100 m or faster.
)");
}

TEST_CASE("words by size, splits by their parts, shares add to 100") {
    CHECK(otter_cove(by(calc::By::mode)) == R"(Two weeks to Otter Cove, by mode · lane 1

          m     %  timed
swim   1500    81   5:00
kick    266⅔   14      -
drill   100     5      -

total  1866⅔  100   5:00
)");
    CHECK(otter_cove(by(calc::By::gear, 1)) == R"(week 1, by gear

            m     %
nothing  1066⅔   91
fins      100     9

total    1166⅔  100
)");
}

TEST_CASE("shares add to 100 where rounding each would not") {
    auto const shares =
        screen(support::session_with("100 easy\n100 hard\n100 steady\n"), by(calc::By::effort));
    CHECK(shares.find("easy    100   34\n") != std::string::npos);
    CHECK(shares.find("steady  100   33\n") != std::string::npos);
    CHECK(shares.find("hard    100   33\n") != std::string::npos);
}

TEST_CASE("without any distance there is no share of it") {
    auto const timed = screen(support::session_with("10min easy\n5min hard\n"), by(calc::By::effort));
    CHECK(timed.find('%') == std::string::npos);
    CHECK(timed.find("easy   -  10:00   10\nhard   -   5:00    5\n") != std::string::npos);
}

TEST_CASE("without a pool lengths are unknown and their column is away") {
    auto const text = screen(support::session_with("1000\n", "pool open water\n"));
    CHECK(text.find("open water") != std::string::npos);
    CHECK(text.find("lengths") == std::string::npos);
    CHECK(text.find("pool") == std::string::npos);
}

TEST_CASE("a session in yards has yards, a plan of mixed pools metres") {
    CHECK(screen("pool 25yd\nsession \"A\"\nmain\n4 x 50\n") == R"(A · pool 25 yd

              yd  lengths
main         200        8

total        200        8
longest rep   50        2

time unknown: the file has no threshold.
)");
    auto const yards = screen("pool 25yd\nweek 1\nsession\nmain\n100\nweek 2\nsession\nmain\n200\n");
    CHECK(yards.find("longest yd") != std::string::npos);
    CHECK(yards.find("total          2  300       12         200") != std::string::npos);
    auto const mixed =
        screen("pool 25yd\nweek 1\nsession\nmain\n100\nweek 2\nsession\npool 50m\nmain\n200\n");
    CHECK(mixed.find("longest m") != std::string::npos);
    CHECK(mixed.find("91.44") != std::string::npos);
    CHECK(mixed.find("4 lengths are of 50 m") != std::string::npos);
}

TEST_CASE("a race in metres can be compared in a plan of yards") {
    auto const text =
        screen("race sprint on 2027-08-01\npool 25yd\nweek 1\nsession\nmain\n825\nweek 2\nsession\n"
               "main\n100\n");
    CHECK(text.find("race") != std::string::npos);
    CHECK(text.find("820.2\n") != std::string::npos);
}

TEST_CASE("a plan of one session is shown as that session, of one week as that week") {
    CHECK(screen("pool 25m\nsession \"Only\"\nmain\n100\n").rfind("Only · pool 25 m\n", 0) == 0);
    auto const unnumbered =
        screen("plan \"Loose\"\npool 25m\nsession Mon\nmain\n100\nsession Tue\nmain\n50\n");
    CHECK(unnumbered == R"(Loose

         m  lengths  longest m
Mon    100        4        100
Tue     50        2         50

total  150        6        100

time unknown: the file has no threshold.
)");
}

TEST_CASE("a file of named sets alone has nothing to sum") {
    CHECK(screen("set \"A\" = 4 x 50\n") == "plan\n\nno session, so nothing to sum\n");
}

TEST_CASE("with --ascii nothing but ASCII is printed") {
    Asked asked;
    asked.ascii = true;
    for (auto const& wish :
         {Wish{}, Wish{1, std::nullopt, std::nullopt}, Wish{std::nullopt, "Thirds", std::nullopt}}) {
        asked.wish = wish;
        for (char const c : otter_cove(asked)) {
            REQUIRE(static_cast<unsigned char>(c) < 0x80);
        }
    }
    CHECK(otter_cove(asked).find("366 2/3") != std::string::npos);
    CHECK(otter_cove(asked).find("Thirds, Wed 30 June 2027, pool 33 1/3 m\n") != std::string::npos);
}

TEST_CASE("colour repeats what the words say: heads dim, sums and longest rep bold") {
    auto asked = session("Long glide");
    asked.colour = true;
    auto const text = otter_cove(asked);
    CHECK(text.find("\033[2m                m  lengths\033[0m\n") != std::string::npos);
    CHECK(text.find("\033[1mtotal         800       32\033[0m\n") != std::string::npos);
    CHECK(text.find("\033[1mlongest rep   300       12\033[0m\n") != std::string::npos);
    CHECK(text.find("\033[1mif time") == std::string::npos);
}

TEST_CASE("several files are named above their totals") {
    auto const read = support::read_plan("pool 25m\nsession\nmain\n100\n");
    TallyOptions options;
    options.file = "a\033.swim";
    CHECK(tally_text(read.plan(), options, Paint{}).rfind("a<U+001B>.swim\nsession 1 · pool 25 m\n", 0) == 0);
}

TEST_CASE("names in any script keep the columns and pass no control on") {
    auto const text =
        screen("pool 25m\nweek 1\nsession Mon \"放松，慢慢游\"\nmain\n100\nsession Tue \"a\u202Eb\"\n"
               "main\n50\n");
    CHECK(text.find("\u202E") == std::string::npos);
    std::istringstream lines{text};
    std::string line;
    std::size_t width = 0;
    while (std::getline(lines, line)) {
        if (line.rfind("Mon", 0) == 0 || line.rfind("Tue", 0) == 0) {
            CHECK((width == 0 || cells(line) == width));
            width = cells(line);
        }
    }
    CHECK(width > 0);
}

TEST_CASE("a long name is cut, a long title folded: tables keep to 60 columns") {
    std::string const name(200, 'n');
    auto const text = screen("plan \"" + name + "\"\npool 25m\nweek 1\nsession Mon \"" + name +
                             "\"\nmain\n100\nsession Tue\nmain \"" + name + "\"\n50\n");
    std::istringstream lines{text};
    std::string line;
    while (std::getline(lines, line)) {
        CHECK(cells(line) <= 60);
    }
    CHECK(text.find("…") != std::string::npos);
}

TEST_CASE("every generated plan has its screens, without a blank at a line's end") {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        CAPTURE(seed);
        test::Wanted wanted;
        wanted.seed = seed;
        auto const read = support::read_plan(test::generate(wanted).text);
        REQUIRE(read.error() == "");
        std::vector<Scope> scopes{{}};
        for (plan::Index i = 0; i < read.plan().weeks.size(); ++i) {
            scopes.push_back({Scope::Kind::week, i});
        }
        for (plan::Index i = 0; i < read.plan().sessions.size(); ++i) {
            scopes.push_back({Scope::Kind::session, i});
        }
        for (auto const& scope : scopes) {
            TallyOptions options;
            options.scope = scope;
            auto const text = tally_text(read.plan(), options, Paint{});
            options.by = calc::By::effort;
            for (auto const& shown : {text, tally_text(read.plan(), options, Paint{})}) {
                REQUIRE(shown.back() == '\n');
                REQUIRE(shown.find(" \n") == std::string::npos);
            }
        }
    }
}

} // namespace lengthwise::report
