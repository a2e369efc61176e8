#include "report/choose.hpp"

#include "grammar/words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <charconv>

namespace lengthwise::report {
namespace {

constexpr std::size_t listed = 20;

/// 0 Monday … 6 Sunday.
std::optional<int> day_of(std::string_view text) {
    auto const word = find_word(text);
    return is_day(word) ? std::optional{static_cast<int>(word) - static_cast<int>(Word::mon)} : std::nullopt;
}

std::optional<int> day_of(plan::Session const& session) {
    if (session.date) {
        return static_cast<int>(std::chrono::weekday{*session.date}.iso_encoding()) - 1;
    }
    return session.day ? std::optional{int{*session.day}} : std::nullopt;
}

std::optional<std::size_t> place_of(std::string_view text) {
    std::size_t place = 0;
    auto const [end, error] = std::from_chars(text.data(), text.data() + text.size(), place);
    bool const whole = error == std::errc{} && end == text.data() + text.size();
    return whole && place > 0 ? std::optional{place} : std::nullopt;
}

/// A name wins over a day or a number that it could also be.
class Test {
  public:
    explicit Test(std::string_view asked)
        : name_(asked), day_(day_of(asked)), date_(parse_date(asked)), place_(place_of(asked)) {}

    [[nodiscard]] bool by_name(plan::Session const& session) const {
        return !name_.empty() && session.name == name_;
    }
    [[nodiscard]] bool otherwise(plan::Session const& session, plan::Index index) const {
        return (day_ && day_of(session) == day_) || (date_ && session.date == date_) ||
               (place_ && *place_ == std::size_t{index} + 1);
    }

