#include "codes.hpp"
#include "habits.hpp"
#include "scan.hpp"

#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

using Sort = Lexeme::Sort;

/// How many pieces a time has from `first` on, its unit among them; 0 where none stands there.
int pieces_of_time(Stuck const& s, int first) {
    auto const& figure = s.piece(first);
    if (!figure.is_figure()) {
        return 0;
    }
    return figure.is_number() && s.piece(first + 1).sort == Sort::word ? 2 : 1;
}

/// `4 x 50 crawl 20s rest`, with or without a comma
Answer rest_behind_its_time(Stuck const& s) {
    auto const first = s.piece().is(',') ? 1 : 0;
    for (auto const pieces : {pieces_of_time(s, first), 1}) {
        if (pieces > 0 && s.piece(first).is_figure() && s.piece(first + pieces).word == Word::rest) {
            auto c = at_piece(s, code::line, "the time stands behind \"rest\"",
                              fmt::format("try: rest {}{}", s.text(first, first + pieces - 1),
                                          pieces == 1 && s.piece(first).is_number() ? "s" : ""));
            c.to = s.piece(first + pieces).end;
            return c;
        }
    }
    return {};
}

/// `4 x 50 crawl every 1:00`
Answer every_time(Stuck const& s) {
    auto const pieces = pieces_of_time(s, 0);
    auto const is_time = s.piece().sort == Sort::clock ||
                         (pieces == 2 && is_between(s.piece(1).word, Word::seconds, Word::hours));
    if (s.piece(-1).word != Word::every || !is_time) {
        return {};
    }
    auto c = at_piece(s, code::line, "\"every\" chooses reps", "");
    c.to = s.piece(pieces - 1).end;
    c.hint = fmt::format("a send-off is: on {}", s.text(0, pieces - 1));
    return c;
}

/// `4 x 50 kick w/ board`
Answer short_with(Stuck const& s) {
    if (s.piece().text() != "w" || !s.piece(1).is('/')) {
        return {};
    }
    auto c = at_piece(s, code::word, "no word \"w/\"", "");
    c.to = s.piece(1).end;
    c.hint = fmt::format("try: with {}", s.piece(2).sort == Sort::word ? s.piece(2).text() : "fins");
    return c;
}

} // namespace

std::span<Habit const> habits_of_rests() {
    static constexpr Habit habits[] = {rest_behind_its_time, every_time, short_with};
    return habits;
}

} // namespace lengthwise::grammar
