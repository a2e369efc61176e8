#include "complaint.hpp"

#include "codes.hpp"
#include "complaint_value.hpp"
#include "lexeme.hpp"
#include "scan.hpp"
#include "takes.hpp"

#include <array>
#include <fmt/format.h>
#include <vector>

namespace lengthwise::grammar {

namespace {

constexpr auto things = [] {
    std::array<std::string_view, static_cast<std::size_t>(Thing::things)> names{};
    auto const put = [&names](Thing thing, std::string_view name) {
        names[static_cast<std::size_t>(thing)] = name;
    };
    put(Thing::amount, "an amount such as 200 or 10min");
    put(Thing::distance, "a distance such as 25m");
    put(Thing::time, "a time such as 1:30 or 15s");
    put(Thing::rest, "a time such as 15s");
    put(Thing::number, "a number");
    put(Thing::percent, "a percentage such as 95%");
    put(Thing::name, "a name in quotes");
    put(Thing::note, "a note in quotes");
    put(Thing::date, "a date such as 2027-06-13");
    put(Thing::time_of_day, "a time of day such as 07:00");
    put(Thing::rule, "the name of a rule");
    put(Thing::ordinal, "a number such as 3rd");
    put(Thing::equals, "\"=\"");
    put(Thing::colon, "a colon");
    return names;
}();

/// "A, B or C" of what could have stood there; nothing where that is a long list.
std::string list_of(Expected const& expected) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < things.size(); ++i) {
        if (expected.things.test(i) && !things[i].empty()) {
            names.emplace_back(things[i]);
        }
    }
    for (std::size_t i = 0; i < expected.words.size(); ++i) {
        if (expected.words.test(i)) {
            names.push_back(fmt::format("\"{}\"", spelling(static_cast<Word>(i))));
        }
    }
    constexpr std::size_t long_list = 6;
    if (names.empty() || names.size() > long_list) {
        return {};
    }
    auto text = names.front();
    for (std::size_t i = 1; i < names.size(); ++i) {
        text += (i + 1 == names.size() ? " or " : ", ") + names[i];
    }
    return text;
}

bool begins_line(Word word) {
    return is_between(word, Word::plan, Word::lane) || is_heading(word) || word == Word::if_ ||
           word == Word::use || word == Word::threshold || word == Word::warm || word == Word::cool;
}

/// The place where the reading got stuck.
struct Stop {
    Lexeme before; ///< an `end` at the line's start
    Lexeme here;
    Word first = Word::none; ///< the line's first word
};

Stop stop_of(Scene const& scene) {
    Stop stop;
    auto const line = lex(scene.begin, scene.end);
    stop.first = line.front().word;
    for (auto const& lexeme : line) {
        stop.here = lexeme;
        if (lexeme.end > scene.trace.furthest) {
            break;
        }
        stop.before = lexeme.sort == Lexeme::Sort::end ? stop.before : lexeme;
    }
    return stop;
}

/// What stands at `at` up to the next blank.
std::string_view run_of(char const* at, char const* end) {
    auto const rest = std::string_view{at, static_cast<std::size_t>(end - at)};
    return rest.substr(0, rest.find_first_of(" \t\r#\""));
}

/// What the keyword right before the stop takes.
Takes const* takes_of(Scene const& scene, Stop const& stop) {
    static constexpr Takes race_day{Word::on, "a date", "on 2027-06-13"};
    static constexpr Takes swimmer_lane{Word::lane, "a number", "lane 1"};
    static constexpr Takes break_time{Word::for_, "a time with its unit", "for 15s"};
    if (stop.before.word == Word::on && stop.first == Word::race) {
        return &race_day;
    }
    if (stop.before.word == Word::for_ && scene.form == Form::item) {
        return &break_time;
    }
    if (stop.before.word == Word::lane && scene.form == Form::head) {
        return &swimmer_lane;
    }
    auto const begins_statement = stop.before.begin == scene.begin && scene.form != Form::item;
    return begins_statement ? takes_as_statement(stop.before.word) : takes_as_keyword(stop.before.word);
}

/// An unknown word: the nearest of those that could stand there is what was meant.
Complaint about_word(Scene const& scene, Stop const& stop) {
    auto const written = stop.here.text();
    Complaint c{.code = code::word, .from = stop.here.begin, .to = stop.here.end, .message = {}};
    auto const near = nearest_word(written, scene.trace.expected.words);
    if (near) {
        c.message = fmt::format("no word \"{}\"; did you mean \"{}\"?", written, *near);
        c.take_for = find_word(*near);
        if (stop.before.word == Word::drill) {
            c.hint = fmt::format("a drill's name stands in quotes: drill \"{}\"", written);
        }
        return c;
    }
    auto const wants_name = scene.trace.expected.things.test(static_cast<std::size_t>(Thing::name));
    if (auto const* takes = takes_name(stop.before.word); takes != nullptr && wants_name) {
        c.code = code::string;
        c.message = fmt::format("\"{}\" takes {}", spelling(takes->word), takes->what);
        c.hint = fmt::format("try: {} \"{}\"", spelling(takes->word), run_of(stop.here.begin, scene.end));
        return c;
    }
    if (auto const* takes = takes_of(scene, stop)) {
        c.code = code::line;
        c.message = fmt::format("\"{}\" takes {}", spelling(takes->word), takes->what);
        c.hint = fmt::format("try: {}", takes->example);
        return c;
    }
    c.message = fmt::format("no word \"{}\"", written);
    if (stop.before.word == Word::drill) {
        c.hint = fmt::format("a drill's name stands in quotes: drill \"{}\"", written);
    } else if (stop.here.begin == scene.begin) {
        c.hint = "a line begins with an amount, a heading, or a word such as session or pause; "
                 "notes stand in \"quotes\"";
    } else if (auto const list = list_of(scene.trace.expected); !list.empty()) {
        c.hint = fmt::format("here stands {}", list);
    } else {
        c.hint = "notes stand in \"quotes\", comments behind #";
    }
    return c;
}

