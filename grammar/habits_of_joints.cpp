#include "codes.hpp"
#include "habits.hpp"
#include "scan.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

using Sort = Lexeme::Sort;

/// `100 easy + 50` outside of parentheses
Answer plus_outside(Stuck const& s) {
    if (!s.piece().is('+') || s.depth > 0) {
        return {};
    }
    return at_piece(s, code::group, "\"+\" joins items only inside parentheses",
                    "try: (100 easy + 50 back), or two lines");
}

/// `100)`
Answer stray_parenthesis(Stuck const& s) {
    if (!s.piece().is(')')) {
        return {};
    }
    if (s.depth == 0) {
        auto c = at_piece(s, code::group, "\")\" without its \"(\"", "");
        c.stray = true;
        return c;
    }
    if (s.piece(-1).is('(') || s.piece(-1).is('+') || s.at == 0) {
        return at_piece(s, code::group, "nothing stands before this \")\"",
                        "parentheses hold items: (100 easy + 50 back)");
    }
    return {};
}

/// `lane 1: pause 1min`
Answer labelled_pause(Stuck const& s) {
    if (s.piece().word != Word::pause || !s.piece(-1).is(':')) {
        return {};
    }
    return at_piece(s, code::place, "a pause is for everybody",
                    s.line.front().word == Word::lane
                        ? "for one lane put a rest on that lane's item: rest 1min"
                        : "put a rest on the item: rest 1min");
}

/// `25 kick/25 crawl`
Answer glued_slash(Stuck const& s) {
    if (!s.piece().is('/')) {
        return {};
    }
    if (s.behind(Word::as, Word::as)) {
        return at_piece(s, code::line, "blanks stand around the \"/\" of a split",
                        "try: as 25 kick / 25 crawl");
    }
    return at_piece(s, code::line, "\"/\" parts a split, and there is no \"as\"",
                    "try: 50 as 25 kick / 25 crawl");
}

/// `4 x 50, odds easy rest 15s`
Answer behind_selector(Stuck const& s) {
    auto const word = s.piece().word;
    auto const comes_first = is_between(word, Word::descend, Word::negative) || word == Word::rest ||
                             word == Word::on || word == Word::off || word == Word::as ||
                             word == Word::broken;
    if (!comes_first || !s.behind(Word::odds, Word::last)) {
        return {};
    }
    return at_piece(s, code::line, fmt::format("\"{}\" stands before the selector", s.piece().text()),
                    word == Word::on || word == Word::off ? "try: 4 x 50 on 1:10, odds easy, evens hard"
                    : word == Word::rest
                        ? "try: 4 x 50 rest 15s, odds easy, evens hard"
                        : "an item's own words come before odds, evens, every, first, next and last");
}

/// `4 x 50, first 2`
Answer selector_of_nothing(Stuck const& s) {
    if (s.piece().sort != Sort::end) {
        return {};
    }
    for (int i = -1; i >= -3; --i) {
        auto const word = s.piece(i).word;
        if (!is_between(word, Word::odds, Word::last)) {
            continue;
        }
        if (word == Word::every && i != -3) { // its ordinal is two pieces, a number and letters
            return {};
        }
        return Complaint{.code = code::line,
                         .from = s.piece(i).begin,
                         .to = s.piece(-1).end,
                         .message = fmt::format("\"{}\" does not say what changes", s.text(i, -1)),
                         .hint = fmt::format("such as: {} easy", s.text(i, -1))};
    }
    return {};
}

/// `crawl 200`
Answer words_first(Stuck const& s) {
    auto const word = s.piece().word;
    if (s.at != s.item_begin() || !(is_stroke(word) || is_mode(word) || is_effort(word))) {
        return {};
    }
    auto const& next = s.piece(1);
    auto const amount = next.is_figure() ? next.text() : std::string_view{"200"};
    return at_piece(s, code::line, "how many metres? the amount comes first",
                    fmt::format("try: {} {}", amount, s.piece().text()));
}

/// `200 warm up`
Answer heading_behind(Stuck const& s) {
    auto const word = s.piece().word;
    auto const is_half = word == Word::warm || word == Word::cool; // of "warm up", "cool down"
    if (s.at == 0 || !(is_half || is_between(word, Word::warm_up, Word::cool_down))) {
        return {};
    }
    auto const heading = word == Word::warm ? Word::warm_up : word == Word::cool ? Word::cool_down : word;
    return at_piece(s, code::line, fmt::format("\"{}\" is a heading", spelling(heading)),
                    "it stands on a line of its own, above its items");
}

} // namespace

std::span<Habit const> habits_of_joints() {
    static constexpr Habit habits[] = {plus_outside,    stray_parenthesis,   labelled_pause, glued_slash,
                                       behind_selector, selector_of_nothing, words_first,    heading_behind};
    return habits;
}

} // namespace lengthwise::grammar
