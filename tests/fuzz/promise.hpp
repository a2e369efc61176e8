#pragma once

#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

namespace lengthwise::fuzz {

/// Says on standard error which promise was broken, and with what, and ends the process as a crash would.
[[noreturn]] inline void broken(std::string_view sentence, std::string_view what = {}) {
    auto const text =
        "broken: " + std::string{sentence} + (what.empty() ? "" : ": ") + std::string{what} + '\n';
    std::fputs(text.c_str(), stderr);
    std::abort();
}

inline void promise(bool kept, std::string_view sentence, std::string_view what = {}) {
    if (!kept) {
        broken(sentence, what);
    }
}

/// For checks that say what is wrong, or nothing.
inline void no_fault(std::string_view fault, std::string_view sentence) {
    promise(fault.empty(), sentence, fault);
}

} // namespace lengthwise::fuzz
