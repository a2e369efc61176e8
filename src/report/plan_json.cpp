#include "report/plan_json.hpp"

#include "grammar/words.hpp"
#include "plan/spell.hpp"
#include "report/default_rest.hpp"
#include "report/figures_json.hpp"
#include "report/session_view.hpp"
#include "report/summary.hpp"
#include "units/spell.hpp"

namespace lengthwise::report {
namespace {

constexpr std::string_view schema = "lengthwise.plan/1";

class PlanWriter {
  public:
    PlanWriter(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink)
        : plan_(plan), options_(options), summary_(plan, options.scope, options.lane), json_(sink) {}

    void document() {
        begin_plan(json_, schema, options_.file, plan_.name);
        notes(plan_.file_settings);
        race();
        before();
        people();
        put_tally(json_, summary_.whole());
        json_.key("weeks").begin_array();
        auto const all = summary_.weeks();
        for (auto i = all.first; i < all.end(); ++i) {
            week(i);
        }
        json_.end_array().end_object().end_object().end_line();
    }

  private:
    void race() {
        json_.key("race");
        if (!plan_.race) {
            json_.null();
            return;
        }
        auto const& race = *plan_.race;
        json_.begin_object();
        put_text(json_, "name", race.name);
        put_text(json_, "kind", race.kind ? spelling(word_of(*race.kind)) : std::string_view{});
        metres("metres", race.distance);
        put_date(json_, "date", race.on);
        json_.end_object();
    }

    void before() {
        json_.key("before");
        if (!plan_.before) {
            json_.null();
            return;
        }
        json_.begin_object();
        metres("longest_rep_metres", plan_.before->longest);
        metres("week_metres", plan_.before->week);
        json_.end_object();
    }

    /// Whose plan it is, and who else is named: with `--swimmer` the figures are his already.
    void people() {
        if (options_.swimmer != nullptr) {
            json_.key("swimmer").begin_object();
            put_swimmer(json_, *options_.swimmer);
            json_.end_object();
        }
        json_.key("swimmers").begin_array();
        for (auto const& swimmer : plan_.swimmers) {
            json_.begin_object();
            put_swimmer(json_, swimmer);
            threshold(swimmer.threshold);
            json_.end_object();
        }
        json_.end_array();
    }

    void week(plan::Index index) {
        auto const& week = plan_.weeks[index];
        json_.begin_object();
        put_week_head(json_, week);
        put_text(json_, "name", week.name);
        notes(week.settings);
        put_tally(json_, summary_.week(index));
        json_.key("sessions").begin_array();
        auto const run = summary_.sessions(index);
        for (auto i = run.first; i < run.end(); ++i) {
            session(i);
        }
        json_.end_array().end_object();
    }

    void session(plan::Index index) {
        auto const& session = plan_.sessions[index];
        auto const view = session_view(summary_, index);
        json_.begin_object();
        put_text(json_, "name", session.name);
        put_date(json_, "date", session.date);
        put_text(json_, "day", day_label(session));
        put_text(json_, "time", session.at ? spell::time_of_day(*session.at) : std::string{});
        seconds("slot_seconds", session.slot());
        pool(plan_.pool_of(session));
        json_.key("kit").begin_array();
        for (auto const& gear : view.kit) {
            json_.string(gear);
        }
        json_.end_array();
        rest(default_rest(plan_, session));
        notes(session.settings);
        paces(view);
        put_tally(json_, summary_.session(index));
        json_.key("sections").begin_array();
        for (std::size_t i = 0; i < view.sections.size(); ++i) {
            section(view, view.sections[i], summary_.sections(index)[i]);
        }
        json_.end_array().end_object();
    }

    void pool(Pool const& pool) {
        json_.key("pool").begin_object().key("kind");
        switch (pool.kind) {
        case Pool::Kind::pool:
            json_.string("pool");
            break;
        case Pool::Kind::open_water:
            json_.string("open water");
            break;
        case Pool::Kind::unsaid:
            json_.null();
            break;
        }
        metres("length_metres", pool.has_length() ? std::optional{pool.length} : std::nullopt);
        json_.key("unit").string(spell::symbol(pool.unit)).end_object();
    }

