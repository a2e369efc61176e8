#pragma once

#include "cli/console.hpp"
#include "cli/files.hpp"
#include "cli/options.hpp"

/// One function a command, each in a file of its name: it reads through `files`, speaks
/// through `console` and gives the exit code.
namespace lengthwise::cli {

int new_plan(New const& options, Files& files, Console& console);
int tally(Tally const& options, Files& files, Console& console);
int deck(Deck const& options, Files& files, Console& console);
int chart(Chart const& options, Files& files, Console& console);
int export_plans(Export const& options, Files& files, Console& console);
int check(Check const& options, Files& files, Console& console);
int tidy(Tidy const& options, Files& files, Console& console);
int pace(Pace const& options, Files& files, Console& console);
int compose(Compose const& options, Files& files, Console& console);
int explain(Explain const& options, Console& console);

} // namespace lengthwise::cli
