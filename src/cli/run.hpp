#pragma once

#include "cli/console.hpp"
#include "cli/files.hpp"

#include <string>
#include <vector>

namespace lengthwise::cli {

/// The whole program but for the process around it: reads the options, runs the command,
/// gives the exit code. `arguments` are those behind the program's name.
[[nodiscard]] int run(std::vector<std::string> const& arguments, Files& files, Surroundings const& around,
                      Output& out, Output& err);

} // namespace lengthwise::cli
