#include "codes.hpp"
#include "complaint_value.hpp"
#include "lexeme.hpp"
#include "scan.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <span>

/// Each function knows one habit: what it looks like and what to type instead.
namespace lengthwise::grammar {

namespace {

using Sort = Lexeme::Sort;

/// A line and the piece of it that could not be read.
struct Stuck {
    std::vector<Lexeme> line;
    std::size_t at = 0;
    std::uint32_t depth = 0; ///< open parentheses there
    Form form = Form::item;

    [[nodiscard]] Lexeme const& piece(int offset = 0) const {
        static constexpr Lexeme nothing{};
        auto const i = static_cast<std::ptrdiff_t>(at) + offset;
        return i >= 0 && i < static_cast<std::ptrdiff_t>(line.size()) ? line[static_cast<std::size_t>(i)]
                                                                      : nothing;
    }
    /// What is written from one piece to another; nothing where that is no way.
    [[nodiscard]] std::string_view text(int first, int last) const {
        auto const* const begin = piece(first).begin;
        auto const* const end = piece(last).end;
        return begin != nullptr && begin < end
                   ? std::string_view{begin, static_cast<std::size_t>(end - begin)}
                   : std::string_view{};
    }
    [[nodiscard]] bool behind(Word low, Word high) const {
        return std::any_of(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(at),
                           [&](Lexeme const& l) { return is_between(l.word, low, high); });
    }
    /// Where the item before the stuck piece begins: behind the last `(`, `+` or label.
    [[nodiscard]] std::size_t item_begin() const {
        for (auto i = at; i > 0; --i) {
            auto const& l = line[i - 1];
            if (l.is('(') || l.is('+') || l.is(':')) {
                return i;
            }
        }
        return 0;
    }
};

bool is_x(Lexeme const& l) {
    return l.word == Word::x || (l.sort == Sort::other && l.text() == "\xC3\x97");
}

Complaint at_piece(Stuck const& s, std::string_view code, std::string message, std::string hint) {
    auto const& p = s.piece();
    return {
        .code = code, .from = p.begin, .to = p.end, .message = std::move(message), .hint = std::move(hint)};
}

using Answer = std::optional<Complaint>;

/// `100 @ 1:30`
Answer at_sign(Stuck const& s) {
    if (!s.piece().is('@')) {
        return {};
    }
    auto const time = s.piece(1).is_figure() ? s.piece(1).text() : std::string_view{"1:30"};
    return at_piece(s, code::character, "no sign \"@\"", fmt::format("a send-off is: on {}", time));
}

/// `6-8 x 50` and `50-100-150`
Answer dash_between_numbers(Stuck const& s) {
    if (!s.piece().is('-') || !s.piece(-1).is_number() || !s.piece(1).is_number()) {
        return {};
    }
    auto c = at_piece(s, code::number, {}, {});
    c.from = s.piece(-1).begin;
    if (is_x(s.piece(2))) {
        c.to = s.piece(1).end;
        c.message = fmt::format("{} leaves open how many", s.text(-1, 1));
        c.hint = fmt::format("try: {} x {}, and a line with \"if time:\" for the rest", s.piece(-1).text(),
                             s.piece(3).is_figure() ? s.piece(3).text() : "…");
        return c;
    }
    std::string ladder{s.piece(-1).text()};
    for (int i = 0; s.piece(i).is('-') && s.piece(i + 1).is_number() && i < 40; i += 2) {
        ladder += fmt::format(", {}", s.piece(i + 1).text());
        c.to = s.piece(i + 1).end;
    }
    c.message = fmt::format("a ladder has commas, not \"-\"");
    c.hint = fmt::format("try: {}", ladder);
    return c;
}

/// `2 x 4 x 50`
Answer count_twice(Stuck const& s) {
    if (!is_x(s.piece()) || !s.piece(-1).is_number()) {
        return {};
    }
    if (is_x(s.piece(-2))) {
        auto const amount = s.piece(1).is_figure() ? s.piece(1).text() : std::string_view{"50"};
        return at_piece(s, code::number, "a second \"x\"",
                        fmt::format("try: {} x ({} x {})", s.piece(-3).text(), s.piece(-1).text(), amount));
    }
    return {};
}

/// `x 100`
Answer no_count(Stuck const& s) {
    if (!is_x(s.piece()) || s.at != s.item_begin()) {
        return {};
    }
    return at_piece(s, code::number, "\"x\" without a number before it", "how many? try: 4 x 100");
}

/// `4 50`, `100 1:30` and `1min 30s`
Answer two_figures(Stuck const& s) {
    auto const& p = s.piece();
    if (!p.is_figure()) {
        return {};
    }
    auto const unit = is_between(s.piece(-1).word, Word::metres, Word::hours);
    auto const& before = s.piece(unit ? -2 : -1);
    if (!before.is_figure()) {
        return {};
    }
    auto const figure = s.text(unit ? -2 : -1, -1);
    if (is_between(s.piece(-1).word, Word::seconds, Word::hours)) {
        return at_piece(s, code::time, "a time is one number with one unit",
                        "try: 1:30 or 90s, 1:05:00 or 65min");
    }
    if (p.sort == Sort::clock) {
        return at_piece(s, code::line, fmt::format("{} stands behind {} without a word", p.text(), figure),
                        fmt::format("as a send-off: {} on {}", figure, p.text()));
    }
    return at_piece(
        s, code::number, fmt::format("two numbers and nothing between them"),
        fmt::format("try: {} x {}, or a ladder: {}, {}", before.text(), p.text(), before.text(), p.text()));
}

/// `1,500` and `2,5`, `on 2:10,odds`
Answer comma_without_blank(Stuck const& s) {
    auto const& p = s.piece();
    if (!p.is(',') || is_blank(*p.end) || s.piece(1).sort == Sort::end) {
        return {};
    }
    auto const& next = s.piece(1);
    if (!s.piece(-1).is_number() || !next.is_number() || s.piece(-1).end != p.begin) {
        return at_piece(s, code::comma, "a comma without a blank behind it",
                        fmt::format("try: , {}", next.text()));
    }
    auto const three = next.text().size() == 3;
    auto c = at_piece(s, code::comma, {}, {});
    c.from = s.piece(-1).begin;
    c.to = next.end;
    c.message = fmt::format("{} can be read in two ways", s.text(-1, 1));
    c.hint = three ? fmt::format("is it {}{}, or the ladder {}, {}?", s.piece(-1).text(), next.text(),
                                 s.piece(-1).text(), next.text())
                   : fmt::format("is it {}.{}, or the ladder {}, {}?", s.piece(-1).text(), next.text(),
                                 s.piece(-1).text(), next.text());
    return c;
}

/// `100, 200,`
Answer comma_at_end(Stuck const& s) {
    auto const here = s.piece().is(',') && s.piece(1).sort == Sort::end;
    auto const before = s.piece().sort == Sort::end && s.piece(-1).is(',');
    if (!here && !before) {
        return {};
    }
    auto const& comma = s.piece(here ? 0 : -1);
    return Complaint{.code = code::comma,
                     .from = comma.begin,
                     .to = comma.end,
                     .message = "the line ends with a comma",
                     .hint = "an item ends at its line's end; write the rest of it here"};
}

/// `4 x 100, 200` and `100 easy, 200`
Answer late_ladder(Stuck const& s) {
    auto const comma = s.piece().is(',') ? 0 : -1;
    auto const& next = s.piece(comma + 1);
    if (!s.piece(comma).is(',') || !next.is_figure()) {
        return {};
    }
    auto const first = s.item_begin();
    auto const item = s.text(static_cast<int>(first) - static_cast<int>(s.at), comma - 1);
    if (item.empty()) {
        return {};
    }
    auto const counted = first + 1 < s.line.size() && is_x(s.line[first + 1]);
    auto c = at_piece(s, code::line, {}, {});
    c.from = s.piece(comma).begin;
    c.to = next.end;
    if (counted && first + 3 == s.at - static_cast<std::size_t>(comma == 0 ? 0 : 1)) {
        c.message = "a count before a ladder";
        c.hint =
            fmt::format("try: {} x ({}, {})", s.line[first].text(), s.line[first + 2].text(), next.text());
    } else {
        c.message = "a ladder's amounts stand together, before its words";
        c.hint = fmt::format("try: ({} + {}), or two lines", item, next.text());
    }
    return c;
}

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

/// `4 x`, `3 x easy`
Answer count_of_nothing(Stuck const& s) {
    if (!is_x(s.piece(-1)) || !s.piece(-2).is_number() || s.piece().is_figure()) {
        return {};
    }
    return at_piece(s, code::line, fmt::format("{} x what?", s.piece(-2).text()),
                    fmt::format("an amount, \"(\" or use: {} x 50", s.piece(-2).text()));
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

/// A label without its colon, or without the blank behind it.
Answer label_colon(Stuck const& s) {
    auto const& first = s.line.front();
    auto const has_colon = std::any_of(s.line.begin(), s.line.begin() + static_cast<std::ptrdiff_t>(s.at),
                                       [](Lexeme const& l) { return l.is(':'); });
    if (has_colon || s.at == 0 || s.at > 4 || (first.word != Word::lane && first.word != Word::if_)) {
        return {};
    }
    auto const& p = s.piece();
    if (p.sort == Sort::clock || p.is(':')) { // `lane 1:100` has a clock, `if time:4` a colon and a 4
        return at_piece(s, code::line, "a label ends with a colon and a blank", "try: lane 1: 4 x 50");
    }
    if (s.at < 2) {
        return {};
    }
    return at_piece(s, code::line, "a label ends with a colon",
                    fmt::format("try: {}: {}", s.text(-static_cast<int>(s.at), -1),
                                s.text(0, static_cast<int>(s.line.size() - s.at) - 2)));
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

/// `4 x 50 fins`
Answer gear_without_with(Stuck const& s) {
    if (!is_gear(s.piece().word) || s.piece(-1).word == Word::with) {
        return {};
    }
    auto const gear = spelling(s.piece().word);
    auto c = at_piece(s, code::line, fmt::format("\"{}\" without \"with\"", s.piece().text()),
                      fmt::format("try: with {}", gear));
    if (s.piece(-1).word == Word::pull && s.piece().word == Word::buoy) {
        c.from = s.piece(-1).begin;
        c.hint = "try: pull with buoy";
    }
    return c;
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

/// `at 1:10`
Answer bare_at(Stuck const& s) {
    if (s.piece(-2).word != Word::at || s.piece(-1).sort != Sort::clock || s.piece(-3).word == Word::broken) {
        return {};
    }
    auto const time = s.piece(-1).text();
    return Complaint{.code = code::time,
                     .from = s.piece(-2).begin,
                     .to = s.piece(-1).end,
                     .message = fmt::format("\"at {}\" has three meanings", time),
                     .hint = fmt::format("on {} (send-off), at {} per 100 (pace), hold {} (time of the rep)",
                                         time, time, time)};
}

/// `4 * 50`, `-4 x 100`
Answer other_sign(Stuck const& s) {
    if (s.piece().is('*')) {
        return at_piece(s, code::character, "no sign \"*\"", "times is x: 4 x 50");
    }
    if (s.piece().is('-') && s.at == s.item_begin()) {
        return at_piece(s, code::number, "a \"-\" before the amount", "amounts and counts are above 0");
    }
    return {};
}

} // namespace

std::optional<Complaint> complain_of_habit(Scene const& scene) {
    Stuck stuck{lex(scene.begin, scene.end), 0, scene.depth, scene.form};
    for (; stuck.at + 1 < stuck.line.size() && stuck.line[stuck.at].end <= scene.trace.furthest; ++stuck.at) {
        auto const& l = stuck.line[stuck.at];
        if (l.is('(')) {
            ++stuck.depth;
        } else if (l.is(')') && stuck.depth > 0) {
            --stuck.depth;
        }
    }
    using Habit = Answer (*)(Stuck const&);
    constexpr Habit anywhere[] = {at_sign, comma_at_end, comma_without_blank, gear_without_with};
    constexpr Habit in_items[] = {bare_at,           dash_between_numbers, label_colon,    count_twice,
                                  no_count,          late_ladder,          two_figures,    plus_outside,
                                  stray_parenthesis, count_of_nothing,     labelled_pause, glued_slash,
                                  behind_selector,   selector_of_nothing,  words_first,    other_sign};
    auto const ask = [&](std::span<Habit const> habits) -> Answer {
        for (auto const habit : habits) {
            if (auto complaint = habit(stuck)) {
                return complaint;
            }
        }
        return {};
    };
    auto complaint = ask(anywhere);
    auto const is_item = scene.form == Form::item || scene.form == Form::unknown ||
                         (scene.form == Form::head && stuck.line.front().word == Word::set);
    return !complaint && is_item ? ask(in_items) : complaint;
}

} // namespace lengthwise::grammar
