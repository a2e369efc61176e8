#include "lexeme.hpp"

#include "scan.hpp"

namespace lengthwise::grammar {

namespace {

Lexeme word_at(char const* at) {
    auto const* end = at + 1;
    while (is_letter(*end) || (*end == '-' && is_letter(end[1]))) {
        ++end;
    }
    Lexeme word{Lexeme::Sort::word, at, end, Word::none};
    word.word = find_word(word.text());
    return word;
}

Lexeme figure_at(char const* at) {
    auto const* end = scan_digits(at).end;
    auto sort = Lexeme::Sort::number;
    while (*end == ':' && is_digit(end[1])) {
        sort = Lexeme::Sort::clock;
        end = scan_digits(end + 1).end;
    }
    if (*end == '.' && is_digit(end[1])) {
        end = scan_digits(end + 1).end;
    }
    return {sort, at, end, Word::none};
}

Lexeme lexeme_at(char const* at, char const* end) {
    if (at == end || *at == '#' || (*at == '\r' && at + 1 == end)) {
        return {Lexeme::Sort::end, at, at, Word::none};
    }
    if (is_letter(*at)) {
        return word_at(at);
    }
    if (is_digit(*at) || (*at == ':' && is_digit(at[1]))) {
        return figure_at(at);
    }
    if (*at == '"') {
        auto const* const closed = scan_string(at, end);
        return {Lexeme::Sort::string, at, closed != nullptr ? closed : end, Word::none};
    }
    auto const character = decode(at, end);
    auto const sort = character.code < 0x80 ? Lexeme::Sort::sign : Lexeme::Sort::other;
    return {sort, at, at + character.bytes, Word::none};
}

} // namespace

std::vector<Lexeme> lex(char const* begin, char const* end) {
    std::vector<Lexeme> line;
    for (auto const* at = begin;;) {
        at = skip_blanks(at);
        line.push_back(lexeme_at(at, end));
        if (line.back().sort == Lexeme::Sort::end) {
            return line;
        }
        at = line.back().end;
    }
}

Character decode(char const* at, char const* end) {
    constexpr Character bad{0xFFFD, 1, false};
    auto const byte = [&](int i) { return static_cast<unsigned char>(at[i]); };
    auto const lead = byte(0);
    if (lead < 0x80) {
        return {lead, 1, true};
    }
    auto const bytes = lead >= 0xC2 && lead <= 0xDF   ? 2
                       : (lead & 0xF0) == 0xE0        ? 3
                       : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                      : 0;
    if (bytes == 0 || end - at < bytes) {
        return bad;
    }
    char32_t code = lead & (0x7FU >> bytes);
    for (int i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xC0) != 0x80) {
            return bad;
        }
        code = code << 6 | (byte(i) & 0x3FU);
    }
    auto const overlong = (bytes == 3 && code < 0x800) || (bytes == 4 && code < 0x10000);
    auto const surrogate = code >= 0xD800 && code <= 0xDFFF;
    return overlong || surrogate || code > 0x10FFFF ? bad : Character{code, bytes, true};
}

} // namespace lengthwise::grammar
