#include "report/markdown.hpp"

#include "report/width.hpp"

namespace lengthwise::report {

std::string markdown(std::string_view text) {
    constexpr std::string_view signs = "\\`*_[]<>&#~|!";
    std::string safe;
    for (char const c : visible(text)) {
        if (signs.find(c) != std::string_view::npos) {
            safe += '\\';
        }
        safe += c;
    }
    return safe;
}

} // namespace lengthwise::report
