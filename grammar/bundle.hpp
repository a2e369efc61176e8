#pragma once

#include "diagnostic.hpp"
#include "source.hpp"
#include "tree.hpp"

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lengthwise::grammar {

/// How the outside reads files. Implementations: the command line's disk, a
/// test's memory.
class Reader {
  public:
    Reader() = default;
    Reader(Reader const&) = delete;
    Reader& operator=(Reader const&) = delete;
    virtual ~Reader() = default;

    struct Text {
        std::string bytes;
    };
    struct Refusal {
        std::string reason; ///< "is a directory", "no such file", …: fits behind the file's name
    };
    /// The whole of a regular file, within `limit` bytes.
    [[nodiscard]] virtual std::variant<Text, Refusal> read(std::string const& path, std::uint64_t limit) = 0;

    /// The path with links resolved and `.`, `..` taken out; nothing if there is no such file.
    [[nodiscard]] virtual std::optional<std::string> resolve_links(std::string const& path) = 0;
};

struct File {
    Source source;
    Tree tree;
};

/// A plan's file and all that it includes, parsed. Addresses of files are stable.
struct Bundle {
    std::deque<File> files; ///< the root first
    Diagnostics findings;   ///< of parsing and including, errors only

    [[nodiscard]] File const& root() const { return files.front(); }
    /// The file that holds an offset.
    [[nodiscard]] File const& file_of(std::uint32_t offset) const;
};

/// Parses `text`, called `name` in findings, and the files it includes. `path` is
/// where it was read from; without one (standard input) an include is an error.
/// Rules: docs/notation.md, "Named sets".
[[nodiscard]] Bundle bundle(std::string name, std::string text, std::optional<std::string> path,
                            Reader& reader);

} // namespace lengthwise::grammar
