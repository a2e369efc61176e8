#include "document.hpp"

#include "codes.hpp"
#include "encoding.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace lengthwise::grammar {

namespace {

/// Errors that one line can have before it is given up.
constexpr int errors_a_line = 16;

/// Behind the closing quote of a string, whatever its backslashes escape; nothing if it has none.
char const* behind_quotes(char const* at, char const* end) {
    for (++at; at < end && *at != '"'; ++at) {
        at += *at == '\\' ? 1 : 0;
    }
    return at < end ? at + 1 : nullptr;
}

} // namespace

/// Whether further errors are only counted. Finding words for each would take long in a
/// large file that is no plan at all.
bool Document::enough_said() const {
    constexpr int enough = 1000; // those included that are not shown
    return complaints_ >= enough || !result_.findings.keeps(Severity::error);
}

char const* Document::line_end() const {
    return std::find(at_, reading_.end, '\n');
}

/// Looks at a line's length and bytes. False where it must not be read at all; it is
/// then behind us. Wrong bytes are said and the line is read all the same, without a
/// further word on it: most stand in names and comments.
bool Document::in_order(char const* line) {
    auto const* const end = std::find(line, reading_.end, '\n');
    auto complaint = complain_of_line(line, end);
    if (!complaint) {
        return true;
    }
    auto const too_long = complaint->code == code::limit;
    if (!complaint->foreign || !std::exchange(foreign_, true)) { // one wrong encoding makes many such lines
        report(std::move(*complaint));
    }
    muted_ = !too_long;
    if (too_long) {
        at_ = skip_blanks(line);
        open_before_ = reading_.open;
        give_up(reading_.depth > 0 ? Form::item : Form::note,
                {at_, reading_.nodes.size(), reading_.depth, reading_.awaits});
        end_line(Form::item);
    }
    return !too_long;
}

void Document::back_to(Mark const& mark) {
    reading_.nodes.drop_from(mark.size);
    if (mark.depth > 0) {
        reading_.open = open_before_;
    }
    reading_.depth = mark.depth;
    reading_.awaits = mark.awaits;
    reading_.labelled = false;
    reading_.forget();
}

/// Reads a line again to say what is wrong with it, and again behind each error
/// that leaves its meaning clear.
void Document::diagnose(Form form, Mark const& mark, Trace& trace) {
    if (muted_) {
        give_up(form, mark);
        return;
    }
    auto const* const end = line_end();
    auto const reads_on = [&](Complaint const& c) {
        if (c.pass) {
            trace.let_pass(trace.refusal.begin);
        } else if (c.take_for != Word::none) {
            trace.take_for(c.from, c.take_for);
        }
        return c.pass || c.take_for != Word::none;
    };
    reading_.trace = &trace;
    auto readable = false;
    for (int errors = 0; errors < errors_a_line && !readable; ++errors) {
        back_to(mark);
        trace.again();
        auto const* after = mark.begin;
        readable = read_form(form, after, reading_);
        if (readable) {
            at_ = after;
            break;
        }
        if (enough_said()) {
            result_.findings.count_only(Severity::error);
            break;
        }
        ++complaints_;
        auto complaint = complain({form, mark.begin, end, mark.depth, trace});
        auto const more = reads_on(complaint);
        if (!complaint.stray || !std::exchange(stray_, true)) {
            report(std::move(complaint));
        }
        if (!more) {
            break;
        }
    }
    reading_.trace = nullptr;
    reading_.forget();
    if (!readable) {
        give_up(form, mark);
    }
}

/// Leaves a line unread and goes behind it.
void Document::give_up(Form form, Mark const& mark) {
    auto const* const end = line_end();
    switch (form) {
    case Form::week:
    case Form::session:
    case Form::section:
        keep_scope(form, mark);
        reading_.push(Kind::bad, end, end);
        break;
    case Form::item:
    case Form::unknown:
        spoil_item(form, mark);
        return;
    default:
        if (set_ != none) {
            spoil_item(form, mark);
            return;
        }
        reading_.nodes.drop_from(mark.size);
        reading_.push(Kind::bad, mark.begin, mark.begin);
        break;
    }
    at_ = end == reading_.end ? end : end + 1;
}

/// A week, session or section whose line cannot be read is one all the same, so
/// that what follows has its place.
void Document::keep_scope(Form form, Mark const& mark) {
    auto& nodes = reading_.nodes;
    auto const kind = form == Form::week ? Kind::week : form == Form::session ? Kind::session : Kind::section;
    if (nodes.size() == mark.size) {
        auto const word = reading_.word(mark.begin).word;
        reading_.push(kind, mark.begin, mark.begin, 0,
                      static_cast<std::uint8_t>(is_heading(word) ? word : Word::main));
    }
    auto const follows = [&](Kind child) {
        return nodes.size() > mark.size + 1 && nodes[mark.size + 1].kind == child;
    };
    if (form == Form::section) {
        reading_.nodes.drop_from(mark.size + (follows(Kind::name) ? 2 : 1));
    } else if (form == Form::week && !follows(Kind::week_number)) {
        reading_.nodes.drop_from(mark.size + 1);
        reading_.push(Kind::week_number, mark.begin, mark.begin, std::min(last_week_ + 1, limits::weeks));
    }
}

