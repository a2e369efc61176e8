#pragma once

#include "reading.hpp"
#include "tokens.hpp"

#include <cstdint>

/// The ends of the productions: words, figures, signs. Each is a type with a `read`
/// and a `sort`, so that the compiler sees constants; parse.cpp makes parsers of them.
namespace lengthwise::grammar {

/// What a terminal is, to say so where it is missing.
struct Sort {
    Word low = Word::none;
    Word high = Word::none;
    Thing thing = Thing::none;
};

/// Where a leaf with a figure begins: there, or at the keyword before it.
enum class From : std::uint8_t { figure, keyword };
template <From from>
[[nodiscard]] char const* begin_of(Reading const& r) {
    return from == From::keyword ? r.opened.begin : nullptr;
}

// --- words ---

/// A keyword; the leaf that follows begins with it.
template <Word low, Word high>
struct Key {
    static constexpr Sort sort{low, high};
    static bool read(char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (!is_between(ahead.word, low, high)) {
            return false;
        }
        r.opened = ahead;
        at = ahead.end;
        return true;
    }
};

/// A keyword that stands only behind one amount.
template <Word word>
struct SingleKey {
    static constexpr Sort sort{word, word};
    static bool read(char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word == word && !r.single && !r.pass(ahead.begin, ahead.end, Fault::not_single)) {
            return false;
        }
        return Key<word, word>::read(at, r);
    }
};

/// A keyword inside of a leaf.
template <Word word>
struct Then {
    static constexpr Sort sort{word, word};
    static bool read(char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word != word) {
            return false;
        }
        at = ahead.end;
        return true;
    }
};

/// A word that is a leaf.
template <Kind kind, Word low, Word high>
struct Leaf {
    static constexpr Sort sort{low, high};
    static bool read(char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (!is_between(ahead.word, low, high)) {
            return false;
        }
        at = ahead.end;
        r.push(kind, ahead);
        return true;
    }
};

/// The last word of a leaf that began with a keyword: `open water`, `with fins`. The
/// leaf means `meaning`, or the word itself.
template <Kind kind, Word low, Word high, Word meaning>
struct LeafEnd {
    static constexpr Sort sort{low, high};
    static bool read(char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (!is_between(ahead.word, low, high)) {
            return false;
        }
        auto const word = meaning == Word::none ? ahead.word : meaning;
        at = ahead.end;
        r.push(kind, r.opened.begin, at, 0, static_cast<std::uint8_t>(word));
        return true;
    }
};

/// A leaf, or a container's head, that is its keyword.
template <Kind kind>
struct Made {
    static constexpr Sort sort{};
    static bool read(char const*&, Reading& r) {
        r.push(kind, r.opened);
        return true;
    }
};

/// The word of a factor; its leaf still begins with `factor`.
template <Word low, Word high>
struct Factored {
    static constexpr Sort sort{low, high};
    static bool read(char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (!is_between(ahead.word, low, high)) {
            return false;
        }
        r.opened.word = ahead.word;
        at = ahead.end;
        return true;
    }
};

struct FactorPercent {
    static constexpr Sort sort{.thing = Thing::percent};
    static bool read(char const*& at, Reading& r) {
        if (!read_percent(at, r, Kind::factor, r.opened.begin)) {
            return false;
        }
        r.nodes.back().word = static_cast<std::uint8_t>(r.opened.word);
        return true;
    }
};

/// Fails at once where no word and no quote begins, so that the alternatives behind
/// it need not. While a trace looks for what could have stood there, it lets pass.
struct Begun {
    static constexpr Sort sort{};
    static bool read(char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        return ahead.word != Word::none || *ahead.begin == '"' || r.trace != nullptr;
    }
};

// --- strings, figures ---

template <Kind kind, Thing thing>
struct String {
    static constexpr Sort sort{.thing = thing};
    static bool read(char const*& at, Reading& r) {
        auto const* const begin = skip_blanks(at);
        if (*begin != '"') {
            return false;
        }
        auto const* const end = scan_string(begin, r.end);
        if (end == nullptr) {
            return r.refuse(begin, begin + 1, Fault::string);
        }
        r.push(kind, begin, begin, static_cast<std::uint32_t>(end - begin));
        at = end;
        return true;
    }
};

template <Kind kind, TimeRule rule, From from>
struct Duration {
    static constexpr Sort sort{.thing = Thing::time};
    static bool read(char const*& at, Reading& r) { return read_time(at, r, kind, rule, begin_of<from>(r)); }
};

