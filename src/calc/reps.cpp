#include "calc/reps.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

constexpr bool race_gear(plan::GearSet gear) {
    plan::GearSet allowed;
    allowed.add(Gear::snorkel);
    allowed.add(Gear::wetsuit);
    return (gear.words & ~allowed.words) == 0;
}

constexpr bool swum(plan::Manner const& manner) {
    return manner.mode == Mode::unsaid || manner.mode == Mode::swim;
}

/// Does `test` hold for all that the rep consists of: its parts, or else itself?
template <typename Test>
bool throughout(plan::Plan const& plan, plan::Terms const& terms, Test test) {
    if (terms.parts.empty()) {
        return test(terms.manner);
    }
    auto const first = plan.parts.begin() + terms.parts.first;
    return std::all_of(first, first + terms.parts.count,
                       [&](plan::Part const& part) { return test(part.manner); });
}

} // namespace

bool qualifies(plan::Plan const& plan, plan::Terms const& terms) {
    return !terms.stops && race_gear(terms.manner.gear) && throughout(plan, terms, swum);
}

Distance unbroken(plan::Plan const& plan, plan::Terms const& terms, Distance rep) {
    if (!qualifies(plan, terms)) {
        return {};
    }
    return terms.broken.piece == 0 ? rep : std::min(rep, Distance::units(terms.broken.piece));
}

bool only_treads(plan::Plan const& plan, plan::Terms const& terms) {
    return throughout(plan, terms, [](plan::Manner const& manner) { return manner.mode == Mode::tread; });
}

std::vector<plan::Index> terms_of_rungs(plan::Plan const& plan, plan::Item const& item) {
    std::vector<plan::Index> terms(item.count, item.terms);
    auto const& selections = plan.terms[item.terms].selections;
    for (auto i = selections.first; i < selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        for (std::uint32_t k = 0; k < selection.count; ++k) {
            terms[selection.first - 1 + k * selection.step] = selection.terms;
        }
    }
    return terms;
}

} // namespace lengthwise::calc
