#include "report/compose_text.hpp"
#include "report/table.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include "calc/growth.hpp"

#include <fmt/core.h>

#include <utility>

namespace lengthwise::report {

namespace {

using compose::Clash;
using compose::Refusal;
using compose::Request;
using compose::WayOut;

constexpr std::size_t screen = 60;

std::string counted(std::int64_t n, std::string_view what) {
    return fmt::format("{} {}{}", n, what, n == 1 ? "" : "s");
}

/// Whole ones; a slot asked for in seconds is rounded down.
std::int64_t minutes(Duration time) {
    return time.ms() / Duration::minutes(1).ms();
}

class Words {
  public:
    Words(Request const& request, compose::WaysOut const& ways, bool ascii)
        : request_(request), ways_(ways), ascii_(ascii) {}

    [[nodiscard]] std::string head() const {
        return fmt::format("{} to {} in {} does not work", said(request_.longest), race(),
                           counted(static_cast<std::int64_t>(ways_.weeks), "week"));
    }

    [[nodiscard]] std::string clash(Clash const& clash) const {
        switch (clash.kind) {
        case Clash::Kind::no_week:
            return "no week left to build";
        case Clash::Kind::rep:
            return fmt::format("week {}: the rep can be {}, it has to be {}", clash.week, laps(clash.can),
                               laps(clash.wants));
        case Clash::Kind::week:
            return fmt::format("week {}: the week can be {}, the rep due wants {}", clash.week,
                               laps(clash.can), laps(clash.wants));
        case Clash::Kind::slot:
            return fmt::format("week {}: the slot is {} min, the race rep wants {} min", clash.week,
                               clash.can, clash.wants);
        }
        return {};
    }

    /// What to change, and what it is now.
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> changes(WayOut const& way) const {
        std::vector<std::pair<std::string, std::string>> found;
        auto const add = [&](std::string change, std::string now) {
            found.emplace_back(std::move(change), "instead of " + std::move(now));
        };
        if (way.race_on) {
            found.emplace_back(fmt::format("race on {} or later", spell::day(*way.race_on)),
                               fmt::format("{} instead of {}",
                                           counted(static_cast<std::int64_t>(way.weeks), "week"),
                                           ways_.weeks));
        }
        if (way.longest) {
            add(fmt::format("start from a rep of {}", said(*way.longest)), said(request_.longest));
        }
        if (way.session) {
            add(fmt::format("start from sessions of {}", said(*way.session)), said(request_.session));
        }
        if (way.slot) {
            add(fmt::format("a slot of {} min", minutes(*way.slot)),
                fmt::format("{} min", minutes(request_.slot)));
        }
        if (way.rep_step) {
            auto const now = compose::limit(request_, "rep-step");
            add(fmt::format("limit rep-step {}%", *way.rep_step),
                now ? fmt::format("{} %", *now) : "a third");
        }
        if (way.week_growth) {
            auto const now = compose::limit_or(request_, "week-growth", calc::usual::week_growth);
            add(fmt::format("limit week-growth {}%", *way.week_growth), fmt::format("{} %", now));
        }
        return found;
    }

  private:
    [[nodiscard]] std::string said(Distance distance) const {
        return spell::distance(distance, request_.pool.unit, ascii_);
    }
    [[nodiscard]] std::string laps(std::int64_t laps) const { return said(laps * lap(request_.pool)); }
    [[nodiscard]] std::string race() const {
        return spell::distance(request_.race.distance, request_.race.unit, ascii_);
    }

