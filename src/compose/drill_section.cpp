#include "compose/drill_section.hpp"

#include <utility>

namespace lengthwise::compose {

namespace {

/// How a section's laps are shared out: a known drill, the fresh one, plain swimming.
struct Shares {
    int known = 0;
    int fresh = 0;
    int plain = 0;
};

/// Every other week without plain swimming: so that the weeks differ.
Shares two_drills(Laps laps, bool with_plain) {
    if (laps < 4) {
        return {.fresh = laps};
    }
    auto const plain = laps < 8 || !with_plain ? 0 : laps < 10 ? 2 : laps == 10 ? 3 : 4;
    auto const known = (laps - plain) / 2;
    return {.known = known, .fresh = laps - plain - known, .plain = plain};
}

Shares one_drill(Laps laps) {
    return laps > 6 ? Shares{.fresh = (laps + 1) / 2, .plain = laps / 2} : Shares{.fresh = laps};
}

/// In one go every other time, where that is no longer than the week's longest rep.
Line plain_line(Place const& place, int laps) {
    auto const whole = (turn(place) / 2 + place.index) % 2 == 1 && laps <= place.rep;
    return reps(whole ? 1 : laps, whole ? laps : 1, crawl(Effort::easy), 0, std::string{same_feeling});
}

void add(Section& section, int count, std::string_view drill, DrillBook& book) {
    if (count > 0) {
        auto line = drill_line(count, drill);
        if (auto cue = book.cue(drill)) {
            line.above.push_back(std::move(*cue));
        }
        section.lines.push_back(std::move(line));
    }
}

} // namespace

Line drill_line(int count, std::string_view name) {
    auto line = reps(count, 1, crawl());
    Part const drilled{1, drill(name)};
    Part const swum{1, crawl()};
    auto const at_wall = drill_named(name).focus == Focus::wall;
    line.reps.front().parts = at_wall ? std::vector{swum, drilled} : std::vector{drilled, swum};
    return line;
}

Section drill_section(Place const& place, Laps laps, WeekDrills const& drills, DrillBook& book) {
    auto const known = place.day == DayKind::third ? drills.third : drills.known;
    auto const one = place.day == DayKind::long_day || known == drills.fresh;
    auto const shares = one ? one_drill(laps) : two_drills(laps, turn(place) % 2 == 1);
    Section section{.kind = SectionKind::drill, .name = name_of(drills.focus)};
    add(section, shares.known, known, book);
    add(section, shares.fresh, drills.fresh, book);
    if (shares.plain > 0) {
        section.lines.push_back(plain_line(place, shares.plain));
    }
    return section;
}

} // namespace lengthwise::compose
