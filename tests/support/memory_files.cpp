#include "support/memory_files.hpp"

namespace lengthwise::support {
namespace {

std::string absolute(std::string const& path) {
    return path.starts_with('/') ? path : "/" + path;
}

} // namespace

std::variant<cli::Files::Text, cli::Files::Refusal> MemoryFiles::read(std::string const& path,
                                                                      std::uint64_t limit) {
    std::scoped_lock const one_at_a_time{reading_};
    return disk.read(absolute(path), limit);
}

std::variant<cli::Files::Path, cli::Files::Refusal> MemoryFiles::resolve_links(std::string const& path) {
    return disk.resolve_links(absolute(path));
}

std::variant<cli::Files::Text, cli::Files::Refusal> MemoryFiles::read_standard_input(std::uint64_t limit) {
    if (standard_input.size() > limit) {
        return Refusal{"too large"};
    }
    return Text{standard_input};
}

std::variant<std::vector<std::string>, cli::Files::Refusal> MemoryFiles::expand(std::string const& path) {
    auto const prefix = path.ends_with('/') ? absolute(path) : absolute(path) + "/";
    std::vector<std::string> plans;
    bool folder = false;
    for (auto const& [name, bytes] : disk.files) {
        bool const inside = name.starts_with(prefix);
        folder = folder || inside;
        if (inside && name.ends_with(".swim") && name.find('/', prefix.size()) == std::string::npos) {
            plans.push_back((path.ends_with('/') ? path : path + "/") + name.substr(prefix.size()));
        }
    }
    if (!folder) {
        return std::vector{path};
    }
    if (plans.empty()) {
        return Refusal{"holds no .swim file"};
    }
    return plans;
}

std::optional<cli::Files::Refusal> MemoryFiles::write(std::string const& path, std::string_view bytes,
                                                      cli::Existing existing) {
    auto const name = absolute(path);
    bool const there = disk.files.contains(name);
    if (there && existing == cli::Existing::keep) {
        return Refusal{"there already; --force replaces it"};
    }
    if (!full.empty()) {
        return Refusal{full + (there ? "; old one kept" : "; nothing written")};
    }
    disk.files[name] = bytes;
    return std::nullopt;
}

std::optional<cli::Files::Refusal> MemoryFiles::replace(std::string const& path, std::string_view bytes,
                                                        std::string_view was) {
    if (disk.files[absolute(path)] != was) {
        return Refusal{"changed since it was read"};
    }
    return write(path, bytes, cli::Existing::replace);
}

} // namespace lengthwise::support
