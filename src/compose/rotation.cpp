#include "compose/set_book.hpp"

#include <array>

/// Three sets go round twice, then three others, so that each comes back after three or four weeks. After
/// eighteen build weeks it begins again, by then with more laps.
/// Common practice, no published source.
namespace lengthwise::compose {

namespace {

using Three = std::array<Set, 3>;

constexpr std::array<std::array<Three, 3>, 3> pace_days{{
    {{{Set::build, Set::rounds, Set::pull},
      {Set::alternate, Set::ladder, Set::pieces},
      {Set::rounds, Set::build, Set::race}}},
    {{{Set::rounds, Set::pieces, Set::alternate},
      {Set::ladder, Set::descend, Set::start},
      {Set::threshold, Set::change, Set::race}}},
    {{{Set::threshold, Set::ladder, Set::change},
      {Set::descend, Set::pieces, Set::start},
      {Set::rounds, Set::alternate, Set::race}}},
}};

std::size_t at(int n) {
    return static_cast<std::size_t>(n);
}

Set of_build_week(Place const& place) {
    auto const turn = at((place.build - 1) % 3);
    switch (place.day) {
    case DayKind::third:
        if (place.stage == 0) {
            return Three{Set::ladder, Set::alternate, Set::pieces}[turn];
        }
        return Three{Set::negative, Set::pull, place.threshold ? Set::threshold : Set::race}[turn];
    case DayKind::fourth:
        return Three{Set::sight, Set::count, Set::build}[turn];
    case DayKind::pace:
    case DayKind::long_day:
        break;
    }
    return pace_days[at(place.era)][at((place.build - 1) / 6) % 3][turn];
}

/// Never hard, one further each easy week and each day.
Set of_easy_week(Place const& place) {
    auto const day = place.day == DayKind::third ? 1 : place.day == DayKind::fourth ? 2 : 0;
    auto const second = place.usual_days == 2 ? Set::pull : Set::build;
    auto const third = place.usual_days == 2 ? Set::build : Set::sight;
    return Three{Set::count, second, third}[at((place.easy - 1 + day) % 3)];
}

Set of_taper(Place const& place) {
    switch (place.day) {
    case DayKind::third:
        return place.stage == 0 ? Set::pull : Set::race;
    case DayKind::fourth:
        return Set::sight;
    case DayKind::pace:
    case DayKind::long_day:
        break;
    }
    return place.stage == 0 ? Set::build : Set::start;
}

} // namespace

Set due(Place const& place) {
    return place.kind == WeekKind::taper ? of_taper(place)
           : is_easy(place)              ? of_easy_week(place)
                                         : of_build_week(place);
}

} // namespace lengthwise::compose
