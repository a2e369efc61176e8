#include "cases/case_file.hpp"
#include "cli/run.hpp"
#include "support/memory_files.hpp"
#include "support/shown.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <string>

/// Runs the commands that docs/threshold.md shows.
TEST_CASE("docs/threshold.md shows what pace prints") {
    using namespace lengthwise;
    auto const shown = support::shown_on(support::bytes_of(LENGTHWISE_ROOT "/docs/threshold.md"));
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
