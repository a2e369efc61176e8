#pragma once

#include "calc/threshold.hpp"

#include <vector>

namespace lengthwise::support {

/// Metres and seconds, in whole milliseconds.
struct Timed {
    double metres;
    double seconds;
    Pool course{};
};

inline Pool const metres_25 = Pool::of(Distance::metres(25), Unit::metre);
inline Pool const metres_50 = Pool::of(Distance::metres(50), Unit::metre);
inline Pool const yards_25 = Pool::of(Distance::yards(25), Unit::yard);

/// Swims as the command line makes them. `course` is the threshold's, unless a swim's is.
[[nodiscard]] inline calc::Trials trials(std::vector<Timed> const& timed, Pool const& course = {}) {
    calc::Trials trials;
    for (auto const& [metres, seconds, pool] : timed) {
        auto const units = static_cast<std::int64_t>(metres * Distance::per_metre + 0.5);
        trials.swims.push_back({.distance = Distance::units(units),
                                .unit = Unit::metre,
                                .time = Duration::ms(static_cast<std::int64_t>(seconds * 1000 + 0.5)),
                                .course = pool.kind == Pool::Kind::unsaid ? course : pool});
    }
    trials.course = calc::reference_course(trials.swims, course);
    trials.unit = calc::pace_unit(trials.swims, trials.course);
    return trials;
}

} // namespace lengthwise::support