    Request const& request_;
    compose::WaysOut const& ways_;
    bool ascii_;
};

Saying refused(std::string_view kind, std::string message, std::string hint = {}) {
    return {kind, Severity::error, std::move(message), std::move(hint)};
}

Saying saying_of(Refusal refusal, Request const& request, bool ascii) {
    auto const unit = request.pool.unit;
    auto const said = [&](Distance distance) { return spell::distance(distance, unit, ascii); };
    auto const days = static_cast<std::int64_t>(request.days.size());
    switch (refusal) {
    case Refusal::pool:
        return refused("pool",
                       request.pool.has_length() ? fmt::format("the pool is {}, compose takes 15 to 100 m",
                                                               said(request.pool.length))
                                                 : "compose needs a pool",
                       "--pool 25m");
    case Refusal::race:
        return refused(
            "race", fmt::format("the race rep is {}, compose goes from 1 m up to {}",
                                spell::distance(calc::race_rep(request.race.distance,
                                                               compose::limit_or(request, "race-rep", 100)),
                                                request.race.unit, ascii),
                                spell::distance(compose::longest_race, Unit::metre, ascii)));
    case Refusal::days:
        return refused("days",
                       fmt::format("{}, compose plans one to four a week", counted(days, "training day")),
                       "--days Tue,Fri");
    case Refusal::few_days:
        return refused("days",
                       fmt::format("{}, the rule \"sessions\" asks for {}", counted(days, "training day"),
                                   compose::limit_or(request, "sessions", calc::usual::sessions)),
                       fmt::format("one more of --days, or: --limit sessions {}", days));
    case Refusal::longest:
        return refused("longest",
                       request.longest < request.pool.length
                           ? fmt::format("compose starts from one length swum, {}", said(request.pool.length))
                           : fmt::format("longest today is {}, compose goes up to {}", said(request.longest),
                                         said(compose::longest_race)));
    case Refusal::session:
        return refused("session", request.session < request.pool.length
                                      ? fmt::format("today's session is {}, a length is {}",
                                                    said(request.session), said(request.pool.length))
                                      : fmt::format("today's session is {}, compose goes up to {}",
                                                    said(request.session), said(compose::longest_session)));
    case Refusal::threshold:
        return refused("threshold",
                       fmt::format("a threshold is from 0:01 to {}", pace_per_100(compose::slowest, unit)),
                       "--threshold 2:05");
    case Refusal::order:
        return refused("on",
                       fmt::format("the race is on {}, week {} starts on {}", spell::iso(request.race.on),
                                   request.first_week, spell::iso(request.from)),
                       "a race day after the first day");
    case Refusal::weeks:
        return refused("on", fmt::format("the race is on {}, compose plans up to {} weeks from {}",
                                         spell::iso(request.race.on), compose::most_weeks,
                                         spell::iso(request.from)));
    }
    return {};
}

} // namespace

std::vector<Saying> refusal_sayings(Request const& request, std::vector<Refusal> const& refusals,
                                    bool ascii) {
    std::vector<Saying> found;
    for (auto const refusal : refusals) {
        found.push_back(saying_of(refusal, request, ascii));
    }
    return found;
}

std::string ways_out_text(Request const& request, compose::WaysOut const& ways, Paint const& paint,
                          bool ascii) {
    Words const words{request, ways, ascii};
    auto text = fmt::format("lengthwise: {}\n\n", paint(Ink::bold, words.head()));
    for (auto const& clash : ways.clashes) {
        text += fold(words.clash(clash), screen) + '\n';
    }
    Table table{{{.head = "", .figures = false}, {.head = "", .figures = false}}};
    auto const rows = [&](WayOut const& way) {
        for (auto const& [change, now] : words.changes(way)) {
            table.row({{.text = change}, {.text = now}});
        }
    };
    if (!ways.single.empty()) {
        text += ways.single.size() == 1 ? "\nthis is enough:\n\n" : "\nany one of these is enough:\n\n";
        for (auto const& way : ways.single) {
            rows(way);
        }
    } else if (ways.together) {
        text += "\nno single change is enough, together these are:\n\n";
        rows(*ways.together);
    } else {
        text += fmt::format("\nnothing within {} weeks is enough\n", compose::most_weeks);
    }
    return text + table.text(paint) + "\nnothing was written\n";
}

} // namespace lengthwise::report
