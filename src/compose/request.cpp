#include "compose/request.hpp"

#include "calc/growth.hpp"

#include <algorithm>

namespace lengthwise::compose {

std::optional<std::int64_t> limit(Request const& request, std::string_view rule) {
    auto const found = std::ranges::find_if(
        request.limits, [&](plan::Limit const& limit) { return plan::rules[limit.rule].name == rule; });
    return found == request.limits.end() ? std::nullopt : std::optional{found->low};
}

std::int64_t limit_or(Request const& request, std::string_view rule, std::int64_t usual) {
    return limit(request, rule).value_or(usual);
}

std::int64_t lengths_a_lap(Pool const& pool) {
    return Distance::whole(lap(pool), pool.length);
}

std::int64_t race_rep_laps(Request const& request) {
    auto const percent = limit_or(request, "race-rep", calc::usual::race_rep);
    auto const rep = calc::race_rep(request.race.distance, percent);
    return std::max<std::int64_t>(1, Distance::ceiling(rep, lap(request.pool)));
}

bool race_was_swum(Request const& request) {
    return request.race_swum || request.longest >= request.race.distance;
}

std::uint8_t weekday(Date date) {
    return static_cast<std::uint8_t>(std::chrono::weekday{date}.iso_encoding() - 1);
}

std::optional<TimeOfDay> time_on(Request const& request, Date day) {
    auto const own = request.at_on[weekday(day)];
    return own ? own : request.at;
}

Duration usable_slot(Request const& request) {
    return request.slot - Duration::ms(limit_or(request, "slot", 0));
}

std::vector<Refusal> refusals(Request const& request) {
    auto const& pool = request.pool;
    auto const days = static_cast<std::int64_t>(request.days.size());
    auto const away = request.race.on - request.from;
    auto const whole_length = [&](Distance distance) { return distance >= pool.length; };
    auto const rep =
        calc::race_rep(request.race.distance, limit_or(request, "race-rep", calc::usual::race_rep));

    std::vector<Refusal> found;
    auto const refuse_if = [&](bool holds, Refusal refusal) {
        if (holds) {
            found.push_back(refusal);
        }
    };
    refuse_if(!pool.has_length() || pool.length < Distance::metres(15) || pool.length > Distance::metres(100),
              Refusal::pool);
    refuse_if(request.race.distance.zero() || std::max(rep, request.race.distance) > longest_race,
              Refusal::race);
    refuse_if(days < 1 || days > 4, Refusal::days);
    refuse_if(days >= 1 && days < limit_or(request, "sessions", calc::usual::sessions), Refusal::few_days);
    refuse_if(!whole_length(request.longest) || request.longest > longest_race, Refusal::longest);
    refuse_if(!whole_length(request.session) || request.session > longest_session, Refusal::session);
    refuse_if(request.threshold && (*request.threshold <= Duration{} || *request.threshold > slowest),
              Refusal::threshold);
    refuse_if(away <= std::chrono::days{0}, Refusal::order);
    refuse_if(away > std::chrono::days{7 * static_cast<int>(most_weeks)}, Refusal::weeks);
    return found;
}

} // namespace lengthwise::compose
