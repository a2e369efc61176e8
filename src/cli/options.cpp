#include "cli/options.hpp"

#include "cards/sheet.hpp"
#include "cli/compose_options.hpp"
#include "cli/help.hpp"
#include "cli/option_reader.hpp"
#include "cli/picture_name.hpp"
#include "cli/swims.hpp"
#include "cli/values.hpp"
#include "grammar/limits.hpp"
#include "grammar/words.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::cli {

namespace {

using Words = std::vector<std::string>;

constexpr std::uint32_t most_rows = 999'999'999;
constexpr std::string_view export_words = "json, csv, ics, html or md";

void add_who(Reader& reader, report::Wish& wish) {
    reader.value("--lane", "a lane's number, 1 to 100", [&wish](std::string const& text) {
        auto const lane = number(text, 1, limits::lanes);
        wish.lane = lane ? std::optional{static_cast<int>(*lane)} : std::nullopt;
        return lane.has_value();
    });
    reader.value("--swimmer", "a swimmer's name", [&wish](std::string const& text) {
        wish.swimmer = text;
        return !text.empty();
    });
}

void add_wish(Reader& reader, report::Wish& wish) {
    reader.value("--week", "a week's number, 1 to 999", [&wish](std::string const& text) {
        wish.week = number(text, 1, limits::weeks);
        return wish.week.has_value();
    });
    reader.value("--session", "a day or a name", [&wish](std::string const& text) {
        wish.session = text;
        return !text.empty();
    });
    add_who(reader, wish);
}

void add_format(Reader& reader, Format& format) {
    reader.value("--format", "text or json",
                 one_of(format, {{"text", Format::text}, {"json", Format::json}}));
}

void add_today(Reader& reader, std::optional<Date>& today) {
    reader.value("--today", "a date, 2027-05-04", [&today](std::string const& text) {
        today = parse_date(text);
        return today.has_value();
    });
}

/// As it was typed: it takes no file's name but behind -o.
struct TypedNew {
    Words names;
    New plan;
};

void add(Reader& reader, TypedNew& typed) {
    reader.files(typed.names);
    add_today(reader, typed.plan.today);
    add_target(reader, typed.plan.target);
}

void add(Reader& reader, Tally& tally) {
    reader.files(tally.files);
    add_wish(reader, tally.wish);
    reader.value("--by", "stroke, mode, effort, gear, section or swimmer", [&tally](std::string const& text) {
        tally.by = calc::find_by(text);
        tally.by_swimmer = text == "swimmer";
        return tally.by.has_value() || tally.by_swimmer;
    });
    add_format(reader, tally.format);
    add_look(reader, tally.look);
    add_target(reader, tally.target);
}

void add(Reader& reader, Deck& deck) {
    reader.files(deck.files);
    add_wish(reader, deck.wish);
    add_today(reader, deck.today);
    reader.value("--pool", "a pool's length, 25m, 25yd or \"33 1/3 m\"", [&deck](std::string const& text) {
        deck.pool = pool(text);
        return deck.pool.has_value();
    });
    reader.value("--start", "a time of day, 07:00", [&deck](std::string const& text) {
        deck.start = time_of_day(text);
        return deck.start.has_value();
    });
    reader.value("--left", "a time, 20min, 90s or 1:30", [&deck](std::string const& text) {
        deck.left = duration(text);
        return deck.left.has_value();
    });
    reader.value("--after", "a row's number, as deck shows it", [&deck](std::string const& text) {
        deck.after = number(text, 1, most_rows);
        return deck.after.has_value();
    });
    reader.value("--gap", "seconds, 1s to 60s", [&deck](std::string const& text) {
        deck.gap = duration(text);
        return deck.gap && *deck.gap >= Duration::seconds(1) && *deck.gap <= Duration::minutes(1);
    });
    reader.value("--swimmers", "how many in a lane, 2 to 20", [&deck](std::string const& text) {
        auto const swimmers = number(text, 2, 20);
        deck.swimmers = swimmers ? std::optional{static_cast<int>(*swimmers)} : std::nullopt;
        return swimmers.has_value();
    });
    add_look(reader, deck.look);
    add_target(reader, deck.target);
}

void add(Reader& reader, Chart& chart) {
    reader.files(chart.files);
    add_who(reader, chart.wish);
    add_look(reader, chart.look);
    add_target(reader, chart.target);
}

/// As it was typed: what it is exported as has to be said, rows may be.
struct TypedExport {
    std::optional<ExportKind> as;
    std::optional<report::CsvRows> rows;
    Export plans;
};

void add(Reader& reader, TypedExport& typed) {
    auto& plans = typed.plans;
    reader.files(plans.files);
    reader.value("--as", std::string{export_words}, [&typed](std::string const& text) {
        return one_of(typed.as.emplace(), {{"json", ExportKind::json},
                                           {"csv", ExportKind::csv},
                                           {"ics", ExportKind::ics},
                                           {"html", ExportKind::html},
                                           {"md", ExportKind::markdown}})(text);
    });
    reader.value("--rows", "line, session or week", [&typed](std::string const& text) {
        using Rows = report::CsvRows;
        return one_of(typed.rows.emplace(),
                      {{"line", Rows::line}, {"session", Rows::session}, {"week", Rows::week}})(text);
    });
    add_wish(reader, plans.wish);
    add_look(reader, plans.look);
    add_target(reader, plans.target);
}

void add(Reader& reader, Check& check) {
    reader.files(check.files);
    reader.flag("--strict", check.strict);
    reader.value(
        "--format", "text, json or sarif",
        one_of(check.format, {{"text", Format::text}, {"json", Format::json}, {"sarif", Format::sarif}}));
    add_look(reader, check.look);
    add_target(reader, check.target);
}

void add(Reader& reader, Tidy& tidy) {
    reader.files(tidy.files);
    reader.flag("--check", tidy.check);
    reader.flag("--stdout", tidy.to_out);
    add_look(reader, tidy.look);
}

/// As it was typed: swims and distances are read once the pool is known.
struct TypedPace {
    Words swims;
    Course course;
    std::optional<std::string> predict;
    Pace pace;
};

void add(Reader& reader, TypedPace& typed) {
    auto& pace = typed.pace;
    reader.files(typed.swims);
    reader.value("--pool", "a pool, 25m, 25yd, \"33 1/3 m\" or \"open water\"",
                 [&typed](std::string const& text) {
                     auto const found = course(text);
                     typed.course = {text, found.value_or(Pool{})};
                     return found.has_value();
                 });
    reader.value("--predict", "distances, 750m,1500m", [&typed](std::string const& text) {
        typed.predict = text;
        return !text.empty();
    });
    reader.flag("--stops", pace.stops);
    reader.value("--into", "a plan's file", [&pace](std::string const& text) {
        pace.files = {text};
        return !text.empty() && text != "-";
    });
    add_format(reader, pace.format);
    add_look(reader, pace.look);
    add_target(reader, pace.target);
}

/// "1m", "70cm", "6mm", "1.5m", within limits; mm.
std::function<bool(std::string const&)> size_in_mm(double& to, double low, double high) {
    return [&to, low, high](std::string const& text) {
        auto const size = millimetres(text);
        if (!size || *size < low || *size > high) {
            return false;
        }
        to = *size;
        return true;
    };
}

std::function<bool(std::string const&)> any_text(std::optional<std::string>& to) {
    return [&to](std::string const& text) {
        to = text;
        return !text.empty();
    };
}

void add(Reader& reader, Cards& cards) {
    reader.files(cards.files);
    add_wish(reader, cards.wish);
    std::string const sizes = "whole, half, quarter, eighth, a5, a6, a7, 3x5in or 4x6in";
    reader.value("--size", sizes, [&cards](std::string const& text) {
        cards.size = text;
        return cards::find_card_size(text) != nullptr;
    });
    reader.value("--sheet", "a4 or letter", one_of(cards.letter, {{"a4", false}, {"letter", true}}));
    reader.value("--margin", "what the printer leaves white, 0mm to 40mm", size_in_mm(cards.margin, 0, 40));
    reader.flag("--hole", cards.hole);
    reader.value(
        "--back", "overview or pace",
        one_of(cards.back, {{"overview", report::BackKind::overview}, {"pace", report::BackKind::pace}}));
    reader.value("--copies", "a number, 1 to 100", [&cards](std::string const& text) {
        auto const copies = number(text, 1, 100);
        cards.copies = copies.value_or(1);
        return copies.has_value();
    });
    reader.flag("--test-sheet", cards.test_sheet);
    reader.value("--distance", "how far away it is read, 30cm to 3m", size_in_mm(cards.distance, 300, 3000));
    reader.value("--preview", "an SVG's name", any_text(cards.preview));
    reader.value("--format", "pdf or png", one_of(cards.png, {{"pdf", false}, {"png", true}}));
    add_look(reader, cards.look);
    add_target(reader, cards.target);
}

void add(Reader& reader, Words& words, Explain& explain) {
    reader.files(words);
    add_look(reader, explain.look);
}

template <typename Command>
Options read(std::string_view name, Words const& arguments) {
    Reader reader{name};
    Command command;
    add(reader, command);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    return command;
}

Options read_new(Words const& arguments) {
    Reader reader{"new"};
    TypedNew typed;
    add(reader, typed);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    if (!typed.names.empty()) {
        return Misuse{fmt::format("new asks nothing; another name for the plan: -o {}",
                                  report::visible(typed.names.front()))};
    }
    if (!typed.plan.target.file) {
        typed.plan.target.file = "plan.swim";
    }
    return std::move(typed.plan);
}

Options read_cards(Words const& arguments) {
    auto options = read<Cards>("cards", arguments);
    if (auto const* const cards = std::get_if<Cards>(&options)) {
        if (cards->files.size() > 1) {
            return Misuse{"cards takes one file"};
        }
        if (auto odd = odd_name(*cards)) {
            return Misuse{std::move(*odd)};
        }
    }
    return options;
}

Options read_chart(Words const& arguments) {
    auto options = read<Chart>("chart", arguments);
    if (auto const* const chart = std::get_if<Chart>(&options)) {
        if (auto odd = odd_name(*chart)) {
            return Misuse{std::move(*odd)};
        }
    }
    return options;
}

Options read_deck(Words const& arguments) {
    auto options = read<Deck>("deck", arguments);
    auto const* const deck = std::get_if<Deck>(&options);
    if (deck != nullptr && deck->files.size() > 1) {
        return Misuse{"deck takes one file"};
    }
    if (deck != nullptr && deck->after && !deck->left) {
        return Misuse{fmt::format("how much time is left after row {}? add --left 20min", *deck->after)};
    }
    if (deck != nullptr && deck->left && deck->start) {
        return Misuse{"--start or --left: what is left counts from now"};
    }
    if (deck != nullptr && deck->left && (deck->gap || deck->swimmers)) {
        return Misuse{"--left or --gap and --swimmers: a late session is shown for the first to leave"};
    }
    return options;
}

Options read_export(Words const& arguments) {
    Reader reader{"export"};
    TypedExport typed;
    add(reader, typed);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    if (!typed.as) {
        return Misuse{fmt::format("export as what? add --as {}", export_words)};
    }
    if (typed.rows && typed.as != ExportKind::csv) {
        return Misuse{"--rows is for csv; add --as csv"};
    }
    typed.plans.as = *typed.as;
    typed.plans.rows = typed.rows.value_or(report::CsvRows::line);
    return std::move(typed.plans);
}

Options read_pace(Words const& arguments) {
    Reader reader{"pace"};
    TypedPace typed;
    add(reader, typed);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    auto swims = read_swims(typed.swims, typed.course);
    if (auto const* const unread = std::get_if<Unread>(&swims)) {
        return Misuse{unread->problem};
    }
    typed.pace.swims = std::move(std::get<std::vector<calc::Swim>>(swims));
    typed.pace.pool = typed.course.pool;
    if (typed.predict) {
        auto distances = read_distances(*typed.predict, typed.course);
        if (auto const* const unread = std::get_if<Unread>(&distances)) {
            return Misuse{unread->problem};
        }
        typed.pace.predict = std::move(std::get<std::vector<Distance>>(distances));
    }
    return std::move(typed.pace);
}

Options read_explain(Words const& arguments) {
    Reader reader{"explain"};
    Explain explain;
    Words words;
    add(reader, words, explain);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    for (auto const& word : words) { // "if time" is one
        explain.word += (explain.word.empty() ? "" : " ") + word;
    }
    return explain;
}

Options no_command(std::string_view word) {
    auto const shown = report::visible(word);
    for (int distance = 1; distance <= 2; ++distance) {
        for (auto const& [command, gist, takes] : commands) {
            if (edit_distance(word, command, distance) <= distance) {
                return Misuse{fmt::format("no command \"{}\"; did you mean \"{}\"?", shown, command)};
            }
        }
    }
    if (word.ends_with(".swim")) {
        return Misuse{fmt::format("what to do with {0}? try: lengthwise tally {0}", shown)};
    }
    auto const kind = word.starts_with('-') ? "option" : "command";
    return Misuse{fmt::format("no {} \"{}\"; lengthwise --help shows all", kind, shown)};
}

/// `lengthwise`, `lengthwise --help`, `lengthwise help deck`.
Options help(Words const& arguments) {
    if (arguments.size() > 1) {
        auto const text = help_of(arguments[1]);
        return text.empty() ? no_command(arguments[1]) : Options{Answer{std::string{text}}};
    }
    return Answer{general_help()};
}

} // namespace

