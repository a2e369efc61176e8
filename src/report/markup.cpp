#include "report/markup.hpp"

#include "report/width.hpp"

namespace lengthwise::report {

std::string markup(std::string_view text) {
    std::string safe;
    for (char const c : visible(text)) {
        switch (c) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        default:
            safe += c;
        }
    }
    return safe;
}

} // namespace lengthwise::report
