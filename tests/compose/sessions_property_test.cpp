#include "compose/author.hpp"
#include "compose/fit.hpp"
#include "compose/text_lines.hpp"
#include "support/plain_ramp.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

using namespace lengthwise;
using namespace lengthwise::compose;

namespace {

/// What a session breaks of the rules in docs/compose.md, each in a few words.
class Judge {
  public:
    Judge(Request const& request, Ramp const& ramp) : request_(request), ramp_(ramp) {}

    std::vector<std::string> judge(std::vector<Week> const& weeks) {
        for (auto const& week : weeks) {
            week_ = &*std::ranges::find(ramp_.weeks, week.number, &RampWeek::number);
            build_ += week_->kind == WeekKind::build ? 1 : 0;
            top_ = week_->kind == WeekKind::build ? std::max(top_, week_->rep) : top_;
            judge(week);
            opening_ = false;
        }
        return faults_;
    }

  private:
    template <typename... T>
    void fault_if(bool is, fmt::format_string<T...> text, T&&... values) {
        if (is) {
            faults_.push_back(where_ + ": " + fmt::format(text, std::forward<T>(values)...));
        }
    }

    void judge(Week const& week) {
        where_ = fmt::format("week {}", week.number);
        fault_if(week.sessions.size() != week_->days.size(), "a session is missing");
        std::set<std::string_view> drills;
        for (std::size_t i = 0; i < week.sessions.size(); ++i) {
            where_ = fmt::format("week {}, session {}", week.number, i + 1);
            judge(week.sessions[i], week_->days[i]);
            for (auto const& section : week.sessions[i].sections) {
                for (auto const& line : section.lines) {
                    for (auto const& part : line.reps.front().parts) {
                        drills.insert(part.manner.drill);
                    }
                }
            }
        }
        drills.erase("");
        for (auto& [name, running] : running_) {
            running = drills.contains(name) ? running : 0;
        }
        for (auto const name : drills) {
            auto const sight = name == "eyes up" || name == "head-up crawl";
            auto const most = sight || name == "bubbles" || name == "push and glide" ? 6 : 4;
            fault_if(++running_[name] > most, "{} for {} weeks", name, running_[name]);
        }
    }

    void judge(Session const& session, Day const& day) {
        auto sum = 0;
        auto lines = std::size_t{0};
        auto hard = 0;
        for (auto const& section : session.sections) {
            fault_if(section.lines.empty(), "an empty section");
            judge(section);
            lines += section.lines.size();
            for (auto const& line : section.lines) {
                sum += laps(line);
                hard += hard_halves(line);
            }
        }
        fault_if(sum != day.laps, "{} laps, the day has {}", sum, day.laps);
        fault_if(lines > 9, "{} lines", lines);
        fault_if(3 * hard > 2 * day.laps, "{} of {} laps hard", hard / 2, day.laps);
        fault_if(hard > 0 && (gentle() || opening_), "{} half laps hard", hard);
        fault_if(week_->kind == WeekKind::taper && hard > 12, "{} half laps hard in a taper", hard);
        fault_if(notes_in(session) > most_notes, "{} notes", notes_in(session));
        auto const& main = session.section(SectionKind::main)->lines;
        auto const rep =
            std::ranges::any_of(main, [&](Line const& line) { return longest_rep(line) == week_->rep; });
        fault_if(day.kind == DayKind::long_day && week_->rep > 1 && !rep, "no rep of {} laps", week_->rep);
        compare(day.kind, main);
    }

    bool gentle() const {
        auto const stage = lap(request_.pool) * std::max(top_, top_ == 0 ? today() : 0);
        return stage < Distance::metres(200) || week_->kind == WeekKind::recovery ||
               week_->kind == WeekKind::eased;
    }
    Laps today() const { return ramp_.today_longest / ramp_.lengths_a_lap; }

