#include "check/swum.hpp"

#include "tailor/swimmer.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <utility>

namespace lengthwise::check {

namespace {

constexpr std::uint32_t whole = 100;

/// The lane a swimmer swims in; all are alike where the plan names none.
int lane_of(plan::Swimmer const& swimmer, std::vector<int> const& lanes) {
    return lanes.front() == 0 || !swimmer.lane ? lanes.front() : int{*swimmer.lane};
}

} // namespace

std::vector<Sharers> sharers(plan::Plan const& plan) {
    auto const lanes = lanes_to_judge(plan);
    std::vector<Sharers> result;
    std::map<std::pair<std::uint32_t, int>, std::size_t> places; // by share and lane
    std::map<std::uint32_t, std::size_t> first;                  // of a share: who has it first
    for (auto const& swimmer : plan.swimmers) {
        auto const lane = lane_of(swimmer, lanes);
        auto const percent = swimmer.share.value_or(whole);
        if (percent == whole && std::ranges::binary_search(lanes, lane)) {
            continue;
        }
        auto const [place, is_new] = places.try_emplace({percent, lane}, result.size());
        if (is_new) {
            first.try_emplace(percent, result.size());
            result.push_back({lane, percent, {}});
        }
        result[place->second].swimmers.push_back(&swimmer);
    }
    std::ranges::stable_sort(result, {}, [&](Sharers const& some) { return first[some.percent]; });
    return result;
}

std::string names(Sharers const& sharers) {
    auto const& all = sharers.swimmers;
    switch (all.size()) {
    case 1:
        return std::string{all.front()->name};
    case 2:
        return fmt::format("{} and {}", all[0]->name, all[1]->name);
    default:
        return fmt::format("{}, {} and {} more", all[0]->name, all[1]->name, all.size() - 2);
    }
}

Distance longest_before_race(Swum const& swum) {
    Distance longest;
    for (auto const& week : swum.weeks) {
        longest = std::max(longest, week.sums.swum(swum.lane).longest);
    }
    return longest;
}

void each_lane(plan::Plan const& plan, calc::Reckoner& sums, std::function<void(Swum const&)> const& visit) {
    auto const weeks = swum_weeks(plan, sums);
    for (auto const lane : lanes_to_judge(plan)) {
        visit({plan, sums, weeks, lane, nullptr});
    }
}

void each_swum(plan::Plan const& plan, calc::Reckoner& sums, std::function<void(Swum const&)> const& visit) {
    each_lane(plan, sums, visit);
    auto const all = sharers(plan);
    for (auto alike = all.begin(); alike != all.end();) {
        auto const share = tailor::share_of(plan, alike->percent);
        calc::Reckoner of_share{share};
        auto const weeks_of_share = swum_weeks(share, of_share);
        auto const end = std::find_if(alike, all.end(),
                                      [&](Sharers const& other) { return other.percent != alike->percent; });
        for (; alike != end; ++alike) {
            visit({share, of_share, weeks_of_share, alike->lane, &*alike});
        }
    }
}

} // namespace lengthwise::check
