#include "cases/case_file.hpp"
#include "cli/run.hpp"
#include "support/memory_files.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

/// Runs the commands that docs/threshold.md shows: a fenced `text` block, `$ lengthwise …` and all
/// that it prints.
namespace {

struct Shown {
    std::string command;
    std::string output;
};

std::vector<Shown> shown_on(std::string const& page) {
    std::string const opening = "```text\n$ lengthwise ";
    std::vector<Shown> all;
    for (auto at = page.find(opening); at != std::string::npos; at = page.find(opening, at)) {
        at += opening.size();
        auto const line_end = page.find('\n', at);
        auto const end = page.find("```\n", line_end);
        all.push_back({page.substr(at, line_end - at), page.substr(line_end + 1, end - line_end - 1)});
    }
    return all;
}

} // namespace

TEST_CASE("docs/threshold.md shows what pace prints") {
    using namespace lengthwise;
    auto const shown = shown_on(support::bytes_of(LENGTHWISE_ROOT "/docs/threshold.md"));
    CHECK(shown.size() >= 2);
    for (auto const& [command, output] : shown) {
        INFO(command);
        support::MemoryFiles files;
        cli::TextOutput out;
        cli::TextOutput err;
        CHECK(cli::run(cases::words_of(command), files, {}, out, err) == 0);
        CHECK(out.text == output);
    }
}
