#include "calc/timeline.hpp"

#include "calc/band.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

constexpr plan::Index first_of(plan::Index a, plan::Index b) {
    return a == plan::no_index ? b : a;
}

/// What a lane swims of a session: its lines and all pauses, or its `if time` lines alone.
constexpr auto swum_in(int lane, bool optional) {
    return [lane, optional](plan::Item const& item) {
        return item.kind == plan::Item::Kind::pause ? !optional
                                                    : item.optional == optional && item.swum_by(lane);
    };
}

} // namespace

std::optional<Band<Duration>> Times::total() const {
    return known() ? std::optional{time} : std::nullopt;
}

std::optional<Band<Duration>> Times::swum() const {
    return known() ? std::optional{swimming} : std::nullopt;
}

std::optional<Band<Duration>> Times::resting() const {
    return known() ? std::optional{time - swimming} : std::nullopt;
}

std::optional<Distance> Times::distance() const {
    return unmeasured == plan::no_index ? std::optional{estimated} : std::nullopt;
}

void Times::add(Times const& more) {
    time += more.time;
    swimming += more.swimming;
    estimated += more.estimated;
    untimed = first_of(untimed, more.untimed);
    unmeasured = first_of(unmeasured, more.unmeasured);
    assumed = first_of(assumed, more.assumed);
}

void SectionTimes::add(SectionTimes const& more) {
    swum.add(more.swum);
    if_time.add(more.if_time);
}

std::vector<Clock::Line> const& Clock::lines_of(plan::Index session, PacingId pacing) {
    if (lines_.session == session && lines_.pacing == pacing) {
        return lines_.lines;
    }
    lines_.session = session;
    lines_.pacing = pacing;
    lines_.lines.clear();
    lines_.optional = false;
    auto const sections = plan_.sessions[session].sections;
    for (auto section = sections.first; section < sections.end(); ++section) {
        auto const items = items_from(plan_, plan_.sections[section].body);
        for (auto at = items.begin(); at != items.end(); ++at) {
            if ((*at).is_swum()) {
                lines_.lines.push_back({at.index(), section, stretches_.of(at.index(), pacing)});
                lines_.optional |= (*at).optional;
            } else if ((*at).kind == plan::Item::Kind::pause) {
                lines_.lines.push_back({at.index(), section, {}});
            }
        }
    }
    return lines_.lines;
}

/// Calls `take(line, until_next, is_last)` for the lines that are chosen: `until_next` is the time from a
/// line's first start to that of the next line, or to the last swim's end. Chosen pauses between two
/// lines take the place of the first one's gap; before all and behind all they count nothing.
template <typename Chosen, typename Take>
void Clock::in_order(std::vector<Line> const& lines, Chosen chosen, Take take) {
    Line const* before = nullptr;
    bool paused = false;
    Duration pause;
    for (auto const& line : lines) {
        auto const& item = plan_.items[line.item];
        if (!chosen(item)) {
            continue;
        }
        if (item.kind == plan::Item::Kind::pause) {
            paused = true;
            pause += item.duration();
            continue;
        }
        if (before != nullptr) {
            take(*before, before->stretch.slots + (paused ? exactly(pause) : before->stretch.gap), false);
        }
        before = &line;
        paused = false;
        pause = {};
    }
    if (before != nullptr) {
        take(*before, before->stretch.end, true);
    }
}

std::vector<SectionTimes> Clock::sections(plan::Index session, int lane) {
    std::vector<SectionTimes> all;
    sections(session, lane, all);
    return all;
}

void Clock::sections(plan::Index session, int lane, std::vector<SectionTimes>& sections) {
    auto const run = plan_.sessions[session].sections;
    auto const& lines = lines_of(session, paces_.of(plan_.sessions[session], lane));
    sections.assign(run.count, {});
    for (auto const optional : {false, true}) {
        if (optional && !lines_.optional) {
            break; // most sessions
        }
        in_order(lines, swum_in(lane, optional),
                 [&](Line const& line, Band<Duration> const& until_next, bool) {
                     auto& section = sections[line.section - run.first];
                     auto const& stretch = line.stretch;
                     (optional ? section.if_time : section.swum)
                         .add({until_next, stretch.swimming, stretch.estimated, stretch.untimed,
                               stretch.unmeasured, stretch.assumed});
                 });
    }
}

