#include "complaint_value.hpp"

#include "codes.hpp"
#include "limits.hpp"
#include "scan.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

bool is_unit(Word word) {
    return is_between(word, Word::metres, Word::hours);
}

std::string_view digits_of(std::string_view text) {
    return text.substr(0, static_cast<std::size_t>(scan_digits(text.data()).end - text.data()));
}

Value value_in(Scene const& scene) {
    auto const& refusal = scene.trace.refusal;
    auto const view = [](char const* from, char const* to) {
        return std::string_view{from, static_cast<std::size_t>(to - from)};
    };
    Value value{.fault = refusal.fault,
                .figure = refusal.figure,
                .text = view(refusal.begin, refusal.end),
                .rest = view(refusal.begin, scene.end),
                .before = {},
                .form = scene.form};
    for (auto const& lexeme : lex(scene.begin, scene.end)) {
        if (lexeme.end > refusal.begin || lexeme.sort == Lexeme::Sort::end) {
            break;
        }
        value.before = lexeme;
    }
    return value;
}

/// `100y`, `200crawl`.
void describe_clinging(Complaint& c, Value const& v) {
    auto const digits = v.text.find_first_not_of("0123456789.:");
    auto const number = v.text.substr(0, digits);
    auto letters = v.text.substr(digits);
    letters = letters.substr(0, std::min(letters.find_first_not_of("abcdefghijklmnopqrstuvwxyz"
                                                                   "ABCDEFGHIJKLMNOPQRSTUVWXYZ-"),
                                         letters.size()));
    auto const known = find_word(letters);
    if (known != Word::none && !is_unit(known)) {
        c.message = fmt::format("\"{}\" touches the number before it", letters);
        c.hint = fmt::format("try: {} {}", number, letters);
        return;
    }
    if (known != Word::none) {
        c.message = fmt::format("\"{}\" touches what stands around it", letters);
        c.hint = "a blank stands behind a unit";
        return;
    }
    c.message = fmt::format("no unit \"{}\"", letters);
    if (letters == "y" || letters == "Y") {
        c.hint = fmt::format("try: {}yd", number);
    } else if (auto const near = nearest_word(letters, is_unit)) {
        c.hint = fmt::format("did you mean \"{}\"?", *near);
    } else {
        c.hint = "distances take m, yd or lengths; times take s, min or h";
    }
}

/// Quotes that do not close, or a backslash inside of them that escapes nothing.
void describe_string(Complaint& c, Value const& v) {
    c.code = code::string;
    for (std::size_t i = 1; i + 1 < v.rest.size() && v.rest[i] != '"'; ++i) {
        if (v.rest[i] != '\\') {
            continue;
        }
        if (v.rest[i + 1] != '"' && v.rest[i + 1] != '\\') {
            c.from = v.rest.data() + i;
            c.to = c.from + 1;
            c.message = "a backslash that escapes nothing";
            c.hint = R"(in quotes write \" for a quote, \\ for a backslash)";
            return;
        }
        ++i;
    }
    c.message = "the quotes do not close on this line";
    auto const curly = v.rest.find("\xE2\x80\x9D") != std::string_view::npos;
    c.hint =
        curly ? "the closing quote is a curly one; type \"" : "names and notes end with \" on their own line";
}

void describe_fraction(Complaint& c, Value const& v) {
    auto const above = scan_digits(v.text.data());
    switch (v.fault) {
    case Fault::fraction_denominator:
        c.message = fmt::format("{} has {} below the line", v.text,
                                v.text.substr(static_cast<std::size_t>(above.end + 1 - v.text.data())));
        c.hint = "there stand 2, 3, 4, 6, 8, 12 or 24";
        break;
    case Fault::fraction_improper: {
        auto const below = scan_digits(above.end + 1).value;
        c.message = fmt::format("{} is no part of one", v.text);
        c.hint = below == 0 ? "such as 33 1/3 m" : fmt::format("the upper number is 1 to {}", below - 1);
        break;
    }
    default:
        c.message = "only metres and yards have fractions";
        c.hint = "such as 33 1/3 m";
        break;
    }
}

