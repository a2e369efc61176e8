#include "support/well_formed.hpp"

#include "support/dump.hpp"

#include <fmt/format.h>
#include <vector>

namespace lengthwise::test {

using grammar::Kind;
using grammar::Tree;

namespace {

bool is_amount(Kind kind) {
    return kind == Kind::distance || kind == Kind::time;
}

/// What a container must begin with, behind what may stand before it.
std::string head_fault(Tree const& tree, std::uint32_t i) {
    auto const child = [&](std::uint32_t offset) {
        return i + offset < tree.next(i) ? tree.nodes[i + offset].kind : Kind::plan;
    };
    switch (tree.nodes[i].kind) {
    case Kind::week:
        return child(1) == Kind::week_number ? "" : "a week without its number";
    case Kind::swimmer:
        return child(1) == Kind::name ? "" : "a swimmer without a name";
    case Kind::set:
        return child(1) == Kind::name && child(2) == Kind::item ? "" : "a set without name and item";
    case Kind::before:
        return child(1) == Kind::before_longest ? "" : "before without longest";
    case Kind::limit:
    case Kind::allow:
        return child(1) == Kind::rule_name ? "" : "a limit without its rule";
    case Kind::group:
        return child(1) == Kind::item ? "" : "a group without an item";
    case Kind::split:
        return child(1) == Kind::part || child(1) == Kind::part_time ? "" : "a split without a part";
    case Kind::item: {
        auto first = i + 1;
        while (first < tree.next(i) &&
               (tree.nodes[first].kind == Kind::lane_label || tree.nodes[first].kind == Kind::if_time)) {
            ++first;
        }
        auto const kind = first < tree.next(i) ? tree.nodes[first].kind : Kind::plan;
        return is_amount(kind) || kind == Kind::group || kind == Kind::use ? "" : "an item without a body";
    }
    default:
        return "";
    }
}

} // namespace

std::string shape_fault(Tree const& tree) {
    std::vector<std::uint32_t> ends{tree.size()};
    std::uint32_t begin = tree.base;
    for (std::uint32_t i = 0; i < tree.size(); ++i) {
        while (ends.back() == i && ends.size() > 1) {
            ends.pop_back();
        }
        auto const& node = tree.nodes[i];
        auto const named = [&](std::string const& what) {
            return fmt::format("{} at node {}, {}", what, i, kind_name(node.kind));
        };
        auto const span = tree.span(i);
        if (span.end < span.begin || span.end > tree.base + tree.text.size()) {
            return named("outside of the text");
        }
        // An item begins behind its labels, which are its children.
        auto const labels = node.kind == Kind::lane_label || node.kind == Kind::if_time;
        if (node.kind != Kind::item && !labels) {
            if (span.begin < begin) {
                return named("before the node before it");
            }
            begin = span.begin;
        }
        if (is_container(node.kind)) {
            if (node.value <= i || node.value > ends.back()) {
                return named("ends outside of what it is in");
            }
            ends.push_back(node.value);
            if (auto const fault = head_fault(tree, i); !fault.empty()) {
                return named(fault);
            }
        }
    }
    return "";
}

} // namespace lengthwise::test
