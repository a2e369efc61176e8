#pragma once

#include "cli/console.hpp"
#include "cli/files.hpp"
#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"
#include "report/choose.hpp"
#include "report/findings_text.hpp"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

/// From names on the command line to plans.
namespace lengthwise::cli {

/// How a command ends.
inline constexpr int fine = 0;
inline constexpr int has_errors = 1; ///< a plan has errors, or what was asked is not so
inline constexpr int misused = 2;    ///< not understood, or a file that cannot be read or written

/// A file with all it includes, and what it means.
struct Loaded {
    std::string name; ///< as findings call it; "-" for standard input
    grammar::Bundle bundle;
    plan::Resolved resolved; ///< of no use when there are errors
    Diagnostics errors;      ///< of reading and resolving, in the order of the text

    [[nodiscard]] plan::Plan const& plan() const { return resolved.plan; }
    [[nodiscard]] report::Sources sources() const;
};

/// The files that arguments stand for.
struct Named {
    std::vector<std::string> files;
    bool several = false; ///< more than one, or a folder: then each is named in what is shown
    int code = fine;      ///< of what cannot be read, which has been said
};

/// Folders become their files; nothing becomes standard input, which must not be a terminal then.
[[nodiscard]] Named named(std::vector<std::string> const& arguments, Files& files, Console& console);

/// The text of a file, "-" for standard input. What cannot be read is said, and gives nothing.
[[nodiscard]] std::optional<std::string> text_of(std::string const& name, Files& files, Console& console);

/// Reads and resolves; nothing as above.
[[nodiscard]] std::optional<Loaded> load(std::string const& name, Files& files, Console& console);

/// The plan of a command that takes one, without errors; else how the command ends, which has been said.
struct One {
    std::optional<Loaded> plan;
    int code = fine;
};
[[nodiscard]] One load_one(std::string_view command, std::vector<std::string> const& arguments, Files& files,
                           Console& console);

/// Shows a file's errors on standard error, and that there is nothing else to see.
void say_errors(Loaded const& loaded, Console& console);

/// Shows the warnings that belong to the figures of these sessions on standard error.
void say_warnings(Loaded const& loaded, report::Scope scope, Console& console);

[[nodiscard]] report::FindingsStyle style_of(Console const& console);

} // namespace lengthwise::cli
