#include "compose/resume.hpp"

#include "calc/totals.hpp"
#include "compose/amounts.hpp"
#include "compose/head_text.hpp"
#include "plan/spell.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <set>
#include <string_view>

namespace lengthwise::compose {

namespace {

using plan::Plan;
using std::chrono::days;

constexpr std::array<std::string_view, 7> day_names{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

std::optional<std::uint8_t> day_of(plan::Session const& session) {
    return session.date ? std::optional{weekday(*session.date)} : session.day;
}

bool before_race(Plan const& plan, plan::Session const& session) {
    return !session.date || *session.date < plan.race->on;
}

/// The plan cut in two: what stays, and whose sessions show how it goes on.
struct Cut {
    plan::Week const* last = nullptr; ///< that stays
    std::vector<plan::Week const*> pattern;
};

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

/// For 100 of the pool's unit in this pool; nothing where it is for something else. One that is only about
/// right may be a tenth slower, as the times of the plan have it.
std::optional<Duration> time_of(plan::Threshold const& threshold, Pool const& pool) {
    auto const same_course = threshold.course.kind == Pool::Kind::unsaid || threshold.course == pool;
    if (threshold.per != one(pool.unit) * 100 || !same_course) {
        return std::nullopt;
    }
    return threshold.about ? Duration::ms((threshold.time.ms() * 11 + 9) / 10) : threshold.time;
}

/// Reads the pattern; the first obstacle is kept.
class Reader {
  public:
    Reader(Plan const& plan, Cut const& cut, Instead const& instead)
        : plan_(plan), cut_(cut), instead_(instead) {}

    std::variant<Request, Obstacle> read() {
        read_race();
        read_weeks();
        read_first_day();
        read_days();
        read_times();
        read_slot();
        read_pool();
        read_threshold();
        read_session();
        if (obstacle_) {
            return std::move(*obstacle_);
        }
        return std::move(request_);
    }

  private:
    void stop(std::string message, std::string hint) {
        if (!obstacle_) {
            obstacle_ = Obstacle{std::move(message), std::move(hint)};
        }
    }

    template <typename Visit>
    void each_session(Visit visit) const {
        for (auto const* week : cut_.pattern) {
            for (auto i = week->sessions.first; i < week->sessions.end(); ++i) {
                if (before_race(plan_, plan_.sessions[i])) {
                    visit(plan_.sessions[i]);
                }
            }
        }
    }

    void read_race() {
        auto const& race = *plan_.race;
        request_.race = {.name = std::string{std::string_view{race.name}},
                         .kind = race.kind,
                         .distance = race.distance,
                         .unit = race.unit,
                         .on = race.on};
        request_.limits = plan_.settings[plan_.file_settings].limits;
    }

    void read_weeks() {
        calc::Reckoner reckoner{plan_};
        for (auto const& week : plan_.weeks) {
            request_.weeks_swum += week.sessions.empty() ? 0 : 1;
            request_.race_swum =
                request_.race_swum || reckoner.of_week(week).swum(0).longest >= plan_.race->distance;
            if (&week == cut_.last) {
                break;
            }
        }
    }

    /// The day behind the week; a later one leaves weeks out, by their numbers too.
    void read_first_day() {
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

    using Days = std::set<std::uint8_t>;

    /// Of one week; nothing where they cannot be known.
    std::optional<Days> days_of(plan::Week const& week) {
        Days found;
        for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
            auto const& session = plan_.sessions[i];
            if (!before_race(plan_, session)) {
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
    void read_days() {
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
            stop(fmt::format("the days differ from week to week: {}", names),
                 "which of them? --days Tue,Fri");
        }
        request_.days.assign(most.begin(), most.end());
    }

    void read_times() {
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
                stop(fmt::format("sessions on {} begin at {} and {}", day_names[*day],
                                 spell::time_of_day(*at), spell::time_of_day(*session.at)),
                     fmt::format("which? --at {}", spell::time_of_day(*at)));
            }
            at = session.at;
        });
    }

    void read_slot() {
        std::optional<Duration> least;
        auto differ = false;
        auto missing = false;
        each_session([&](plan::Session const& session) {
            missing = missing || !session.slot();
            if (session.slot()) {
                differ = differ || (least && *least != *session.slot());
                least = least ? std::min(*least, *session.slot()) : *session.slot();
            }
        });
        if (instead_.slot) {
            request_.slot = *instead_.slot;
        } else if (!least || missing) {
            stop("not every session has its slot", "the time booked: --slot 45min");
        } else if (differ) {
            stop("the slots differ",
                 fmt::format("the shortest holds all: --slot {}", spell::with_unit(*least)));
        } else {
            request_.slot = *least;
        }
    }

    void read_pool() {
        std::optional<Pool> pool;
        auto differ = false;
        each_session([&](plan::Session const& session) {
            auto const& own = plan_.pool_of(session);
            differ = differ || (pool && *pool != own);
            pool = own;
        });
        request_.pool = instead_.pool.value_or(pool.value_or(Pool{}));
        if (!instead_.pool && differ) {
            stop("the pools differ", "which one? --pool 25m");
        } else if (!request_.pool.has_length()) {
            stop("the plan names no pool with a length", "--pool 25m");
        }
    }

    void read_threshold() {
        std::set<plan::Index> found;
        each_session([&](plan::Session const& session) { found.insert(session.threshold); });
        if (instead_.threshold) {
            take(in_pool(*instead_.threshold));
        } else if (found.size() > 1) {
            stop("the threshold differs from session to session", "which one? --threshold 2:05");
        } else if (!found.empty() && *found.begin() != plan::no_index) {
            take(plan_.thresholds[*found.begin()]);
        }
    }

    /// Said without a distance it is for 100 here.
    [[nodiscard]] plan::Threshold in_pool(plan::Threshold threshold) const {
        if (!threshold.said_per) {
            threshold.per = one(request_.pool.unit) * 100;
        }
        threshold.course = request_.pool;
        return threshold;
    }

    void take(plan::Threshold const& threshold) {
        request_.threshold = time_of(threshold, request_.pool);
        if (!request_.threshold) {
            stop(fmt::format("\"{}\" is not for 100 {} in this pool", plan::spell_line(threshold),
                             spell::symbol(request_.pool.unit)),
                 "what is it there? --threshold 2:05");
        }
    }

    void read_session() {
        calc::Reckoner reckoner{plan_};
        auto const week = reckoner.of_week(*cut_.last).swum(0).distance;
        auto const count = std::int64_t{std::max<plan::Index>(cut_.last->sessions.count, 1)};
        request_.session = Distance::units((week.units() + count - 1) / count);
    }

    Plan const& plan_;
    Cut const& cut_;
    Instead const& instead_;
    Request request_;
    std::optional<Obstacle> obstacle_;
};

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
    return Reader{plan, *found, instead}.read();
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
