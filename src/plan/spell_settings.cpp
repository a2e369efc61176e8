#include "plan/spell_settings.hpp"

#include "plan/spell_number.hpp"

namespace lengthwise::plan {
namespace {

using grammar::Kind;

void spell_pool(TreeBuilder& tree, Kind length, Kind open_water, Pool const& pool) {
    if (pool.has_length()) {
        spell_distance(tree, length, pool.length, pool.unit, Pool{});
    } else {
        tree.leaf(open_water);
    }
}

void spell_limit(TreeBuilder& tree, Limit const& limit, Pool const& pool) {
    auto const& rule = rules[limit.rule];
    auto const number = static_cast<std::uint32_t>(limit.low);
    tree.line();
    auto const node = tree.open(Kind::limit);
    tree.rule_name(rule.name);
    switch (rule.kind) {
    case LimitKind::percent:
        tree.leaf(Kind::limit_percent, number);
        break;
    case LimitKind::number:
        tree.leaf(Kind::limit_number, number);
        break;
    case LimitKind::distance:
        spell_distance(tree, Kind::limit_distance, Distance::units(limit.low), Unit::metre, pool);
        break;
    default:
        tree.range(Kind::limit_time, Kind::limit_time_to,
                   {Duration::ms(limit.low), Duration::ms(limit.high)});
    }
    tree.close(node);
}

void spell_allow(TreeBuilder& tree, Allow const& allow) {
    tree.line();
    auto const node = tree.open(Kind::allow);
    tree.rule_name(rules[allow.rule].name);
    if (!allow.reason.empty()) {
        tree.string(Kind::note, allow.reason);
    }
    tree.close(node);
}

} // namespace

void spell_settings(TreeBuilder& tree, Settings const& settings, Pool const& pool) {
    if (settings.pool) {
        tree.line();
        spell_pool(tree, Kind::pool, Kind::pool_open_water, *settings.pool);
    }
    if (settings.threshold) {
        tree.line();
        spell_threshold(tree, *settings.threshold, pool);
    }
    if (settings.rest) {
        tree.line();
        tree.range(Kind::default_rest, Kind::rest_to, *settings.rest);
    }
    for (auto const& factor : settings.factors) {
        tree.line();
        tree.word(Kind::factor, factor.word, factor.percent);
    }
    for (auto const& each : settings.limits) {
        spell_limit(tree, each, pool);
    }
    for (auto const& each : settings.allows) {
        spell_allow(tree, each);
    }
    for (auto const note : settings.notes) {
        tree.line();
        tree.string(Kind::note_line, note);
    }
}

void spell_threshold(TreeBuilder& tree, Threshold const& threshold, Pool const& pool) {
    auto const node = tree.open(Kind::threshold);
    if (threshold.about) {
        tree.leaf(Kind::about);
    }
    tree.time(Kind::pace_time, threshold.time, TimeStyle::clock);
    if (threshold.said_per) {
        spell_distance(tree, Kind::pace_per, threshold.per, threshold.per_unit, pool);
    }
    if (threshold.said_in) {
        spell_pool(tree, Kind::pace_in, Kind::pace_open_water, threshold.course);
    }
    if (threshold.reserve) {
        spell_distance(tree, Kind::reserve, *threshold.reserve, Unit::metre, Pool{});
    }
    tree.close(node);
}

void spell_distance(TreeBuilder& tree, Kind kind, Distance distance, Unit unit, Pool const& pool) {
    auto const written = unit == Unit::yard ? grammar::WrittenUnit::yards : grammar::WrittenUnit::metres;
    auto number = spell_number({{distance, pool}}, written);
    number.kind = kind;
    tree.node(number);
}

} // namespace lengthwise::plan
