#pragma once

#include "cli/files.hpp"
#include "support/memory_reader.hpp"

#include <mutex>
#include <string>

namespace lengthwise::support {

/// The disk in memory: files under absolute paths, as in MemoryReader. Relative paths
/// count from "/", and a folder is there when a file lies in it.
class MemoryFiles final : public cli::Files {
  public:
    MemoryReader disk;
    std::string standard_input;
    std::string full; ///< when not empty, the reason why nothing can be written

    std::variant<Text, Refusal> read(std::string const& path, std::uint64_t limit) override;
    std::variant<Path, Refusal> resolve_links(std::string const& path) override;
    std::variant<Text, Refusal> read_standard_input(std::uint64_t limit) override;
    std::variant<std::vector<std::string>, Refusal> expand(std::string const& path) override;
    std::optional<Refusal> write(std::string const& path, std::string_view bytes,
                                 cli::Existing existing) override;
    std::optional<Refusal> replace(std::string const& path, std::string_view bytes,
                                   std::string_view was) override;

  private:
    std::mutex reading_; ///< many threads read
};

} // namespace lengthwise::support
