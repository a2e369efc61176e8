#pragma once

#include <array>
#include <string>
#include <string_view>

namespace lengthwise::cli {

struct Command {
    std::string_view name;
    std::string_view gist;  ///< what a coach has it for, 22 cells at most
    std::string_view takes; ///< behind it: "FILE", "FILE...", "SWIM...", "WORD", or nothing
};

/// All commands, by what a coach wants: to begin, to mend, to see it, to take it along, to understand.
/// Help, man page and completions are made of it.
inline constexpr std::array commands{
    Command{"new", "a first plan", ""},
    Command{"compose", "a plan to race day", ""},
    Command{"check", "what to mend", "FILE..."},
    Command{"tidy", "the neat spelling", "FILE..."},
    Command{"tally", "metres, lengths, time", "FILE..."},
    Command{"deck", "for the pool side", "FILE"},
    Command{"chart", "longest rep and race", "FILE"},
    Command{"cards", "waterproof cards", "FILE"},
    Command{"export", "for other programs", "FILE..."},
    Command{"pace", "threshold from swims", "SWIM..."},
    Command{"explain", "any word or rule", "WORD"},
};

[[nodiscard]] std::string general_help();
[[nodiscard]] std::string_view help_of(std::string_view command); ///< empty for what is no command

} // namespace lengthwise::cli
