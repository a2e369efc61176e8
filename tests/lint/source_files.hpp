#pragma once

#include <string>
#include <vector>

/// The project's own sources, as text, for tests of how they are written.
namespace lengthwise::lint {

struct File {
    std::string path; ///< from the root: "src/plan/resolve.cpp"
    std::string text;

    [[nodiscard]] std::string folder() const; ///< "src/plan", "grammar"
};

/// A line that one of them includes.
struct Include {
    std::string name; ///< without its marks: "plan/plan.hpp", "vector"
    bool system;      ///< in angle brackets
};
[[nodiscard]] std::vector<Include> includes_of(File const& file);

/// All `.hpp` and `.cpp` below grammar/ and src/.
[[nodiscard]] std::vector<File> source_files();

} // namespace lengthwise::lint
