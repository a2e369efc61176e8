#include "codes.hpp"
#include "habits.hpp"
#include "scan.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

using Sort = Lexeme::Sort;

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

/// `4 x`, `3 x easy`
Answer count_of_nothing(Stuck const& s) {
    if (!is_x(s.piece(-1)) || !s.piece(-2).is_number() || s.piece().is_figure()) {
        return {};
    }
    return at_piece(s, code::line, fmt::format("{} x what?", s.piece(-2).text()),
                    fmt::format("an amount, \"(\" or use: {} x 50", s.piece(-2).text()));
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

std::span<Habit const> habits_of_figures() {
    static constexpr Habit habits[] = {bare_at,   dash_between_numbers, label_colon, count_twice,
                                       no_count,  late_ladder,          two_figures, count_of_nothing,
                                       other_sign};
    return habits;
}

} // namespace lengthwise::grammar