  private:
    std::string_view name_;
    std::optional<int> day_;
    std::optional<Date> date_;
    std::optional<std::size_t> place_;
};

plan::Run sessions_of(plan::Plan const& plan, std::optional<std::uint32_t> number) {
    if (!number) {
        return {0, static_cast<plan::Index>(plan.sessions.size())};
    }
    for (auto const& week : plan.weeks) {
        if (week.number == number) {
            return week.sessions;
        }
    }
    return {};
}

std::string day_and_time(plan::Session const& session) {
    auto text = session.date ? spell::short_day(*session.date) : day_label(session);
    if (session.at) {
        text.append(text.empty() ? "" : " ").append(spell::time_of_day(*session.at));
    }
    return text;
}

/// A row of the list: what may be typed for it stands first.
std::string listed_as(plan::Plan const& plan, plan::Index index) {
    auto const& session = plan.sessions[index];
    auto const& week = plan.weeks[session.week];
    auto text = std::string{"  "}.append(std::to_string(index + 1));
    if (week.number) {
        text.append("  ").append(week_label(week));
    }
    if (auto const when = day_and_time(session); !when.empty()) {
        text.append("  ").append(when);
    }
    if (!session.name.empty()) {
        text.append("  ").append(visible(session.name));
    }
    return text;
}

std::string list(plan::Plan const& plan, std::vector<plan::Index> const& sessions) {
    std::string text;
    for (std::size_t i = 0; i < std::min(sessions.size(), listed); ++i) {
        text.append("\n").append(listed_as(plan, sessions[i]));
    }
    if (sessions.size() > listed) {
        text.append("\n  and ").append(std::to_string(sessions.size() - listed)).append(" more");
    }
    return text;
}

std::string quoted(std::string_view text) {
    return std::string{"\""}.append(visible(text)).append("\"");
}

std::string no_week(plan::Plan const& plan, std::uint32_t asked) {
    std::string known;
    int count = 0;
    for (auto const& week : plan.weeks) {
        if (week.number && known.size() < 40) {
            known.append(known.empty() ? "" : ", ").append(std::to_string(*week.number));
            ++count;
        }
    }
    auto const problem = "no week " + std::to_string(asked);
    return count == 0 ? problem + "; the plan has no numbered week"
                      : problem + (count == 1 ? "; the plan has week " : "; the plan has weeks ") + known;
}

bool has_week(plan::Plan const& plan, std::uint32_t number) {
    return std::any_of(plan.weeks.begin(), plan.weeks.end(),
                       [&](plan::Week const& week) { return week.number == number; });
}

/// Why these sessions are not one; `none_on` is a day that was asked for and has none.
std::string not_one(plan::Plan const& plan, Wish const& wish, std::vector<plan::Index> const& found,
                    std::optional<Date> none_on) {
    auto const where = wish.week ? " in week " + std::to_string(*wish.week) : std::string{};
    if (found.empty()) {
        auto const all = sessions_like(plan, {wish.week, std::nullopt, std::nullopt});
        if (all.empty()) {
            return "no session" + where;
        }
        return "no session " + quoted(wish.session.value_or("")) + where + "; try one of" + list(plan, all);
    }
    auto const what = wish.session ? " sessions fit " + quoted(*wish.session) : std::string{" sessions"};
    auto const none = none_on ? ", none on " + spell::day(*none_on) : std::string{};
    return std::to_string(found.size()) + what + where + none + "; choose one with --week and --session" +
           list(plan, found);
}

std::string no_lane(calc::LaneSet const& lanes, int asked, bool ascii) {
    auto const problem = "no lane " + std::to_string(asked);
    return problem +
           (lanes.none() ? "; no line has a lane label" : "; the plan has " + lanes_label(lanes, ascii));
}

Picked with_lane(plan::Plan const& plan, Wish const& wish, Picked picked, bool ascii) {
    if (picked.found() && wish.lane) {
        // A lane of another session is one too: it swims the unlabelled lines.
        auto const lanes = calc::lanes_of(plan);
        auto const lane = static_cast<std::size_t>(*wish.lane);
        if (*wish.lane < 1 || lane >= lanes.size() || !lanes.test(lane)) {
            picked.problem = no_lane(lanes, *wish.lane, ascii);
        }
    }
    return picked;
}

Picked one_session(plan::Plan const& plan, Wish const& wish, std::vector<plan::Index> const& found) {
    if (found.size() == 1) {
        return {{Scope::Kind::session, found.front()}, {}};
    }
    return {{}, not_one(plan, wish, found, std::nullopt)};
}

} // namespace

std::vector<plan::Index> sessions_like(plan::Plan const& plan, Wish const& wish) {
    auto const run = sessions_of(plan, wish.week);
    std::vector<plan::Index> named;
    std::vector<plan::Index> others;
    Test const test{wish.session ? std::string_view{*wish.session} : std::string_view{}};
    for (auto i = run.first; i < run.end(); ++i) {
        if (test.by_name(plan.sessions[i])) {
            named.push_back(i);
        } else if (!wish.session || test.otherwise(plan.sessions[i], i)) {
            others.push_back(i);
        }
    }
    return named.empty() ? others : named;
}

Picked pick_scope(plan::Plan const& plan, Wish const& wish, bool ascii) {
    if (wish.week && !has_week(plan, *wish.week)) {
        return {{}, no_week(plan, *wish.week)};
    }
    if (wish.session) {
        return with_lane(plan, wish, one_session(plan, wish, sessions_like(plan, wish)), ascii);
    }
    Scope scope;
    if (wish.week) {
        auto const week = std::find_if(plan.weeks.begin(), plan.weeks.end(),
                                       [&](plan::Week const& w) { return w.number == wish.week; });
        scope = {Scope::Kind::week, static_cast<plan::Index>(week - plan.weeks.begin())};
    }
    return with_lane(plan, wish, {scope, {}}, ascii);
}

Picked pick_session(plan::Plan const& plan, Wish const& wish, std::optional<Date> today, bool ascii) {
    if (wish.week && !has_week(plan, *wish.week)) {
        return {{}, no_week(plan, *wish.week)};
    }
    auto found = sessions_like(plan, wish);
    if (!wish.session && today && found.size() > 1) {
        std::vector<plan::Index> of_today;
        std::copy_if(found.begin(), found.end(), std::back_inserter(of_today),
                     [&](plan::Index i) { return plan.sessions[i].date == today; });
        if (of_today.empty()) {
            return {{}, not_one(plan, wish, found, today)};
        }
        found = of_today;
    }
    return with_lane(plan, wish, one_session(plan, wish, found), ascii);
}

std::string session_label(plan::Plan const& plan, plan::Index session) {
    if (!plan.sessions[session].name.empty()) {
        return visible(plan.sessions[session].name);
    }
    auto const when = day_and_time(plan.sessions[session]);
    return when.empty() ? "session " + std::to_string(session + 1) : when;
}

std::string day_label(plan::Session const& session) {
    auto const day = day_of(session);
    return day ? std::string{spelling(static_cast<Word>(static_cast<int>(Word::mon) + *day))} : std::string{};
}

std::string week_label(plan::Week const& week) {
    return week.number ? "week " + std::to_string(*week.number) : "no week";
}

std::string lanes_label(calc::LaneSet const& lanes, bool ascii) {
    std::string text;
    auto const all = calc::numbers(lanes);
    for (std::size_t i = 0; i < all.size();) {
        auto end = i + 1;
        while (end < all.size() && all[end] == all[end - 1] + 1) {
            ++end;
        }
        text.append(text.empty() ? "" : ", ").append(std::to_string(all[i]));
        if (end - i > 1) {
            text.append(end - i == 2 ? ", " : ascii ? "-" : "–").append(std::to_string(all[end - 1]));
        }
        i = end;
    }
    return (all.size() == 1 ? "lane " : "lanes ") + text;
}

} // namespace lengthwise::report
