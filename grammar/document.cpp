#include "document.hpp"

#include "tokens.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace lengthwise::grammar {

namespace {

/// Where the line at `at` ends: its LF or the text's end.
char const* line_end_of(char const* at, char const* end) {
    return std::find(at, end, '\n');
}

bool is_statement(Word word) {
    switch (word) {
    case Word::rest:
        return false;
    case Word::warm_up:
    case Word::drill:
    case Word::main:
    case Word::cool_down:
        return true;
    default:
        return is_between(word, Word::plan, Word::session);
    }
}

} // namespace

Document::Document(Source const& source)
    : source_(source), reading_(result_.tree, source.text(), source.base()), at_(source.text().data()) {
    auto& tree = result_.tree;
    tree.text = source.text();
    tree.base = source.base();
    tree.nodes.reserve(source.text().size() / 6 + 16);
}

ParseResult Document::read() {
    for (;;) {
        while (at_ != reading_.end && read_line_end(at_, reading_)) {
        }
        if (at_ == reading_.end) {
            break;
        }
        if (reading_.depth > 0) {
            read_group_line();
        } else {
            read_statement();
        }
    }
    if (reading_.depth > 0) {
        close_groups();
    }
    close_week();
    return std::move(result_);
}

Form Document::form_at(char const* at) {
    switch (reading_.word(at).word) {
    case Word::plan:
        return Form::plan;
    case Word::race:
        return Form::race;
    case Word::swimmer:
        return Form::swimmer;
    case Word::before:
        return Form::before;
    case Word::set:
        return Form::set;
    case Word::include:
        return Form::include;
    case Word::pool:
    case Word::threshold:
    case Word::rest:
    case Word::factor:
    case Word::limit:
    case Word::allow:
        return Form::setting;
    case Word::week:
        return Form::week;
    case Word::session:
        return Form::session;
    case Word::warm_up:
    case Word::drill:
    case Word::main:
    case Word::cool_down:
    case Word::warm:
    case Word::cool:
    case Word::swim:
        return Form::section;
    case Word::pause:
        return Form::pause;
    default:
        break;
    }
    if (*skip_blanks(at) == '"') {
        return settings_ ? Form::setting : Form::note;
    }
    return Form::item;
}

void Document::read_statement() {
    auto const form = form_at(at_);
    place(form, skip_blanks(at_));
    read_line(form);
    any_ = true;
}

/// Sees to it that a line of this form may stand here.
void Document::place(Form form, char const* begin) {
    auto const misplaced = [&](std::string_view message) {
        error("syntax-place", begin, reading_.word(begin).end, std::string{message});
    };
    switch (form) {
    case Form::plan:
        if (any_) {
            misplaced("\"plan\" stands first in a file");
        }
        break;
    case Form::race:
    case Form::swimmer:
    case Form::before:
    case Form::set:
    case Form::include:
        if (week_ != none || session_ != none || !settings_) {
            misplaced("stands before the first week or session");
        }
        break;
    case Form::setting:
        if (!settings_) {
            misplaced("stands before");
        }
        break;
    case Form::week:
        close_week();
        settings_ = true;
        week_ = reading_.tree.size();
        break;
    case Form::session:
        close_session();
        settings_ = true;
        session_ = reading_.tree.size();
        break;
    case Form::section:
        if (session_ == none) {
            misplaced("belongs to a session");
            session_ = reading_.push(Kind::session, begin, begin);
        }
        close_section();
        settings_ = false;
        section_ = reading_.tree.size();
        break;
    case Form::pause:
    case Form::note:
    case Form::item:
        if (section_ == none) {
            misplaced("belongs to a section");
            open_section(begin);
        }
        break;
    }
}

void Document::open_section(char const* begin) {
    if (session_ == none) {
        session_ = reading_.push(Kind::session, begin, begin);
    }
    section_ = reading_.push(Kind::section, begin, begin, 0, static_cast<std::uint8_t>(Word::main));
    settings_ = false;
}

void Document::close_section() {
    if (section_ != none) {
        reading_.close(std::exchange(section_, none));
    }
}

void Document::close_session() {
    close_section();
    if (session_ != none) {
        reading_.close(std::exchange(session_, none));
    }
}

void Document::close_week() {
    close_session();
    if (week_ != none) {
        reading_.close(std::exchange(week_, none));
    }
}

void Document::read_line(Form form) {
    auto const* const begin = at_;
    auto const size = reading_.tree.size();
    top_ = size;
    reading_.awaits = Awaits::item;
    reading_.labelled = false;
    set_ = form == Form::set ? size : none;
    if (!read_form(form, at_, reading_)) {
        diagnose(form, begin, size);
    }
    if ((form == Form::item || form == Form::set) && reading_.depth == 0) {
        finish_item();
    }
}

void Document::read_group_line() {
    if (is_statement(reading_.word(at_).word)) {
        close_groups();
        return;
    }
    auto const* const begin = at_;
    auto const size = reading_.tree.size();
    auto const saved = reading_.open;
    auto const depth = reading_.depth;
    auto const awaits = reading_.awaits;
    if (!read_form(Form::item, at_, reading_)) {
        reading_.open = saved;
        reading_.depth = depth;
        reading_.awaits = awaits;
        diagnose(Form::item, begin, size);
    }
    if (reading_.depth == 0) {
        finish_item();
    }
}

/// Says what is wrong with the line at `begin` and goes on behind it.
void Document::diagnose(Form, char const* begin, std::uint32_t size) {
    Trace trace;
    reading_.drop_from(size);
    auto const* const end = line_end_of(begin, reading_.end);
    error("syntax-line", skip_blanks(begin), end, "cannot read this line");
    give_up(begin, size);
}

void Document::give_up(char const* begin, std::uint32_t size) {
    auto const* const end = line_end_of(begin, reading_.end);
    reading_.drop_from(size);
    reading_.forget();
    reading_.push(Kind::bad, skip_blanks(begin), end);
    at_ = end == reading_.end ? end : end + 1;
}

void Document::finish_item() {
    if (set_ != none) {
        reading_.close(std::exchange(set_, none));
    }
}

void Document::close_groups() {
    auto const& open = reading_.open[reading_.depth - 1];
    error("syntax-group", open.begin, open.begin + 1, "this parenthesis is not closed");
    reading_.depth = 0;
    reading_.drop_from(top_);
    reading_.push(Kind::bad, open.begin, open.begin + 1);
    finish_item();
}

void Document::error(std::string_view code, char const* from, char const* to, std::string message,
                     std::string hint) {
    result_.findings.add({.severity = Severity::error,
                          .rule = code,
                          .span = {reading_.offset(from), reading_.offset(to)},
                          .message = std::move(message),
                          .hint = std::move(hint)});
}

} // namespace lengthwise::grammar
