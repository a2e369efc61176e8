#include "report/tally_json.hpp"

#include "calc/breakdown.hpp"
#include "grammar/words.hpp"
#include "report/figures_json.hpp"
#include "report/summary.hpp"
#include "report/swimmer_figures.hpp"

namespace lengthwise::report {
namespace {

constexpr std::string_view schema = "lengthwise.tally/1";

class Writer {
  public:
    Writer(plan::Plan const& plan, TallyOptions const& options, TextSink const& sink)
        : plan_(plan), options_(options), summary_(plan, options.scope, options.lane), json_(sink) {}

    void document() {
        begin_plan(json_, schema, options_.file, plan_.name);
        auto const whole = summary_.whole();
        put_tally(json_, whole);
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
        put_week_head(json_, week);
        put_tally(json_, summary_.week(index));
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
        put_week_head(json_, {});
        put_tally(json_, whole);
        json_.key("sessions").begin_array().end_array().end_object();
    }

    void session(plan::Index index) {
        auto const& session = plan_.sessions[index];
        json_.begin_object();
        put_text(json_, "name", session.name);
        put_date(json_, "date", session.date);
        put_tally(json_, summary_.session(index));
        json_.key("sections").begin_array();
        auto i = session.sections.first;
        for (auto const& of_section : summary_.sections(index)) {
            auto const& section = plan_.sections[i++];
            json_.begin_object().key("kind").string(spelling(word_of(section.kind)));
            put_text(json_, "name", plan_.heading_of(section).name);
            put_tally(json_, of_section);
            json_.end_object();
        }
        json_.end_array().end_object();
    }

    /// Whose plan it is; the figures are his share already.
    void swimmer(plan::Swimmer const& swimmer) {
        json_.key("swimmer").begin_object();
        put_swimmer(json_, swimmer);
        json_.end_object();
    }

    void by_swimmer() {
        json_.key("by").begin_array();
        for (auto const& one : swimmer_figures(plan_, options_.scope, options_.lane, options_.swimmer)) {
            json_.begin_object();
            swimmer(*one.swimmer);
            put_figures(json_, one.figures, one.has_lengths);
            json_.end_object();
        }
        json_.end_array();
    }

    void by(Tally const& whole) {
        json_.key("by").begin_array();
        for (auto const& word : summary_.by(*options_.by, whole.lane())) {
            json_.begin_object().key("word").string(calc::word_of(*options_.by, word.key));
            put_figures(json_, word.figures, whole.has_lengths());
            json_.end_object();
        }
        json_.end_array();
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
    return errors_json(schema, file, errors);
}

} // namespace lengthwise::report
