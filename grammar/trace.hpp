#pragma once

#include "words.hpp"

#include <bitset>
#include <cstddef>
#include <cstdint>
#include <vector>

/// What a second reading of a line remembers so that somebody can say what is wrong
/// with it: the furthest place where it got stuck, what could have stood there, and
/// the values that the notation does not have.
namespace lengthwise::grammar {

/// Something that could have stood at a place, beside words.
enum class Thing : std::uint8_t {
    none,
    line_end,
    amount,
    count,
    distance,
    time,
    rest,
    number,
    percent,
    name,
    note,
    date,
    time_of_day,
    rule,
    ordinal,
    equals,
    colon,
    comma,
    slash,
    open,
    close,
    plus,
    value,
    things
};

/// A value that can be read and is not one of the notation's. complaint_value.cpp
/// has the words.
enum class Fault : std::uint8_t {
    none,
    string, ///< does not close, or a backslash escapes nothing
    // numbers and distances
    count_zero,
    count_large,
    number_large,
    number_zero,
    number_decimal, ///< two points
    decimal_places,
    decimal_unit,
    fraction_denominator,
    fraction_improper,
    fraction_unit,
    clings,        ///< letters touch the number
    distance_time, ///< a time where a distance belongs
    lane_range,
    lane_backward,
    label_twice,
    week_range,
    rpe_range,
    breaths_range,
    selector_number,
    descend_from,
    descend_to,
    // groups
    nesting,
    not_single, ///< `as` or `broken` behind more than one amount
    // times and dates
    time_no_unit,
    time_zero,
    time_long,
    time_seconds, ///< 60 or more behind a colon
    time_digits,  ///< not two digits behind a colon
    time_decimal,
    time_distance,    ///< a distance where a time belongs
    time_unit_wanted, ///< a clock behind `for`
    slot_short,
    clock_range,
    range_backward,
    range_no_unit,
    range_clock,
    date_form,
    date_year,
    date_month,
    date_day,
};

using Things = std::bitset<static_cast<std::size_t>(Thing::things)>;

struct Expected {
    WordSet words;
    Things things;
};

class Trace {
  public:
    struct Refusal {
        char const* begin = nullptr;
        char const* end = nullptr;
        Fault fault = Fault::none;
        std::uint64_t figure = 0;
        bool passable = false; ///< the line can be read on with some value in its place
    };

    /// Starts another reading of the same line.
    void again() {
        furthest = nullptr;
        expected = {};
        refusal = {};
    }

    /// `low` to `high` could have stood at `at`, where something else stands.
    void miss(char const* at, Word low, Word high, Thing thing) {
        if (!reach(at)) {
            return;
        }
        for (auto w = static_cast<std::size_t>(low); low != Word::none && w <= static_cast<std::size_t>(high);
             ++w) {
            expected.words.set(w);
        }
        if (thing != Thing::none) {
            expected.things.set(static_cast<std::size_t>(thing));
        }
    }

    [[nodiscard]] bool pass(char const* from, char const* to, Fault fault, std::uint64_t figure) {
        for (auto const* known : passed_) {
            if (known == from) {
                return true;
            }
        }
        refuse({from, to, fault, figure, true});
        return false;
    }
    void refuse(Refusal const& further) {
        if (refusal.fault == Fault::none || further.begin > refusal.begin) {
            refusal = further;
        }
    }
    void let_pass(char const* from) { passed_.push_back(from); }

    /// The word at `at`, or what it was taken for after its error had been reported.
    [[nodiscard]] Word meant(char const* at, Word read) const {
        for (auto const& [place, word] : meant_) {
            if (place == at) {
                return word;
            }
        }
        return read;
    }
    void take_for(char const* at, Word word) { meant_.push_back({at, word}); }

    char const* furthest = nullptr;
    Expected expected;
    Refusal refusal;

  private:
    struct Meant {
        char const* at;
        Word word;
    };

    bool reach(char const* at) {
        if (furthest == nullptr || at > furthest) {
            furthest = at;
            expected = {};
        }
        return at == furthest;
    }

    std::vector<char const*> passed_;
    std::vector<Meant> meant_;
};

} // namespace lengthwise::grammar
