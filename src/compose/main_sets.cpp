#include "compose/main_sets.hpp"

#include "compose/set_lines.hpp"

#include <array>
#include <numeric>

namespace lengthwise::compose {

namespace {

struct About {
    std::string_view title;
    int first_stage;
};

constexpr std::array<About, 14> about{{
    {"Build each rep", 0},
    {"Long and short", 0},
    {"Change of gears", 0},
    {"Ladder", 0},
    {"Long swim in pieces", 0},
    {"Arms, then all", 0},
    {"Each one quicker", 1},
    {"Start and settle", 1},
    {"Three speeds", 1},
    {"Even pace", 1},
    {"Second half stronger", 1},
    {"Look and swim", 1},
    {"Count strokes", 0},
    {"Race in pieces", 1},
}};

constexpr std::array<sets::Lines (*)(sets::Wish const&), 14> makers{
    sets::build, sets::rounds, sets::alternate, sets::ladder,   sets::pieces, sets::pulled, sets::descend,
    sets::start, sets::change, sets::threshold, sets::negative, sets::sight,  sets::count,  sets::race};

} // namespace

std::string_view title_of(Set set) {
    return about[static_cast<std::size_t>(set)].title;
}

int first_stage(Set set) {
    return about[static_cast<std::size_t>(set)].first_stage;
}

std::optional<std::vector<Line>> lines_of(Set set, Laps laps, Place const& place, int visit) {
    if (laps < 1 || place.stage < first_stage(set)) {
        return std::nullopt;
    }
    auto lines = makers[static_cast<std::size_t>(set)]({laps, place, visit});
    auto const quick =
        lines ? std::accumulate(lines->begin(), lines->end(), 0,
                                [](int sum, Line const& line) { return sum + hard_halves(line); })
              : 0;
    return quick <= most_hard_halves(place) ? lines : std::nullopt;
}

} // namespace lengthwise::compose
