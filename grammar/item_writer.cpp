#include "item_writer.hpp"

#include "figures.hpp"

#include <algorithm>
#include <span>
#include <string>
#include <string_view>

namespace lengthwise::grammar {
namespace {

bool is_amount(Kind kind) {
    return kind == Kind::distance || kind == Kind::time;
}

bool is_label(Kind kind) {
    return kind == Kind::lane_label || kind == Kind::if_time;
}

bool is_part(Kind kind) {
    return kind == Kind::part || kind == Kind::part_time;
}

/// Single numbers that may stand for lengths; the steps of a ladder are looked at together.
bool may_count_lengths(Kind kind) {
    return kind == Kind::distance || kind == Kind::part || kind == Kind::broken || kind == Kind::at_per ||
           kind == Kind::pace_per || kind == Kind::before_longest || kind == Kind::before_week;
}

bool spans_lines(Tree const& tree, std::uint32_t open, std::uint32_t close) {
    auto const text = tree.slice({tree.nodes[open].begin, tree.nodes[close].begin});
    return text.find('\n') != std::string_view::npos;
}

} // namespace

std::uint32_t line_begin(Tree const& tree, std::uint32_t i) {
    auto const begin = tree.nodes[i].begin;
    bool const has_children = is_container(tree.nodes[i].kind) && tree.next(i) > i + 1;
    return has_children ? std::min(begin, tree.nodes[i + 1].begin) : begin;
}

void ItemWriter::item_on_one_line(std::uint32_t i) {
    on_one_line_ = true;
    item(i, 0);
}

void ItemWriter::item(std::uint32_t i, int level) {
    auto const end = tree_.next(i);
    auto child = i + 1;
    while (child < end && is_label(node(child).kind)) {
        leaf(child++);
    }
    if (node(i).length != 0) {
        page_.say(std::to_string(node(i).length));
        page_.say("x");
    }
    auto behind = child;
    while (behind < end && is_amount(node(behind).kind)) {
        ++behind;
    }
    if (behind - child > 1) {
        ladder(child, behind);
        child = behind;
    }
    behind_amount(child, end, level);
}

void ItemWriter::behind_amount(std::uint32_t first, std::uint32_t end, int level) {
    for (auto i = first; i < end; i = tree_.next(i)) {
        switch (node(i).kind) {
        case Kind::group:
            group(i, level);
            break;
        case Kind::split:
            split(i);
            break;
        case Kind::selector:
            selector(i);
            break;
        default:
            leaf(i);
        }
    }
}

/// In lengths all or none, since a ladder's units stand on all, on none or on the last.
void ItemWriter::ladder(std::uint32_t first, std::uint32_t end) {
    bool const in_lengths = lap != 0 && means_lengths(first, end);
    for (auto i = first; i < end; ++i) {
        if (i > first) {
            page_.join(", ");
        }
        auto const n = in_lengths ? as_lengths(node(i)) : node(i);
        page_.say(in_lengths && i + 1 < end ? std::to_string(n.value / number_scale) : spell_leaf(tree_, n));
    }
}

bool ItemWriter::means_lengths(std::uint32_t first, std::uint32_t end) const {
    auto const steps = std::span{tree_.nodes}.subspan(first, end - first);
    auto const counts = [&](Node const& n) { return lengths_meant(n, lap) != 0; };
    auto const exact = [&](Node const& n) { return is_whole_laps(n, lap); };
    return std::ranges::all_of(steps, counts) && !std::ranges::all_of(steps, exact);
}

Node ItemWriter::as_lengths(Node number) const {
    number.value = lengths_meant(number, lap) * number_scale;
    number.word = static_cast<std::uint8_t>(WrittenUnit::lengths);
    return number;
}

void ItemWriter::group(std::uint32_t i, int level) {
    auto const close = tree_.next(i) - 1; // its group_end
    bool const spread = !on_one_line_ && spans_lines(tree_, i, close);
    page_.say("(");
    page_.join("");
    for (auto child = i + 1; child < close; child = tree_.next(child)) {
        if (spread) {
            page_.start_line(line_begin(tree_, child), level + 1);
        } else if (child > i + 1) {
            page_.say("+");
        }
        item(child, level + 1);
    }
    if (spread) {
        page_.start_closing_line(node(close).begin, level);
    }
    page_.append(")");
}

void ItemWriter::split(std::uint32_t i) {
    page_.say("as");
    for (auto child = i + 1; child < tree_.next(i); ++child) {
        if (is_part(node(child).kind) && child > i + 1) {
            page_.say("/");
        }
        leaf(child);
    }
}

void ItemWriter::selector(std::uint32_t i) {
    auto const word = node(i).as_word();
    page_.join(", ");
    page_.say(spelling(word));
    for (auto child = i + 1; child < tree_.next(i); ++child) {
        if (node(child).kind == Kind::selector_number && word == Word::every) {
            page_.say(spell_ordinal(node(child).value));
        } else {
            leaf(child);
        }
    }
}

void ItemWriter::leaf(std::uint32_t i) {
    auto n = node(i);
    if (n.kind == Kind::rest_to || n.kind == Kind::limit_time_to) {
        page_.join("-");
    } else if (n.kind == Kind::with_more || n.kind == Kind::on_more) {
        page_.join(", ");
    } else if (lap != 0 && may_count_lengths(n.kind) && !is_whole_laps(n, lap) &&
               lengths_meant(n, lap) != 0) {
        n = as_lengths(n);
    }
    page_.say(spell_leaf(tree_, n));
}

} // namespace lengthwise::grammar
