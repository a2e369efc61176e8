#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// A golden case: a command, the files it works on, and all it must say, in one file.
///
///     # what this case shows
///     --- file plan.swim            the files, one section each
///     session Tue
///     …
///     --- input                     what stands on standard input, if anything
///     --- run tally plan.swim       the command; words may stand in "double quotes"
///     --- out                       standard output, exactly
///     --- err                       standard error, exactly
///     --- after plan.swim           what a file holds afterwards, where that matters
///     --- exit 0
///
/// A section's text is all lines up to the next `--- `. A text that does not end in a line
/// feed ends in a line `\`; one that needs a line beginning with `--- ` has a blank before it.
namespace lengthwise::cases {

struct Section {
    std::string head; ///< behind `--- `: "file plan.swim"
    std::string body;

    [[nodiscard]] std::string_view kind() const;     ///< "file"
    [[nodiscard]] std::string_view argument() const; ///< "plan.swim"
};

struct CaseFile {
    std::string title; ///< the lines before the first section
    std::vector<Section> sections;

    [[nodiscard]] Section const* find(std::string_view kind) const;
    [[nodiscard]] std::string text_of(std::string_view kind) const;
};

[[nodiscard]] CaseFile parse_case(std::string_view text);
[[nodiscard]] std::string write_case(CaseFile const& file);

/// "deck plan.swim --session \"Long hall\"" taken apart.
[[nodiscard]] std::vector<std::string> words_of(std::string_view command);

} // namespace lengthwise::cases
