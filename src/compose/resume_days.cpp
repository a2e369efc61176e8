#include "compose/resume_reader.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <string_view>

/// From which day a plan goes on, and on which days and at which times it is swum.
namespace lengthwise::compose {

namespace {

using std::chrono::days;

constexpr std::array<std::string_view, 7> day_names{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

std::optional<std::uint8_t> day_of(plan::Session const& session) {
    return session.date ? std::optional{weekday(*session.date)} : session.day;
}

} // namespace

/// The day behind the week; a later one leaves weeks out, by their numbers too.
void ResumeReader::read_first_day() {
    auto const number = *cut_.last->number;
    auto const usual = cut_.last->from ? std::optional{*cut_.last->from + days{7}} : std::nullopt;
    if (!usual && !instead_.from) {
        stop(fmt::format("week {} has no date", number),
             fmt::format("--from 2027-05-17, or in the plan: week {} from 2027-05-10", number));
        return;
    }
    request_.from = instead_.from.value_or(usual.value_or(Date{}));
    if (usual && request_.from < *usual) {
        stop(fmt::format("{} is not behind week {}", spell::day(request_.from), number),
             fmt::format("--from {} or later", spell::iso(*usual)));
        return;
    }
    auto const gap = usual ? std::int64_t{(request_.from - *usual) / days{7}} : 0;
    auto const last =
        number + 1 + gap + std::max<std::int64_t>(0, (request_.race.on - request_.from) / days{7});
    if (last > limits::weeks) {
        stop(fmt::format("the last week would be week {}, numbers go up to {}", last, limits::weeks),
             "give the weeks lower numbers");
        return;
    }
    request_.first_week = static_cast<int>(number + 1 + gap);
}

/// Of one week; nothing where they cannot be known.
std::optional<ResumeReader::Days> ResumeReader::days_of(plan::Week const& week) {
    Days found;
    for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
        auto const& session = plan_.sessions[i];
        if (!before_race(session)) {
            continue;
        }
        auto const day = day_of(session);
        auto const name = week.number ? fmt::format("week {}", *week.number) : std::string{"a week"};
        if (!day) {
            stop(fmt::format("a session of {} has no day", name), "--days Tue,Fri");
            return std::nullopt;
        }
        if (!found.insert(*day).second) {
            stop(fmt::format("{} has two sessions on {}, compose plans one a day", name, day_names[*day]),
                 "--days Tue,Fri");
            return std::nullopt;
        }
    }
    return found;
}

/// Those of the fullest week; others may have fewer of them.
void ResumeReader::read_days() {
    if (instead_.days) {
        request_.days = *instead_.days;
        return;
    }
    Days most;
    Days all;
    for (auto const* week : cut_.pattern) {
        auto const found = days_of(*week);
        if (!found) {
            return;
        }
        all.insert(found->begin(), found->end());
        most = found->size() > most.size() ? *found : most;
    }
    if (most != all) {
        std::string names;
        for (auto const day : all) {
            names += fmt::format("{}{}", names.empty() ? "" : ",", day_names[day]);
        }
        stop(fmt::format("the days differ from week to week: {}", names), "which of them? --days Tue,Fri");
    }
    request_.days.assign(most.begin(), most.end());
}

void ResumeReader::read_times() {
    request_.at = instead_.at;
    if (instead_.at) {
        return;
    }
    each_session([&](plan::Session const& session) {
        auto const day = day_of(session);
        if (!session.at || !day) {
            return;
        }
        auto& at = request_.at_on[*day];
        if (at && *at != *session.at) {
            stop(fmt::format("sessions on {} begin at {} and {}", day_names[*day], spell::time_of_day(*at),
                             spell::time_of_day(*session.at)),
                 fmt::format("which? --at {}", spell::time_of_day(*at)));
        }
        at = session.at;
    });
}

} // namespace lengthwise::compose
