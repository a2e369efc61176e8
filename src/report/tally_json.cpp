#include "report/tally_json.hpp"

#include "calc/breakdown.hpp"
#include "grammar/words.hpp"
#include "report/summary.hpp"
#include "report/swimmer_figures.hpp"
#include "units/spell.hpp"

namespace lengthwise::report {
namespace {

constexpr std::string_view schema = "lengthwise.tally/1";

class Writer {
  public:
    Writer(plan::Plan const& plan, TallyOptions const& options, TextSink const& sink)
        : plan_(plan), options_(options), summary_(plan, options.scope, options.lane), json_(sink) {}

    void document() {
        json_.begin_object().key("schema").string(schema);
        if (!options_.file.empty()) {
            json_.key("file").string(options_.file);
        }
        json_.key("plan").begin_object();
        text_or_null("name", plan_.name);
        auto const whole = summary_.whole();
        tally(whole);
        if (options_.by_swimmer) {
            by_swimmer();
        } else if (options_.swimmer != nullptr) {
            swimmer(*options_.swimmer);
        }
        if (options_.by) {
            by(whole);
        }
        json_.key("weeks").begin_array();
        auto const all = summary_.weeks();
        for (auto i = all.first; i < all.end(); ++i) {
            week(i);
        }
        if (plan_.weeks.empty()) {
            empty_week(whole);
        }
        json_.end_array().end_object().end_object().end_line();
    }

  private:
    void week(plan::Index index) {
        auto const& week = plan_.weeks[index];
        json_.begin_object();
        week_head(week);
        tally(summary_.week(index));
        json_.key("sessions").begin_array();
        auto const run = summary_.sessions(index);
        for (auto i = run.first; i < run.end(); ++i) {
            session(i);
        }
        json_.end_array().end_object();
    }

    /// A file with neither weeks nor sessions has one week without a number.
    void empty_week(Tally const& whole) {
        json_.begin_object();
        week_head({});
        tally(whole);
        json_.key("sessions").begin_array().end_array().end_object();
    }

    void week_head(plan::Week const& week) {
        json_.key("number");
        week.number ? json_.integer(*week.number) : json_.null();
        date_or_null("from", week.from);
    }

    void session(plan::Index index) {
        auto const& session = plan_.sessions[index];
        json_.begin_object();
        text_or_null("name", session.name);
        date_or_null("date", session.date);
        tally(summary_.session(index));
        json_.key("sections").begin_array();
        auto i = session.sections.first;
        for (auto const& of_section : summary_.sections(index)) {
            auto const& section = plan_.sections[i++];
            json_.begin_object().key("kind").string(spelling(word_of(section.kind)));
            text_or_null("name", plan_.heading_of(section).name);
            tally(of_section);
            json_.end_object();
        }
        json_.end_array().end_object();
    }

    /// Whose plan it is; the figures are his share already.
    void swimmer(plan::Swimmer const& swimmer) {
        json_.key("swimmer").begin_object().key("name").string(swimmer.name).key("lane");
        swimmer.lane ? json_.integer(*swimmer.lane) : json_.null();
        json_.key("share_percent").integer(swimmer.share.value_or(100)).end_object();
    }

    void by_swimmer() {
        json_.key("by").begin_array();
        for (auto const& one : swimmer_figures(plan_, options_.scope, options_.lane, options_.swimmer)) {
            json_.begin_object();
            swimmer(*one.swimmer);
            totals(one.figures, one.has_lengths);
            json_.end_object();
        }
        json_.end_array();
    }

    void by(Tally const& whole) {
        json_.key("by").begin_array();
        for (auto const& word : summary_.by(*options_.by, whole.lane())) {
            json_.begin_object().key("word").string(calc::word_of(*options_.by, word.key));
            totals(word.figures, whole.has_lengths());
            json_.end_object();
        }
        json_.end_array();
    }

    void tally(Tally const& tally) {
        of_lane(tally, tally.lane());
        if (!tally.has_lane_lines()) {
            return;
        }
        json_.key("lanes").begin_array();
        for (int const lane : calc::numbers(tally.lanes())) {
            json_.begin_object().key("lane").integer(lane);
            of_lane(tally, lane);
            json_.end_object();
        }
        json_.end_array();
    }

    void of_lane(Tally const& tally, int lane) {
        totals(tally.swum(lane), tally.has_lengths());
        if (tally.has_if_time(lane)) {
            json_.key("if_time").begin_object();
            totals(tally.if_time(lane), tally.has_lengths());
            json_.end_object();
        }
    }

    void totals(Figures const& figures, bool has_lengths) {
        json_.key("metres").number(spell::json_metres(figures.totals.distance)).key("lengths");
        has_lengths ? json_.integer(figures.totals.lengths) : json_.null();
        json_.key("longest_rep_metres").number(spell::json_metres(figures.totals.longest));
        json_.key("reps").integer(figures.totals.reps).key("seconds");
        if (auto const time = figures.time()) {
            json_.begin_object().key("low").number(spell::json_seconds(time->low));
            json_.key("expected").number(spell::json_seconds(time->expected));
            json_.key("high").number(spell::json_seconds(time->high)).end_object();
        } else {
            json_.null();
        }
        json_.key("estimated_metres");
        auto const estimated = figures.estimated();
        estimated ? json_.number(spell::json_metres(*estimated)) : json_.null();
    }

    void text_or_null(std::string_view key, std::string_view text) {
        json_.key(key);
        text.empty() ? json_.null() : json_.string(text);
    }

    void date_or_null(std::string_view key, std::optional<Date> date) {
        json_.key(key);
        date ? json_.string(spell::iso(*date)) : json_.null();
    }

    plan::Plan const& plan_;
    TallyOptions const& options_;
    Summary summary_;
    Json json_;
};

} // namespace

void tally_json(plan::Plan const& plan, TallyOptions const& options, TextSink const& sink) {
    Writer{plan, options, sink}.document();
}

std::string tally_json(plan::Plan const& plan, TallyOptions const& options) {
    std::string text;
    tally_json(plan, options, [&](std::string_view piece) { text += piece; });
    return text;
}

std::string tally_json_errors(std::string_view file, std::uint64_t errors) {
    std::string text;
    Json json{[&](std::string_view piece) { text += piece; }};
    json.begin_object().key("schema").string(schema).key("file").string(file);
    json.key("errors").integer(static_cast<std::int64_t>(errors)).end_object().end_line();
    return text;
}

} // namespace lengthwise::report