Complaint about_line_start(Stop const& stop) {
    Complaint c{.code = code::line, .from = stop.here.begin, .to = stop.here.end, .message = {}};
    if (stop.here.sort == Lexeme::Sort::word) {
        c.message = fmt::format("\"{}\" does not begin a line", stop.here.text());
        c.hint = "an item ends at its line's end; write this behind the item above";
    } else {
        c.message = fmt::format("a line does not begin with \"{}\"", stop.here.text());
        c.hint = "a line begins with an amount, a heading, or a word such as session or pause";
    }
    return c;
}

/// Behind a name stands what belongs before it: the day, the time.
std::string_view order_of(Stop const& stop) {
    auto const word = stop.here.word;
    if (stop.before.sort != Lexeme::Sort::string) {
        return {};
    }
    if (stop.first == Word::session && (stop.here.is_figure() || word == Word::for_ || is_day(word))) {
        return "the name comes last: session Tue 07:00 for 45min \"Even\"";
    }
    if (stop.first == Word::week && word == Word::from) {
        return "the name comes last: week 2 from 2027-04-26 \"Even\"";
    }
    return {};
}

std::string hint_for(Scene const& scene, Stop const& stop) {
    auto const is_figure = stop.here.is_figure() || stop.here.is('(');
    switch (scene.form) {
    case Form::note:
        return "a note stands on a line of its own";
    case Form::section:
        return is_figure ? "items stand on lines of their own, below the heading"
                         : "behind a heading stand its name in quotes, stroke, effort, gear (with) and rest";
    default:
        break;
    }
    if (auto const list = list_of(scene.trace.expected); !list.empty()) {
        return fmt::format("here stands {}", list);
    }
    auto const line_end = static_cast<std::size_t>(Thing::line_end);
    if (scene.trace.expected.words.none() && scene.trace.expected.things == Things{}.set(line_end)) {
        auto const order = order_of(stop);
        return std::string{order.empty() ? "the line ends before it" : order};
    }
    if (auto const* statement = takes_as_statement(stop.first);
        statement != nullptr && scene.form != Form::item) {
        return fmt::format("such as: {}", statement->example);
    }
    return is_figure ? "a new item begins a new line, or stands behind \"+\" inside parentheses"
                     : "behind an amount stand stroke, effort, gear (with), rest or on";
}

} // namespace

Word meant_opener(std::string_view written) {
    auto const near = nearest_word(written, begins_line);
    return near ? find_word(*near) : Word::none;
}

Complaint complain_of_place(Scene const& scene) {
    auto const stop = stop_of(scene);
    auto const& here = stop.here;
    if (here.sort == Lexeme::Sort::string && (here.text().size() < 2 || here.text().back() != '"')) {
        Trace quotes;
        quotes.refuse({here.begin, here.begin + 1, Fault::string, 0, false});
        return complain_of_value({scene.form, scene.begin, scene.end, scene.depth, quotes});
    }
    if (here.sort == Lexeme::Sort::word && clings_to_word(*here.end)) {
        auto const run = run_of(here.begin, scene.end);
        return {.code = code::word,
                .from = here.begin,
                .to = here.begin + run.size(),
                .message = fmt::format("\"{}\" touches what stands behind it", here.text()),
                .hint = fmt::format("try: {} {}", here.text(), run.substr(here.text().size()))};
    }
    if (here.sort == Lexeme::Sort::word && here.word == Word::none) {
        return about_word(scene, stop);
    }
    if (here.begin == scene.begin) {
        return about_line_start(stop);
    }
    Complaint c{.code = code::line, .from = here.begin, .to = here.end, .message = {}};
    if (auto const* takes = takes_of(scene, stop)) {
        c.message = fmt::format("\"{}\" takes {}", spelling(takes->word), takes->what);
        c.hint = fmt::format("try: {}", takes->example);
        if (here.sort == Lexeme::Sort::end) {
            c.from = stop.before.begin;
            c.to = stop.before.end;
        }
        return c;
    }
    c.hint = hint_for(scene, stop);
    if (here.sort == Lexeme::Sort::end) {
        c.from = stop.before.begin;
        c.to = stop.before.end;
        c.message = "the line ends too soon";
    } else if (here.sort == Lexeme::Sort::string) {
        c.message = "no name or note stands here";
    } else {
        c.message = fmt::format("\"{}\" does not stand here", here.text());
    }
    return c;
}

Complaint complain(Scene const& scene) {
    if (auto c = complain_of_character(scene)) {
        return *c;
    }
    auto const& trace = scene.trace;
    if (trace.refusal.fault != Fault::none &&
        (trace.furthest == nullptr || trace.refusal.end >= trace.furthest)) {
        return complain_of_value(scene);
    }
    if (auto c = complain_of_habit(scene)) {
        return *c;
    }
    return complain_of_place(scene);
}

} // namespace lengthwise::grammar
