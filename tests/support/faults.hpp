#pragma once

#include <functional>
#include <string>

/// Calls of the system that go wrong in a program under test (tests/hostile/faults.cpp).
namespace lengthwise::support {

struct Fault {
    std::string call{}; ///< malloc, read, write, fsync, close, mkostemp, fchmod, rename, realpath, opendir
    long at = 1;        ///< the how manieth of these calls
    std::string what{}; ///< an errno; "errno+": from there on; "run": `meanwhile` first; "short"
    std::string
        program{}; ///< what the program's name ends in; empty: the one started first and all it becomes
    std::string meanwhile{};
    std::string clock{}; ///< the clock's seconds since 1970
};

/// False where a sanitizer keeps others from being loaded first.
[[nodiscard]] bool faults_can_be_made();

/// For Run::before.
[[nodiscard]] std::function<void()> making(Fault const& fault);

} // namespace lengthwise::support
