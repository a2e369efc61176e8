#include "compose/place.hpp"

#include <algorithm>

namespace lengthwise::compose {

bool is_easy(Place const& place) {
    return place.kind == WeekKind::recovery || place.kind == WeekKind::eased;
}

int turn(Place const& place) {
    return place.kind == WeekKind::build ? place.build : place.week;
}

Effort steady(Place const& place) {
    return place.stage == 0 || is_easy(place) ? Effort::easy : Effort::steady;
}

Effort hard(Place const& place) {
    return place.stage == 0 || place.opening || is_easy(place) ? Effort::steady : Effort::hard;
}

int most_hard_halves(Place const& place) {
    auto const third = 2 * place.laps / 3;
    return place.kind == WeekKind::taper ? std::min(third, 12) : third;
}

int rest_at(int visit) {
    return std::max(20, 30 - 5 * (visit - 1));
}

Laps hundred(Place const& place) {
    auto const metres = lap(place.pool);
    return std::max(1, static_cast<int>(Distance::whole(Distance::metres(200) + metres, metres * 2)));
}

Laps laps_in(Pool const& pool, Distance distance) {
    return std::max(1, static_cast<int>(Distance::whole(distance, lap(pool))));
}

int stage_of(Pool const& pool, Laps longest) {
    auto const swum = lap(pool) * longest;
    return swum < Distance::metres(200) ? 0 : swum < Distance::metres(600) ? 1 : 2;
}

} // namespace lengthwise::compose