    void judge(Section const& section) {
        auto const most = section.kind == SectionKind::cool_down ? 1U : 3U;
        fault_if(section.lines.size() > most, "{} lines in a section", section.lines.size());
        auto rest = 0;
        auto sum = 0;
        for (auto const& line : section.lines) {
            judge(line, section.kind == SectionKind::main);
            rest += rest_of(line, section.kind);
            sum += laps(line);
        }
        auto const relaxed = section.kind == SectionKind::warm_up || section.kind == SectionKind::cool_down;
        auto const long_rest =
            section.kind == SectionKind::main && long_rep_rest(section) ? 60 - 30 * week_->rep : 0;
        fault_if(rest > sum * (relaxed ? 20 : 30) + std::max(0, long_rest), "{} s of rest in {} laps", rest,
                 sum);
        for (auto a = section.lines.begin(); a != section.lines.end(); ++a) {
            fault_if(std::any_of(a + 1, section.lines.end(), [&](Line const& b) { return alike(*a, b); }),
                     "two lines alike");
        }
        for (auto const& note : section.notes) {
            fault_if(note.size() > 74, "a note of {} characters", note.size());
        }
    }

    static bool long_rep_rest(Section const& section) {
        return std::ranges::any_of(section.lines, [](Line const& line) { return line.rest == 60; });
    }

    /// The most, with what headings and the file say.
    static int rest_of(Line const& line, SectionKind kind) {
        auto const usual = kind == SectionKind::warm_up || kind == SectionKind::cool_down ? 20 : 30;
        auto rest = rest_in(line);
        for (auto const& rep : line.reps) {
            rest += line.form == Line::Form::rounds && rep.rest == 0 && &rep != &line.reps.back()
                        ? line.count * usual
                        : 0;
        }
        return line.rest == 0 && line.send_off == 0 ? rest + rep_count(line) * usual : rest;
    }

    void judge(Line const& line, bool main) {
        fault_if(longest_rep(line) > week_->rep, "a rep of {} laps, the longest is {}", longest_rep(line),
                 week_->rep);
        fault_if(rep_count(line) > 15, "{} reps in a line", rep_count(line));
        fault_if(main && week_->rep > 1 && !is_nice(line.count), "{} reps", line.count);
        for (auto const& rep : line.reps) {
            fault_if(!is_round(rep.laps) && rep.laps != week_->rep && rep.laps != ramp_.race_rep,
                     "a rep of {} laps", rep.laps);
        }
        auto const text = spelled(line, request_.pool);
        fault_if(text.size() > 84, "{} characters", text.size());
        for (auto const& note : line.above) {
            fault_if(note.size() > 74, "a note of {} characters", note.size());
        }
        fault_if(line.note.size() > 74, "a note of {} characters", line.note.size());
    }

    void compare(DayKind kind, std::vector<Line> const& main) {
        std::string text;
        for (auto const& line : main) {
            text += spelled(line, request_.pool) + '\n';
        }
        auto& last = last_[kind];
        if (week_->kind == WeekKind::build && week_->rep > 1) {
            fault_if(last.first == build_ - 1 && last.second == text, "the same as the week before: {}",
                     text);
        }
        if (week_->kind == WeekKind::build) {
            last = {build_, text};
        }
    }

    Request const& request_;
    Ramp const& ramp_;
    RampWeek const* week_ = nullptr;
    int build_ = 0;
    Laps top_ = 0;
    bool opening_ = true;
    std::string where_;
    std::map<DayKind, std::pair<int, std::string>> last_;
    std::map<std::string_view, int> running_;
    std::vector<std::string> faults_;
};

} // namespace

TEST_CASE("whatever the ramp, its sessions are sound", "[compose]") {
    std::mt19937 random{2027};
    for (auto i = 0; i < 1500; ++i) {
        auto const request = support::random_request(random);
        auto const ramp = support::plain_ramp(request);
        auto const faults = Judge{request, ramp}.judge(sessions_of(request, ramp));
        CAPTURE(i, ramp.race_rep, ramp.today_longest);
        CHECK(fmt::format("{}", fmt::join(faults, "\n")) == "");
    }
}
