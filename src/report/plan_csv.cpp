#include "report/plan_csv.hpp"

#include "grammar/words.hpp"
#include "report/csv.hpp"
#include "report/session_view.hpp"
#include "report/summary.hpp"
#include "units/spell.hpp"

#include <array>
#include <string_view>
#include <vector>

namespace lengthwise::report {
namespace {

using Names = std::vector<std::string_view>;

/// What RowWriter::sums fills.
Names with_sums(Names names) {
    constexpr std::array<std::string_view, 10> sums{
        "lane",        "metres",           "lengths",      "longest_rep_metres", "reps",
        "low_seconds", "expected_seconds", "high_seconds", "estimated_metres",   "if_time_metres"};
    names.insert(names.end(), sums.begin(), sums.end());
    return names;
}

Names columns(CsvRows rows) {
    switch (rows) {
    case CsvRows::line:
        return {"plan",      "week",          "date", "time",          "session",
                "section",   "section_name",  "row",  "kind",          "first_lane",
                "last_lane", "if_time",       "set",  "reps",          "lengths",
                "metres",    "timed_seconds", "lane", "start_seconds", "end_seconds"};
    case CsvRows::session:
        return with_sums({"plan", "week", "date", "time", "session", "slot_seconds", "pool_metres"});
    case CsvRows::week:
        return with_sums({"plan", "week", "from", "name", "sessions"});
    }
    return {};
}

class RowWriter {
  public:
    RowWriter(plan::Plan const& plan, ExportOptions const& options, CsvRows rows, TextSink const& sink)
        : plan_(plan), options_(options), rows_(rows), sink_(sink),
          summary_(plan, options.scope, options.lane) {}

    void all() {
        auto const weeks = summary_.weeks();
        for (auto week = weeks.first; week < weeks.end(); ++week) {
            if (rows_ == CsvRows::week) {
                this->week(week);
                continue;
            }
            auto const sessions = summary_.sessions(week);
            for (auto session = sessions.first; session < sessions.end(); ++session) {
                rows_ == CsvRows::session ? this->session(session) : lines(session);
            }
        }
    }

  private:
    void week(plan::Index index) {
        auto const& week = plan_.weeks[index];
        auto const sessions = summary_.sessions(index).count;
        if (!week.number && sessions == 0) {
            return; // of a file of named sets alone
        }
        auto const tally = summary_.week(index);
        begin(week);
        date(week.from);
        csv_.text(week.name);
        csv_.figure(std::to_string(sessions));
        sums(tally);
        end();
    }

    void session(plan::Index index) {
        auto const& session = plan_.sessions[index];
        auto const& pool = plan_.pool_of(session);
        begin(session);
        session.slot() ? csv_.figure(spell::json_seconds(*session.slot())) : csv_.empty();
        pool.has_length() ? csv_.figure(spell::json_metres(pool.length)) : csv_.empty();
        sums(summary_.session(index));
        end();
    }

    void lines(plan::Index index) {
        auto const view = session_view(summary_, index);
        for (auto const& section : view.sections) {
            for (auto const& line : section.lines) {
                this->line(view, section, line);
            }
        }
    }

    void line(SessionView const& view, ViewSection const& shown, ViewLine const& line) {
        auto const& session = plan_.sessions[view.session];
        auto const& section = plan_.sections[shown.section];
        auto const& item = plan_.items[line.item];
        begin(session);
        csv_.figure(spelling(word_of(section.kind))).text(plan_.heading_of(section).name);
        number(line.row);
        csv_.figure(line.swims() ? "swim" : line.kind == ViewLine::Kind::pause ? "pause" : "note");
        number(item.first_lane);
        number(item.last_lane);
        csv_.figure(item.optional ? "yes" : "no").text(line.set);
        if (line.swims()) {
            amounts(line.totals, plan_.pool_of(session));
        } else {
            csv_.empty().empty().empty().empty();
        }
        times(view, line);
        end();
    }

    void amounts(calc::Totals const& totals, Pool const& pool) {
        csv_.figure(std::to_string(totals.reps));
        pool.has_length() ? csv_.figure(std::to_string(totals.lengths)) : csv_.empty();
        csv_.figure(spell::json_metres(totals.distance)).figure(spell::json_seconds(totals.timed));
    }

    /// Of the lowest lane that swims the line.
    void times(SessionView const& view, ViewLine const& line) {
        std::size_t place = 0;
        while (place < line.swum.size() && !line.swum[place]) {
            ++place;
        }
        if (line.kind != ViewLine::Kind::swum || place == line.swum.size()) {
            csv_.empty().empty().empty();
            return;
        }
        number(view.lanes[place].lane);
        auto const times = view.times(place, line);
        for (auto const& time : {times.start, times.end}) {
            time ? csv_.figure(spell::json_seconds(time->expected)) : csv_.empty();
        }
    }

    void begin(plan::Week const& week) {
        if (!options_.file.empty()) {
            csv_.text(options_.file);
        }
        csv_.text(plan_.name);
        number(static_cast<int>(week.number.value_or(0)));
    }

    void begin(plan::Session const& session) {
        begin(plan_.weeks[session.week]);
        date(session.date);
        csv_.figure(session.at ? spell::time_of_day(*session.at) : std::string{});
        csv_.text(session.name.empty() ? day_label(session) : std::string{session.name});
    }

    void sums(Tally const& tally) {
        auto const figures = tally.swum(tally.lane());
        number(tally.lane());
        csv_.figure(spell::json_metres(figures.totals.distance));
        tally.has_lengths() ? csv_.figure(std::to_string(figures.totals.lengths)) : csv_.empty();
        csv_.figure(spell::json_metres(figures.totals.longest)).figure(std::to_string(figures.totals.reps));
        if (auto const time = figures.time()) {
            csv_.figure(spell::json_seconds(time->low)).figure(spell::json_seconds(time->expected));
            csv_.figure(spell::json_seconds(time->high));
        } else {
            csv_.empty().empty().empty();
        }
        auto const estimated = figures.estimated();
        estimated ? csv_.figure(spell::json_metres(*estimated)) : csv_.empty();
        csv_.figure(spell::json_metres(tally.if_time(tally.lane()).totals.distance));
    }

    void date(std::optional<Date> date) { csv_.figure(date ? spell::iso(*date) : std::string{}); }

    /// 0 is none.
    void number(int number) { csv_.figure(number != 0 ? std::to_string(number) : std::string{}); }

    void end() {
        csv_.end_row();
        sink_(csv_.take());
    }

    plan::Plan const& plan_;
    ExportOptions const& options_;
    CsvRows rows_;
    TextSink const& sink_;
    Summary summary_;
    Csv csv_;
};

} // namespace

std::string csv_head(CsvRows rows, bool several) {
    Csv csv;
    if (several) {
        csv.figure("file");
    }
    for (auto const name : columns(rows)) {
        csv.figure(name);
    }
    csv.end_row();
    return csv.take();
}

void plan_csv(plan::Plan const& plan, ExportOptions const& options, CsvRows rows, TextSink const& sink) {
    RowWriter{plan, options, rows, sink}.all();
}

} // namespace lengthwise::report
