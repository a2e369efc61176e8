#include "support/mutate.hpp"

#include <array>
#include <utility>

namespace lengthwise::test {

namespace {

// What is worth having in a wrong place: every sign, what is read only somewhere, figures at a limit.
constexpr auto strangers = std::to_array<std::string_view>({"(",
                                                            ")",
                                                            "+",
                                                            ",",
                                                            ", ",
                                                            "/",
                                                            " / ",
                                                            "-",
                                                            ":",
                                                            ": ",
                                                            "=",
                                                            "%",
                                                            "#",
                                                            "\"",
                                                            "\"a\"",
                                                            "\\",
                                                            "x",
                                                            "\xC3\x97",
                                                            " ",
                                                            "\t",
                                                            "\n",
                                                            "\r\n",
                                                            "\r",
                                                            "0",
                                                            "1",
                                                            "9999",
                                                            "10000",
                                                            "7000001",
                                                            "99999999999999999999",
                                                            "1/3",
                                                            " 1/3",
                                                            ".5",
                                                            "1:30",
                                                            ":30",
                                                            ":30:30",
                                                            "0:61",
                                                            "1:02:03",
                                                            "24:00",
                                                            "25h",
                                                            "20-40s",
                                                            "40-20s",
                                                            "95%",
                                                            "3rd",
                                                            "m",
                                                            "yd",
                                                            "lengths",
                                                            "s",
                                                            "min",
                                                            "breaths",
                                                            "2027-02-29",
                                                            "2028-02-29",
                                                            "plan",
                                                            "race",
                                                            "swimmer",
                                                            "before",
                                                            "set",
                                                            "include",
                                                            "pool",
                                                            "threshold",
                                                            "rest",
                                                            "factor",
                                                            "limit",
                                                            "allow",
                                                            "week",
                                                            "session",
                                                            "warm-up",
                                                            "warm up",
                                                            "drill",
                                                            "main",
                                                            "mian",
                                                            "swim down",
                                                            "pause",
                                                            "lane 1: ",
                                                            "if time: ",
                                                            "use",
                                                            "with ",
                                                            "pull buoy",
                                                            "fins",
                                                            "nothing",
                                                            "stops",
                                                            "as ",
                                                            "as needed",
                                                            "broken at ",
                                                            "for ",
                                                            "at ",
                                                            "per ",
                                                            "hold ",
                                                            "rpe ",
                                                            "on ",
                                                            "off ",
                                                            "odds ",
                                                            "every ",
                                                            "first ",
                                                            "front crawl",
                                                            "crawl",
                                                            "max",
                                                            "sprint",
                                                            "standard",
                                                            "open water",
                                                            "about ",
                                                            "reserve ",
                                                            "plus 5s",
                                                            "negative split",
                                                            "descend 1-4",
                                                            "build",
                                                            "Tue",
                                                            "from ",
                                                            "\xE2\x80\x93",
                                                            "\xC2\xA0",
                                                            "\xEF\xBB\xBF",
                                                            "\xFF",
                                                            "\x7F",
                                                            "swam",
                                                            "@"});

enum class Class { word, digit, blank, other };

Class class_of(char c) {
    bool const letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter                  ? Class::word
           : c >= '0' && c <= '9'  ? Class::digit
           : c == ' ' || c == '\t' ? Class::blank
                                   : Class::other;
}

std::vector<std::string> pieces_of(std::string_view text) {
    std::vector<std::string> pieces;
    for (std::size_t i = 0; i < text.size(); ++i) {
        bool const goes_on =
            i > 0 && class_of(text[i]) == class_of(text[i - 1]) && class_of(text[i]) != Class::other;
        if (goes_on) {
            pieces.back() += text[i];
        } else {
            pieces.emplace_back(1, text[i]);
        }
    }
    return pieces;
}

std::string joined(std::vector<std::string> const& pieces) {
    std::string text;
    for (auto const& piece : pieces) {
        text += piece;
    }
    return text;
}

} // namespace

std::string Mutator::spoil(std::string_view text) {
    std::string result{text};
    for (int times = random_.between(1, 3); times > 0; --times) {
        if (random_.chance(15)) {
            change_byte(result);
        } else if (auto pieces = pieces_of(result); !pieces.empty()) {
            change_piece(pieces);
            result = joined(pieces);
        }
    }
    return result;
}

void Mutator::change_piece(std::vector<std::string>& pieces) {
    auto const place = [&] {
        return static_cast<std::size_t>(random_.below(static_cast<int>(pieces.size())));
    };
    auto const at = place();
    auto const here = pieces.begin() + static_cast<std::ptrdiff_t>(at);
    switch (random_.below(5)) {
    case 0:
        pieces.erase(here);
        break;
    case 1:
        pieces.insert(here, std::string{pieces[at]});
        break;
    case 2:
        std::swap(pieces[at], pieces[place()]);
        break;
    case 3:
        pieces[at] = other_piece(pieces);
        break;
    default:
        pieces.insert(here, other_piece(pieces));
        break;
    }
}

void Mutator::change_byte(std::string& text) {
    if (text.empty()) {
        return;
    }
    auto const at = static_cast<std::size_t>(random_.below(static_cast<int>(text.size())));
    switch (random_.below(4)) {
    case 0:
        text.erase(at, 1);
        break;
    case 1:
        text.insert(at, 1, static_cast<char>(random_.below(256)));
        break;
    case 2:
        text[at] = static_cast<char>(random_.below(256));
        break;
    default:
        text.resize(at);
        break;
    }
}

std::string Mutator::other_piece(std::vector<std::string> const& pieces) {
    if (random_.chance(60)) {
        return std::string{random_.pick(strangers)};
    }
    return pieces[static_cast<std::size_t>(random_.below(static_cast<int>(pieces.size())))];
}

} // namespace lengthwise::test
