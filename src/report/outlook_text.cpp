#include "report/outlook_text.hpp"

#include "plan/rules.hpp"
#include "report/choose.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <string_view>
#include <utility>
#include <vector>

namespace lengthwise::report {

namespace {

constexpr std::size_t most_waivers = 10; // lines; files for programs have them all

std::string counted(std::int64_t n, std::string_view singular) {
    return fmt::format("{} {}{}", n, singular, n == 1 ? "" : "s");
}

/// "750 m"; "562.5 m, 75 % of the race," where `limit race-rep` asks for a share.
std::string asked_words(plan::Race const& race, check::RaceRep const& asked, bool ascii) {
    auto const distance = spell::distance(asked.distance, race.unit, ascii);
    return asked.percent == calc::usual::race_rep
               ? distance
               : fmt::format("{}, {} % of the race,", distance, asked.percent);
}

std::string reached_words(plan::Plan const& plan, plan::Index index, check::RaceRep const& asked,
                          bool ascii) {
    auto const& session = plan.sessions[index];
    auto const distance = asked_words(*plan.race, asked, ascii);
    if (!session.date) {
        return fmt::format("{} is swum in {}, {}", distance, week_label(plan.weeks[session.week]),
                           session_label(plan, index));
    }
    return fmt::format("{} is swum on {}, {} before the race", distance, spell::short_day(*session.date),
                       counted((plan.race->on - *session.date).count(), "day"));
}

/// "60 m a week"; what is no round figure is said as about the nearest one, never as nothing.
std::string pace_words(Distance a_week, Unit unit) {
    auto const round = one(unit);
    auto const whole =
        std::max<std::int64_t>(1, Distance::whole(a_week + Distance::units(round.units() / 2), round));
    return fmt::format("{}{} {} a week", whole * round == a_week ? "" : "about ", whole, spell::symbol(unit));
}

std::string race_words(std::int64_t after_race) {
    return after_race == 0 ? "the week of the race"
                           : fmt::format("{} {} the race", counted(std::abs(after_race), "week"),
                                         after_race > 0 ? "after" : "before");
}

std::string trend_words(check::Outlook const& outlook, plan::Race const& race) {
    auto const& trend = *outlook.trend;
    auto text = fmt::format("at {} {} would be there in week {}", pace_words(trend.a_week, race.unit),
                            outlook.who.empty() ? "it" : visible(outlook.who), trend.week);
    return trend.after_race ? fmt::format("{}, {}", text, race_words(*trend.after_race)) : text;
}

/// What one line says, and where it stands.
struct Said {
    plan::Allow const* first;
    std::size_t count = 1;
};

std::vector<Said> grouped(check::Waivers const& waivers) {
    std::vector<Said> all;
    std::map<std::pair<plan::RuleId, std::string_view>, std::size_t> places;
    for (auto const* allow : waivers) {
        auto const [place, is_new] = places.try_emplace({allow->rule, allow->reason}, all.size());
        if (is_new) {
            all.push_back({allow});
        } else {
            ++all[place->second].count;
        }
    }
    return all;
}

} // namespace

std::string outlook_sentence(plan::Plan const& plan, check::Outlook const& outlook, bool ascii) {
    if (outlook.reached) {
        return reached_words(plan, *outlook.reached, outlook.asked, ascii);
    }
    if (outlook.trend) {
        return trend_words(outlook, *plan.race);
    }
    auto const weeks =
        std::ranges::count_if(plan.weeks, [](auto const& week) { return week.number.has_value(); });
    return weeks < 2 || outlook.longest.zero()
               ? std::string{}
               : fmt::format("the longest rep{} has not grown so far, so no week can be named",
                             outlook.who.empty() ? "" : " of " + visible(outlook.who));
}

std::string shortfall(plan::Plan const& plan, check::Outlook const& outlook, bool ascii) {
    auto const missing = outlook.missing();
    if (missing.zero()) {
        return {};
    }
    auto const share = outlook.asked.percent == calc::usual::race_rep
                           ? std::string{"the race"}
                           : fmt::format("{} % of the race", outlook.asked.percent);
    return fmt::format("{} short of {}", spell::distance(missing, plan.race->unit, ascii), share);
}

std::string waivers_text(plan::Plan const& plan, check::Waivers const& waivers, Sources const& sources,
                         FindingsStyle style) {
    auto const& at_head = plan.settings[plan.file_settings].allows;
    auto const all = grouped(waivers);
    std::string text;
    for (std::size_t i = 0; i < std::min(all.size(), most_waivers); ++i) {
        auto const& allow = *all[i].first;
        auto const for_all =
            std::ranges::any_of(at_head, [&](auto const& other) { return &other == &allow; });
        auto const where = all[i].count > 1 ? fmt::format(" in {} places", all[i].count)
                           : for_all        ? std::string{}
                                     : fmt::format(" at line {}", position(sources, allow.span.begin).line);
        auto const reason =
            allow.reason.empty() ? std::string{} : fmt::format(" \"{}\"", visible(allow.reason));
        auto const line = fmt::format("waived{}: {}{}", where, plan::rules[allow.rule].name, reason);
        text += fold(line, style.width) + '\n';
    }
    if (all.size() > most_waivers) {
        text += fmt::format("and {} more\n",
                            counted(static_cast<std::int64_t>(all.size() - most_waivers), "waiver"));
    }
    return text;
}

} // namespace lengthwise::report
