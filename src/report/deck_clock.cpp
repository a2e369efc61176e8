#include "report/deck_clock.hpp"

#include "calc/fits.hpp"
#include "plan/pace_of.hpp"

#include <algorithm>

namespace lengthwise::report {

int timed_as(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane) {
    if (lane != 0 || clock.pacing(session, 0).known()) {
        return lane;
    }
    plan::LanePaces const paces{plan};
    return paces.lanes().empty() ? 0 : paces.lanes().front();
}

DeckClock DeckTimer::read(std::vector<int> const& lanes, std::optional<TimeOfDay> start) {
    auto const& session = plan_.sessions[session_];
    DeckClock clock;
    clock.from = start ? start : session.at;
    clock.slot = session.slot();
    clock.too_long = clock_.passes_limit(session_).has_value();
    if (clock.too_long) {
        lines_.resize(lanes.size());
        clock.shown.resize(lanes.size());
        return clock;
    }
    for (int const lane : lanes) {
        auto const timed = timed_as(plan_, clock_, session_, lane);
        lines_.push_back(clock_.lines(session_, timed));
        clock.shown.push_back(pace(timed));
        auto const& lines = lines_.back();
        clock.runs =
            clock.runs || std::ranges::any_of(lines, [](auto const& line) { return line.end.has_value(); });
    }
    if (lanes.front() == 0) {
        plan::LanePaces const paces{plan_};
        for (int const lane : paces.lanes()) {
            clock.others.push_back(pace(lane));
        }
    }
    turn_round(clock);
    return clock;
}

DeckPace DeckTimer::pace(int lane) {
    auto const* const threshold = clock_.pacing(session_, lane).threshold();
    auto const times = clock_.session(session_, lane);
    return {lane, threshold != nullptr ? std::optional{*threshold} : std::nullopt, times.total(),
            times.assumed != plan::no_index};
}

void DeckTimer::turn_round(DeckClock& clock) const {
    bool const known =
        std::ranges::all_of(clock.shown, [](DeckPace const& pace) { return pace.takes.has_value(); });
    clock.turned_round = !known && clock.slot;
    if (clock.turned_round) {
        clock.fits = calc::slowest_fitting(plan_, session_, *clock.slot);
    }
}

std::vector<std::optional<Duration>> DeckTimer::starts(plan::Index item) const {
    std::vector<std::optional<Duration>> starts;
    for (auto const& lines : lines_) {
        auto const found = std::ranges::lower_bound(lines, item, {}, &calc::LineTimes::item);
        bool const known = found != lines.end() && found->item == item && found->start;
        starts.push_back(known ? std::optional{found->start->expected} : std::nullopt);
    }
    return starts;
}

} // namespace lengthwise::report
