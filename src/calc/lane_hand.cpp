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

std::optional<SendOffs> SendOffReader::of(plan::Item const& item) {
    auto const found = find(item);
    return found.several ? std::nullopt : found.only;
}

SendOffReader::Found SendOffReader::find(plan::Item const& item) {
    if (!item.is_swum()) {
        return {};
    }
    if (has_send_offs(plan_, item)) {
        return {SendOffs{static_cast<plan::Index>(&item - plan_.items.data()), item.terms, item.count},
                false};
    }
    if (item.is_leaf()) {
        return {};
    }
    if (varies(plan_, item)) {
        return {std::nullopt, true};
    }
    if (auto const known = shared_.find(item.body); known != shared_.end()) {
        return known->second;
    }
    auto const found = find_inside(item);
    shared_.emplace(item.body, found);
    return found;
}

SendOffReader::Found SendOffReader::find_inside(plan::Item const& item) {
    if (item.kind == plan::Item::Kind::use) {
        return find(plan_.items[item.body]);
    }
    Found all;
    for (auto const& inner : items_from(plan_, item.body)) {
        auto const found = find(inner);
        all.several = all.several || found.several || (found.only && all.only);
        all.only = all.only ? all.only : found.only;
    }
    return all;
}

std::vector<Duration> steps_of(plan::Plan const& plan, SendOffs const& set) {
    auto const& recovery = plan.terms[set.terms].recovery;
    auto const first = plan.send_offs.begin() + recovery.first_step;
    return {first, first + recovery.steps};
}

} // namespace lengthwise::calc
