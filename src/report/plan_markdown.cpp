#include "report/plan_markdown.hpp"

#include "report/choose_swimmer.hpp"
#include "report/markdown.hpp"
#include "report/session_view.hpp"
#include "report/session_words.hpp"
#include "report/summary.hpp"

#include <string>
#include <string_view>

namespace lengthwise::report {
namespace {

class MarkdownWriter {
  public:
    MarkdownWriter(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink)
        : plan_(plan), options_(options), sink_(sink), summary_(plan, options.scope, options.lane) {}

    void write() {
        heading("#", plan_.name.empty() ? "Swim plan" : plan_.name);
        if (options_.swimmer != nullptr) {
            paragraph("swimmer: " + swimmer_label(*options_.swimmer));
        }
        if (plan_.race) {
            paragraph(race_words(*plan_.race, options_.ascii));
        }
        notes(plan_.file_settings);
        auto const weeks = summary_.weeks();
        for (auto week = weeks.first; week < weeks.end(); ++week) {
            auto const sessions = summary_.sessions(week);
            if (sessions.empty()) {
                continue;
            }
            this->week(plan_.weeks[week]);
            for (auto i = sessions.first; i < sessions.end(); ++i) {
                session(i);
            }
        }
        flush();
    }

  private:
    void week(plan::Week const& week) {
        auto words = week_words(plan_, week);
        heading("##", week.name.empty() ? words : words.append(": ").append(week.name));
        notes(week.settings);
    }

    void session(plan::Index index) {
        auto const& session = plan_.sessions[index];
        auto const view = session_view(summary_, index);
        auto const head = session_head(plan_, index, options_.ascii);
        heading("###", head.title);
        paragraph(head.below);
        block();
        for (std::size_t place = 0; place < view.lanes.size(); ++place) {
            item(in_one_line(lane_words(plan_, view, place, options_.ascii), options_.ascii));
        }
        item(kit_and_rest(plan_, view, options_.ascii));
        notes(session.settings);
        for (auto const& section : view.sections) {
            heading("####", section.heading);
            block();
            for (auto const& line : section.lines) {
                item(line_words(plan_, view, line));
            }
        }
        flush();
    }

    /// An empty line before all but the first.
    void block() {
        text_ += first_ ? "" : "\n";
        first_ = false;
    }

    void heading(std::string_view signs, std::string_view words) {
        block();
        text_.append(signs).append(" ").append(markdown(words)).append("\n");
    }

    void item(std::string_view words) { text_.append("- ").append(markdown(words)).append("\n"); }

    void paragraph(std::string_view words) {
        if (!words.empty()) {
            block();
            text_.append(markdown(words)).append("\n");
        }
    }

    /// In quotes, as they are written, so that none begins with a sign that means something there.
    void notes(plan::Index settings) {
        for (auto const note : plan_.settings[settings].notes) {
            paragraph("\"" + std::string{note} + "\"");
        }
    }

    void flush() {
        sink_(text_);
        text_.clear();
    }

    plan::Plan const& plan_;
    ExportOptions const& options_;
    TextSink const& sink_;
    Summary summary_;
    std::string text_;
    bool first_ = true;
};

} // namespace

void plan_markdown(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink) {
    MarkdownWriter{plan, options, sink}.write();
}

} // namespace lengthwise::report
