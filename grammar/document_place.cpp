#include "document.hpp"

#include "codes.hpp"
#include "limits.hpp"

#include <fmt/format.h>
#include <utility>

namespace lengthwise::grammar {

namespace {

std::string_view text_of(Ahead const& word) {
    return {word.begin, static_cast<std::size_t>(word.end - word.begin)};
}

} // namespace

/// Opens and closes what a line of this form opens and closes. False, with an error,
/// for a line that does not belong here and must not stay in the tree.
bool Document::place(Form form) {
    switch (form) {
    case Form::plan:
        if (first_ != nullptr) {
            return misplaced("\"plan\" stands once, first in the file", "move it above this line", first_,
                             "the first line");
        }
        return true;
    case Form::head:
        return place_head();
    case Form::setting:
        return place_setting();
    case Form::week:
        close_week();
        week_ = reading_.nodes.size();
        break;
    case Form::session:
        close_session();
        session_ = reading_.nodes.size();
        break;
    case Form::section:
        place_section();
        return true;
    case Form::pause:
    case Form::note:
    case Form::item:
    case Form::unknown:
        place_line();
        return true;
    }
    child_ = nullptr;
    first_scope_ = first_scope_ == nullptr ? at_ : first_scope_;
    return true;
}

bool Document::place_head() {
    leave_supposed();
    auto const* const scope = first_scope_ != nullptr ? first_scope_ : child_;
    if (scope == nullptr) {
        return true;
    }
    return misplaced(
        fmt::format("\"{}\" stands before the first week or session", text_of(reading_.word(at_))),
        "move it above this line", scope, "the first");
}

bool Document::place_setting() {
    leave_supposed();
    if (child_ == nullptr) {
        return true;
    }
    auto const& first = reading_.word(at_);
    if (first.word == Word::rest) {
        return misplaced("\"rest\" on a line of its own",
                         "between two lines: pause 1min; else behind an item");
    }
    if (first.word == Word::threshold) {
        return misplaced("\"threshold\" on a line of its own",
                         "as a setting it stands before the first heading; as an effort behind an amount");
    }
    return misplaced(
        fmt::format("\"{}\" stands before the first heading, with the session's settings", text_of(first)),
        "move it above this line", child_, "the first heading");
}

void Document::place_section() {
    if (session_ == none) {
        misplaced(fmt::format("\"{}\" belongs to a session", text_of(reading_.word(at_))),
                  "write a line above it, such as: session Tue 07:00");
        suppose_session();
    }
    close_section();
    count_section();
    section_ = reading_.nodes.size();
    child_ = at_;
}

void Document::count_section() {
    if (++sections_ != limits::session_sections + 1) {
        return; // said once
    }
    auto const& first = reading_.word(at_);
    result_.findings.add({.severity = Severity::error,
                          .rule = code::limit,
                          .span = {reading_.offset(at_), reading_.offset(first.end)},
                          .message = fmt::format("this is section {} of the session, the limit is {}",
                                                 sections_, limits::session_sections),
                          .hint = "begin a further session above it"});
}

/// An item, pause or note.
void Document::place_line() {
    if (section_ != none) {
        return;
    }
    misplaced("no heading above this line",
              session_ == none ? "write two lines above it, such as: session Tue 07:00, then: main"
                               : "write warm-up, drill, main or cool-down above it");
    if (session_ == none) {
        suppose_session();
    }
    section_ = reading_.push(Kind::section, at_, at_, 0, static_cast<std::uint8_t>(Word::main));
    child_ = at_;
}

/// Goes on as if a `session` line stood here.
void Document::suppose_session() {
    session_ = reading_.push(Kind::session, at_, at_);
    supposed_ = week_ == none;
}

/// A statement of the file's head shows that the session supposed before it was none,
/// but a stray line or two.
void Document::leave_supposed() {
    if (supposed_) {
        close_session();
        child_ = nullptr;
    }
}

void Document::close_section() {
    stray_ = false;
    if (section_ != none) {
        reading_.close(std::exchange(section_, none));
    }
}

void Document::close_session() {
    supposed_ = false;
    sections_ = 0;
    close_section();
    if (session_ != none) {
        reading_.close(std::exchange(session_, none));
    }
}

void Document::close_week() {
    close_session();
    if (week_ != none) {
        last_week_ = reading_.nodes[week_ + 1].value;
        reading_.close(std::exchange(week_, none));
    }
}

bool Document::misplaced(std::string message, std::string hint, char const* other,
                         std::string other_message) {
    auto const& first = reading_.word(at_);
    auto const* const end = first.begin != first.end ? first.end : at_ + 1;
    Diagnostic finding{.severity = Severity::error,
                       .rule = code::place,
                       .span = {reading_.offset(at_), reading_.offset(end)},
                       .message = std::move(message),
                       .hint = std::move(hint)};
    if (other != nullptr) {
        finding.related.push_back(
            {{reading_.offset(other), reading_.offset(other)}, std::move(other_message)});
    }
    result_.findings.add(std::move(finding));
    return false;
}

} // namespace lengthwise::grammar
