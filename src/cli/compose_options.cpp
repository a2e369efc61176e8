#include "cli/compose_options.hpp"

#include "cli/resume_options.hpp"
#include "cli/values.hpp"
#include "plan/rules.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace lengthwise::cli {

namespace {

/// The items of "a,b,c"; blanks around them are free.
std::vector<std::string> items(std::string_view list) {
    std::vector<std::string> found;
    for (std::size_t at = 0; at <= list.size();) {
        auto const end = std::min(list.find(',', at), list.size());
        auto item = list.substr(at, end - at);
        item.remove_prefix(std::min(item.find_first_not_of(' '), item.size()));
        found.emplace_back(item.substr(0, item.find_last_not_of(' ') + 1));
        at = end + 1;
    }
    return found;
}

/// Reads each item of a list; nothing as soon as one cannot be read.
template <typename T, typename Read>
std::optional<std::vector<T>> read_items(std::string_view list, Read const& read) {
    std::vector<T> values;
    for (auto const& item : items(list)) {
        auto const value = read(item);
        if (!value) {
            return std::nullopt;
        }
        values.push_back(*value);
    }
    return values;
}

std::optional<std::vector<std::uint8_t>> read_days(std::string_view list) {
    auto days = read_items<std::uint8_t>(list, weekday);
    if (days) {
        std::ranges::sort(*days);
        days->erase(std::unique(days->begin(), days->end()), days->end());
    }
    return days;
}

std::optional<compose::Kit> read_kit(std::string_view list) {
    if (list == "none") {
        return compose::Kit{.board = false, .buoy = false};
    }
    compose::Kit kit{.board = false, .buoy = false};
    for (auto const& item : items(list)) {
        if (item != "board" && item != "buoy") {
            return std::nullopt;
        }
        kit.board = kit.board || item == "board";
        kit.buoy = kit.buoy || item == "buoy";
    }
    return kit;
}

/// An option that has to be there, and what it is for.
struct Needed {
    std::string_view name;
    std::string_view what;
    std::optional<std::string> TypedCompose::*typed;
};

constexpr std::array<Needed, 8> needed{{
    {"--race", "its swim: sprint, 1000m", &TypedCompose::race},
    {"--on", "the day of the race: 2027-06-06", &TypedCompose::on},
    {"--from", "the first day of week 1: 2027-04-26", &TypedCompose::from},
    {"--days", "when there is training: Tue,Fri", &TypedCompose::days},
    {"--slot", "the time booked: 45min", &TypedCompose::slot},
    {"--pool", "one length: 25m", &TypedCompose::pool},
    {"--longest", "today's longest swim without a stop: 200m", &TypedCompose::longest},
    {"--session", "what a session has today, in all: 1000m", &TypedCompose::session},
}};

std::optional<Misuse> missing(TypedCompose const& typed) {
    std::vector<Needed const*> absent;
    for (auto const& option : needed) {
        if (!(typed.*option.typed)) {
            absent.push_back(&option);
        }
    }
    if (absent.empty()) {
        return std::nullopt;
    }
    std::string names;
    std::string list;
    for (auto const* option : absent) {
        names += option == absent.front() ? "" : option == absent.back() ? " and " : ", ";
        names += option->name;
        list += fmt::format("\n  {:<10} {}", option->name, option->what);
    }
    return Misuse{fmt::format("compose needs {}:\n{}", names, list)};
}

/// A time for 100 of the pool's unit; where more is said it has to say the same.
std::optional<Duration> read_threshold(std::string_view text, TypedCompose const& typed) {
    auto const found = pace(text, *typed.pool);
    auto const unit = typed.compose.request.pool.unit;
    auto const simple =
        found && found->per == one(unit) * 100 && !found->reserve && !found->about && !found->said_in;
    return simple ? std::optional{found->time} : std::nullopt;
}

std::optional<Misuse> take_limits(TypedCompose& typed) {
    auto& limits = typed.compose.request.limits;
    for (auto const& text : typed.limits) {
        auto const found = limit(text, *typed.pool);
        if (!found) {
            return refused("--limit", "a rule and its value, \"rep-step 25%\"", text);
        }
        std::erase_if(limits, [&](plan::Limit const& earlier) { return earlier.rule == found->rule; });
        limits.push_back(*found);
    }
    return std::nullopt;
}

/// What has the pool's unit.
std::optional<Misuse> finish(TypedCompose& typed) {
    auto& request = typed.compose.request;
    if (auto misuse = read_today(typed, *typed.pool, request)) {
        return misuse;
    }
    if (typed.threshold) {
        request.threshold = read_threshold(*typed.threshold, typed);
        if (!request.threshold) {
            return refused("--threshold", "the time for 100 in this pool, 2:05", *typed.threshold);
        }
    }
    return take_limits(typed);
}

/// What a plan can have between quotes.
std::optional<std::string> race_name(std::string const& text) {
    return text.empty() || report::visible(text) != text ? std::nullopt : std::optional{text};
}

/// Keeps what was typed, and whether it can be read.
template <typename T, typename Read>
std::function<bool(std::string const&)> kept(std::optional<std::string>& typed, T& to, Read read) {
    return [&typed, &to, read](std::string const& text) {
        typed = text;
        auto value = read(text);
        if (value) {
            to = std::move(*value);
        }
        return value.has_value();
    };
}

void add_when(Reader& reader, TypedCompose& typed) {
    auto& request = typed.compose.request;
    reader.value("--on", "a date, 2027-06-06", kept(typed.on, request.race.on, parse_date));
    reader.value("--from", "a date, 2027-04-26", kept(typed.from, request.from, parse_date));
    reader.value("--days", "days of the week, Tue,Fri", kept(typed.days, request.days, read_days));
    reader.value("--at", "a time of day, 07:00", [&request](std::string const& text) {
        request.at = time_of_day(text);
        return request.at.has_value();
    });
    reader.value("--slot", "a time with its unit, 45min", kept(typed.slot, request.slot, booked));
    reader.each("--not", "dates, 2027-05-17,2027-05-20", [&request](std::string const& text) {
        auto const dates = read_items<Date>(text, parse_date);
        if (dates) {
            request.closed.insert(request.closed.end(), dates->begin(), dates->end());
        }
        return dates.has_value();
    });
}

} // namespace

