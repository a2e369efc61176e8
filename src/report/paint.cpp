#include "report/paint.hpp"

#include <array>

namespace lengthwise::report {
namespace {

/// ECMA-48 "select graphic rendition", in the order of Ink.
constexpr std::array<std::string_view, 6> codes{"", "1", "2", "31", "33", "34"};

} // namespace

std::string Paint::operator()(Ink ink, std::string_view text) const {
    if (!colour_ || ink == Ink::plain || text.empty()) {
        return std::string{text};
    }
    std::string painted{"\033["};
    painted.append(codes[static_cast<std::size_t>(ink)]).append("m").append(text).append("\033[0m");
    return painted;
}

} // namespace lengthwise::report
