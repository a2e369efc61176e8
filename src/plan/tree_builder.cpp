#include "plan/tree_builder.hpp"

#include <memory>
#include <utility>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::Node;
using grammar::WrittenTime;

constexpr std::int64_t second = 1000;
constexpr std::int64_t minute = 60 * second;
constexpr std::int64_t hour = 60 * minute;

/// The notation has parts of a second on the clock alone, and not on the long one.
WrittenTime on_the_clock(std::int64_t ms) {
    return ms >= hour && ms % second == 0 ? WrittenTime::long_clock : WrittenTime::clock;
}

WrittenTime written(std::int64_t ms, TimeStyle style) {
    if (style == TimeStyle::clock) {
        return on_the_clock(ms);
    }
    if (ms > 0 && ms % minute == 0) {
        return style == TimeStyle::shortest && ms % hour == 0 ? WrittenTime::hours : WrittenTime::minutes;
    }
    bool const plain = style == TimeStyle::with_unit || (ms % second == 0 && ms < minute);
    return plain ? WrittenTime::seconds : on_the_clock(ms);
}

Node time_node(Kind kind, Duration time, WrittenTime written) {
    return {.value = static_cast<std::uint32_t>(time.ms()),
            .kind = kind,
            .word = static_cast<std::uint8_t>(written)};
}

std::int64_t unit_ms(WrittenTime written) {
    switch (written) {
    case WrittenTime::seconds:
        return second;
    case WrittenTime::minutes:
        return minute;
    case WrittenTime::hours:
        return hour;
    default:
        return 0;
    }
}

} // namespace

void TreeBuilder::line(bool blank_before) {
    text_ += blank_before ? "\n\n" : "\n";
}

void TreeBuilder::node(Node node) {
    node.begin = here();
    tree_.nodes.push_back(node);
    if (text_.empty() || text_.back() == '\n') {
        text_ += '.'; // the line's mark
    }
}

std::uint32_t TreeBuilder::open(Kind kind, Word word) {
    node({.kind = kind, .word = static_cast<std::uint8_t>(word)});
    return tree_.size() - 1;
}

std::uint32_t TreeBuilder::open_item(std::uint32_t count) {
    node({.length = static_cast<std::uint16_t>(count == 1 ? 0 : count), .kind = Kind::item});
    return tree_.size() - 1;
}

void TreeBuilder::close(std::uint32_t container) {
    tree_.nodes[container].value = tree_.size();
}

void TreeBuilder::leaf(Kind kind, std::uint32_t value) {
    node({.value = value, .kind = kind});
}

void TreeBuilder::word(Kind kind, Word word, std::uint32_t value) {
    node({.value = value, .kind = kind, .word = static_cast<std::uint8_t>(word)});
}

void TreeBuilder::string(Kind kind, std::string_view text) {
    auto const quoted = "\"" + grammar::escape(text) + "\"";
    leaf(kind, static_cast<std::uint32_t>(quoted.size()));
    tree_.nodes.back().begin = here();
    text_ += quoted;
}

void TreeBuilder::rule_name(std::string_view name) {
    node({.length = static_cast<std::uint16_t>(name.size()), .kind = Kind::rule_name});
    text_ += name;
}

void TreeBuilder::time(Kind kind, Duration time, TimeStyle style) {
    node(time_node(kind, time, written(time.ms(), style)));
}

void TreeBuilder::range(Kind low, Kind high, Range<Duration> range) {
    if (range.single()) {
        return time(low, range.high);
    }
    auto const ends = written(range.high.ms(), TimeStyle::shortest);
    auto const unit = unit_ms(ends);
    if (unit != 0 && range.low.ms() % unit == 0) {
        auto const number = Duration::ms(range.low.ms() / unit); // of the high end's unit
        node(time_node(low, number, WrittenTime::bare));
    } else {
        time(low, range.low);
    }
    time(high, range.high);
}

grammar::Tree TreeBuilder::take() {
    tree_.own = std::make_shared<std::string>(std::move(text_));
    tree_.text = *tree_.own;
    return std::move(tree_);
}

} // namespace lengthwise::plan
