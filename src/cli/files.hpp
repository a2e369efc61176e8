#pragma once

#include "grammar/bundle.hpp"

#include <cstdint>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// All that commands do with the disk. Tests put files in memory in its place
/// (tests/support/memory_files.hpp). Files may be read, and links and folders followed, by many threads
/// at a time; standard input is read and files are written by one.
namespace lengthwise::cli {

/// May a file that is there be replaced?
enum class Existing : std::uint8_t { keep, replace };

class Files : public grammar::Reader {
  public:
    /// All of standard input, within `limit` bytes; it may be of any kind.
    [[nodiscard]] virtual std::variant<Text, Refusal> read_standard_input(std::uint64_t limit) = 0;

    /// What a file or folder on the command line stands for: a folder for its `*.swim`, in the
    /// order of their names, hidden ones and folders inside it left out (a plan is one file, and
    /// the files in folders below are mostly what it includes); anything else for itself.
    [[nodiscard]] virtual std::variant<std::vector<std::string>, Refusal> expand(std::string const& path) = 0;

    /// Puts a whole file in place: afterwards there is either all of `bytes` or, with a refusal,
    /// what was there before. A refusal's reason says so: "disk full; old one kept".
    [[nodiscard]] virtual std::optional<Refusal> write(std::string const& path, std::string_view bytes,
                                                       Existing existing) = 0;

    /// The same in the place of what was read from `path`. Refuses where the file holds anything but `was` by
    /// now: what somebody else has written there meanwhile is not lost.
    [[nodiscard]] virtual std::optional<Refusal> replace(std::string const& path, std::string_view bytes,
                                                         std::string_view was) = 0;
};

/// The real one. Reads regular files only; what else has a name is refused after an open
/// that does not wait (a pipe without a writer would). Gives up on a file as soon as a line
/// passes limits::line_bytes, so that 2 GB without a line end cost nothing. That is a refusal
/// with the line's number: a text that was cut must never pass for a whole one. A file that changes while it
/// is read is refused too: its two halves may belong to two plans.
///
/// Writes beside the target, into a file that only the owner may read, then flushes it to
/// the disk and renames it. A link stays, the file it stands for is replaced; that file's
/// permissions and, where the system allows it, owner are kept. What is not a regular file,
/// or is write-protected, is refused. SIGINT and the like remove the unfinished file
/// (process.hpp); after a SIGKILL it stays, under a name that begins with `.lengthwise-`. Whether the old
/// file still is what was read is looked up last, just before the rename.
class Disk final : public Files {
  public:
    std::variant<Text, Refusal> read(std::string const& path, std::uint64_t limit) override;
    std::variant<Path, Refusal> resolve_links(std::string const& path) override;
    std::variant<Text, Refusal> read_standard_input(std::uint64_t limit) override;
    std::variant<std::vector<std::string>, Refusal> expand(std::string const& path) override;
    std::optional<Refusal> write(std::string const& path, std::string_view bytes, Existing existing) override;
    std::optional<Refusal> replace(std::string const& path, std::string_view bytes,
                                   std::string_view was) override;

  private:
    std::mutex reading_; ///< one file at a time, so that many threads need no more open files than one
};

} // namespace lengthwise::cli
