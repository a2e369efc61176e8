#include "compose/warm_up.hpp"

#include "compose/drill_section.hpp"
#include "compose/fit.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::compose {

namespace {

constexpr auto longest_loose = Distance::metres(400);

/// Relaxed laps, in as few reps as the swimmer can swim at once; beginners swim a lap or two.
Line loose(Place const& place, Laps laps, Manner manner) {
    auto most = std::min(place.rep, laps_in(place.pool, longest_loose));
    if (place.stage == 0) {
        most = place.rep < 3 ? 1 : 2;
    }
    auto const fit = equal_reps(laps, most);
    return reps(fit.count, fit.size, manner);
}

/// What goes round from session to session.
enum class OneThing : std::uint8_t { kick, build, pull };

OneThing one_thing(Place const& place, bool builds_anyway) {
    auto const turn = (place.week - 1 + place.index) % 3;
    if (turn == 1 && !builds_anyway && place.stage > 0) {
        return OneThing::build;
    }
    return turn == 2 && place.kit.buoy && place.stage > 0 ? OneThing::pull : OneThing::kick;
}

Manner manner_of(OneThing thing, Place const& place) {
    switch (thing) {
    case OneThing::build:
        return crawl_build();
    case OneThing::pull:
        return pull();
    case OneThing::kick:
        break;
    }
    return kick(place.kit.board);
}

/// Of three laps beginners swim all at ease; others do instead of a single lap with the buoy.
WarmUp sizes(Place const& place, Laps laps) {
    auto sizes = warm_up(laps);
    auto const lone_pull = place.rep >= 3 && place.stage > 0 && (place.week - 1 + place.index) % 3 == 2;
    if (laps == 3 && (place.stage == 0 || lone_pull)) {
        sizes = {.choice = 3};
    }
    return sizes;
}

Line drill_in_warm_up(int count, WeekDrills const& drills, DrillBook& book) {
    auto line = drill_line(count, drills.fresh);
    if (auto cue = book.cue(drills.fresh)) {
        line.above.push_back(std::move(*cue));
    }
    return line;
}

} // namespace

Section warm_up_section(Place const& place, Laps laps, bool drills_here, WeekDrills const& drills,
                        DrillBook& book) {
    auto size = sizes(place, laps);
    if (!drills_here && laps >= 2 && size.one_thing == 0) {
        --size.choice;
        size.one_thing = 1;
    }
    Section section{.kind = SectionKind::warm_up};
    section.lines.push_back(loose(place, size.choice, place.last ? crawl() : choice()));
    if (!drills_here && size.one_thing > 0) {
        section.lines.push_back(drill_in_warm_up(size.one_thing, drills, book));
    } else if (place.last) {
        size.build += size.one_thing;
    } else if (size.one_thing > 0) {
        section.lines.push_back(reps(size.one_thing, 1, manner_of(one_thing(place, size.build > 0), place)));
    }
    if (size.build > 0) {
        section.lines.push_back(reps(size.build, 1, crawl_build()));
    }
    return section;
}

Section cool_down_section(Place const& place, Laps laps) {
    auto line = loose(place, laps, choice());
    auto& rep = line.reps.front();
    if ((place.week - 1 + place.index) % 2 == 1 && place.stage > 0 && rep.laps % 2 == 0) {
        rep.manner = crawl();
        rep.parts = {{2, {.stroke = Stroke::back}}, {2, crawl()}};
    }
    return {.kind = SectionKind::cool_down, .lines = {std::move(line)}};
}

} // namespace lengthwise::compose
