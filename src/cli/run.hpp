#pragma once

#include "cli/console.hpp"
#include "cli/files.hpp"

#include <functional>
#include <string>
#include <vector>

namespace lengthwise::cli {

struct Cards;

/// Paints cards, in a program of its own: it loads some forty libraries, which no other command needs.
using CardsCommand = std::function<int(Cards const&, Files&, Console&)>;

/// The whole program but for the process around it: reads the options, runs the command,
/// gives the exit code. `arguments` are those behind the program's name.
[[nodiscard]] int run(std::vector<std::string> const& arguments, Files& files, Surroundings const& around,
                      Output& out, Output& err, CardsCommand const& cards = {});

} // namespace lengthwise::cli
