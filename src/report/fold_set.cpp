#include "report/fold_set.hpp"

#include "report/width.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::report {
namespace {

constexpr std::size_t hang = 2;
constexpr std::size_t none = 0;

bool begins_with_one_of(std::string_view rest, auto const& openers) {
    return std::any_of(openers.begin(), openers.end(), [&](auto opener) { return rest.starts_with(opener); });
}

/// Can a line end at the blank before `rest`? A list of times or gear stays together.
bool opens_a_phrase(std::string_view rest, bool behind_comma) {
    constexpr std::array<std::string_view, 4> joints{"/ ", "+ ", "rest ", "on "};
    constexpr std::array<std::string_view, 6> selectors{"odds ",  "evens ", "every ",
                                                        "first ", "next ",  "last "};
    return behind_comma ? begins_with_one_of(rest, selectors) : begins_with_one_of(rest, joints);
}

/// The blanks at which a line can end: the last one that fits of each sort.
struct Breaks {
    std::size_t phrase = none;  ///< before `/ + rest on` or a selector
    std::size_t blank = none;   ///< outside strings
    std::size_t in_note = none; ///< inside a string
};

/// Byte offsets of the last breaks within `fits` bytes. `quoted`: the text begins inside a string.
Breaks breaks_within(std::string_view text, std::size_t fits, bool quoted) {
    Breaks breaks;
    for (std::size_t i = 0; i < text.size() && i <= fits; ++i) {
        if (text[i] == '\\' && quoted) {
            ++i;
        } else if (text[i] == '"') {
            quoted = !quoted;
        } else if (text[i] == ' ' && i > 0) {
            bool const phrase = !quoted && opens_a_phrase(text.substr(i + 1), text[i - 1] == ',');
            (quoted ? breaks.in_note : breaks.blank) = i;
            breaks.phrase = phrase ? i : breaks.phrase;
        }
    }
    return breaks;
}

/// A phrase's end, unless that would leave the line half empty without need.
std::size_t best(Breaks const& breaks, std::string_view text, std::size_t fits, std::size_t room) {
    auto const rest = text.substr(breaks.phrase + 1);
    bool const rest_fits = bytes_within(rest, room - hang) == rest.size();
    if (breaks.phrase != none && (rest_fits || breaks.phrase * 2 >= fits)) {
        return breaks.phrase;
    }
    if (breaks.blank != none && breaks.blank * 2 >= fits) {
        return breaks.blank;
    }
    auto const any = std::max({breaks.blank, breaks.in_note, breaks.phrase});
    return any != none ? any : fits;
}

bool ends_inside_string(std::string_view text, bool quoted) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '\\' && quoted) {
            ++i;
        } else if (text[i] == '"') {
            quoted = !quoted;
        }
    }
    return quoted;
}

} // namespace

std::vector<std::string> fold_set(std::string_view set, std::size_t width) {
    std::vector<std::string> lines;
    bool quoted = false;
    width = std::max<std::size_t>(width, 4);
    while (true) {
        auto const indent = lines.empty() ? 0 : hang;
        auto const room = width - indent;
        auto const fits = bytes_within(set, room);
        auto const end = fits == set.size() ? fits : best(breaks_within(set, fits, quoted), set, fits, width);
        lines.push_back(std::string(indent, ' ').append(set.substr(0, end)));
        quoted = ends_inside_string(set.substr(0, end), quoted);
        set.remove_prefix(end);
        set.remove_prefix(!set.empty() && set.front() == ' ' ? 1 : 0);
        if (set.empty()) {
            return lines;
        }
    }
}

} // namespace lengthwise::report
