#pragma once

#include "cli/run.hpp"
#include "support/memory_files.hpp"

#include <string>
#include <vector>

namespace lengthwise::support {

struct Answer {
    int code = 0;
    std::string out;
    std::string err;
};

/// The whole program on files in memory.
[[nodiscard]] inline Answer run_in_memory(std::vector<std::string> const& arguments, MemoryFiles& files,
                                          cli::Surroundings const& around = {}) {
    cli::TextOutput out;
    cli::TextOutput err;
    auto const code = cli::run(arguments, files, around, out, err);
    return {code, out.text, err.text};
}

} // namespace lengthwise::support
