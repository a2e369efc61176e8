#include "grammar/limits.hpp"
#include "grammar/parse.hpp"
#include "grammar/source.hpp"
#include "support/dump.hpp"
#include "support/well_formed.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>
#include <string>
#include <string_view>
#include <vector>

// The parser under texts that nobody would write. What it says does not matter here; that
// it says something, keeps a sound tree and comes back does.
namespace {

using namespace lengthwise;

constexpr std::string_view good = R"(plan "Every word once"
race "Reed Pond" sprint on 2027-06-13
swimmer "Odo" threshold about 1:50 per 100m in 50m reserve 20m lane 1 distance 80%
before longest 200m week 2000m
set "pair" = 4 x (50 crawl + 25 back)
set "long" = (
  100 crawl
  2 x 50 fly +
  50 # joint

  3 x (25
    25)
) rest 1min
include "more.swim"
pool 33 1/3 m
threshold 2:05
rest 30s-1min
factor kick 140%
limit rest-band 20-40s
allow race-rep "relay"
"a note for all"
week 1 from 2027-04-19 "first"
  session Tue 07:00 for 45min "Longer reps"
    pool 25yd
    warm up easy rest 20-30s with fins, pull buoy
      200 choice easy
      lane 1-2: if time: 4x50 kick with board, snorkel
      "note here"
      pause 2min "drink"
    drill "Catch"
      4 x 50 as 25 drill "fist" / 25 front crawl with fins rest 10s, odds easy, evens hard "go"
      4 × 50 drill "x" threshold plus 5s on 1:30, 1:25, :50
      10min tread rest as needed
      90s kick rest 5 breaths
      100, 200, 33.33m crawl threshold rest 30s, every 3rd build first 2 easy, last hard
    main
      750 crawl broken at 250 for 15s negative split
      8 x 25 descend 1-4 at 95%
      8 x 25 descend at 1:55 per 100m
      4 x 50 hold 0:52.5 rpe 7
      3 x use "pair" rest 1min
    swim down
      100 IM
)";

class Vandal {
  public:
    explicit Vandal(unsigned seed) : random_(seed) {}

    std::string spoil(std::string text) {
        for (auto times = 1 + pick(4); times > 0 && !text.empty(); --times) {
            spoil_once(text);
        }
        return text;
    }

  private:
    std::size_t pick(std::size_t below) { return random_() % below; }

    std::string_view piece() {
        static constexpr std::string_view pieces[] = {"(",
                                                      ")",
                                                      "\"",
                                                      "\\",
                                                      "+",
                                                      ",",
                                                      ", ",
                                                      "/",
                                                      " / ",
                                                      ":",
                                                      "%",
                                                      "x",
                                                      "\n",
                                                      "\r\n",
                                                      "\r",
                                                      "#",
                                                      "0",
                                                      "99999",
                                                      "1/3",
                                                      "0:61",
                                                      "-",
                                                      "week",
                                                      "session",
                                                      "main",
                                                      "set \"a\" = ",
                                                      "lane 1: ",
                                                      "\xE2\x80\x93",
                                                      "\xFF",
                                                      "\xC3",
                                                      "\t",
                                                      "as 25",
                                                      "on ",
                                                      "rest 1",
                                                      "((((((((",
                                                      "))))))))",
                                                      "at 1:10",
                                                      "with ",
                                                      "every ",
                                                      "\xEF\xBB\xBF",
                                                      "="};
        return pieces[pick(std::size(pieces))];
    }

    void spoil_once(std::string& text) {
        auto const at = pick(text.size());
        auto const length = std::min(text.size() - at, 1 + pick(6));
        switch (pick(6)) {
        case 0:
            text.erase(at, length);
            break;
        case 1:
            text.insert(at, piece());
            break;
        case 2:
            text.replace(at, length, piece());
            break;
        case 3:
            text[at] = static_cast<char>(pick(256));
            break;
        case 4: { // a piece of the text, somewhere else
            auto const from = pick(text.size());
            text.insert(at, text.substr(from, pick(80)));
            break;
        }
        default:
            text.resize(at);
            break;
        }
    }

    std::mt19937 random_;
};

void survive(std::string const& text) {
    Source const source{"a.swim", text};
    auto const result = grammar::parse(source);
    CAPTURE(text);
    REQUIRE(test::shape_fault(result.tree) == "");
    auto const bad = std::ranges::any_of(result.tree.nodes,
                                         [](grammar::Node const& n) { return n.kind == grammar::Kind::bad; });
    REQUIRE((!bad || result.findings.has_errors()));
    for (auto const& finding : result.findings.kept()) {
        REQUIRE(finding.span.begin <= finding.span.end);
        REQUIRE(finding.span.end <= text.size());
        CAPTURE(finding.rule, finding.span.begin, finding.message, finding.hint);
        REQUIRE_FALSE(finding.message.empty());
        REQUIRE(finding.message.find("boost") == std::string::npos);
    }
}

} // namespace

TEST_CASE("the text that is spoiled below is good", "[grammar]") {
    Source const source{"a.swim", std::string{good}};
    auto const result = grammar::parse(source);
    CHECK_FALSE(result.findings.has_errors());
    CHECK(test::shape_fault(result.tree).empty());
}

TEST_CASE("spoiled texts are survived", "[grammar]") {
    for (unsigned seed = 0; seed < 4'000; ++seed) {
        survive(Vandal{seed}.spoil(std::string{good}));
    }
}

TEST_CASE("every beginning of a text is survived", "[grammar]") {
    for (std::size_t size = 0; size <= good.size(); ++size) {
        survive(std::string{good.substr(0, size)});
    }
}

TEST_CASE("noise is survived", "[grammar]") {
    std::mt19937 random{7};
    for (int i = 0; i < 500; ++i) {
        std::string text(random() % 200, ' ');
        std::ranges::generate(text, [&] { return static_cast<char>(random() % 256); });
        survive(text);
    }
}

TEST_CASE("a line's errors are the same wherever it stands", "[grammar]") {
    // The last bytes of a text are read without the wide loads that others are.
    for (auto const* const line :
         {"4 x 50 crwal", "50 \"a", "100 @ 1:30", "50 as 25 / 25 rset 10s", "butterfl"}) {
        auto const errors = [&](std::string const& behind) {
            Source const source{"a.swim", std::string{"session\nmain\n"} + line + behind};
            auto const result = grammar::parse(source);
            std::vector<std::string> messages;
            for (auto const& finding : result.findings.kept()) {
                messages.push_back(finding.message + std::to_string(finding.span.begin));
            }
            return messages;
        };
        CAPTURE(line);
        CHECK_FALSE(errors("").empty());
        CHECK(errors("") == errors("\n# and a good deal of text behind it, so that wide loads fit\n"));
        CHECK(errors("") == errors("\r\n"));
    }
}
