#include "report/plan_ics.hpp"

#include "report/ics.hpp"
#include "report/session_title.hpp"
#include "report/session_view.hpp"
#include "report/session_words.hpp"
#include "report/summary.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <string_view>

namespace lengthwise::report {
namespace {

/// FNV-1a with 64 bits, which is short to write down and spreads names well. Source of its figures: G.
/// Fowler, L. C. Noll, K.-P. Vo, "The FNV Non-Cryptographic Hash Algorithm" (IETF draft draft-eastlake-fnv).
std::uint64_t hash(std::string_view text) {
    std::uint64_t hash = 0xCBF2'9CE4'8422'2325;
    for (char const c : text) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 0x100'0000'01B3;
    }
    return hash;
}

class CalendarWriter {
  public:
    CalendarWriter(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink)
        : plan_(plan), options_(options), sink_(sink), summary_(plan, options.scope, options.lane) {}

    IcsCount write() {
        auto const weeks = summary_.weeks();
        for (auto week = weeks.first; week < weeks.end(); ++week) {
            auto const sessions = summary_.sessions(week);
            for (auto i = sessions.first; i < sessions.end(); ++i) {
                ++count_.sessions;
                plan_.sessions[i].date ? session(i) : void(++count_.undated);
            }
        }
        if (plan_.race && options_.scope.kind == Scope::Kind::plan) {
            race(*plan_.race);
        }
        return count_;
    }

  private:
    void session(plan::Index index) {
        auto const& session = plan_.sessions[index];
        auto const view = session_view(summary_, index);
        begin(place(index), *session.date);
        if (session.at) {
            ics_.line("DTSTART", ics_moment(*session.date, *session.at));
            if (auto const takes = session.slot() ? session.slot() : whole_minutes(longest_time(view))) {
                ics_.line("DURATION", ics_duration(*takes));
            }
        } else {
            ics_.line("DTSTART;VALUE=DATE", ics_date(*session.date));
        }
        ics_.text("SUMMARY", summary(session, view));
        ics_.text("DESCRIPTION", description(view));
        end();
    }

    void race(plan::Race const& race) {
        begin("race", race.on);
        ics_.line("DTSTART;VALUE=DATE", ics_date(race.on));
        ics_.text("SUMMARY", fmt::format("Race{}{}, {}", race.name.empty() ? "" : ": ", visible(race.name),
                                         spell::distance(race.distance, race.unit, options_.ascii)));
        end();
    }

    void begin(std::string_view place, Date date) {
        ++count_.events;
        ics_.line("BEGIN", "VEVENT");
        ics_.line("UID", fmt::format("{:016x}-{}@lengthwise", whose(), place));
        ics_.line("DTSTAMP", ics_moment(date, {}) + "Z");
    }

    void end() {
        ics_.line("END", "VEVENT");
        sink_(ics_.take());
    }

    [[nodiscard]] std::uint64_t whose() const {
        auto const name = plan_.name.empty() ? std::string_view{options_.source} : plan_.name;
        auto const person = options_.swimmer != nullptr ? options_.swimmer->name : std::string_view{};
        return hash(fmt::format("{}\n{}\n{}", name, person, options_.lane.value_or(0)));
    }

    /// "w2-s1": the first session of week 2; "w0" before any week.
    [[nodiscard]] std::string place(plan::Index index) const {
        auto const& week = plan_.weeks[plan_.sessions[index].week];
        return fmt::format("w{}-s{}", week.number.value_or(0), index - week.sessions.first + 1);
    }

    static std::optional<Duration> whole_minutes(std::optional<Duration> time) {
        constexpr auto minute = Duration::minutes(1).ms();
        return time && !time->zero() ? std::optional{Duration::minutes((time->ms() + minute - 1) / minute)}
                                     : std::nullopt;
    }

    [[nodiscard]] std::string summary(plan::Session const& session, SessionView const& view) const {
        auto const distance = view.lanes.front().swum.totals.distance;
        auto const name = session.name.empty() ? std::string{"Swim"} : visible(session.name);
        return distance.zero()
                   ? name
                   : name + ", " + spell::distance(distance, plan_.pool_of(session).unit, options_.ascii);
    }

    [[nodiscard]] std::string description(SessionView const& view) const {
        auto const& session = plan_.sessions[view.session];
        auto text = session_title(plan_, view.session, plan_.pool_of(session), options_.ascii).back();
        text += text.empty() ? "" : "\n";
        for (std::size_t place = 0; place < view.lanes.size(); ++place) {
            text += in_one_line(lane_words(plan_, view, place, options_.ascii), options_.ascii) + "\n";
        }
        text += kit_and_rest(plan_, view, options_.ascii) + "\n";
        for (auto const settings : {plan_.weeks[session.week].settings, session.settings}) {
            for (auto const note : plan_.settings[settings].notes) {
                text += visible(note) + "\n";
            }
        }
        for (auto const& section : view.sections) {
            text += "\n" + section.heading + "\n";
            for (auto const& line : section.lines) {
                auto const row = line.row != 0 ? fmt::format("{}  ", line.row) : std::string{};
                text += row + line_words(plan_, view, line) + "\n";
            }
        }
        text.pop_back();
        return text;
    }

    plan::Plan const& plan_;
    ExportOptions const& options_;
    TextSink const& sink_;
    Summary summary_;
    Ics ics_;
    IcsCount count_;
};

} // namespace

std::string ics_begin() {
    Ics ics;
    ics.line("BEGIN", "VCALENDAR").line("VERSION", "2.0");
    ics.line("PRODID", "-//lengthwise//swim plan//EN").line("CALSCALE", "GREGORIAN");
    return ics.take();
}

std::string ics_end() {
    return Ics{}.line("END", "VCALENDAR").take();
}

std::string undated_text(std::uint64_t undated, std::uint64_t sessions, bool calendar) {
    constexpr std::string_view hint =
        "      = a date comes from: week 1 from 2027-05-03, or session 2027-05-04";
    if (!calendar) {
        return fmt::format("no session has a date, so there is no calendar\n{}", hint);
    }
    return fmt::format("warning: {} of {} sessions {} left out, without a date\n{}", undated, sessions,
                       undated == 1 ? "is" : "are", hint);
}

IcsCount plan_ics(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink) {
    return CalendarWriter{plan, options, sink}.write();
}

} // namespace lengthwise::report
