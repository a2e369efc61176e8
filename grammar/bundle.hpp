#pragma once

#include "diagnostic.hpp"
#include "source.hpp"
#include "tree.hpp"

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <variant>

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
    struct Path {
        std::string absolute; ///< links resolved, `.` and `..` taken out
    };
    struct Refusal {
        std::string reason; ///< "is a directory", "no such file", …: fits behind the file's name
    };
    /// The whole of a regular file, within `limit` bytes and limits::line_bytes a line.
    [[nodiscard]] virtual std::variant<Text, Refusal> read(std::string const& path, std::uint64_t limit) = 0;

    /// Where a file really lies.
    [[nodiscard]] virtual std::variant<Path, Refusal> resolve_links(std::string const& path) = 0;
};

struct File {
    Source source;
    Tree tree;
};

/// A plan's file and all that it includes, parsed. Addresses of files are stable.
struct Bundle {
    std::deque<File> files; ///< the root first, then the nearer includes before the deeper ones
    Diagnostics findings;   ///< of parsing and including, errors only, in the order of the text

    [[nodiscard]] File const& root() const { return files.front(); }
    /// The file that holds an offset.
    [[nodiscard]] File const& file_of(std::uint32_t offset) const;
};

/// Parses `text`, called `name` in findings, and the files it includes. `path` is
/// where it was read from; without one (standard input) an include is an error.
/// An include's path counts from the folder where the including file really lies,
/// and must lie in or below the root's. A file reached twice, the root among them, is
/// read once. Rules: docs/notation.md, "Named sets".
[[nodiscard]] Bundle bundle(std::string name, std::string text, std::optional<std::string> const& path,
                            Reader& reader);

} // namespace lengthwise::grammar