Times Clock::session(plan::Index session, int lane) {
    Times all;
    for (auto const& section : sections(session, lane)) {
        all.add(section.swum);
    }
    return all;
}

Times Clock::week(plan::Week const& week, int lane) {
    Times all;
    for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
        all.add(session(i, lane));
    }
    return all;
}

Times Clock::whole_plan(int lane) {
    Times all;
    for (auto const& week : plan_.weeks) {
        all.add(this->week(week, lane));
    }
    return all;
}

template <typename Chosen>
std::vector<LineTimes> Clock::lines_chosen(plan::Index session, int lane, Chosen chosen) {
    std::vector<LineTimes> result;
    std::optional<Band<Duration>> clock{Band<Duration>{}};
    auto const& lines = lines_of(session, paces_.of(plan_.sessions[session], lane));
    in_order(lines, chosen, [&](Line const& line, Band<Duration> const& until_next, bool is_last) {
        LineTimes times{line.item, line.section, clock, std::nullopt, std::nullopt};
        if (line.stretch.untimed != plan::no_index) {
            clock.reset();
        }
        if (clock) {
            times.end = *clock + (is_last ? line.stretch.end : line.stretch.slots);
            clock = *clock + until_next;
            times.leave = clock;
        }
        result.push_back(times);
    });
    return result;
}

std::vector<LineTimes> Clock::lines(plan::Index session, int lane) {
    return lines_chosen(session, lane, swum_in(lane, false));
}

std::vector<LineTimes> Clock::lines(plan::Index session, int lane,
                                    std::function<bool(plan::Index)> const& stays) {
    return lines_chosen(session, lane, [&](plan::Item const& item) {
        return item.swum_by(lane) && stays(static_cast<plan::Index>(&item - plan_.items.data()));
    });
}

RepTime Clock::rep(plan::Index session, int lane, plan::Index terms, std::int64_t amount, bool timed) {
    return paces_.rep(paces_.of(plan_.sessions[session], lane), terms, amount, timed);
}

Pacing const& Clock::pacing(plan::Index session, int lane) {
    return paces_.at(paces_.of(plan_.sessions[session], lane));
}

Stretch Clock::round(plan::Index session, int lane, plan::Index item, plan::Selection const* selection) {
    return stretches_.round(item, selection, paces_.of(plan_.sessions[session], lane));
}

/// Lanes without a pace of their own go by the threshold in force, which is asked for every line.
std::optional<plan::Index> Clock::passes_limit(plan::Index session) {
    auto lanes = paces_.lanes().lanes();
    lanes.push_back(0);
    struct Most {
        Duration time;
        Distance distance;
    };
    std::vector<Most> most; // of each line
    for (int const lane : lanes) {
        auto const& lines = lines_of(session, paces_.of(plan_.sessions[session], lane));
        most.resize(lines.size());
        for (std::size_t i = 0; i < lines.size(); ++i) {
            auto const& stretch = lines[i].stretch;
            if (lane == 0 || plan_.items[lines[i].item].swum_by(lane)) {
                most[i].time = std::max(most[i].time, stretch.slots.high + stretch.gap.high);
                most[i].distance = std::max(most[i].distance, stretch.estimated);
            }
        }
    }
    Most sum;
    for (std::size_t i = 0; i < most.size(); ++i) {
        auto const& item = plan_.items[lines_.lines[i].item];
        sum.time += item.kind == plan::Item::Kind::pause ? item.duration() : most[i].time;
        sum.distance += most[i].distance;
        if (sum.time > Duration::hours(limits::session_hours) ||
            sum.distance > Distance::metres(limits::session_km * 1000)) {
            return lines_.lines[i].item;
        }
    }
    return std::nullopt;
}

} // namespace lengthwise::calc
