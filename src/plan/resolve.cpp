#include "plan/resolve.hpp"

#include "grammar/limits.hpp"
#include "plan/amounts.hpp"
#include "plan/head.hpp"
#include "plan/items.hpp"
#include "plan/pace_checks.hpp"
#include "plan/sets.hpp"
#include "plan/settings.hpp"
#include "plan/work.hpp"
#include "units/date.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <chrono>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::Tree;

/// The walk from file to week to session to section.
class Resolver {
  public:
    Resolver(Work& work, Tree const& tree) : work_(work), tree_(tree), sets_(work), items_(work, sets_) {}

    void run() {
        reserve();
        Scope nowhere;
        nowhere.pool = work_.pool_index(Pool{});
        auto const file = read_settings(work_, tree_, 0, tree_.size(), nowhere, true);
        work_.plan.file_settings = file.settings;
        read_head(work_, tree_, file);
        for (std::uint32_t i = 0; i < tree_.size(); i = tree_.next(i)) {
            if (tree_.nodes[i].kind == Kind::week) {
                read_week(i, file);
            } else if (tree_.nodes[i].kind == Kind::session) {
                if (work_.plan.weeks.empty()) {
                    open_week({}, tree_.span(i));
                }
                read_session(i, file);
            }
        }
        if (work_.plan.weeks.empty()) { // a file with neither has one unnumbered week, empty
            open_week({}, {});
        }
        sets_.check_unused();
        check_paces(work_);
    }

  private:
    /// The large arrays grow once: copying them would be the most memory ever held.
    void reserve() {
        std::array<std::size_t, 256> nodes{};
        for (auto const& node : tree_.nodes) {
            ++nodes[static_cast<std::uint8_t>(node.kind)];
        }
        auto const of = [&](Kind kind) { return nodes[static_cast<std::uint8_t>(kind)]; };
        auto const lines = of(Kind::item) + of(Kind::pause) + of(Kind::note_line);
        work_.plan.items.reserve(lines + lines / 128 + 64); // some sets are read more than once
        work_.plan.sections.reserve(of(Kind::section));
        work_.plan.sessions.reserve(of(Kind::session));
    }

    Week& open_week(std::optional<std::uint32_t> number, Span span) {
        Week week;
        week.number = number;
        week.span = span;
        week.sessions.first = static_cast<Index>(work_.plan.sessions.size());
        return work_.plan.weeks.emplace_back(week);
    }

    // --- weeks ------------------------------------------------------------------

    void read_week(std::uint32_t node, Scope const& file) {
        auto& week = open_week(tree_.nodes[node + 1].value, header_of(node));
        auto const& previous = work_.plan.weeks;
        if (previous.size() > 1 && previous[previous.size() - 2].number >= week.number) {
            work_.report.error(code::date, tree_.span(node + 1),
                               fmt::format("week {} stands behind week {}", *week.number,
                                           *previous[previous.size() - 2].number),
                               "week numbers rise", {{previous[previous.size() - 2].span, "this week"}});
        }
        for (auto i = node + 2; i < tree_.next(node); i = tree_.next(i)) {
            if (tree_.nodes[i].kind == Kind::week_from) {
                week.from = date_of(tree_.nodes[i]);
                week.said_from = true;
            } else if (tree_.nodes[i].kind == Kind::name) {
                week.name = work_.text_of(tree_, i);
            }
        }
        date_week(week);
        auto const scope = read_settings(work_, tree_, node + 1, tree_.next(node), file, false);
        week.settings = scope.settings;
        for (auto i = node + 1; i < tree_.next(node); i = tree_.next(i)) {
            if (tree_.nodes[i].kind == Kind::session) {
                read_session(i, scope);
            }
        }
    }

