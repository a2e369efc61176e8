#include "cli/values.hpp"

#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <initializer_list>
#include <string>
#include <utility>

namespace lengthwise::cli {

namespace {

/// A reader for a text that includes nothing.
class NoFiles final : public grammar::Reader {
  public:
    std::variant<Text, Refusal> read(std::string const&, std::uint64_t) override { return Refusal{}; }
    std::variant<Path, Refusal> resolve_links(std::string const&) override { return Refusal{}; }
};

/// A statement: its keyword and what was typed behind it.
struct Line {
    std::string_view keyword;
    std::string_view typed;
};

/// What `take` finds in a plan of these lines; those behind whose keyword nothing stands are left
/// out. They are read by the notation's own doorway, so that there is one spelling. What was typed
/// brings no further line, comment or string.
template <typename T, typename Take>
std::optional<T> from_plan(std::initializer_list<Line> lines, Take const& take) {
    std::string text;
    for (auto const& [keyword, typed] : lines) {
        if (typed.find_first_of("\n\r#\"") != std::string_view::npos) {
            return std::nullopt;
        }
        if (!typed.empty()) {
            text.append(keyword).append(" ").append(typed).append("\n");
        }
    }
    NoFiles none;
    auto const bundle = grammar::bundle("typed", std::move(text), std::nullopt, none);
    auto const resolved = plan::resolve(bundle);
    if (bundle.findings.has_errors() || resolved.findings.has_errors()) {
        return std::nullopt;
    }
    return take(resolved.plan);
}

} // namespace

std::optional<std::uint32_t> number(std::string_view text, std::uint32_t low, std::uint32_t high) {
    std::uint32_t value = 0;
    auto const [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || value < low || value > high) {
        return std::nullopt;
    }
    return value;
}

std::optional<Pool> pool(std::string_view text) {
    auto const found = course(text);
    return found && found->has_length() ? found : std::nullopt;
}

std::optional<Pool> course(std::string_view text) {
    return from_plan<Pool>({{"pool", text}},
                           [](plan::Plan const& plan) { return plan.settings[plan.file_settings].pool; });
}

std::optional<TimeOfDay> time_of_day(std::string_view text) {
    if (text.find_first_not_of("0123456789:") != std::string_view::npos) {
        return std::nullopt;
    }
    return from_plan<TimeOfDay>({{"session", text}}, [](plan::Plan const& plan) {
        return plan.sessions.empty() ? std::nullopt : plan.sessions.front().at;
    });
}

std::optional<plan::Threshold> pace(std::string_view text, std::string_view pool) {
    return from_plan<plan::Threshold>({{"pool", pool}, {"threshold", text}}, [](plan::Plan const& plan) {
        return plan.settings[plan.file_settings].threshold;
    });
}

std::optional<plan::Race> race(std::string_view text) {
    auto const line = std::string{text} + " on 2027-01-01";
    return from_plan<plan::Race>({{"race", line}}, [](plan::Plan const& plan) { return plan.race; });
}

std::optional<Distance> race_distance(std::string_view text) {
    auto const found = race(text);
    return found ? std::optional{found->distance} : std::nullopt;
}

std::optional<Distance> swum(std::string_view text, std::string_view pool) {
    return from_plan<Distance>({{"pool", pool}, {"before longest", text}}, [](plan::Plan const& plan) {
        bool const alone = plan.before && !plan.before->week;
        return alone ? std::optional{plan.before->longest} : std::nullopt;
    });
}

std::optional<Duration> booked(std::string_view text) {
    return from_plan<Duration>({{"session for", text}}, [](plan::Plan const& plan) {
        return plan.sessions.empty() ? std::nullopt : plan.sessions.front().slot();
    });
}

std::optional<plan::Limit> limit(std::string_view text, std::string_view pool) {
    return from_plan<plan::Limit>({{"pool", pool}, {"limit", text}}, [](plan::Plan const& plan) {
        auto const& limits = plan.settings[plan.file_settings].limits;
        return limits.empty() ? std::nullopt : std::optional{limits.front()};
    });
}

std::optional<std::uint8_t> weekday(std::string_view text) {
    if (text.find(' ') != std::string_view::npos) {
        return std::nullopt;
    }
    return from_plan<std::uint8_t>({{"session", text}}, [](plan::Plan const& plan) {
        return plan.sessions.empty() ? std::nullopt : plan.sessions.front().day;
    });
}

std::optional<Duration> duration(std::string_view text) {
    return from_plan<Duration>({{"rest", text}}, [](plan::Plan const& plan) -> std::optional<Duration> {
        auto const rest = plan.settings[plan.file_settings].rest;
        bool const one_time = rest && rest->low == rest->high && !rest->high.zero();
        return one_time ? std::optional{rest->high} : std::nullopt;
    });
}

std::optional<double> millimetres(std::string_view text) {
    constexpr std::array<std::pair<std::string_view, double>, 4> units{
        {{"mm", 1}, {"cm", 10}, {"m", 1000}, {"in", 25.4}}};
    auto const digits = std::min(text.find_first_not_of("0123456789."), text.size());
    auto const figure = text.substr(0, digits);
    auto const point = std::min(figure.find('.'), figure.size());
    auto const whole = number(figure.substr(0, point), 0, 99'999);
    auto const behind = point < figure.size() ? figure.substr(point + 1) : "0";
    auto const part = number(behind, 0, 999);
    auto unit = text.substr(digits);
    unit.remove_prefix(unit.starts_with(' ') ? 1 : 0);
    auto const found =
        std::find_if(units.begin(), units.end(), [&](auto const& u) { return u.first == unit; });
    if (!whole || !part || behind.size() > 3 || found == units.end()) {
        return std::nullopt;
    }
    double share = *part;
    for (std::size_t i = 0; i < behind.size(); ++i) {
        share /= 10;
    }
    return (*whole + share) * found->second;
}

} // namespace lengthwise::cli
