#include "check/pool_items.hpp"
#include "check/rules.hpp"
#include "check/seen.hpp"
#include "check/words.hpp"

#include "calc/reps.hpp"

#include <fmt/core.h>

namespace lengthwise::check {

namespace {

constexpr std::int64_t strokes = 4;

/// The first distance of an item that is swum as medley without a word of how it is shared out.
std::optional<Distance> unshared(plan::Plan const& plan, plan::Item const& item, Pool const& pool) {
    std::optional<Distance> found;
    auto const round = strokes * pool.length;
    auto const look = [&](Distance amount, plan::Manner const& manner) {
        if (!found && manner.stroke == Stroke::medley && !Distance::divides(round, amount)) {
            found = amount;
        }
    };
    calc::each_rep(plan, item, [&](std::int64_t amount, plan::Terms const& terms, std::int64_t) {
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            look(Distance::units(plan.parts[i].amount), plan.parts[i].manner);
        }
        if (terms.parts.empty()) {
            look(Distance::units(amount), terms.manner);
        }
    });
    return found;
}

void judge(Inquiry& inquiry) {
    SeenInSets seen;
    each_pool_item(inquiry, [&](Met const& met, Pool const& pool) {
        auto const amount = unshared(inquiry.plan, met.item, pool);
        if (!amount || !seen.first_time(met)) {
            return;
        }
        auto const lengths = Distance::ceiling(*amount, pool.length);
        inquiry.note(
            place(met.item),
            fmt::format("medley over {} leaves open which stroke is swum where, it takes four or a multiple",
                        counted(lengths, "length")),
            fmt::format("try: {}, or a split: as 25 fly / 25 back",
                        either(lengths / strokes * strokes, (lengths / strokes + 1) * strokes, pool)),
            used(met));
    });
}

} // namespace

Rule const medley{
    .name = "medley",
    .severity = Severity::note,
    .measures = "four strokes share a medley evenly",
    .limit = "",
    .meaning = "A medley rep is a multiple of four lengths, or a split says how it is shared out.",
    .why = "fly, back, breast and crawl change at a wall.",
    .source = "World Aquatics, Swimming Rules, medley: four strokes over an equal quarter each (from memory)",
    .good = "100 medley",
    .bad = "50 medley",
    .mend = "take a multiple of four lengths, or write the split: 50 medley as 25 fly / 25 back",
    .judge = judge,
};

} // namespace lengthwise::check