    /// A week without a date of its own follows the nearest earlier dated one.
    void date_week(Week& week) {
        if (!week.from && dated_) {
            week.from =
                dated_->from + std::chrono::days{7} * (static_cast<int>(*week.number) - dated_->number);
        }
        if (!week.from) {
            return;
        }
        if (!within_calendar(*week.from)) {
            work_.report.error(code::date, week.span, "this week lies behind the year 9999");
            week.from.reset();
            return;
        }
        dated_ = {*week.from, static_cast<int>(*week.number)};
    }

    // --- sessions ---------------------------------------------------------------

    void read_session(std::uint32_t node, Scope const& outer) {
        auto& week = work_.plan.weeks.back();
        auto const index = work_.plan.sessions.size();
        ++week.sessions.count;
        work_.plan.sessions.emplace_back();
        auto const scope = read_settings(work_, tree_, node + 1, tree_.next(node), outer, false);
        auto session = read_header(node);
        date_session(session, week, node);
        session.week = static_cast<Index>(work_.plan.weeks.size() - 1);
        session.settings = scope.settings;
        session.pool = scope.pool;
        session.threshold = scope.threshold;
        session.sections.first = static_cast<Index>(work_.plan.sections.size());
        auto const plain = work_.contexts.id_of({scope.pool, scope.rest, {}});
        items_.begin_session(scope.threshold, scope.factors);
        line_above_.reset();
        for (auto i = node + 1; i < tree_.next(node); i = tree_.next(i)) {
            if (tree_.nodes[i].kind == Kind::section) {
                read_section(i, scope, plain);
                ++session.sections.count;
            }
        }
        work_.plan.sessions[index] = session;
    }

    Session read_header(std::uint32_t node) {
        Session session;
        session.span = header_of(node);
        for (auto i = node + 1; i < tree_.next(node); i = tree_.next(i)) {
            auto const& part = tree_.nodes[i];
            switch (part.kind) {
            case Kind::day:
                session.day = static_cast<std::uint8_t>(part.word - static_cast<std::uint8_t>(Word::mon));
                break;
            case Kind::date:
                session.date = date_of(part);
                session.said_date = true;
                break;
            case Kind::time_of_day:
                session.at = TimeOfDay{static_cast<std::uint16_t>(part.value)};
                break;
            case Kind::slot:
                session.slot_ms = static_cast<std::uint32_t>(duration_of(part).ms());
                session.slot_span = with_word_before(span_of(part));
                if (session.slot_ms < Duration::minutes(1).ms()) {
                    work_.report.error(
                        code::amount, span_of(part),
                        fmt::format("a slot of {}: from 1min on", spell::duration(duration_of(part))),
                        "for 45min");
                }
                break;
            case Kind::name:
                session.name = work_.text_of(tree_, i);
                break;
            default:
                return session;
            }
        }
        return session;
    }

    /// From the `for` in front of a time on.
    Span with_word_before(Span span) const {
        auto begin = span.begin - tree_.base;
        for (auto const blank : {true, false}) {
            while (begin > 0 && (tree_.text[begin - 1] == ' ' || tree_.text[begin - 1] == '\t') == blank) {
                --begin;
            }
        }
        return {tree_.base + begin, span.end};
    }

    /// A weekday is the first such day on or after its week's start; a date must lie in its week.
    void date_session(Session& session, Week const& week, std::uint32_t node) {
        using namespace std::chrono;
        if (!week.from) {
            return;
        }
        if (session.day) {
            auto const wanted = weekday{(*session.day + 1U) % 7};
            session.date = *week.from + (wanted - weekday{*week.from});
            if (!within_calendar(*session.date)) {
                work_.report.error(code::date, session.span, "this session lies behind the year 9999");
                session.date.reset();
            }
        } else if (session.date && (*session.date < *week.from || *session.date >= *week.from + days{7})) {
            work_.report.error(code::date, tree_.span(node + 1),
                               fmt::format("{} is outside the week from {}", spell::day(*session.date),
                                           spell::day(*week.from)),
                               "move the session to its week", {{week.span, "this week"}});
        }
    }

    // --- sections ---------------------------------------------------------------

