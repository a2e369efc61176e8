#include "recogniser/tokens.hpp"

#include "recogniser/words.hpp"

#include <algorithm>
#include <cstdint>

namespace lengthwise::recogniser {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view times_sign = "\xC3\x97";
constexpr std::size_t longest_line = 65'536;

bool digit(char c) {
    return c >= '0' && c <= '9';
}
bool letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool blank(char c) {
    return c == ' ' || c == '\t';
}

std::string small(std::string_view word) {
    std::string result{word};
    for (char& c : result) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return result;
}

/// How many bytes the UTF-8 character at the start of `rest` has; 0 if it is none.
std::size_t character_length(std::string_view rest, std::uint32_t& point) {
    auto const first = static_cast<unsigned char>(rest[0]);
    std::size_t const length = first < 0x80                     ? 1
                               : first >= 0xC2 && first <= 0xDF ? 2
                               : first >= 0xE0 && first <= 0xEF ? 3
                               : first >= 0xF0 && first <= 0xF4 ? 4
                                                                : 0;
    if (length == 0 || length > rest.size()) {
        return 0;
    }
    point = length == 1 ? first : first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        auto const next = static_cast<unsigned char>(rest[i]);
        if ((next & 0xC0U) != 0x80) {
            return 0;
        }
        point = (point << 6) | (next & 0x3FU);
    }
    bool const overlong = (length == 3 && point < 0x800) || (length == 4 && point < 0x10000);
    bool const surrogate = point >= 0xD800 && point <= 0xDFFF;
    return overlong || surrogate || point > 0x10FFFF ? 0 : length;
}

/// Cuts one line. `at_` stands at the next byte.
class Cutter {
  public:
    Cutter(std::string_view line, std::size_t number, std::vector<Token>& out)
        : line_(line), number_(number), out_(out) {}

    void cut() {
        auto const before = out_.size();
        for (skip_blanks(); at() != '#' && at_ < line_.size(); skip_blanks()) {
            auto const from = at_;
            if (!token()) {
                at_ = std::max(at_, from + 1);
                put(Sort::unreadable, from);
            }
        }
        if (open_string_ && quotes_) {
            quotes_ = false;
            at_ = 0;
            out_.resize(before);
            cut();
        } else if (out_.size() > before) {
            put(Sort::line_end, at_);
        }
    }

  private:
    /// The byte `ahead` of the next one; 0 behind the line.
    [[nodiscard]] char at(std::size_t ahead = 0) const {
        return at_ + ahead < line_.size() ? line_[at_ + ahead] : '\0';
    }
    [[nodiscard]] bool blank_before() const { return at_ == 0 || blank(line_[at_ - 1]); }
    void skip_blanks() {
        while (blank(at())) {
            ++at_;
        }
    }
    void skip_digits() {
        while (digit(at())) {
            ++at_;
        }
    }

    void put(Sort sort, std::size_t from) {
        out_.push_back({sort, small(line_.substr(from, at_ - from)), number_});
    }

    bool token() {
        char const c = at();
        if (digit(c) || (c == ':' && digit(at(1)))) {
            return figure();
        }
        if (letter(c)) {
            return word(at_);
        }
        if (line_.substr(at_).starts_with(times_sign)) {
            return times();
        }
        return c == '"' && quotes_ ? string() : sign();
    }

    bool times() {
        if (at_ > 0 && letter(line_[at_ - 1])) {
            return false;
        }
        at_ += times_sign.size();
        put(Sort::sign, at_ - times_sign.size());
        return !letter(at());
    }

    /// A word touches a number behind it only as the `x` of a count, and never a letter of another alphabet.
    bool word(std::size_t from) {
        while (letter(at()) || (at() == '-' && letter(at(1)))) {
            ++at_;
        }
        bool const x = at_ == from + 1 && (line_[from] | 0x20) == 'x';
        bool const count = x && !out_.empty() && out_.back().sort == Sort::number;
        if (static_cast<unsigned char>(at()) >= 0x80 || (digit(at()) && !count)) {
            return false;
        }
        put(Sort::word, from);
        return true;
    }