/// An item with a line that cannot be read ends as a bad node; until its
/// parentheses close, its further lines are read for their own errors.
void Document::spoil_item(Form form, Mark const& mark) {
    auto const* const end = line_end();
    auto& nodes = reading_.nodes;
    auto const named =
        mark.size == set_ && nodes.size() > mark.size + 1 && nodes[mark.size + 1].kind == Kind::name;
    reading_.nodes.drop_from(mark.size + (named ? 2 : 0));
    reading_.depth = mark.depth;
    if (mark.depth > 0) {
        reading_.open = open_before_;
    }
    if (form != Form::unknown || mark.depth > 0 || !is_letter(*mark.begin)) {
        follow_brackets(mark.begin, end);
    }
    reading_.awaits = Awaits::either;
    spoiled_ = true;
    at_ = end == reading_.end ? end : end + 1;
}

/// Counts the parentheses of a line that cannot be read. Where its quotes do not
/// close they are taken for nothing.
void Document::follow_brackets(char const* begin, char const* end) {
    auto quotes_close = true;
    auto const step = [&](char const* at) {
        auto const* const closed = *at == '"' && quotes_close ? behind_quotes(at, end) : nullptr;
        return closed != nullptr ? closed : at + 1;
    };
    for (auto const* at = begin; at < end && *at != '#'; at = step(at)) {
        quotes_close = quotes_close && (*at != '"' || behind_quotes(at, end) != nullptr);
    }
    for (auto const* at = begin; at < end && *at != '#'; at = step(at)) {
        if (*at == '(') {
            if (reading_.depth == limits::nesting) {
                ++beyond_;
            } else {
                reading_.open[reading_.depth++] = {top_, top_, at};
            }
        } else if (*at == ')') {
            if (beyond_ > 0) {
                --beyond_;
            } else if (reading_.depth > 0) {
                --reading_.depth;
            }
        }
    }
}

/// A line that does not stand in parentheses, or one deeper than can be read.
void Document::refuse_in_group(Form form, Mark const& mark) {
    auto const& first = reading_.word(at_);
    Complaint c{.code = code::group, .from = at_, .to = std::max(first.end, at_ + 1), .message = {}};
    auto const word = first.word;
    if (form == Form::note) {
        c.message = "a note on a line of its own inside parentheses";
        c.hint = "put it behind an item, or above the parentheses";
    } else if (word == Word::pause) {
        c.message = "a pause inside parentheses";
        c.hint = "put a rest on the item before it: rest 1min";
    } else if (word == Word::rest) {
        c.message = "\"rest\" on a line of its own inside parentheses";
        c.hint = "put it behind an item, or behind the closing parenthesis";
    } else if (word == Word::threshold) {
        c.message = "\"threshold\" on a line of its own inside parentheses";
        c.hint = "put it behind an item, or behind the closing parenthesis";
    } else {
        c.message = fmt::format("\"{}\" inside parentheses", word == Word::lane ? "lane" : "if time");
        c.hint = "labels stand before the whole set: lane 1: 3 x (100 + 50)";
    }
    if (beyond_ == 0) {
        report(std::move(c));
    }
    open_before_ = reading_.open;
    spoil_item(Form::item, mark);
}

/// The text goes on at `at` as if open parentheses had been closed before it.
void Document::close_groups(char const* at) {
    auto const depth = reading_.depth;
    auto const& inner = reading_.open[depth - 1];
    auto const in_line =
        std::string_view{at, static_cast<std::size_t>(std::find(at, reading_.end, '\n') - at)};
    auto const word = in_line.substr(0, std::min(in_line.find_first_of(" \t\r#"), in_line.size()));
    Diagnostic finding{.severity = Severity::error,
                       .rule = code::group,
                       .span = {reading_.offset(inner.begin), reading_.offset(inner.begin) + 1},
                       .message = at == reading_.end
                                      ? "\"(\" without its \")\" at the file's end"
                                      : fmt::format("\"(\" without its \")\" before \"{}\"", word),
                       .hint = "a line that begins with a heading or a statement ends all parentheses"};
    for (auto i = depth - 1; i > 0; --i) {
        auto const* const outer = reading_.open[i - 1].begin;
        finding.related.push_back({{reading_.offset(outer), reading_.offset(outer) + 1}, "this one, too"});
    }
    result_.findings.add(std::move(finding));
    reading_.depth = 0;
    beyond_ = 0;
    spoiled_ = true;
    end_line(Form::item);
}

void Document::report(Complaint complaint) {
    result_.findings.add({.severity = Severity::error,
                          .rule = complaint.code,
                          .span = {reading_.offset(complaint.from), reading_.offset(complaint.to)},
                          .message = std::move(complaint.message),
                          .hint = std::move(complaint.hint)});
}

} // namespace lengthwise::grammar
