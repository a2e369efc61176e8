#include "report/session_words.hpp"

#include "report/default_rest.hpp"
#include "report/session_title.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <limits>
#include <utility>

namespace lengthwise::report {
namespace {

std::string join(std::vector<std::string> const& parts, std::string_view between) {
    return fold_parts(parts, between, std::numeric_limits<std::size_t>::max());
}

std::string lengths_words(std::int64_t lengths) {
    return std::to_string(lengths) + (lengths == 1 ? " length" : " lengths");
}

/// "36–42 of 45 min"; "45 min booked" where it is not known how long it takes.
std::string time_words(ViewLane const& lane, std::optional<Duration> slot, bool ascii) {
    if (!lane.takes) {
        return slot ? spell::spaced(*slot) + " booked" : std::string{};
    }
    auto const takes = band_minutes(*lane.takes, ascii);
    return slot ? takes + " of " + spell::spaced(*slot) : takes + " min";
}

/// Metres, or time where they are all timed.
std::string amount_words(calc::Totals const& totals, Unit unit, bool ascii) {
    return totals.distance.zero() ? spell::duration(totals.timed)
                                  : spell::distance(totals.distance, unit, ascii);
}

} // namespace

SessionHead session_head(plan::Plan const& plan, plan::Index session, bool ascii) {
    auto title = session_title(plan, session, plan.pool_of(plan.sessions[session]), ascii);
    if (title[0].empty()) {
        std::swap(title[0], title[1]);
    }
    return {title[0], in_one_line({title[1], title[2]}, ascii)};
}

std::vector<std::string> lane_words(plan::Plan const& plan, SessionView const& view, std::size_t place,
                                    bool ascii) {
    auto const& session = plan.sessions[view.session];
    auto const& lane = view.lanes[place];
    auto const& pool = plan.pool_of(session);
    auto const& swum = lane.swum.totals;
    std::vector<std::string> words{
        lane.lane != 0 ? "lane " + std::to_string(lane.lane) : "",
        swum.distance.zero() ? "" : spell::distance(swum.distance, pool.unit, ascii),
        pool.has_length() && swum.lengths > 0 ? lengths_words(swum.lengths) : "",
        swum.timed.zero() ? "" : spell::duration(swum.timed) + " timed",
        swum.longest.zero() ? "" : "longest rep " + spell::distance(swum.longest, pool.unit, ascii),
        time_words(lane, session.slot(), ascii)};
    if (lane.takes && lane.threshold) {
        words.push_back("threshold " + pace_text(*lane.threshold, ascii));
    }
    if (lane.if_time.totals.reps > 0) {
        words.push_back("if time " + amount_words(lane.if_time.totals, pool.unit, ascii) + " more");
    }
    return words;
}

std::string set_words(ViewLine const& line) {
    return (line.kind == ViewLine::Kind::optional ? "if time: " : "") + visible(line.set);
}

std::string line_words(plan::Plan const& plan, SessionView const& view, ViewLine const& line) {
    auto const& item = plan.items[line.item];
    std::string label;
    if (view.lanes.size() > 1 && item.has_lanes()) {
        label = "lane " + std::to_string(item.first_lane);
        label += item.last_lane > item.first_lane ? "-" + std::to_string(item.last_lane) + ": " : ": ";
    }
    return label + set_words(line);
}

std::string kit_and_rest(plan::Plan const& plan, SessionView const& view, bool ascii) {
    auto const rest = default_rest(plan, plan.sessions[view.session]);
    return in_one_line({"kit: " + (view.kit.empty() ? "none" : join(view.kit, ", ")),
                        rest ? "rest " + spell::spaced(*rest, ascii) + " where a line has none" : ""},
                       ascii);
}

std::string week_words(plan::Plan const& plan, plan::Week const& week) {
    if (!week.number) {
        return plan.weeks.size() > 1 ? "Before the weeks" : "Sessions";
    }
    auto const label = "Week " + std::to_string(*week.number);
    return week.from ? label + " from " + spell::day(*week.from) : label;
}

std::string race_words(plan::Race const& race, bool ascii) {
    return join({race.name.empty() ? "race" : "race " + visible(race.name), spell::day(race.on),
                 spell::distance(race.distance, race.unit, ascii)},
                ", ");
}

std::string in_one_line(std::vector<std::string> const& parts, bool ascii) {
    return join(parts, ascii ? ", " : " · ");
}

} // namespace lengthwise::report
