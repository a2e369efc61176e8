#include "compose/resume_reader.hpp"

#include "calc/totals.hpp"
#include "plan/spell.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string_view>

namespace lengthwise::compose {

std::optional<Duration> time_of(plan::Threshold const& threshold, Pool const& pool) {
    auto const same_course = threshold.course.kind == Pool::Kind::unsaid || threshold.course == pool;
    if (threshold.per != one(pool.unit) * 100 || !same_course) {
        return std::nullopt;
    }
    return threshold.about ? Duration::ms((threshold.time.ms() * 11 + 9) / 10) : threshold.time;
}

std::variant<Request, Obstacle> ResumeReader::read() {
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

void ResumeReader::stop(std::string message, std::string hint) {
    if (!obstacle_) {
        obstacle_ = Obstacle{std::move(message), std::move(hint)};
    }
}

void ResumeReader::read_race() {
    auto const& race = *plan_.race;
    request_.race = {.name = std::string{std::string_view{race.name}},
                     .kind = race.kind,
                     .distance = race.distance,
                     .unit = race.unit,
                     .on = race.on};
    request_.limits = plan_.settings[plan_.file_settings].limits;
}

void ResumeReader::read_weeks() {
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

void ResumeReader::read_slot() {
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
        stop("the slots differ", fmt::format("the shortest holds all: --slot {}", spell::with_unit(*least)));
    } else {
        request_.slot = *least;
    }
}

void ResumeReader::read_pool() {
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

void ResumeReader::read_threshold() {
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
plan::Threshold ResumeReader::in_pool(plan::Threshold threshold) const {
    if (!threshold.said_per) {
        threshold.per = one(request_.pool.unit) * 100;
    }
    threshold.course = request_.pool;
    return threshold;
}

void ResumeReader::take(plan::Threshold const& threshold) {
    request_.threshold = time_of(threshold, request_.pool);
    if (!request_.threshold) {
        stop(fmt::format("\"{}\" is not for 100 {} in this pool", plan::spell_line(threshold),
                         spell::symbol(request_.pool.unit)),
             "what is it there? --threshold 2:05");
    }
}

void ResumeReader::read_session() {
    calc::Reckoner reckoner{plan_};
    auto const week = reckoner.of_week(*cut_.last).swum(0).distance;
    auto const count = std::int64_t{std::max<plan::Index>(cut_.last->sessions.count, 1)};
    request_.session = Distance::units((week.units() + count - 1) / count);
}

} // namespace lengthwise::compose
