#include "support/memory_reader.hpp"

#include <filesystem>

namespace lengthwise::support {

std::variant<grammar::Reader::Text, grammar::Reader::Refusal> MemoryReader::read(std::string const& path,
                                                                                 std::uint64_t limit) {
    reads.push_back(path);
    if (auto const refusal = refusals.find(path); refusal != refusals.end()) {
        return Refusal{refusal->second};
    }
    auto const file = files.find(path);
    if (file == files.end()) {
        return Refusal{"no such file"};
    }
    if (file->second.size() > limit) {
        return Refusal{"too large"};
    }
    return Text{file->second};
}

std::variant<grammar::Reader::Path, grammar::Reader::Refusal>
MemoryReader::resolve_links(std::string const& path) {
    auto real = std::filesystem::path{path}.lexically_normal().string();
    if (auto const link = links.find(real); link != links.end()) {
        real = link->second;
    }
    if (!files.contains(real) && !refusals.contains(real)) {
        return Refusal{"no such file"};
    }
    return Path{real};
}

} // namespace lengthwise::support