Options read_options(Words const& arguments) {
    auto const command = arguments.empty() ? std::string_view{"help"} : std::string_view{arguments.front()};
    auto const rest = arguments.empty() ? Words{} : Words{arguments.begin() + 1, arguments.end()};
    if (command == "help" || command == "--help" || command == "-h") {
        return help(arguments);
    }
    if (command == "--version" || command == "-V") {
        return Answer{fmt::format("lengthwise {}\n", LENGTHWISE_VERSION)};
    }
    if (command == "new") {
        return read_new(rest);
    }
    if (command == "tally") {
        return read<Tally>(command, rest);
    }
    if (command == "deck") {
        return read_deck(rest);
    }
    if (command == "chart") {
        return read_chart(rest);
    }
    if (command == "export") {
        return read_export(rest);
    }
    if (command == "check") {
        return read<Check>(command, rest);
    }
    if (command == "tidy") {
        return read<Tidy>(command, rest);
    }
    if (command == "pace") {
        return read_pace(rest);
    }
    if (command == "cards") {
        return read_cards(rest);
    }
    if (command == "compose") {
        return read_compose(rest);
    }
    if (command == "explain") {
        return read_explain(rest);
    }
    return no_command(command);
}

std::vector<KnownOption> known_options(std::string_view command) {
    Reader reader{command};
    TypedNew fresh;
    Tally tally;
    Deck deck;
    Chart chart;
    TypedExport exported;
    Check check;
    Tidy tidy;
    TypedPace pace;
    Cards cards;
    TypedCompose compose;
    Explain explain;
    Words words;
    if (command == "new") {
        add(reader, fresh);
    } else if (command == "tally") {
        add(reader, tally);
    } else if (command == "deck") {
        add(reader, deck);
    } else if (command == "chart") {
        add(reader, chart);
    } else if (command == "export") {
        add(reader, exported);
    } else if (command == "check") {
        add(reader, check);
    } else if (command == "tidy") {
        add(reader, tidy);
    } else if (command == "pace") {
        add(reader, pace);
    } else if (command == "cards") {
        add(reader, cards);
    } else if (command == "compose") {
        add(reader, compose);
    } else {
        add(reader, words, explain);
    }
    return reader.known();
}

Words option_names(std::string_view command) {
    Words names;
    for (auto const& option : known_options(command)) {
        names.insert(names.end(), option.names.begin(), option.names.end());
    }
    return names;
}

} // namespace lengthwise::cli
