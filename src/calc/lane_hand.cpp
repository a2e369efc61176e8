#include "calc/lane_hand.hpp"

#include <algorithm>
#include <cstdint>

namespace lengthwise::calc {
namespace {

constexpr std::int64_t minute = 60;
/// The hand has been everywhere by then, if one step holds for all.
constexpr std::int64_t most = minute;

/// The fewest marks that give all of them when they are gone through over and over.
std::size_t period(std::vector<int> const& marks) {
    for (std::size_t period = 1; period < marks.size(); ++period) {
        if (std::equal(marks.begin() + static_cast<std::ptrdiff_t>(period), marks.end(), marks.begin())) {
            return period;
        }
    }
    return marks.size();
}

bool has_send_offs(plan::Plan const& plan, plan::Item const& item) {
    return plan.terms[item.terms].recovery.kind == plan::Recovery::Kind::on;
}

/// Do other rounds swim something else?
bool varies(plan::Plan const& plan, plan::Item const& item) {
    auto const run = plan.terms[item.terms].selections;
    auto const first = plan.selections.begin() + run.first;
    return std::any_of(first, first + run.count,
                       [](plan::Selection const& selection) { return selection.body != plan::no_index; });
}

} // namespace

std::optional<Hand> hand_at_starts(std::vector<Duration> const& steps, std::int64_t starts, Duration begun) {
    Hand hand;
    hand.more = starts > most && steps.size() > 1;
    auto at = begun;
    for (std::int64_t start = 0; start < std::min(starts, most); ++start) {
        if (at.ms() % 1000 != 0) {
            return std::nullopt;
        }
        hand.marks.push_back(static_cast<int>(at.ms() / 1000 % minute));
        at += steps.size() == 1 ? steps.front() : steps[static_cast<std::size_t>(start)];
    }
    if (!hand.more) {
        hand.marks.resize(period(hand.marks));
    }
    return hand;
}

std::optional<SendOffs> send_offs_of(plan::Plan const& plan, plan::Item const& item) {
    if (!item.is_swum()) {
        return std::nullopt;
    }
    if (has_send_offs(plan, item)) {
        return SendOffs{item.terms, item.count};
    }
    if (item.is_leaf() || varies(plan, item)) {
        return std::nullopt;
    }
    if (item.kind == plan::Item::Kind::use) {
        return send_offs_of(plan, plan.items[item.body]);
    }
    std::optional<SendOffs> only;
    for (auto const& inner : items_from(plan, item.body)) {
        auto const found = send_offs_of(plan, inner);
        if (found && only) {
            return std::nullopt;
        }
        only = found ? found : only;
    }
    return only;
}

std::vector<Duration> steps_of(plan::Plan const& plan, SendOffs const& set) {
    auto const& recovery = plan.terms[set.terms].recovery;
    auto const first = plan.send_offs.begin() + recovery.first_step;
    return {first, first + recovery.steps};
}

} // namespace lengthwise::calc
