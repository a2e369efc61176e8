#include "check/progress.hpp"

#include "check/inquiry.hpp"
#include "check/words.hpp"

#include <fmt/core.h>
#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace lengthwise::check {

bool before_race(plan::Plan const& plan, plan::Session const& session) {
    return !plan.race || !session.date || *session.date < plan.race->on;
}

std::vector<SwumWeek> swum_weeks(plan::Plan const& plan, calc::Reckoner& sums) {
    std::vector<SwumWeek> weeks;
    for (auto const& week : plan.weeks) {
        SwumWeek swum{.week = &week, .sums = {}, .sessions = 0, .laps = {}};
        for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
            auto const& session = plan.sessions[i];
            if (before_race(plan, session)) {
                sums.add_session(session, swum.sums);
                swum.laps += lap_of(plan, session);
                ++swum.sessions;
            }
        }
        if (swum.sessions > 0) {
            weeks.push_back(std::move(swum));
        }
    }
    return weeks;
}

std::vector<int> lanes_to_judge(plan::Plan const& plan) {
    auto lanes = calc::numbers(calc::lanes_of(plan));
    if (lanes.empty()) {
        lanes.push_back(0);
    }
    return lanes;
}

Distance lap_of(plan::Plan const& plan, plan::Session const& session) {
    auto const& pool = plan.pool_of(session);
    return pool.has_length() ? lap(pool) : Distance::metres(50);
}

void LaneFindings::warn(int lane, Span span, std::string message, std::string hint,
                        std::vector<Related> related) {
    add(lane, {false, span, std::move(message), std::move(hint), std::move(related), {}});
}

void LaneFindings::error(int lane, Span span, std::string message, std::string hint,
                         std::vector<Related> related) {
    add(lane, {true, span, std::move(message), std::move(hint), std::move(related), {}});
}

void LaneFindings::add(int lane, Entry entry) {
    auto found = std::ranges::find_if(entries_, [&](Entry const& other) {
        return other.span == entry.span && other.message == entry.message;
    });
    if (found == entries_.end()) {
        found = entries_.insert(found, std::move(entry));
    }
    found->lanes.push_back(lane);
}

void LaneFindings::hand_in(Inquiry& inquiry) {
    for (auto& entry : entries_) {
        if (entry.lanes.size() < all_.size()) {
            entry.message += fmt::format(" ({} {})", entry.lanes.size() == 1 ? "lane" : "lanes",
                                         fmt::join(entry.lanes, ", "));
        }
        auto const report = entry.error ? &Inquiry::error : &Inquiry::warn;
        (inquiry.*report)(entry.span, std::move(entry.message), std::move(entry.hint),
                          std::move(entry.related));
    }
}

} // namespace lengthwise::check
