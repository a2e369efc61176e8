#pragma once

#include "grammar/bundle.hpp"

#include <map>
#include <string>
#include <vector>

namespace lengthwise::support {

/// Files in memory, under absolute paths such as "/plans/six.swim".
class MemoryReader : public grammar::Reader {
  public:
    std::map<std::string, std::string> files;
    std::map<std::string, std::string> links;    ///< a link's path to the path of what it stands for
    std::map<std::string, std::string> refusals; ///< paths that exist and cannot be read, and why
    std::vector<std::string> reads;              ///< every path that was read, in order

    std::variant<Text, Refusal> read(std::string const& path, std::uint64_t limit) override;
    std::variant<Path, Refusal> resolve_links(std::string const& path) override;
};

} // namespace lengthwise::support
