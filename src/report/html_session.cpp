#include "report/html_session.hpp"

#include "report/deck_clock_words.hpp"
#include "report/markup.hpp"
#include "report/session_words.hpp"
#include "units/spell.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

namespace lengthwise::report {
namespace {

std::string distance(Distance distance, Unit unit, bool ascii) {
    return distance.zero() ? "-" : spell::number(distance, unit, ascii);
}

/// One lane's table: row, clock, lengths, metres so far, set; columns of which nothing is known are left out.
class LaneTable {
  public:
    LaneTable(plan::Plan const& plan, SessionView const& view, std::size_t place, bool ascii)
        : pool_(plan.pool_of(plan.sessions[view.session])), view_(view), place_(place), ascii_(ascii) {
        clock_.from = plan.sessions[view.session].at;
        clock_.runs =
            std::ranges::any_of(view.lines[place], [](auto const& line) { return line.end.has_value(); });
    }

    [[nodiscard]] std::string text() {
        out("<table>\n<thead><tr>");
        head("row", "figure");
        if (clock_.runs) {
            head(moments_head(clock_), "figure");
        }
        if (pool_.has_length()) {
            head("lengths", "figure");
        }
        head(spell::symbol(pool_.unit), "figure");
        head("set", "set");
        out("</tr></thead>\n");
        for (auto const& section : view_.sections) {
            this->section(section);
        }
        end();
        out("</table>\n");
        return std::move(text_);
    }

  private:
    template <typename... Values>
    void out(fmt::format_string<Values...> format, Values&&... values) {
        fmt::format_to(std::back_inserter(text_), format, std::forward<Values>(values)...);
    }

    void head(std::string_view name, std::string_view kind) {
        out("<th scope=\"col\" class=\"{}\">{}</th>", kind, name);
    }

    void figure(std::string_view text) { out("<td class=\"figure\">{}</td>", markup(text)); }

    void section(ViewSection const& section) {
        out("<tbody>\n<tr><th scope=\"rowgroup\" colspan=\"{}\">{}</th></tr>\n", columns(),
            markup(section.heading));
        for (auto const& line : section.lines) {
            if (line.swum[place_] && line.kind == ViewLine::Kind::note) {
                out("<tr><td colspan=\"{}\">{}</td></tr>\n", columns(), markup(line.set));
            } else if (line.swum[place_]) {
                row(line);
            }
        }
        out("</tbody>\n");
    }

    [[nodiscard]] int columns() const { return 3 + (clock_.runs ? 1 : 0) + (pool_.has_length() ? 1 : 0); }

    void row(ViewLine const& line) {
        bool const runs_on = line.kind == ViewLine::Kind::swum;
        so_far_ += runs_on ? line.totals.distance : Distance{};
        out("<tr>");
        figure(line.row != 0 ? std::to_string(line.row) : "");
        if (clock_.runs) {
            auto const start = view_.times(place_, line).start;
            figure(!runs_on ? "" : start ? moment(clock_, start->expected) : "?");
        }
        if (pool_.has_length()) {
            figure(lengths(line));
        }
        figure(runs_on ? distance(so_far_, pool_.unit, ascii_) : "");
        out("<td class=\"set\">{}</td></tr>\n", markup(set_words(line)));
    }

    /// "+4" for what is swum if there is time, a time for what is not measured in lengths.
    [[nodiscard]] static std::string lengths(ViewLine const& line) {
        if (!line.swims()) {
            return {};
        }
        auto const amount = line.totals.lengths == 0 ? spell::duration(line.totals.timed)
                                                     : std::to_string(line.totals.lengths);
        return (line.kind == ViewLine::Kind::optional ? "+" : "") + amount;
    }

    void end() {
        auto const& lane = view_.lanes[place_];
        out("<tfoot><tr>");
        figure("");
        if (clock_.runs) {
            figure(lane.takes ? end_moment(clock_, lane.takes->expected) : "?");
        }
        if (pool_.has_length()) {
            auto const lengths = lane.swum.totals.lengths;
            figure(lengths == 0 ? "-" : std::to_string(lengths));
        }
        figure(distance(lane.swum.totals.distance, pool_.unit, ascii_));
        out("<td class=\"set\">end</td></tr></tfoot>\n");
    }

    Pool const& pool_;
    SessionView const& view_;
    std::size_t place_;
    bool ascii_;
    DeckClock clock_; ///< for its words
    Distance so_far_;
    std::string text_;
};

std::string paragraph(std::string_view kind, std::string_view text) {
    return text.empty() ? std::string{} : fmt::format("<p class=\"{}\">{}</p>\n", kind, markup(text));
}

} // namespace

std::string html_anchor(plan::Index session) {
    return "s" + std::to_string(session + 1);
}

void html_session(plan::Plan const& plan, SessionView const& view, bool ascii, TextSink const& sink) {
    auto const head = session_head(plan, view.session, ascii);
    auto text =
        fmt::format("<article id=\"{}\">\n<h3>{}</h3>\n", html_anchor(view.session), markup(head.title));
    text += paragraph("soft", head.below);
    for (auto const note : plan.settings[plan.sessions[view.session].settings].notes) {
        text += paragraph("note", note);
    }
    text += paragraph("soft", kit_and_rest(plan, view, ascii));
    sink(text);
    for (std::size_t place = 0; place < view.lanes.size(); ++place) {
        auto words = lane_words(plan, view, place, ascii);
        auto const name = std::exchange(words.front(), {});
        sink("<div class=\"lane\">\n" + (name.empty() ? "" : fmt::format("<h4>{}</h4>\n", markup(name))) +
             paragraph("soft", in_one_line(words, ascii)));
        sink(LaneTable{plan, view, place, ascii}.text() + "</div>\n");
    }
    sink("</article>\n");
}

} // namespace lengthwise::report