void describe_decimal(Complaint& c, Value const& v) {
    auto const point = std::min(v.text.find('.'), v.text.size() - 1);
    auto const places =
        static_cast<std::size_t>(scan_digits(v.text.data() + point + 1).end - v.text.data()) - point - 1;
    switch (v.fault) {
    case Fault::decimal_places:
        c.message = fmt::format("{} has {} digits behind its point, the most is 2", v.text, places);
        c.hint = places == 3 ? fmt::format("write {}{} without a point, thirds as 33 1/3",
                                           v.text.substr(0, point), v.text.substr(point + 1, 3))
                             : "fractions say it exactly: 33 1/3 m";
        break;
    case Fault::decimal_unit:
        c.message = fmt::format("{}: only metres have a point", v.text);
        c.hint = "yards take fractions, such as 12 1/2 yd; lengths are whole";
        break;
    default:
        c.message = fmt::format("{} has two points", v.text);
        break;
    }
}

/// A number outside of `low` to `high`.
void describe_bounds(Complaint& c, Value const& v, std::string_view what, std::string_view bounds) {
    c.message = fmt::format("{} {}: {}", what, v.text, bounds);
}

} // namespace

Complaint complain_of_value(Scene const& scene) {
    auto const& refusal = scene.trace.refusal;
    auto const v = value_in(scene);
    Complaint c{.code = code::number,
                .from = refusal.begin,
                .to = refusal.end,
                .message = {},
                .pass = refusal.passable};
    switch (v.fault) {
    case Fault::string:
        describe_string(c, v);
        break;
    case Fault::count_zero:
        c.message = "0 times is nothing to swim";
        c.hint = "counts are 1 to 9999";
        break;
    case Fault::count_large:
        c.code = code::limit;
        c.message = fmt::format("the count is {}, the limit is {}", digits_of(v.text), limits::repeat);
        break;
    case Fault::number_large:
        c.code = code::limit;
        c.message = fmt::format("the number is {}, the limit is 7000000", v.text);
        break;
    case Fault::number_zero:
        c.message = fmt::format("{} is no distance at all", v.text);
        break;
    case Fault::number_decimal:
    case Fault::decimal_places:
    case Fault::decimal_unit:
        describe_decimal(c, v);
        break;
    case Fault::fraction_denominator:
    case Fault::fraction_improper:
    case Fault::fraction_unit:
        describe_fraction(c, v);
        break;
    case Fault::clings:
        describe_clinging(c, v);
        break;
    case Fault::distance_time:
        c.message = fmt::format("{} is a time, here stands a distance", v.text);
        c.hint = "distances are 200, 25m, 25yd or 4 lengths";
        break;
    case Fault::time_long:
        c.code = code::limit;
        c.message = fmt::format("the time is {}, the limit is 24h", v.text);
        break;
    case Fault::lane_range:
        describe_bounds(c, v, "lane", "lanes are 1 to 100");
        break;
    case Fault::lane_backward:
        c.message = fmt::format("lane {} runs backward", v.text);
        c.hint = "the lower lane first, such as lane 1-3";
        break;
    case Fault::label_twice:
        c.code = code::line;
        c.message = fmt::format("a second label \"{}\"", v.text.substr(0, v.text.find(':') + 1));
        c.hint = "a line has one lane label and one \"if time:\"; lanes in a row are lane 1-3:";
        break;
    case Fault::week_range:
        describe_bounds(c, v, "week", "weeks are 1 to 999");
        break;
    case Fault::rpe_range:
        describe_bounds(c, v, "rpe", "it runs from 1 to 10");
        break;
    case Fault::breaths_range:
        c.message = fmt::format("{}: at least 1, at most 9999", v.text);
        break;
    case Fault::selector_number:
        c.message = fmt::format("{}: reps are counted from 1 to 9999", v.text);
        break;
    case Fault::descend_from:
        c.message = fmt::format("descend {} does not begin with 1", v.text);
        c.hint = "the first of each cycle is 1, such as descend 1-4";
        break;
    case Fault::descend_to:
        c.message = fmt::format("descend {}: a cycle has 2 to 9999 reps", v.text);
        break;
    case Fault::nesting:
        c.code = code::limit;
        c.message = fmt::format("parentheses are {} deep here, the limit is {}", limits::nesting + 1,
                                limits::nesting);
        c.hint = "give the inner set a name: set \"inner\" = 4 x 50, then use \"inner\"";
        break;
    case Fault::not_single:
        c.code = code::line;
        c.message = fmt::format("\"{}\" stands only behind one amount", v.text);
        c.hint = "put it on an item of its own, or inside the parentheses";
        break;
    default:
        describe_time(c, v);
        // "at 95" may be a percentage or a pace; which, the rest of the line does not say.
        c.pass = c.pass && v.keyword() != Word::at;
        break;
    }
    return c;
}

} // namespace lengthwise::grammar
