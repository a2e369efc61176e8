#include "calc/tight_start.hpp"

#include <algorithm>

namespace lengthwise::calc {

std::optional<TightStart> TightStarts::of(plan::Item const& item) {
    tightest_.reset();
    stretches_.clear();
    auto const& terms = plan_.terms[item.terms];
    auto const& recovery = terms.recovery;
    if (recovery.steps > 1 || item.is_ladder()) {
        one_by_one(item, recovery);
    } else {
        by_kind(item, terms);
    }
    return tightest_;
}

void TightStarts::one_by_one(plan::Item const& item, plan::Recovery const& recovery) {
    std::vector<plan::Selection const*> chooser(item.count, nullptr);
    for_each_selection(item, [&](plan::Selection const& selection) {
        for (std::uint32_t k = 0; k < selection.count; ++k) {
            chooser[selection.first - 1 + k * selection.step] = &selection;
        }
    });
    for (std::uint32_t i = 0; i < item.count; ++i) {
        take(item, chooser[i], i, plan_.send_offs[recovery.first_step + (recovery.steps > 1 ? i : 0)]);
    }
}

/// One send-off for all: those that are swum alike are looked at once.
void TightStarts::by_kind(plan::Item const& item, plan::Terms const& terms) {
    auto const send_off = plan_.send_offs[terms.recovery.first_step];
    if (terms.selections.empty()) {
        take(item, nullptr, 0, send_off);
        if (tightest_) {
            tightest_->number = 0;
        }
        return;
    }
    std::vector<bool> chosen(item.count + std::size_t{1});
    for_each_selection(item, [&](plan::Selection const& selection) {
        for (std::uint32_t k = 0; k < selection.count; ++k) {
            chosen[selection.first - 1 + k * selection.step] = true;
        }
        take(item, &selection, selection.first - 1, send_off);
    });
    auto const other = std::ranges::find(chosen, false) - chosen.begin();
    if (other < item.count) {
        take(item, nullptr, static_cast<std::uint32_t>(other), send_off);
    }
}

void TightStarts::take(plan::Item const& item, plan::Selection const* selection, std::uint32_t number,
                       Duration send_off) {
    auto const stretch = stretch_of(item, selection, number);
    if (stretch.untimed != plan::no_index) {
        return;
    }
    TightStart const start{stretch.end, stretch.slots.expected, send_off, number + 1};
    if (!tightest_ || start.left() < tightest_->left()) {
        tightest_ = start;
    }
}

Stretch TightStarts::stretch_of(plan::Item const& item, plan::Selection const* selection,
                                std::uint32_t number) {
    auto const index = static_cast<plan::Index>(&item - plan_.items.data());
    if (item.is_ladder()) {
        auto const terms = selection != nullptr ? selection->terms : item.terms;
        auto const amount = plan_.rungs[item.body + number];
        return calc::stretch_of(clock_.rep(session_, lane_, terms, amount, item.is_timed()), index);
    }
    auto const [known, is_new] = stretches_.try_emplace(selection);
    if (is_new) {
        auto const terms = selection != nullptr ? selection->terms : item.terms;
        known->second =
            item.is_leaf()
                ? calc::stretch_of(clock_.rep(session_, lane_, terms, item.amount, item.is_timed()), index)
                : clock_.round(session_, lane_, index, selection);
    }
    return known->second;
}

bool starts_are_made(plan::Plan const& plan, Clock& clock, plan::Index session, std::vector<int> const& lanes,
                     SendOffs const& set) {
    return std::ranges::all_of(lanes, [&](int lane) {
        auto const tightest = TightStarts{plan, clock, session, lane}.of(plan.items[set.item]);
        return !tightest || tightest->left() >= Duration{};
    });
}

} // namespace lengthwise::calc
