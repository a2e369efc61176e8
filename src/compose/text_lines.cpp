#include "compose/text_lines.hpp"

#include "compose/amounts.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <string_view>

namespace lengthwise::compose {

namespace {

std::string_view word(Stroke stroke) {
    switch (stroke) {
    case Stroke::back:
        return " back";
    case Stroke::choice:
        return " choice";
    case Stroke::crawl:
        break;
    }
    return " crawl";
}

std::string_view word(Effort effort) {
    switch (effort) {
    case Effort::easy:
        return " easy";
    case Effort::steady:
        return " steady";
    case Effort::threshold:
        return " threshold";
    case Effort::hard:
        return " hard";
    case Effort::unsaid:
        break;
    }
    return "";
}

std::string_view word(Shape shape) {
    switch (shape) {
    case Shape::build:
        return " build";
    case Shape::descend:
        return " descend";
    case Shape::negative_split:
        return " negative split";
    case Shape::plain:
        break;
    }
    return "";
}

std::string mode(Manner const& manner) {
    switch (manner.mode) {
    case Mode::kick:
        return manner.gear ? " kick with board" : " kick";
    case Mode::pull:
        return manner.gear ? " crawl pull with buoy" : " crawl pull";
    case Mode::drill:
        return fmt::format(" drill \"{}\"", manner.drill);
    case Mode::swim:
        break;
    }
    return std::string{word(manner.stroke)};
}

std::string words(Manner const& manner) {
    return fmt::format("{}{}{}", mode(manner), word(manner.effort), word(manner.shape));
}

/// A part whose stroke is the rep's own need not say it again when it says something else.
std::string part_words(Part const& part) {
    auto const text = words(part.manner);
    auto const effort = word(part.manner.effort);
    return effort.empty() ? text : std::string{effort};
}

std::string rest(int seconds) {
    return seconds == 0 ? std::string{} : " rest " + spell::duration(Duration::seconds(seconds));
}

std::string split(Rep const& rep, Pool const& pool) {
    auto text = std::string{};
    auto before = 0;
    for (auto const& part : rep.parts) {
        // The second half of a lap is what the first has left of it.
        auto const amount = half_amount(pool, part.halves, before % 2 == 1);
        text += fmt::format("{}{}{}", before == 0 ? " as " : " / ", amount, part_words(part));
        before += part.halves;
    }
    return text;
}

/// A rep without its rest; a rep in parts says the stroke once where all its parts share it.
std::string spelled(Rep const& rep, Pool const& pool) {
    auto text = amount(pool, rep.laps);
    if (rep.parts.empty()) {
        return text + words(rep.manner);
    }
    auto const efforts = rep.parts.front().manner.effort != Effort::unsaid;
    return text + (efforts ? words(rep.manner) : std::string{}) + split(rep, pool);
}

std::string ladder(Line const& line, Pool const& pool) {
    std::vector<Laps> rungs;
    for (auto const& rep : line.reps) {
        rungs.push_back(rep.laps);
    }
    return amounts(pool, rungs) + words(line.reps.front().manner);
}

std::string round(Line const& line, Pool const& pool) {
    auto text = std::string{};
    for (auto const& rep : line.reps) {
        text += (text.empty() ? "" : " + ") + spelled(rep, pool) + rest(rep.rest);
    }
    return "(" + text + ")";
}

std::string body(Line const& line, Pool const& pool) {
    switch (line.form) {
    case Line::Form::ladder:
        return ladder(line, pool);
    case Line::Form::rounds:
        return round(line, pool);
    case Line::Form::reps:
        break;
    }
    return spelled(line.reps.front(), pool);
}

std::string pattern(Line const& line) {
    switch (line.pattern) {
    case Pattern::odds_and_evens:
        return fmt::format(", odds{}, evens{}", word(line.odds), word(line.evens));
    case Pattern::last:
        return fmt::format(", last{}", word(line.evens));
    case Pattern::none:
        break;
    }
    return {};
}

} // namespace

std::string spelled(Line const& line, Pool const& pool) {
    auto text = line.count > 1 ? fmt::format("{} x ", line.count) : std::string{};
    text += body(line, pool);
    if (line.pattern == Pattern::last) {
        text += word(line.odds);
    }
    if (line.descend > 0) {
        text += fmt::format(" descend 1-{}", line.descend);
    }
    if (line.piece > 0) {
        text += fmt::format(" broken at {} for {}s", amount(pool, line.piece), short_break);
    }
    text += rest(line.rest);
    if (line.send_off > 0) {
        text += " on " + spell::clock(Duration::seconds(line.send_off));
    }
    if (!line.note.empty()) {
        text += fmt::format(" \"{}\"", line.note);
    }
    return text + pattern(line);
}

} // namespace lengthwise::compose
