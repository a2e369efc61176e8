#include "plan/modifiers.hpp"

#include "plan/amounts.hpp"

#include <fmt/core.h>

#include <array>
#include <string_view>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::Node;
using grammar::Tree;

constexpr std::array<std::string_view, 9> class_names{
    "strokes", "modes", "efforts", "shapes", "gear clauses", "stops", "splits", "breaks", "recoveries"};

bool continues(Kind kind) {
    return kind == Kind::effort_shift || kind == Kind::shift_time || kind == Kind::at_per ||
           kind == Kind::with_more || kind == Kind::broken_for || kind == Kind::rest_to ||
           kind == Kind::on_more;
}

} // namespace

Class class_of(Node const& node) {
    switch (node.kind) {
    case Kind::stroke:
        return Class::stroke;
    case Kind::mode:
        return Class::mode;
    case Kind::effort:
    case Kind::at_percent:
    case Kind::at_pace:
    case Kind::hold:
    case Kind::rpe:
        return Class::effort;
    case Kind::build:
    case Kind::descend:
    case Kind::negative_split:
        return Class::shape;
    case Kind::with:
        return node.as_word() == Word::stops ? Class::stops : Class::gear;
    case Kind::split:
        return Class::split;
    case Kind::broken:
    case Kind::broken_time:
        return Class::broken;
    case Kind::rest:
    case Kind::rest_as_needed:
    case Kind::rest_breaths:
    case Kind::on:
        return Class::recovery;
    default:
        return Class::none;
    }
}

Span clause_of(Tree const& tree, std::uint32_t node) {
    auto span = tree.span(node);
    for (auto k = node + 1; k < tree.size() && continues(tree.nodes[k].kind); ++k) {
        span.end = span_of(tree.nodes[k]).end;
    }
    return span;
}

std::uint32_t part_end(Tree const& tree, std::uint32_t part, std::uint32_t end) {
    auto i = part + 1;
    while (i < end && tree.nodes[i].kind != Kind::part && tree.nodes[i].kind != Kind::part_time) {
        ++i;
    }
    return i;
}

void check_once(Report& report, Tree const& tree, std::uint32_t first, std::uint32_t end) {
    std::array<Span, class_names.size()> places{};
    for (auto i = first; i < end && tree.nodes[i].kind != Kind::selector; i = tree.next(i)) {
        auto const cls = class_of(tree.nodes[i]);
        if (cls == Class::none) {
            continue;
        }
        auto& before = places[static_cast<std::size_t>(cls)];
        if (before.empty()) {
            before = clause_of(tree, i);
            continue;
        }
        auto const again = clause_of(tree, i);
        report.error(code::twice, again,
                     fmt::format("{} and {} are two {}", tree.slice(before), tree.slice(again),
                                 class_names[static_cast<std::size_t>(cls)]),
                     "keep one", {{before, "the first stands here"}});
    }
}

} // namespace lengthwise::plan