    bool string() {
        auto const from = at_++;
        bool fits = true;
        for (; at_ < line_.size() && at() != '"'; ++at_) {
            if (at() == '\\') {
                ++at_;
                fits = fits && (at() == '"' || at() == '\\');
            }
        }
        open_string_ = at_ >= line_.size();
        ++at_;
        put(Sort::string, from);
        return fits && !open_string_;
    }

    bool sign() {
        char const c = at();
        if (std::string_view{"()+-,/:="}.find(c) == std::string_view::npos) {
            return false;
        }
        bool const open = blank_before();
        put(Sort::sign, at_++);
        out_.back().text = c;
        bool const blank_behind = blank(at());
        return c == ',' || c == ':' ? blank_behind : c != '/' || (open && blank_behind);
    }

    bool figure() {
        auto const from = at_;
        if (date()) {
            put(Sort::date, from);
            return true;
        }
        skip_digits();
        if (at() == ':' && digit(at(1))) {
            return clock(from);
        }
        if ((at() == '.' || at() == '/') && digit(at(1))) {
            Sort const sort = at() == '.' ? Sort::decimal : Sort::fraction;
            ++at_;
            skip_digits();
            put(sort, from);
            return glued_unit();
        }
        if (at() == '%') {
            ++at_;
            put(Sort::percent, from);
            return !letter(at());
        }
        if (ordinal(from)) {
            return true;
        }
        put(Sort::number, from);
        return glued_unit();
    }

    bool date() {
        constexpr std::string_view shape = "dddd-dd-dd";
        for (std::size_t i = 0; i < shape.size(); ++i) {
            if (shape[i] == 'd' ? !digit(at(i)) : at(i) != '-') {
                return false;
            }
        }
        if (digit(at(shape.size())) || letter(at(shape.size()))) {
            return false;
        }
        at_ += shape.size();
        return true;
    }

    bool clock(std::size_t from) {
        while (at() == ':' && digit(at(1))) {
            ++at_;
            skip_digits();
        }
        if (at() == '.' && digit(at(1))) {
            ++at_;
            skip_digits();
        }
        put(Sort::clock, from);
        return !letter(at());
    }

    bool ordinal(std::size_t from) {
        std::string const ending = small(line_.substr(at_, 2));
        bool const ends = !letter(at(2)) && !digit(at(2));
        if (!ends || (ending != "st" && ending != "nd" && ending != "rd" && ending != "th")) {
            return false;
        }
        at_ += 2;
        put(Sort::ordinal, from);
        return true;
    }

    /// Letters that touch a number are its unit or an `x`.
    bool glued_unit() {
        if (!letter(at())) {
            return true;
        }
        auto const from = at_;
        return word(from) && (out_.back().text == "x" || unit_of_number(out_.back().text));
    }

    std::string_view line_;
    std::size_t number_;
    std::vector<Token>& out_;
    std::size_t at_ = 0;
    bool quotes_ = true;       ///< false: the line is read as if each quote were any other wrong sign
    bool open_string_ = false; ///< a string that does not end on the line
};

} // namespace

std::vector<Token> tokens(std::string_view text) {
    std::vector<Token> result;
    std::size_t number = 0;
    for (std::string_view const line : lines(text)) {
        Cutter{line, ++number, result}.cut();
    }
    result.push_back({Sort::text_end, "", number});
    return result;
}

std::vector<std::string_view> lines(std::string_view text) {
    if (text.starts_with(byte_order_mark)) {
        text.remove_prefix(byte_order_mark.size());
    }
    std::vector<std::string_view> result;
    for (;;) {
        auto const end = text.find('\n');
        auto const line = text.substr(0, end);
        bool const two = end != std::string_view::npos && line.ends_with('\r');
        result.push_back(two ? line.substr(0, line.size() - 1) : line);
        if (end == std::string_view::npos) {
            return result;
        }
        text.remove_prefix(end + 1);
    }
}

bool readable(std::string_view line) {
    if (line.size() > longest_line) {
        return false;
    }
    while (!line.empty()) {
        std::uint32_t point = 0;
        auto const length = character_length(line, point);
        bool const control = (point < 0x20 && point != '\t') || (point >= 0x7F && point <= 0x9F);
        if (length == 0 || control || point == 0xFEFF) {
            return false;
        }
        line.remove_prefix(length);
    }
    return true;
}

} // namespace lengthwise::recogniser
