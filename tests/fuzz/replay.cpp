#include "fuzz/target.hpp"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

/// Runs a target over files and folders of files, each named before it is run, so that a crash is the last
/// one's. A folder may be missing.
namespace {

namespace fs = std::filesystem;

std::vector<fs::path> files_of(int count, char** arguments) {
    std::vector<fs::path> files;
    for (int i = 1; i < count; ++i) {
        if (fs::is_directory(arguments[i])) {
            for (auto const& entry : fs::directory_iterator{arguments[i]}) {
                files.push_back(entry.path());
            }
        } else if (fs::exists(arguments[i])) {
            files.emplace_back(arguments[i]);
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

std::string content(fs::path const& file) {
    std::ifstream stream{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, {}};
}

} // namespace

int main(int count, char** arguments) {
    auto const files = files_of(count, arguments);
    for (auto const& file : files) {
        std::printf("%s\n", file.c_str());
        std::fflush(stdout);
        lengthwise::fuzz::run(content(file));
    }
    std::printf("%zu inputs\n", files.size());
    return files.empty() ? 1 : 0;
}
