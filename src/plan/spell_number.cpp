#include "plan/spell_number.hpp"

#include "grammar/diagnostic.hpp"
#include "plan/amounts.hpp"
#include "plan/report.hpp"

#include <algorithm>
#include <numeric>
#include <optional>

namespace lengthwise::plan {
namespace {

using grammar::Node;
using grammar::number_scale;
using grammar::WrittenUnit;

constexpr std::int64_t largest = 7'000'000; ///< number that is read, grammar/tree.hpp

/// Ways to write a number of some unit. `below` and `above` are the whole numbers around it:
/// what a bare number may have been that stands for lengths of a pool of 33 1/3 m.
enum class Digits : std::uint8_t { whole, decimal, fraction, below, above };

struct Form {
    WrittenUnit unit;
    Digits digits;
};

using Forms = std::vector<Form>;

Forms exactly(WrittenUnit unit) {
    if (unit == WrittenUnit::lengths) {
        return {{unit, Digits::whole}};
    }
    return {{unit, Digits::whole}, {unit, Digits::decimal}, {unit, Digits::fraction}};
}

Forms joined(std::initializer_list<Forms> all) {
    Forms forms;
    for (auto const& some : all) {
        forms.insert(forms.end(), some.begin(), some.end());
    }
    return forms;
}

Forms whole(WrittenUnit unit) {
    return {{unit, Digits::whole}};
}

Forms around_bare() {
    return {{WrittenUnit::bare, Digits::below}, {WrittenUnit::bare, Digits::above}};
}

/// All forms, those first that come nearest to how it was written.
Forms forms_from(WrittenUnit written) {
    auto const first = written == WrittenUnit::bare
                           ? joined({whole(written), whole(WrittenUnit::lengths), exactly(written)})
                           : exactly(written);
    return joined({first, exactly(WrittenUnit::metres), exactly(WrittenUnit::yards),
                   whole(WrittenUnit::lengths), around_bare()});
}

Distance unit_of(WrittenUnit unit, Pool const& pool) {
    switch (unit) {
    case WrittenUnit::bare:
        return one(pool.unit);
    case WrittenUnit::metres:
        return Distance::metres(1);
    case WrittenUnit::yards:
        return Distance::yards(1);
    case WrittenUnit::lengths:
        break;
    }
    return pool.length;
}

/// Denominators that the notation reads: the divisors of 24 but 1.
bool is_fraction(std::int64_t value) {
    auto const denominator = number_scale / std::gcd(value, std::int64_t{number_scale});
    return denominator > 1 && 24 % denominator == 0;
}

bool fits(std::int64_t value, Digits digits) {
    switch (digits) {
    case Digits::decimal:
        return value % (number_scale / 100) == 0;
    case Digits::fraction:
        return is_fraction(value);
    default:
        return value % number_scale == 0;
    }
}

/// A distance as a number in this form, if it has one.
std::optional<Node> in_form(Form form, Measured const& reading) {
    auto const unit = unit_of(form.unit, reading.pool).units();
    auto const scaled = checked_mul(reading.distance.units(), number_scale);
    if (unit == 0 || !scaled) {
        return std::nullopt;
    }
    auto value = *scaled / unit;
    if (form.digits == Digits::below || form.digits == Digits::above) {
        value -= value % number_scale;
        value += form.digits == Digits::above ? number_scale : 0;
    } else if (*scaled % unit != 0 || !fits(value, form.digits)) {
        return std::nullopt;
    }
    if (value <= 0 || value > largest * number_scale) {
        return std::nullopt;
    }
    auto const flag = form.digits == Digits::decimal ? grammar::decimal_flag : 0;
    return Node{.value = static_cast<std::uint32_t>(value),
                .word = static_cast<std::uint8_t>(static_cast<int>(form.unit) | flag)};
}

/// The resolver's own reading decides whether a number says what it should.
bool reads_as(Node const& number, std::vector<Measured> const& readings) {
    return std::ranges::all_of(readings, [&](Measured const& reading) {
        Report unheard{Diagnostics{}};
        return distance_in(unheard, reading.pool, number) == reading.distance;
    });
}

Node nearest_hundredth(Distance distance) {
    constexpr auto step = Distance::per_metre / 100;
    auto const hundredths = std::min(largest * 100, (distance.units() + step / 2) / step);
    return {.value = static_cast<std::uint32_t>(hundredths * (number_scale / 100)),
            .word = static_cast<std::uint8_t>(static_cast<int>(WrittenUnit::metres) | grammar::decimal_flag)};
}

std::optional<Node> in_some_form(Forms const& forms, std::vector<Measured> const& readings) {
    for (auto const form : forms) {
        for (auto const& reading : readings) {
            auto const number = in_form(form, reading);
            if (number && reads_as(*number, readings)) {
                return number;
            }
        }
    }
    return std::nullopt;
}

using Ladder = std::vector<Node>;

/// The steps in these forms; nothing when one has none of them.
std::optional<Ladder> in_some_form(Forms const& forms, std::vector<std::vector<Measured>> const& steps) {
    Ladder ladder;
    for (auto const& step : steps) {
        auto const number = in_some_form(forms, step);
        if (!number) {
            return std::nullopt;
        }
        ladder.push_back(*number);
    }
    return ladder;
}

bool same_units(Ladder const& ladder) {
    return std::ranges::all_of(ladder, [&](Node const& n) { return n.unit() == ladder.front().unit(); });
}

/// The last step's unit governs all.
Ladder governed(Ladder ladder) {
    if (same_units(ladder)) {
        for (auto step = ladder.begin(); step != ladder.end() - 1; ++step) {
            step->word = static_cast<std::uint8_t>(step->word & grammar::decimal_flag);
        }
    }
    return ladder;
}

} // namespace

Node spell_number(std::vector<Measured> const& readings, WrittenUnit unit) {
    auto const number = in_some_form(forms_from(unit), readings);
    return number ? *number : nearest_hundredth(readings.front().distance);
}

std::vector<Node> spell_ladder(std::vector<std::vector<Measured>> const& steps,
                               std::vector<WrittenUnit> const& units) {
    auto const bare = exactly(WrittenUnit::bare);
    auto const lengths = whole(WrittenUnit::lengths);
    auto const with_units = joined({lengths, exactly(WrittenUnit::metres), exactly(WrittenUnit::yards)});
    auto const said_alike = std::ranges::count(units, units.front()) == std::ssize(units);
    auto const tries =
        units.front() == WrittenUnit::bare
            ? std::vector{whole(WrittenUnit::bare), lengths, joined({around_bare(), bare}), with_units}
            : std::vector{said_alike ? exactly(units.front()) : with_units, with_units};
    for (auto const& forms : tries) {
        if (auto const ladder = in_some_form(forms, steps)) {
            return governed(*ladder);
        }
    }
    Ladder ladder;
    for (auto const& step : steps) {
        ladder.push_back(nearest_hundredth(step.front().distance));
    }
    return governed(ladder);
}

} // namespace lengthwise::plan
