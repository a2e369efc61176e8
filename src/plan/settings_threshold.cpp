#include "plan/settings.hpp"

#include "plan/amounts.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

namespace lengthwise::plan {

using grammar::Kind;
using grammar::Tree;

std::optional<Threshold> read_threshold(Work& work, Tree const& tree, std::uint32_t node, Pool const& pool) {
    auto& report = work.report;
    auto const errors = report.errors();
    Threshold threshold;
    threshold.span = tree.span(node);
    threshold.per_unit = pool.unit;
    threshold.per = one(pool.unit) * 100;
    threshold.course = pool;
    for (auto i = node + 1; i < tree.next(node); ++i) {
        auto const& part = tree.nodes[i];
        switch (part.kind) {
        case Kind::about:
            threshold.about = true;
            break;
        case Kind::pace_time:
            threshold.time = duration_of(part);
            if (threshold.time.zero()) {
                report.error(code::amount, span_of(part), "a threshold of 0 is not swum",
                             "threshold 2:05 per 100m");
            }
            break;
        case Kind::pace_per:
            threshold.said_per = true;
            threshold.per = distance_in(report, pool, part).value_or(threshold.per);
            if (part.unit() == grammar::WrittenUnit::metres || part.unit() == grammar::WrittenUnit::yards) {
                threshold.per_unit = part.unit() == grammar::WrittenUnit::yards ? Unit::yard : Unit::metre;
            }
            break;
        case Kind::pace_in:
            threshold.said_in = true;
            threshold.course = pool_of(report, part).value_or(threshold.course);
            break;
        case Kind::pace_open_water:
            threshold.said_in = true;
            threshold.course = Pool::open_water();
            break;
        case Kind::reserve:
            threshold.reserve = distance_with_unit(report, part);
            if (threshold.reserve &&
                (*threshold.reserve < Distance::metres(1) || *threshold.reserve > Distance::metres(100))) {
                report.error(code::amount, span_of(part),
                             fmt::format("a reserve of {}: from 1 m to 100 m are read",
                                         spell::distance(*threshold.reserve, Unit::metre)));
            }
            break;
        default:
            break;
        }
    }
    return report.errors() == errors ? std::optional{threshold} : std::nullopt;
}

} // namespace lengthwise::plan
