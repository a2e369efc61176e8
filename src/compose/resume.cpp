#include "compose/resume.hpp"

#include "calc/totals.hpp"
#include "compose/amounts.hpp"
#include "compose/head_text.hpp"
#include "compose/resume_reader.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <vector>

namespace lengthwise::compose {

namespace {

using plan::Plan;

std::optional<Cut> cut(Plan const& plan, std::uint32_t after) {
    Cut cut;
    for (auto const& week : plan.weeks) {
        if (week.number == after) {
            cut.last = &week;
        } else if (cut.last != nullptr && !week.sessions.empty()) {
            cut.pattern.push_back(&week);
        }
    }
    if (cut.last == nullptr) {
        return std::nullopt;
    }
    if (cut.pattern.empty()) {
        cut.pattern.push_back(cut.last);
    }
    return cut;
}

std::string numbers_of(Plan const& plan) {
    std::vector<std::uint32_t> numbers;
    for (auto const& week : plan.weeks) {
        if (week.number) {
            numbers.push_back(*week.number);
        }
    }
    return numbers.empty()       ? std::string{"no week with a number"}
           : numbers.size() == 1 ? fmt::format("week {}", numbers.front())
                                 : fmt::format("weeks {} {} {}", numbers.front(),
                                               numbers.size() == 2 ? "and" : "to", numbers.back());
}

bool has_lanes(Plan const& plan) {
    return calc::lanes_of(plan).any();
}

} // namespace

std::variant<Request, Obstacle> request_behind(plan::Plan const& plan, std::uint32_t after,
                                               Instead const& instead) {
    auto const found = cut(plan, after);
    if (!found) {
        return Obstacle{fmt::format("there is no week {}, the plan has {}", after, numbers_of(plan)),
                        "--after takes the last week that stays as it is"};
    }
    if (!plan.race) {
        return Obstacle{"the plan names no race to go on to",
                        "before the first week or session: race \"Where\" sprint on 2027-06-13"};
    }
    if (has_lanes(plan)) {
        return Obstacle{"the plan has lanes, compose writes for one",
                        "a file for each lane goes on by itself"};
    }
    return ResumeReader{plan, *found, instead}.read();
}

Highest highest_up_to(plan::Plan const& plan, std::uint32_t after) {
    Highest highest;
    if (plan.before) {
        highest.longest = plan.before->longest;
        highest.week = plan.before->week.value_or(Distance{});
    }
    calc::Reckoner reckoner{plan};
    for (auto const& week : plan.weeks) {
        auto const swum = reckoner.of_week(week).swum(0);
        highest.longest = std::max(highest.longest, swum.longest);
        highest.week = std::max(highest.week, swum.distance);
        if (week.number == after) {
            break;
        }
    }
    return highest;
}

void hold_to(Request& request, Highest const& highest) {
    if (!highest.longest.zero()) {
        request.longest = std::min(request.longest, highest.longest);
    }
    if (auto const sessions = static_cast<std::int64_t>(request.days.size());
        sessions > 0 && !highest.week.zero()) {
        auto const each = Distance::units((highest.week.units() + sessions - 1) / sessions);
        request.session = std::min(request.session, each);
    }
}

WeeksHead head_behind(plan::Plan const& plan, Request const& request, Ramp const& ramp) {
    auto const& own = plan.settings[plan.file_settings];
    auto const& pool = request.pool;
    WeeksHead head;
    if (own.pool != pool) {
        head.settings.push_back(pool_line(pool));
    }
    if (request.threshold && (!own.threshold || time_of(*own.threshold, pool) != request.threshold)) {
        head.settings.push_back(threshold_line(*request.threshold, pool));
    }
    if (own.rest != usual_rest) {
        head.settings.push_back(rest_line());
    }
    head.comment = fmt::format("# From here on composed anew, from a longest swim of {} and {} a week.\n",
                               spell::distance(pool.length * ramp.today_longest, pool.unit, true),
                               spell::distance(pool.length * ramp.today_week, pool.unit, true)) +
                   growth_text(ramp);
    return head;
}

} // namespace lengthwise::compose