    /// `plain` is what comes down where the heading says nothing.
    void read_section(std::uint32_t node, Scope const& scope, ContextId plain) {
        auto const end = tree_.next(node);
        auto lines = node + 1;
        while (lines < end && !is_line(tree_.nodes[lines].kind)) {
            lines = tree_.next(lines);
        }
        Section section;
        section.kind = section_of(tree_.nodes[node].as_word());
        auto const own = own_line(node, lines);
        section.begin = own.begin;
        section.length = static_cast<std::uint16_t>(std::min<std::uint32_t>(own.end - own.begin, 0xFFFF));
        section.deeper = section.kind == SectionKind::drill && line_above_ &&
                         indent(tree_.nodes[node].begin) > indent(*line_above_);
        auto context = plain;
        if (lines > node + 1) {
            auto const heading = read_heading(node + 1, lines, scope);
            section.heading = static_cast<Index>(work_.plan.headings.size());
            work_.plan.headings.push_back(heading);
            context = work_.contexts.id_of(
                {scope.pool, heading.said_rest ? heading.said_rest : scope.rest, heading.said});
        }
        section.body = items_.lines(tree_, lines, end, context);
        if (lines < end) {
            line_above_ = tree_.nodes[lines].begin;
        }
        work_.plan.sections.push_back(section);
    }

    /// The name and defaults of a heading, nodes `first` to `end`.
    Heading read_heading(std::uint32_t first, std::uint32_t end, Scope const& scope) {
        Heading heading;
        if (first < end && tree_.nodes[first].kind == Kind::name) {
            heading.name = work_.text_of(tree_, first);
            ++first;
        }
        if (first == end) {
            return heading;
        }
        auto const said =
            read_modifiers(work_, tree_, first, end, work_.plan.pools[scope.pool], Owner::heading);
        heading.said = said.manner;
        if (said.recovery.kind == Recovery::Kind::rest) {
            heading.said_rest = said.recovery.rest;
        }
        return heading;
    }

    static bool is_line(Kind kind) {
        return kind == Kind::item || kind == Kind::pause || kind == Kind::note_line || kind == Kind::bad;
    }

    /// Bytes between a line's start and its first word.
    std::uint32_t indent(std::uint32_t offset) const {
        auto const local = offset - tree_.base;
        auto const line_end = tree_.text.rfind('\n', local);
        return line_end == std::string_view::npos ? local : local - static_cast<std::uint32_t>(line_end) - 1;
    }

    /// A section's own line: itself and its words, nodes up to `lines`.
    Span own_line(std::uint32_t node, std::uint32_t lines) const {
        auto const& heading = tree_.nodes[node];
        auto const end = lines > node + 1 ? tree_.span(lines - 1).end : heading.begin + heading.length;
        return {heading.begin, end};
    }

    /// A week or session's own line, without its comment.
    Span header_of(std::uint32_t node) const {
        auto const begin = tree_.nodes[node].begin;
        auto const line_end =
            tree_.base + std::min(tree_.text.find('\n', begin - tree_.base), tree_.text.size());
        Span span{begin, begin + tree_.nodes[node].length};
        for (auto i = node + 1; i < tree_.next(node) && tree_.nodes[i].begin < line_end; ++i) {
            span.end = tree_.span(i).end;
        }
        return span;
    }

    struct Dated {
        Date from;
        int number = 0;
    };

    Work& work_;
    Tree const& tree_;
    Sets sets_;
    ItemReader items_;
    std::optional<Dated> dated_;              ///< the nearest earlier week with a date
    std::optional<std::uint32_t> line_above_; ///< where a line above a heading begins
};

} // namespace

Resolved resolve(grammar::Bundle const& bundle) {
    Resolved resolved;
    Work work{bundle, resolved.plan};
    Resolver{work, bundle.root().tree}.run();
    resolved.findings = work.report.take();
    resolved.findings.sort_by_place();
    return resolved;
}

} // namespace lengthwise::plan
