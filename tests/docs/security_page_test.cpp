#include "grammar/limits.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <sstream>
#include <string>
#include <utility>
#include <vector>

namespace limits = lengthwise::limits;

TEST_CASE("the page on security has the limits of the program, all of them") {
    auto const page = lengthwise::support::bytes_of(LENGTHWISE_ROOT "/docs/SECURITY.md");
    std::vector<std::pair<std::string, std::string>> const rows{
        {"one file", fmt::format("{} MiB", limits::file_bytes >> 20U)},
        {"a file with all it includes", fmt::format("{} MiB", limits::bundle_bytes >> 20U)},
        {"one line", fmt::format("{} KiB", limits::line_bytes >> 10U)},
        {"groups in groups", fmt::format("{}", limits::nesting)},
        {"files in files", fmt::format("{}", limits::include_depth)},
        {"files of one plan", fmt::format("{}", limits::include_files)},
        {"sections of one session", fmt::format("{}", limits::session_sections)},
        {"the count before `x`", fmt::format("{}", limits::repeat)},
        {"one rep", fmt::format("{} km", limits::rep_km)},
        {"one session", fmt::format("{} km", limits::session_km)},
        {"reps of one session", fmt::format("{}", limits::session_reps)},
        {"time of one session", fmt::format("{} h", limits::session_hours)},
        {"further readings of sets, a session", fmt::format("{}", limits::session_contexts)},
        {"further readings of sets, a file", fmt::format("{}", limits::file_contexts)},
        {"lane", fmt::format("{}", limits::lanes)},
        {"week", fmt::format("{}", limits::weeks)},
        {"findings shown, of each severity", fmt::format("{}", limits::findings_shown)},
    };
    for (auto const& [what, most] : rows) {
        CAPTURE(what);
        CHECK(page.find(fmt::format("\n| {} | {} |\n", what, most)) != std::string::npos);
    }

    // A limit that is added has to be told too.
    std::istringstream header{lengthwise::support::bytes_of(LENGTHWISE_ROOT "/grammar/limits.hpp")};
    std::size_t constants = 0;
    for (std::string line; std::getline(header, line);) {
        constants += line.starts_with("inline constexpr") ? 1U : 0U;
    }
    CHECK(constants == rows.size());
}
