#include "figures.hpp"

#include <algorithm>
#include <numeric>
#include <string_view>

namespace lengthwise::grammar {
namespace {

std::string padded(std::uint32_t n, std::size_t width) {
    auto const digits = std::to_string(n);
    return std::string(width - std::min(width, digits.size()), '0') + digits;
}

/// What stands behind a point, `width` digits without closing zeros; nothing for 0.
std::string decimals(std::uint32_t rest, std::size_t width) {
    if (rest == 0) {
        return "";
    }
    auto digits = "." + padded(rest, width);
    digits.erase(digits.find_last_not_of('0') + 1);
    return digits;
}

/// The number alone: "200", "12.5", "33 1/3".
std::string figure(Node const& number) {
    auto whole = std::to_string(number.value / number_scale);
    auto const rest = number.value % number_scale;
    if (rest == 0) {
        return whole;
    }
    if (number.decimal()) {
        return whole + decimals(rest / (number_scale / 100), 2);
    }
    auto const common = std::gcd(rest, number_scale);
    return whole + " " + std::to_string(rest / common) + "/" + std::to_string(number_scale / common);
}

std::string clock(std::uint32_t ms) {
    return std::to_string(ms / 60'000) + ":" + padded(ms / 1000 % 60, 2) + decimals(ms % 1000, 3);
}

std::string long_clock(std::uint32_t ms) {
    return std::to_string(ms / 3'600'000) + ":" + padded(ms / 60'000 % 60, 2) + ":" +
           padded(ms / 1000 % 60, 2);
}

std::string iso_date(std::uint32_t date) {
    return padded(date / 10'000, 4) + "-" + padded(date / 100 % 100, 2) + "-" + padded(date % 100, 2);
}

std::string time_of_day(std::uint32_t minutes) {
    return padded(minutes / 60, 2) + ":" + padded(minutes % 60, 2);
}

std::string pair(std::uint32_t first, std::uint32_t last) {
    return std::to_string(first) + "-" + std::to_string(last);
}

std::string lanes(std::uint32_t both) {
    auto const first = both & 0xFFFFU;
    auto const last = both >> 16U;
    return last == 0 || last == first ? std::to_string(first) : pair(first, last);
}

std::string descend(std::uint32_t both) {
    return both == 0 ? "descend" : "descend " + pair(both & 0xFFFFU, both >> 16U);
}

std::string after(std::string_view keyword, std::string_view text) {
    return std::string{keyword}.append(" ").append(text);
}

bool is_bare_whole(Node const& number) {
    return number.unit() == WrittenUnit::bare && number.value % number_scale == 0 && number.value != 0;
}

} // namespace

std::string spell_number(Node const& number) {
    auto text = figure(number);
    switch (number.unit()) {
    case WrittenUnit::bare:
        return text;
    case WrittenUnit::lengths:
        return text + (number.value == number_scale ? " length" : " lengths");
    default:
        return text + (text.find('/') == std::string::npos ? "" : " ") +
               (number.unit() == WrittenUnit::yards ? "yd" : "m");
    }
}

std::string spell_time(Node const& time) {
    switch (time.written_time()) {
    case WrittenTime::bare:
        return std::to_string(time.value);
    case WrittenTime::seconds:
        return std::to_string(time.value / 1000) + "s";
    case WrittenTime::minutes:
        return std::to_string(time.value / 60'000) + "min";
    case WrittenTime::hours:
        return std::to_string(time.value / 3'600'000) + "h";
    case WrittenTime::clock:
        return clock(time.value);
    case WrittenTime::long_clock:
        break;
    }
    return long_clock(time.value);
}

std::string spell_ordinal(std::uint32_t number) {
    constexpr std::string_view endings[] = {"th", "st", "nd", "rd"};
    bool const teen = number / 10 % 10 == 1;
    auto const last = number % 10;
    return std::to_string(number).append(endings[teen || last > 3 ? 0 : last]);
}

bool is_whole_laps(Node const& number, std::uint32_t lap) {
    return is_bare_whole(number) && number.value % lap == 0;
}

std::uint32_t lengths_meant(Node const& number, std::uint32_t lap) {
    if (!is_bare_whole(number) || is_whole_laps(number, lap)) {
        return is_bare_whole(number) ? number.value / lap : 0;
    }
    // k laps, truncated or rounded half up, are n where n - 1/2 <= k lap < n + 1.
    std::uint64_t const low = number.value - number_scale / 2;
    std::uint64_t const count = (low + lap - 1) / lap;
    bool const meant = count * lap < std::uint64_t{number.value} + number_scale;
    return meant ? static_cast<std::uint32_t>(count) : 0;
}

std::string spell_leaf(Tree const& tree, Node const& leaf) {
    auto const number = [&] { return spell_number(leaf); };
    auto const time = [&] { return spell_time(leaf); };
    auto const value = [&] { return std::to_string(leaf.value); };
    auto const word = [&] { return std::string{spelling(leaf.as_word())}; };
    auto const written = [&](std::uint32_t size) {
        return std::string{tree.slice({leaf.begin, leaf.begin + size})};
    };

    switch (leaf.kind) {
    case Kind::plan:
        return "plan";
    case Kind::include:
        return "include";
    case Kind::use:
        return "use";
    case Kind::name:
    case Kind::note:
    case Kind::note_line:
        return written(leaf.value);
    case Kind::rule_name:
    case Kind::bad:
        return written(leaf.length);

    case Kind::date:
        return iso_date(leaf.value);
    case Kind::week_from:
        return after("from", iso_date(leaf.value));
    case Kind::time_of_day:
        return time_of_day(leaf.value);
    case Kind::slot:
        return after("for", time());
    case Kind::swimmer_lane:
        return after("lane", value());
    case Kind::swimmer_share:
        return after("distance", value()) + "%";
    case Kind::before_longest:
        return after("longest", number());
    case Kind::before_week:
        return after("week", number());
    case Kind::pool:
        return after("pool", number());
    case Kind::pool_open_water:
        return "pool open water";
    case Kind::factor:
        return after("factor", word()) + " " + value() + "%";
    case Kind::limit_percent:
        return value() + "%";
    case Kind::about:
        return "about";
    case Kind::pace_per:
    case Kind::at_per:
        return after("per", number());
    case Kind::pace_in:
        return after("in", number());
    case Kind::pace_open_water:
        return "in open water";
    case Kind::reserve:
        return after("reserve", number());

    case Kind::pause:
        return after("pause", time());
    case Kind::lane_label:
        return after("lane", lanes(leaf.value)) + ":";
    case Kind::if_time:
        return "if time:";

    case Kind::at_percent:
        return after("at", value()) + "%";
    case Kind::at_pace:
        return after("at", time());
    case Kind::hold:
        return after("hold", time());
    case Kind::rpe:
        return after("rpe", value());
    case Kind::build:
        return "build";
    case Kind::negative_split:
        return "negative split";
    case Kind::descend:
        return descend(leaf.value);
    case Kind::with:
        return after("with", word());
    case Kind::broken:
        return after("broken at", number());
    case Kind::broken_time:
        return after("broken at", time());
    case Kind::broken_for:
        return after("for", time());
    case Kind::default_rest:
    case Kind::rest:
        return after("rest", time());
    case Kind::rest_as_needed:
        return "rest as needed";
    case Kind::rest_breaths:
        return after("rest", value()) + " breaths";
    case Kind::on:
        return after("on", time());

    case Kind::race_kind:
    case Kind::day:
    case Kind::stroke:
    case Kind::mode:
    case Kind::effort:
    case Kind::effort_shift:
    case Kind::with_more:
        return word();
    case Kind::race_distance:
    case Kind::limit_distance:
    case Kind::distance:
    case Kind::part:
        return number();
    case Kind::limit_time:
    case Kind::limit_time_to:
    case Kind::pace_time:
    case Kind::time:
    case Kind::part_time:
    case Kind::shift_time:
    case Kind::rest_to:
    case Kind::on_more:
        return time();
    case Kind::limit_number:
    case Kind::week_number:
    case Kind::selector_number:
        return value();
    default: // containers and `group_end` have no words of their own
        return "";
    }
}

} // namespace lengthwise::grammar
