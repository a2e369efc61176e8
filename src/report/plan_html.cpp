#include "report/plan_html.hpp"

#include "report/chart_svg.hpp"
#include "report/chart_view.hpp"
#include "report/choose_swimmer.hpp"
#include "report/html_session.hpp"
#include "report/html_style.hpp"
#include "report/markup.hpp"
#include "report/session_view.hpp"
#include "report/session_words.hpp"
#include "report/summary.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <string>
#include <string_view>
#include <utility>

namespace lengthwise::report {
namespace {

class PageWriter {
  public:
    PageWriter(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink)
        : plan_(plan), options_(options), sink_(sink), summary_(plan, options.scope, options.lane) {}

    void write() {
        auto const name = markup(plan_.name.empty() ? "Swim plan" : plan_.name);
        sink_(
            fmt::format("<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n"
                        "<meta charset=\"utf-8\"/>\n"
                        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
                        "<meta http-equiv=\"Content-Security-Policy\" "
                        "content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n"
                        "<title>{0}</title>\n<style>\n{1}</style>\n</head>\n<body>\n<header>\n<h1>{0}</h1>\n",
                        name, html_style));
        head();
        sink_("</header>\n");
        chart();
        contents();
        sink_("<main>\n");
        bool timed = false;
        each_week([&](plan::Week const& week, plan::Run sessions) {
            sink_(fmt::format("<section>\n<h2>{}</h2>\n", markup(week_title(week))) + notes(week.settings));
            for (auto i = sessions.first; i < sessions.end(); ++i) {
                auto const view = session_view(summary_, i);
                timed = timed || longest_time(view).has_value();
                html_session(plan_, view, options_.ascii, sink_);
            }
            sink_("</section>\n");
        });
        sink_("</main>\n");
        if (timed) {
            sink_("<footer>\n<p class=\"soft\">Times are estimates. Tables show the expected "
                  "ones.</p>\n</footer>\n");
        }
        sink_("</body>\n</html>\n");
    }

  private:
    void head() {
        if (options_.swimmer != nullptr) {
            sink_(fmt::format("<p>{}</p>\n", markup(swimmer_label(*options_.swimmer))));
        }
        if (plan_.race) {
            sink_(fmt::format("<p>{}</p>\n", markup(race_words(*plan_.race, options_.ascii))));
        }
        sink_(notes(plan_.file_settings));
    }

    /// Scrolls sideways where it is wider than the screen, by keys too.
    void chart() {
        auto const chart = chart_view(plan_, {.lane = options_.lane, .swimmer = options_.swimmer});
        if (options_.scope.kind == Scope::Kind::plan && chart.weeks.size() > 1) {
            sink_("<figure tabindex=\"0\" role=\"group\" aria-label=\"longest rep and volume by week\">\n" +
                  chart_svg(chart, ChartGround::page) + "</figure>\n");
        }
    }

    /// A list of all sessions, to go to each; none where there is only one.
    void contents() {
        std::size_t sessions = 0;
        each_week([&](plan::Week const&, plan::Run run) { sessions += run.count; });
        if (sessions < 2) {
            return;
        }
        sink_("<nav aria-label=\"sessions\">\n<ul>\n");
        each_week([&](plan::Week const& week, plan::Run run) {
            sink_(fmt::format("<li>{}\n<ul>\n", markup(week_title(week))));
            for (auto i = run.first; i < run.end(); ++i) {
                sink_(entry(i));
            }
            sink_("</ul>\n</li>\n");
        });
        sink_("</ul>\n</nav>\n");
    }

    [[nodiscard]] std::string entry(plan::Index index) {
        auto const& session = plan_.sessions[index];
        auto const& tally = summary_.session(index);
        auto const swum = tally.swum(tally.lane()).totals.distance;
        auto const day =
            session.name.empty() || !session.date ? std::string{} : spell::short_day(*session.date);
        auto const distance =
            swum.zero() ? std::string{} : spell::distance(swum, summary_.unit(index), options_.ascii);
        auto const more = in_one_line({day, distance}, options_.ascii);
        return fmt::format("<li><a href=\"#{}\">{}</a>{}</li>\n", html_anchor(index),
                           markup(session_head(plan_, index, options_.ascii).title),
                           more.empty() ? "" : fmt::format(" <span class=\"soft\">{}</span>", markup(more)));
    }

    [[nodiscard]] std::string week_title(plan::Week const& week) const {
        auto const words = week_words(plan_, week);
        return week.name.empty() ? words : words + ": " + std::string{week.name};
    }

    [[nodiscard]] std::string notes(plan::Index settings) const {
        std::string text;
        for (auto const note : plan_.settings[settings].notes) {
            text += fmt::format("<p class=\"note\">{}</p>\n", markup(note));
        }
        return text;
    }

    /// Weeks with sessions.
    template <typename Visit>
    void each_week(Visit visit) {
        auto const weeks = summary_.weeks();
        for (auto week = weeks.first; week < weeks.end(); ++week) {
            if (auto const sessions = summary_.sessions(week); !sessions.empty()) {
                visit(plan_.weeks[week], sessions);
            }
        }
    }

    plan::Plan const& plan_;
    ExportOptions const& options_;
    TextSink const& sink_;
    Summary summary_;
};

} // namespace

void plan_html(plan::Plan const& plan, ExportOptions const& options, TextSink const& sink) {
    PageWriter{plan, options, sink}.write();
}

} // namespace lengthwise::report
