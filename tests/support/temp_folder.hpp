#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::support {

/// A folder of its own on the real disk, gone with all in it at the end of the test.
/// Everybody may use it, so that tests can act as another user.
class TempFolder {
  public:
    TempFolder();
    ~TempFolder();
    TempFolder(TempFolder const&) = delete;
    TempFolder& operator=(TempFolder const&) = delete;

    [[nodiscard]] std::string path(std::string_view name = {}) const;

    /// Writes a file, folders above it included, and gives its path.
    std::string file(std::string_view name, std::string_view bytes) const;

    /// Names of all that lies directly in it, sorted.
    [[nodiscard]] std::vector<std::string> names() const;

    /// The bytes of each of these, by its name.
    [[nodiscard]] std::map<std::string, std::string> files() const;

  private:
    std::filesystem::path root_;
};

/// The bytes of a file.
[[nodiscard]] std::string bytes_of(std::string const& path);

} // namespace lengthwise::support
