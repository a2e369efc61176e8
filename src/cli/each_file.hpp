#pragma once

#include "cli/console.hpp"
#include "cli/plans.hpp"

#include <functional>
#include <string>
#include <string_view>

/// The same work on many files, on all cores. What is said stays in the order of the files, and one
/// that cannot be read takes nothing from the others.
namespace lengthwise::cli {

/// What came of one file.
struct Outcome {
    int code = fine;
    /// What is left to do when its turn has come, for what one file does at a time: writing.
    /// Gives an exit code too.
    std::function<int(Console&)> then{};
};

/// Runs beside others of its kind: it may speak through its console and read files, no more.
using FileWork = std::function<Outcome(std::string const& name, Console& console)>;

/// What stands on standard output before what a file writes there, were it an empty text.
struct Joint {
    std::string_view before_first{};
    std::string_view between{};
};

/// `command` is what the progress line calls itself. At most twice as many plans as there are cores are
/// in memory at a time, and what sixteen times as many have said. Gives the worst exit code, that of naming
/// them included.
int each_file(std::string_view command, Named const& named, Console& console, FileWork const& work,
              Joint joint = {});

} // namespace lengthwise::cli
