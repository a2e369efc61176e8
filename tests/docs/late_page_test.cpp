#include "cases/case_file.hpp"
#include "cli/run.hpp"
#include "support/memory_files.hpp"
#include "support/shown.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <string>

namespace {

/// The page's first block of notation.
std::string plan_on(std::string const& page) {
    std::string const opening = "```swim\n";
    auto const begin = page.find(opening) + opening.size();
    return page.substr(begin, page.find("```\n", begin) - begin);
}

} // namespace

TEST_CASE("docs/late.md shows what deck says of its plan", "[late]") {
    using namespace lengthwise;
    auto const page = support::bytes_of(LENGTHWISE_ROOT "/docs/late.md");
    auto const shown = support::shown_on(page);
    CHECK(shown.size() == 2);
    for (auto const& [command, output] : shown) {
        INFO(command);
        support::MemoryFiles files;
        files.disk.files["/plan.swim"] = plan_on(page);
        cli::TextOutput out;
        cli::TextOutput err;
        CHECK(cli::run(cases::words_of(command), files, {}, out, err) == 0);
        CHECK(out.text == output);
    }
}