Misuse refused(std::string_view option, std::string_view wants, std::string_view typed) {
    return Misuse{fmt::format("{} takes {}, not \"{}\"", option, wants, report::visible(typed))};
}

std::optional<Misuse> read_today(Today const& today, std::string_view pool, compose::Request& request) {
    if (today.longest) {
        auto const longest = swum(*today.longest, pool);
        if (!longest) {
            return refused("--longest", "a distance, 200m", *today.longest);
        }
        request.longest = *longest;
    }
    if (today.session) {
        auto const session = swum(*today.session, pool);
        if (!session) {
            return refused("--session", "a distance, 1000m", *today.session);
        }
        request.session = *session;
    }
    return std::nullopt;
}

void add(Reader& reader, TypedCompose& typed) {
    auto& request = typed.compose.request;
    reader.files(typed.words);
    reader.value("--race", "a race or its distance, sprint or 1000m", [&](std::string const& text) {
        typed.race = text;
        auto const found = race(text);
        if (found) {
            request.race.kind = found->kind;
            request.race.distance = found->distance;
            request.race.unit = found->unit;
        }
        return found.has_value();
    });
    add_when(reader, typed);
    reader.value("--race-name", "its name, \"Gull Island\"",
                 kept(typed.race_name, request.race.name, race_name));
    reader.value("--pool", "a pool's length, 25m, 25yd or \"33 1/3 m\"",
                 kept(typed.pool, request.pool, pool));
    auto const keep = [](std::optional<std::string>& to) {
        return [&to](std::string const& text) {
            to = text;
            return !text.empty();
        };
    };
    reader.value("--resume", "a plan's file", keep(typed.resume));
    reader.value("--after", "the last week that stays, \"week 3\"", [&typed](std::string const& text) {
        typed.after = text;
        return week_number(text).has_value();
    });
    reader.value("--longest", "a distance, 200m", keep(typed.longest));
    reader.value("--session", "a distance, 1000m", keep(typed.session));
    reader.value("--threshold", "the time for 100 in this pool, 2:05", keep(typed.threshold));
    reader.value("--kit", "board, buoy, both with a comma, or none", [&request](std::string const& text) {
        auto const kit = read_kit(text);
        request.kit = kit.value_or(request.kit);
        return kit.has_value();
    });
    reader.flag("--race-in-pool", request.race_in_pool);
    reader.each("--limit", "a rule and its value, \"rep-step 25%\"", [&typed](std::string const& text) {
        typed.limits.push_back(text);
        return !text.empty();
    });
    reader.flag("--explain", typed.compose.explain);
    add_look(reader, typed.compose.look);
    add_target(reader, typed.compose.target);
}

Options read_compose(std::vector<std::string> const& arguments) {
    Reader reader{"compose"};
    TypedCompose typed;
    add(reader, typed);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    if (!typed.words.empty()) {
        return Misuse{fmt::format("compose takes no \"{}\"; lengthwise compose --help shows all",
                                  report::visible(typed.words.front()))};
    }
    if (typed.resume) {
        return read_resume(typed);
    }
    if (typed.after) {
        return Misuse{"--after goes with --resume FILE"};
    }
    if (auto misuse = missing(typed)) {
        return *misuse;
    }
    if (auto misuse = finish(typed)) {
        return *misuse;
    }
    return std::move(typed.compose);
}

} // namespace lengthwise::cli
