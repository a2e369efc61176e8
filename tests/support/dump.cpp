#include "support/dump.hpp"

#include <array>
#include <fmt/format.h>
#include <vector>

namespace lengthwise::test {

using grammar::Kind;
using grammar::Node;
using grammar::WrittenTime;
using grammar::WrittenUnit;

namespace {

constexpr auto kinds = std::to_array<std::string_view>({
    "race",
    "swimmer",
    "before",
    "set",
    "threshold",
    "limit",
    "allow",
    "week",
    "session",
    "section",
    "item",
    "group",
    "split",
    "selector",
    "bad",
    "plan",
    "include",
    "name",
    "note",
    "note_line",
    "race_kind",
    "race_distance",
    "date",
    "swimmer_lane",
    "swimmer_share",
    "before_longest",
    "before_week",
    "pool",
    "pool_open_water",
    "default_rest",
    "factor",
    "rule_name",
    "limit_number",
    "limit_percent",
    "limit_distance",
    "limit_time",
    "limit_time_to",
    "about",
    "pace_time",
    "pace_per",
    "pace_in",
    "reserve",
    "pace_open_water",
    "week_number",
    "week_from",
    "day",
    "time_of_day",
    "slot",
    "pause",
    "lane_label",
    "if_time",
    "distance",
    "time",
    "use",
    "group_end",
    "stroke",
    "mode",
    "effort",
    "effort_shift",
    "shift_time",
    "at_percent",
    "at_pace",
    "at_per",
    "hold",
    "rpe",
    "build",
    "negative_split",
    "descend",
    "with",
    "with_more",
    "part",
    "part_time",
    "broken",
    "broken_time",
    "broken_for",
    "rest",
    "rest_to",
    "rest_as_needed",
    "rest_breaths",
    "on",
    "on_more",
    "selector_number",
});
static_assert(kinds.size() == static_cast<std::size_t>(Kind::selector_number) + 1);

std::string number(Node const& node) {
    constexpr std::array<std::string_view, 4> units{"", "m", "yd", "len"};
    auto const whole = node.value / grammar::number_scale;
    auto const rest = node.value % grammar::number_scale;
    return fmt::format("={}{}{}{}", whole, rest != 0 ? fmt::format("+{}/600", rest) : "",
                       node.decimal() ? "." : "", units.at(static_cast<std::size_t>(node.unit())));
}

std::string seconds(std::uint32_t ms) {
    return ms % 1000 == 0 ? fmt::format("{:02}", ms / 1000)
                          : fmt::format("{:02}.{:03}", ms / 1000, ms % 1000);
}

std::string time(Node const& node) {
    auto const v = node.value;
    switch (node.written_time()) {
    case WrittenTime::bare:
        return fmt::format("={}", v);
    case WrittenTime::seconds:
        return fmt::format("={}s", v / 1000);
    case WrittenTime::minutes:
        return fmt::format("={}min", v / 60'000);
    case WrittenTime::hours:
        return fmt::format("={}h", v / 3'600'000);
    case WrittenTime::clock:
        return fmt::format("={}:{}", v / 60'000, seconds(v % 60'000));
    case WrittenTime::long_clock:
        return fmt::format("={}:{:02}:{}", v / 3'600'000, v / 60'000 % 60, seconds(v % 60'000));
    }
    return "=?";
}

std::string pair(std::uint32_t value) {
    return value == 0 ? "" : fmt::format("={}-{}", value & 0xFFFF, value >> 16);
}

std::string detail(grammar::Tree const& tree, std::uint32_t i) {
    auto const& node = tree.nodes[i];
    switch (node.kind) {
    case Kind::name:
    case Kind::note:
    case Kind::note_line:
        return fmt::format("\"{}\"", tree.raw_string(i));
    case Kind::section:
    case Kind::selector:
    case Kind::race_kind:
    case Kind::day:
    case Kind::stroke:
    case Kind::mode:
    case Kind::effort:
    case Kind::effort_shift:
    case Kind::with:
    case Kind::with_more:
        return fmt::format(":{}", spelling(node.as_word()));
    case Kind::factor:
        return fmt::format(":{}={}", spelling(node.as_word()), node.value);
    case Kind::item:
        return node.length != 0 ? fmt::format("*{}", node.length) : "";
    case Kind::rule_name:
        return fmt::format(":{}", tree.slice(tree.span(i)));
    case Kind::date:
    case Kind::week_from:
        return fmt::format("={:04}-{:02}-{:02}", node.value / 10000, node.value / 100 % 100,
                           node.value % 100);
    case Kind::time_of_day:
        return fmt::format("={:02}:{:02}", node.value / 60, node.value % 60);
    case Kind::lane_label:
    case Kind::descend:
        return pair(node.value);
    case Kind::race_distance:
    case Kind::before_longest:
    case Kind::before_week:
    case Kind::pool:
    case Kind::limit_distance:
    case Kind::pace_per:
    case Kind::pace_in:
    case Kind::reserve:
    case Kind::distance:
    case Kind::at_per:
    case Kind::part:
    case Kind::broken:
        return number(node);
    case Kind::default_rest:
    case Kind::limit_time:
    case Kind::limit_time_to:
    case Kind::pace_time:
    case Kind::slot:
    case Kind::pause:
    case Kind::time:
    case Kind::shift_time:
    case Kind::at_pace:
    case Kind::hold:
    case Kind::part_time:
    case Kind::broken_time:
    case Kind::broken_for:
    case Kind::rest:
    case Kind::rest_to:
    case Kind::on:
    case Kind::on_more:
        return time(node);
    case Kind::swimmer_lane:
    case Kind::swimmer_share:
    case Kind::limit_number:
    case Kind::limit_percent:
    case Kind::week_number:
    case Kind::at_percent:
    case Kind::rpe:
    case Kind::rest_breaths:
    case Kind::selector_number:
        return fmt::format("={}", node.value);
    default:
        return "";
    }
}

} // namespace

std::string_view kind_name(Kind kind) {
    return kinds.at(static_cast<std::size_t>(kind));
}

std::string dump(grammar::Tree const& tree) {
    std::string out;
    std::vector<std::uint32_t> ends;
    for (std::uint32_t i = 0; i <= tree.size(); ++i) {
        while (!ends.empty() && ends.back() == i) {
            out += '}';
            ends.pop_back();
        }
        if (i == tree.size()) {
            break;
        }
        auto const& node = tree.nodes[i];
        if (!out.empty() && out.back() != '{') {
            out += ' ';
        }
        out += kind_name(node.kind);
        out += detail(tree, i);
        if (is_container(node.kind)) {
            out += '{';
            ends.push_back(node.value);
        }
    }
    return out;
}

} // namespace lengthwise::test
