#include "support/temp_folder.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <stdexcept>

#include <cstdlib>
#include <sys/stat.h>

namespace lengthwise::support {

namespace fs = std::filesystem;

TempFolder::TempFolder() {
    auto name = (fs::temp_directory_path() / "lengthwise-test-XXXXXX").native();
    if (mkdtemp(name.data()) == nullptr) {
        throw std::runtime_error{"no temporary folder"};
    }
    chmod(name.c_str(), 0777);
    root_ = fs::canonical(name);
}

TempFolder::~TempFolder() {
    std::error_code ignored;
    fs::remove_all(root_, ignored);
}

std::string TempFolder::path(std::string_view name) const {
    return name.empty() ? root_.native() : (root_ / name).native();
}

std::string TempFolder::file(std::string_view name, std::string_view bytes) const {
    auto const path = root_ / name;
    fs::create_directories(path.parent_path());
    std::ofstream{path, std::ios::binary}.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return path.native();
}

std::vector<std::string> TempFolder::names() const {
    std::vector<std::string> result;
    for (auto const& entry : fs::directory_iterator{root_}) {
        result.push_back(entry.path().filename().native());
    }
    std::ranges::sort(result);
    return result;
}

std::map<std::string, std::string> TempFolder::files() const {
    std::map<std::string, std::string> found;
    for (auto const& name : names()) {
        found[name] = bytes_of(path(name));
    }
    return found;
}

std::string bytes_of(std::string const& path) {
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

} // namespace lengthwise::support
