#include "cli/progress.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise::cli;
using namespace std::chrono_literals;

namespace {

/// Steps at these moments, counted from the start; what then stands in the terminal's stream.
std::string drawn(std::vector<std::chrono::milliseconds> const& moments, std::size_t files,
                  bool watched = true) {
    TextOutput err;
    Progress::Moment now{};
    Progress progress{err, watched, "tally", files, [&now] { return now; }};
    for (auto const moment : moments) {
        now = Progress::Moment{} + moment;
        progress.step();
    }
    return err.text;
}

} // namespace

TEST_CASE("how far it is, after a second, and not faster than it can be read", "[progress]") {
    CHECK(drawn({300ms, 600ms, 999ms}, 10).empty());
    CHECK(drawn({300ms, 1000ms}, 1200) == "tally: 2 of 1200 files");
    CHECK(drawn({1000ms, 1050ms, 1099ms}, 10) == "tally: 1 of 10 files");
    CHECK(drawn({1000ms, 1050ms, 1100ms}, 10) ==
          "tally: 1 of 10 files\r" + std::string(20, ' ') + "\rtally: 3 of 10 files");
}

TEST_CASE("nothing is drawn of the last file, nor where nobody watches", "[progress]") {
    CHECK(drawn({1500ms}, 1).empty());
    CHECK(drawn({1500ms, 1800ms}, 10, false).empty());
}

TEST_CASE("the line wipes itself, for other text and at the end", "[progress]") {
    TextOutput err;
    {
        Progress::Moment now{};
        Progress progress{err, true, "tidy", 3, [&now] { return now; }};
        progress.wipe();
        CHECK(err.text.empty());
        now += 2s;
        progress.step();
        progress.wipe();
        progress.wipe();
        CHECK(err.text == "tidy: 1 of 3 files\r" + std::string(18, ' ') + "\r");
        now += 1s;
        progress.step();
        err.text.clear();
    }
    CHECK(err.text == "\r" + std::string(18, ' ') + "\r");
}
