#pragma once

#include "check/inquiry.hpp"
#include "grammar/diagnostic.hpp"

#include <string_view>

namespace lengthwise::check {

/// One rule: how it judges, and all that people need to know of it. Each stands in a
/// file of its own, its words beside its arithmetic; `register.cpp` lists them.
struct Rule {
    std::string_view name;     ///< as plan/rules.hpp has it
    Severity severity;         ///< of its heaviest finding
    std::string_view measures; ///< half a sentence behind the name
    std::string_view limit;    ///< the default, as the notation spells it; empty: none
    std::string_view meaning;  ///< what is asked, in full
    std::string_view why;
    std::string_view source; ///< published, or "common practice, no published source"
    std::string_view good;   ///< a line or two that meets it …
    std::string_view bad;    ///< … and one that does not; both may be empty
    std::string_view mend;   ///< what to do about a finding
    void (*judge)(Inquiry& inquiry);
};

inline constexpr std::string_view practice = "common practice, no published source";

} // namespace lengthwise::check
