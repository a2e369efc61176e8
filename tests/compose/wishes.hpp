#pragma once

#include "compose/request.hpp"

#include <cstdint>
#include <vector>

/// Requests to compose from, for tests: training Tuesday and Friday in 25 m, from a Monday, the race
/// on the Sunday of the last week, no threshold, so that every slot is long enough.
namespace lengthwise::support {

inline Pool const pool_25m = Pool::of(Distance::metres(25), Unit::metre);
inline Date const monday = *parse_date("2027-04-26");

/// Metres.
inline compose::Request wish(std::int64_t race, int weeks, std::int64_t longest, std::int64_t session) {
    compose::Request request;
    request.race.distance = Distance::metres(race);
    request.race.on = monday + std::chrono::days{7 * weeks - 1};
    request.from = monday;
    request.days = {1, 4};
    request.slot = Duration::minutes(45);
    request.pool = pool_25m;
    request.longest = Distance::metres(longest);
    request.session = Distance::metres(session);
    return request;
}

inline void set_limit(compose::Request& request, std::string_view rule, std::int64_t value) {
    request.limits.push_back({.rule = *plan::find_rule(rule), .low = value, .high = value, .span = {}});
}

/// The first `count` of Monday, Wednesday, Friday, Saturday.
inline std::vector<std::uint8_t> days(std::size_t count) {
    std::vector<std::uint8_t> days{0, 2, 4, 5};
    days.resize(count);
    return days;
}

} // namespace lengthwise::support
