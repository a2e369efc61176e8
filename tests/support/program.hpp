#pragma once

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

/// What makes text unfit for a terminal: a control character other than a line end, a
/// bidirectional control, a byte that is no UTF-8. Empty when there is none.
[[nodiscard]] std::string unsafe_in(std::string const& text);

} // namespace lengthwise::support
