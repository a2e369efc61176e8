#pragma once

#include "support/unsafe_text.hpp"

#include <functional>
#include <string>
#include <vector>

namespace lengthwise::support {

/// One run of the built program.
struct Run {
    std::vector<std::string> arguments;
    std::string input{};               ///< on standard input
    std::function<void()> before = {}; ///< in the child, just before the program starts
    std::string folder{};              ///< to start in; empty: where the test is
};

struct Ending {
    int code = 0; ///< its exit code, or minus the signal that ended it (SIGALRM: it hung)
    std::string out;
    std::string err;
    double seconds = 0; ///< of processor time: the machine may be busy with other things
    long kib = 0;       ///< the most memory it had

    [[nodiscard]] std::string all() const { return out + err; }
};

/// Runs `lengthwise` as it was built beside the tests and waits for its end, at most 20 s.
[[nodiscard]] Ending run(Run const& run);

} // namespace lengthwise::support
