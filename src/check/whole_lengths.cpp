#include "check/pool_items.hpp"
#include "check/rules.hpp"
#include "check/seen.hpp"
#include "check/words.hpp"

#include <fmt/core.h>

namespace lengthwise::check {

namespace {

/// The first amount of an item that ends between the walls.
struct Amount {
    Distance distance;
    plan::WrittenUnit unit;
};

std::optional<Amount> between_walls(plan::Plan const& plan, plan::Item const& item, Pool const& pool) {
    if (item.kind == plan::Item::Kind::reps) {
        return Distance::divides(pool.length, item.distance())
                   ? std::nullopt
                   : std::optional{Amount{item.distance(), item.unit}};
    }
    for (plan::Index i = 0; i < item.count; ++i) {
        auto const rung = Distance::units(plan.rungs[item.body + i]);
        if (!Distance::divides(pool.length, rung)) {
            return Amount{rung, plan.rung_units[item.body + i]};
        }
    }
    return std::nullopt;
}

void judge(Inquiry& inquiry) {
    SeenInSets seen;
    each_pool_item(inquiry, [&](Met const& met, Pool const& pool) {
        auto const amount = between_walls(inquiry.plan, met.item, pool);
        if (!amount || !seen.first_time(met)) {
            return;
        }
        auto const low = Distance::whole(amount->distance, pool.length);
        inquiry.warn(place(met.item),
                     fmt::format("{} is not a whole number of {} lengths",
                                 said(amount->distance, amount->unit, pool), said(pool.length, pool)),
                     fmt::format("try: {}", either(low, low + 1, pool)), used(met));
    });
}

} // namespace

Rule const whole_lengths{
    .name = "whole-lengths",
    .severity = Severity::warning,
    .measures = "a rep ends at a wall",
    .limit = "",
    .meaning = "Every rep is a whole number of the pool's lengths. The lengths of one that is not are "
               "rounded up. The parts of a split may end anywhere.",
    .why = "a swimmer stops, turns and counts at walls.",
    .source = practice,
    .good = "100 crawl",
    .bad = "110 crawl",
    .mend = "take one of the two nearest whole lengths, or say them: 4 lengths",
    .judge = judge,
};

} // namespace lengthwise::check
