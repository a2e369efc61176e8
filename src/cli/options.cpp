#include "cli/options.hpp"

#include "cli/cards_options.hpp"
#include "cli/compose_options.hpp"
#include "cli/export_options.hpp"
#include "cli/help.hpp"
#include "cli/option_reader.hpp"
#include "cli/pace_options.hpp"
#include "cli/picture_name.hpp"
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
    for (std::string_view const option : {"--help", "--version"}) {
        if (edit_distance(word, option, 2) <= 2) {
            return Misuse{fmt::format("no option {}; did you mean {}?", shown, option)};
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