template <Kind kind, From from>
struct Distance {
    static constexpr Sort sort{.thing = Thing::distance};
    static bool read(char const*& at, Reading& r) { return read_distance(at, r, kind, begin_of<from>(r)); }
};

/// A distance or a time.
template <Kind distance, Kind time, From from>
struct Amount {
    static constexpr Sort sort{.thing = Thing::amount};
    static bool read(char const*& at, Reading& r) {
        return read_amount(at, r, distance, time, begin_of<from>(r));
    }
};

/// A further amount of a ladder.
struct Step {
    static constexpr Sort sort{.thing = Thing::amount};
    static bool read(char const*& at, Reading& r) {
        if (!read_amount(at, r, Kind::distance, Kind::time)) {
            return false;
        }
        r.single = false;
        return true;
    }
};

template <Kind kind>
struct Rest {
    static constexpr Sort sort{.thing = Thing::rest};
    static bool read(char const*& at, Reading& r) { return read_rest(at, r, kind, r.opened.begin); }
};

/// `5 breaths`
struct Breaths {
    static constexpr Sort sort{};
    static bool read(char const*& at, Reading& r) {
        auto const figure = r.figure(at);
        auto const& breaths = r.word(figure.end);
        if (figure.begin == figure.end || breaths.word != Word::breaths || breaths.begin == figure.end) {
            return false;
        }
        auto const count = figure.value;
        if (count - 1 >= limits::repeat && !r.pass(figure.begin, breaths.end, Fault::breaths_range)) {
            return false;
        }
        at = breaths.end;
        r.push(Kind::rest_breaths, r.opened.begin, at,
               count - 1 >= limits::repeat ? 1 : static_cast<std::uint32_t>(count));
        return true;
    }
};

template <Kind kind, std::uint32_t low, std::uint32_t high, Fault fault, From from>
struct Number {
    static constexpr Sort sort{.thing = Thing::number};
    static bool read(char const*& at, Reading& r) {
        return read_number(at, r, kind, low, high, fault, begin_of<from>(r));
    }
};

template <Kind kind, From from>
struct Percent {
    static constexpr Sort sort{.thing = Thing::percent};
    static bool read(char const*& at, Reading& r) { return read_percent(at, r, kind, begin_of<from>(r)); }
};

template <Kind kind, From from>
struct Date {
    static constexpr Sort sort{.thing = Thing::date};
    static bool read(char const*& at, Reading& r) { return read_date(at, r, kind, begin_of<from>(r)); }
};

struct TimeOfDay {
    static constexpr Sort sort{.thing = Thing::time_of_day};
    static bool read(char const*& at, Reading& r) { return read_time_of_day(at, r); }
};

struct Cycle {
    static constexpr Sort sort{.thing = Thing::number};
    static bool read(char const*& at, Reading& r) { return read_descend_range(at, r); }
};

struct RuleName {
    static constexpr Sort sort{.thing = Thing::rule};
    static bool read(char const*& at, Reading& r) { return read_rule_name(at, r); }
};

struct LimitValue {
    static constexpr Sort sort{.thing = Thing::value};
    static bool read(char const*& at, Reading& r) { return read_limit_value(at, r); }
};

struct Ordinal {
    static constexpr Sort sort{.thing = Thing::ordinal};
    static bool read(char const*& at, Reading& r) { return read_ordinal(at, r, Kind::selector_number); }
};

// --- signs ---

struct Comma {
    static constexpr Sort sort{.thing = Thing::comma};
    static bool read(char const*& at, Reading&) { return read_comma(at); }
};

/// The comma of a ladder, which has no count.
struct LadderComma {
    static constexpr Sort sort{.thing = Thing::comma};
    static bool read(char const*& at, Reading& r) { return !r.counted && read_comma(at); }
};

struct Slash {
    static constexpr Sort sort{.thing = Thing::slash};
    static bool read(char const*& at, Reading&) { return read_slash(at); }
};

struct Equals {
    static constexpr Sort sort{.thing = Thing::equals};
    static bool read(char const*& at, Reading&) {
        auto const* const sign = skip_blanks(at);
        if (*sign != '=') {
            return false;
        }
        at = sign + 1;
        return true;
    }
};

struct LineEnd {
    static constexpr Sort sort{.thing = Thing::line_end};
    static bool read(char const*& at, Reading& r) { return read_line_end(at, r); }
};

} // namespace lengthwise::grammar
