#include "calc/bouts.hpp"

#include <algorithm>
#include <span>

namespace lengthwise::calc {
namespace {

using Selections = std::vector<plan::Selection const*>;

std::uint32_t last_of(plan::Selection const& selection) {
    return selection.first + (selection.count - 1) * selection.step;
}

/// The first number that it chooses from `from` on; beyond its last where there is none.
std::uint32_t next_of(plan::Selection const& selection, std::uint32_t from) {
    auto const passed =
        from <= selection.first ? 0 : (from - selection.first + selection.step - 1) / selection.step;
    return selection.first + passed * selection.step;
}

/// Writes the numbers `first` to `end` (excluded) as bouts.
class Pattern {
  public:
    /// `regular`, the sparsest first, are all that choose among the numbers given.
    void write(std::vector<Bout>& bouts, std::uint32_t first, std::uint32_t end,
               std::span<plan::Selection const* const> regular) {
        while (!regular.empty() && !chooses(*regular.front(), first, end)) {
            regular = regular.subspan(1);
        }
        if (first >= end) {
            return;
        }
        if (regular.empty()) {
            bouts.push_back({end - first, nullptr, first - 1, {}});
            return;
        }
        auto const& sparsest = *regular.front();
        auto const others = regular.subspan(1);
        auto at = next_of(sparsest, first);
        write(bouts, first, at, others);
        if (auto const again = repeats(sparsest, at, end, others); again > 1) {
            Bout block{again, nullptr, at - 1, {}};
            one(block.inside, sparsest, at);
            write(block.inside, at + 1, at + sparsest.step, others);
            bouts.push_back(std::move(block));
            at += again * sparsest.step;
        }
        while (at < end && at <= last_of(sparsest)) {
            one(bouts, sparsest, at);
            auto const next = at + sparsest.step;
            auto const until = next <= last_of(sparsest) ? std::min(next, end) : end;
            write(bouts, at + 1, until, others);
            at = next;
        }
    }

    static void one(std::vector<Bout>& bouts, plan::Selection const& selection, std::uint32_t number) {
        bouts.push_back({1, &selection, number - 1, {}});
    }

  private:
    static bool chooses(plan::Selection const& selection, std::uint32_t first, std::uint32_t end) {
        auto const next = next_of(selection, first);
        return next < end && next <= last_of(selection);
    }

    /// How often the numbers from `at` to the next one that `sparsest` chooses come again in the same way.
    static std::uint32_t repeats(plan::Selection const& sparsest, std::uint32_t at, std::uint32_t end,
                                 std::span<plan::Selection const* const> others) {
        auto const last = std::min(last_of(sparsest), at + (end - 1 - at) / sparsest.step * sparsest.step);
        auto const alike = [&](plan::Selection const* other) {
            return sparsest.step % other->step == 0 && other->first <= at + other->step &&
                   last <= last_of(*other) + other->step;
        };
        return last > at && std::ranges::all_of(others, alike) ? (last - at) / sparsest.step : 0;
    }
};

std::vector<Bout> one_by_one(plan::Plan const& plan, plan::Item const& item) {
    std::vector<Bout> bouts(item.count);
    for (std::uint32_t i = 0; i < item.count; ++i) {
        bouts[i].number = i;
    }
    auto const& selections = plan.terms[item.terms].selections;
    for (auto i = selections.first; i < selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        for (auto number = selection.first; number <= last_of(selection); number += selection.step) {
            bouts[number - 1].selection = &selection;
        }
    }
    return bouts;
}

} // namespace

std::uint32_t Bout::count() const {
    std::uint32_t once = inside.empty() ? 1 : 0;
    for (auto const& bout : inside) {
        once += bout.count();
    }
    return times * once;
}

std::vector<Bout> bouts_of(plan::Plan const& plan, plan::Item const& item) {
    auto const& terms = plan.terms[item.terms];
    if (terms.selections.empty() && !item.is_ladder() && terms.recovery.steps <= 1) {
        return {{item.count, nullptr, 0, {}}};
    }
    if (item.is_ladder() || terms.recovery.steps > 1) {
        return one_by_one(plan, item);
    }
    Selections regular;
    Selections in_a_row;
    for (auto i = terms.selections.first; i < terms.selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        (selection.step == 1 ? in_a_row : regular).push_back(&selection);
    }
    std::ranges::sort(regular, std::ranges::greater{}, &plan::Selection::step);
    std::ranges::sort(in_a_row, {}, &plan::Selection::first);
    std::vector<Bout> bouts;
    std::uint32_t at = 1;
    for (auto const* selection : in_a_row) {
        Pattern{}.write(bouts, at, selection->first, regular);
        bouts.push_back({selection->count, selection, selection->first - 1, {}});
        at = selection->first + selection->count;
    }
    Pattern{}.write(bouts, at, item.count + 1U, regular);
    return bouts;
}

} // namespace lengthwise::calc
