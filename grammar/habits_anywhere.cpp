#include "codes.hpp"
#include "habits.hpp"
#include "scan.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

using Sort = Lexeme::Sort;

/// `100 @ 1:30`, `100 @ 95%`
Answer at_sign(Stuck const& s) {
    if (!s.piece().is('@')) {
        return {};
    }
    if (s.piece(1).is_number() && s.piece(2).is('%')) {
        return at_piece(s, code::character, "no sign \"@\"",
                        fmt::format("a share of threshold speed is: at {}%", s.piece(1).text()));
    }
    auto const time = s.piece(1).is_figure() ? s.piece(1).text() : std::string_view{"1:30"};
    return at_piece(s, code::character, "no sign \"@\"", fmt::format("a send-off is: on {}", time));
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

} // namespace

std::span<Habit const> habits_anywhere() {
    static constexpr Habit habits[] = {at_sign, comma_at_end, comma_without_blank, gear_without_with};
    return habits;
}

} // namespace lengthwise::grammar
