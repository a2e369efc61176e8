#pragma once

#include <string>
#include <vector>

namespace lengthwise::support {

/// A command that a page shows, and all that it prints.
struct Shown {
    std::string command; ///< without the program's name
    std::string output;
};

/// Of a page's fenced `text` blocks that begin with `$ lengthwise …`.
[[nodiscard]] inline std::vector<Shown> shown_on(std::string const& page) {
    std::string const opening = "```text\n$ lengthwise ";
    std::vector<Shown> all;
    for (auto at = page.find(opening); at != std::string::npos; at = page.find(opening, at)) {
        at += opening.size();
        auto const line_end = page.find('\n', at);
        auto const end = page.find("```\n", line_end);
        all.push_back({page.substr(at, line_end - at), page.substr(line_end + 1, end - line_end - 1)});
    }
    return all;
}

} // namespace lengthwise::support
