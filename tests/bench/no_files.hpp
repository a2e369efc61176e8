#pragma once

#include "grammar/bundle.hpp"

#include <string>
#include <variant>

namespace lengthwise::bench {

/// The generated plan includes nothing.
class NoFiles final : public grammar::Reader {
  public:
    std::variant<Text, Refusal> read(std::string const&, std::uint64_t) override {
        return Refusal{"no such file"};
    }
    std::variant<Path, Refusal> resolve_links(std::string const&) override { return Refusal{"no such file"}; }
};

} // namespace lengthwise::bench
