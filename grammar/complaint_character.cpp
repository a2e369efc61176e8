#include "codes.hpp"
#include "complaint.hpp"
#include "lexeme.hpp"
#include "scan.hpp"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

/// What phones, word processors and other keyboards write, and what is meant.
struct Lookalike {
    char32_t low;
    char32_t high;
    std::string_view name;
    std::string_view type;
};

constexpr auto lookalikes = std::to_array<Lookalike>({
    {0x00A0, 0x00A0, "a no-break space", "a blank"},
    {0x2000, 0x200A, "a space of another width", "a blank"},
    {0x202F, 0x202F, "a narrow no-break space", "a blank"},
    {0x3000, 0x3000, "a wide space", "a blank"},
    {0x200B, 0x200F, "an invisible character", "nothing"},
    {0x202A, 0x202E, "an invisible character", "nothing"},
    {0x2060, 0x2069, "an invisible character", "nothing"},
    {0x2010, 0x2012, "another hyphen", "-"},
    {0x2013, 0x2013, "an en dash", "-"},
    {0x2014, 0x2015, "an em dash", "-"},
    {0x2212, 0x2212, "a minus sign", "-"},
    {0x2018, 0x201B, "a curly quote", "\""},
    {0x201C, 0x201F, "a curly quote", "\""},
    {0x00AB, 0x00AB, "an angle quote", "\""},
    {0x00BB, 0x00BB, "an angle quote", "\""},
    {0x2026, 0x2026, "an ellipsis", "the words in full"},
    {0x00BC, 0x00BC, "a fraction sign", "1/4"},
    {0x00BD, 0x00BD, "a fraction sign", "1/2"},
    {0x00BE, 0x00BE, "a fraction sign", "3/4"},
    {0x2153, 0x2153, "a fraction sign", "1/3"},
    {0x2154, 0x2154, "a fraction sign", "2/3"},
    {0x2159, 0x2159, "a fraction sign", "1/6"},
    {0x215A, 0x215A, "a fraction sign", "5/6"},
    {0x2044, 0x2044, "a fraction slash", "/"},
    {0x2032, 0x2032, "a prime", "min, or a time as 1:30"},
    {0x2033, 0x2033, "a double prime", "s, or a time as 1:30"},
    {0xFF0C, 0xFF0C, "a wide comma", ","},
    {0xFF1A, 0xFF1A, "a wide colon", ":"},
    {0xFF08, 0xFF08, "a wide parenthesis", "("},
    {0xFF09, 0xFF09, "a wide parenthesis", ")"},
    {0xFF0B, 0xFF0B, "a wide plus", "+"},
    {0xFF10, 0xFF19, "a wide digit", "0 to 9"},
    {0x0660, 0x0669, "a digit of another script", "0 to 9"},
    {0x06F0, 0x06F9, "a digit of another script", "0 to 9"},
    {0x0966, 0x096F, "a digit of another script", "0 to 9"},
});

constexpr char32_t times_sign = 0xD7;

/// The whole number in front of a fraction sign, with the blank that has to stand between: "33 ".
std::string wholes_before(char const* begin, char const* sign) {
    auto const* digits = sign;
    while (digits != begin && digits[-1] >= '0' && digits[-1] <= '9') {
        --digits;
    }
    constexpr std::ptrdiff_t most = 6; // more is no distance
    return digits == sign || sign - digits > most ? std::string{} : std::string{digits, sign} + " ";
}

/// The first character beyond ASCII outside of strings.
Lexeme const* first_other(std::vector<Lexeme> const& line, char const* end) {
    for (auto const& lexeme : line) {
        if (lexeme.sort == Lexeme::Sort::other && decode(lexeme.begin, end).code != times_sign) {
            return &lexeme;
        }
    }
    return nullptr;
}

} // namespace

std::optional<Complaint> complain_of_character(Scene const& scene) {
    auto const line = lex(scene.begin, scene.end);
    auto const* const other = first_other(line, scene.end);
    if (other == nullptr) {
        return std::nullopt;
    }
    auto const character = decode(other->begin, scene.end).code;
    auto const number = static_cast<std::uint32_t>(character);
    Complaint c{code::character, other->begin, other->end, {}};
    auto const known = std::ranges::find_if(
        lookalikes, [&](Lookalike const& l) { return character >= l.low && character <= l.high; });
    if (known != lookalikes.end()) {
        c.message = fmt::format("{} (U+{:04X})", known->name, number);
        auto const is_digit = known->type == "0 to 9";
        auto const is_fraction = known->name == "a fraction sign";
        c.hint = known->type == "nothing" ? "delete it"
                 : is_fraction
                     ? fmt::format("type {}{}", wholes_before(scene.begin, other->begin), known->type)
                 : is_digit ? fmt::format("type {}", number - static_cast<std::uint32_t>(known->low))
                            : fmt::format("type {}", known->type);
    } else {
        c.message = fmt::format("the character U+{:04X} outside of quotes", number);
        c.hint = "names and notes stand in \"quotes\", comments behind #";
    }
    return c;
}

} // namespace lengthwise::grammar