    void rest(std::optional<Range<Duration>> const& rest) {
        json_.key("rest");
        if (!rest) {
            json_.null();
            return;
        }
        json_.begin_object();
        seconds("low_seconds", rest->low);
        seconds("high_seconds", rest->high);
        json_.end_object();
    }

    void paces(SessionView const& view) {
        json_.key("paces").begin_array();
        for (auto const& lane : view.lanes) {
            json_.begin_object();
            number("lane", lane.lane);
            number("pace_of_lane", lane.timed_as);
            threshold(lane.threshold);
            json_.end_object();
        }
        json_.end_array();
    }

    void section(SessionView const& view, ViewSection const& shown, Tally const& tally) {
        auto const& section = plan_.sections[shown.section];
        auto const& heading = plan_.heading_of(section);
        json_.begin_object().key("kind").string(spelling(word_of(section.kind)));
        put_text(json_, "name", heading.name);
        put_text(json_, "defaults", plan::spell_defaults(heading));
        put_tally(json_, tally);
        json_.key("lines").begin_array();
        for (auto const& line : shown.lines) {
            this->line(view, line);
        }
        json_.end_array().end_object();
    }

    void line(SessionView const& view, ViewLine const& line) {
        auto const& item = plan_.items[line.item];
        json_.begin_object().key("kind").string(kind_of(line));
        number("row", line.row);
        number("first_lane", item.first_lane);
        number("last_lane", item.last_lane);
        json_.key("if_time").boolean(item.optional);
        json_.key("set").string(line.set);
        put_text(json_, "note", note_of(item));
        if (line.swims()) {
            amounts(view, line);
        }
        json_.end_object();
    }

    static std::string_view kind_of(ViewLine const& line) {
        return line.swims() ? "swim" : line.kind == ViewLine::Kind::pause ? "pause" : "note";
    }

    /// Of a note or a pause; what stands behind a set is in its text.
    [[nodiscard]] std::string_view note_of(plan::Item const& item) const {
        return !item.is_swum() && item.body != plan::no_index ? plan_.texts[item.body] : std::string_view{};
    }

    void amounts(SessionView const& view, ViewLine const& line) {
        auto const& totals = line.totals;
        auto const& item = plan_.items[line.item];
        json_.key("count").integer(item.is_ladder() ? 1 : item.count).key("reps").integer(totals.reps);
        metres("metres", totals.distance);
        json_.key("lengths");
        plan_.pool_of(plan_.sessions[view.session]).has_length() ? json_.integer(totals.lengths)
                                                                 : json_.null();
        metres("longest_rep_metres", totals.longest);
        seconds("timed_seconds", totals.timed);
        json_.key("times").begin_array();
        for (std::size_t i = 0; i < view.lanes.size(); ++i) {
            if (line.swum[i] && line.kind == ViewLine::Kind::swum) {
                json_.begin_object();
                number("lane", view.lanes[i].lane);
                auto const times = view.times(i, line);
                json_.key("start");
                put_band(json_, times.start);
                json_.key("end");
                put_band(json_, times.end);
                json_.end_object();
            }
        }
        json_.end_array();
    }

    void notes(plan::Index settings) {
        json_.key("notes").begin_array();
        for (auto const note : plan_.settings[settings].notes) {
            json_.string(note);
        }
        json_.end_array();
    }

    void threshold(std::optional<plan::Threshold> const& threshold) {
        put_text(json_, "threshold", threshold ? plan::spell_line(*threshold) : std::string{});
    }

    /// 0 is none.
    void number(std::string_view key, int number) {
        json_.key(key);
        number != 0 ? json_.integer(number) : json_.null();
    }

    void metres(std::string_view key, std::optional<Distance> distance) {
        json_.key(key);
        distance ? json_.number(spell::json_metres(*distance)) : json_.null();
    }

    void seconds(std::string_view key, std::optional<Duration> time) {
        json_.key(key);
        time ? json_.number(spell::json_seconds(*time)) : json_.null();
    }

    plan::Plan const& plan_;
    ExportOptions const& options_;
    Summary summary_;
    Json json_;
};

} // namespace

void plan_json(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink) {
    PlanWriter{plan, options, sink}.document();
}

std::string plan_json_errors(std::string_view file, std::uint64_t errors) {
    return errors_json(schema, file, errors);
}

} // namespace lengthwise::report
