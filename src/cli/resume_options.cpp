#include "cli/resume_options.hpp"

#include "cli/values.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace lengthwise::cli {

namespace {

/// What stands at the head of the plan, and stays as it is.
std::optional<Misuse> in_the_head(TypedCompose const& typed) {
    auto const misuse = [&](std::string_view option, std::string_view line) {
        return Misuse{fmt::format("compose --resume takes no {}; change it at the head of {}: {}", option,
                                  report::visible(*typed.resume), line)};
    };
    if (typed.race || typed.on || typed.race_name) {
        return misuse(typed.race ? "--race" : typed.on ? "--on" : "--race-name", "race sprint on 2027-06-06");
    }
    if (!typed.limits.empty()) {
        return misuse("--limit", "limit " + typed.limits.front());
    }
    return std::nullopt;
}

std::optional<Misuse> missing_of_resume(TypedCompose const& typed) {
    if (!typed.after) {
        return Misuse{"compose --resume needs --after: the last week that stays, --after \"week 3\""};
    }
    if (!typed.longest) {
        return Misuse{"compose --resume needs --longest: today's longest swim without a stop, 250m"};
    }
    return std::nullopt;
}

} // namespace

std::optional<std::uint32_t> week_number(std::string_view text) {
    if (text.starts_with("week ")) {
        text.remove_prefix(std::min(text.find_first_not_of(' ', 5), text.size()));
    }
    return number(text, 1, 999);
}

Options read_resume(TypedCompose& typed) {
    if (auto misuse = in_the_head(typed)) {
        return *misuse;
    }
    if (auto misuse = missing_of_resume(typed)) {
        return *misuse;
    }
    auto& request = typed.compose.request;
    Resume resume{.file = *typed.resume, .after = *week_number(*typed.after), .instead = {}, .today = typed};
    auto& instead = resume.instead;
    instead.at = request.at;
    if (typed.from) {
        instead.from = request.from;
    }
    if (typed.days) {
        instead.days = request.days;
    }
    if (typed.slot) {
        instead.slot = request.slot;
    }
    if (typed.pool) {
        instead.pool = request.pool;
    }
    if (typed.threshold) {
        instead.threshold = pace(*typed.threshold, typed.pool.value_or(""));
        if (!instead.threshold || instead.threshold->reserve || instead.threshold->about ||
            instead.threshold->said_in) {
            return refused("--threshold", "the time for 100 in this pool, 2:05", *typed.threshold);
        }
    }
    typed.compose.resume = std::move(resume);
    return std::move(typed.compose);
}

} // namespace lengthwise::cli
