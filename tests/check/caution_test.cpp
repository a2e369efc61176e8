#include "check/register.hpp"
#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <string_view>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

Found caution(std::string const& line, std::string const& pool = "25m") {
    return found("caution", "pool " + pool + "\nsession Tue\nmain\n" + line);
}

} // namespace

TEST_CASE("caution: breath-holding, open water, cold water, wherever they are spoken of") {
    CHECK(caution("100 crawl \"long and easy\"\n").empty());
    CHECK(caution("4 x 25 crawl \"Hold your breath to the flags\"\n")
              .front()
              .starts_with("4: note: breath-holding: "));
    CHECK(caution("\"hypoxic set\"\n100\n").size() == 1);
    CHECK(caution("4 x 25 drill \"no breath\"\n").size() == 1);
    CHECK(caution("100 as 50 crawl \"no breath\" / 50 back\n").size() == 1);
    CHECK(caution("pause 1min \"it is cold\"\n100\n").front().starts_with("4: note: cold water: "));
    CHECK(caution("100 \"as in the lake\"\n").front().starts_with("4: note: open water: "));
    CHECK(found("caution", "pool 25m\nsession Tue \"Down to the river\"\nmain\n100\n").size() == 1);
}

TEST_CASE("caution: words within words are no words") {
    CHECK(caution("100 \"old scolding, chosen, research, season, flake, driver, icebreaker\"\n").empty());
    CHECK(caution("100 \"ICE\"\n").size() == 1);
}

TEST_CASE("caution: breathing is not breath-holding") {
    CHECK(caution("100 \"breathe out all the while, breath every third\"\n").empty());
    CHECK(caution("100 rest 3 breaths\n50\n").empty());
}

TEST_CASE("caution: open water as a pool, once a danger") {
    CHECK(caution("400m\n", "open water").size() == 1);
    CHECK(caution("400m \"in the lake\"\n100m \"in the sea, cold\"\n", "open water").size() == 2);
}

TEST_CASE("caution: allowed") {
    CHECK(found("caution", "pool open water\nallow caution \"guarded bay\"\nsession Tue\nmain\n400m\n")
              .empty());
}

TEST_CASE("caution: every word that explain lists brings up a caution") {
    auto words = lengthwise::check::find_rule("caution")->meaning;
    words.remove_prefix(words.find("Its words: ") + std::string_view{"Its words: "}.size());
    auto count = 0;
    while (!words.empty()) {
        auto const end = words.find_first_of(",.");
        auto const word = std::string{words.substr(0, end)};
        INFO(word);
        CHECK(caution("100 crawl \"" + word + "\"\n").size() == 1);
        ++count;
        words.remove_prefix(std::min(end + 2, words.size()));
    }
    CHECK(count == 22);
}
