#pragma once

#include "cli/console.hpp"
#include "cli/files.hpp"
#include "cli/options.hpp"

namespace lengthwise::cli {

/// `compose --resume`: the weeks behind one of a plan's anew, all up to it byte for byte.
int resume(Compose const& options, Resume const& wish, Files& files, Console& console);

} // namespace lengthwise::cli
