#include "cli/options.hpp"

#include "cli/help.hpp"
#include "cli/swims.hpp"
#include "cli/values.hpp"
#include "grammar/limits.hpp"
#include "grammar/words.hpp"
#include "report/width.hpp"

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <functional>

namespace lengthwise::cli {

namespace {

using Words = std::vector<std::string>;

/// One command's options: a name, and what to do with what stands behind it. The first
/// problem is kept.
class Reader {
  public:
    explicit Reader(std::string_view command) : command_(command) {
        app_.set_help_flag();
        app_.allow_extras();
        app_.add_flag("--help,-h", help_);
    }

    void files(Words& to) { to_ = &to; }
    void flag(char const* name, bool& to) { app_.add_flag(name, to); }

    /// `take` says whether it could do something with the text; `wants` is what it wants instead.
    void value(char const* name, std::string wants, std::function<bool(std::string const&)> take) {
        auto* const option = app_.add_option(name);
        option->type_size(1)->take_last();
        values_.push_back({option, std::move(wants), std::move(take)});
    }

    /// Nothing: all is read. Else what to say instead of running.
    std::optional<Options> read(Words arguments) {
        std::ranges::reverse(arguments); // as CLI11 takes them
        try {
            app_.parse(std::move(arguments));
        } catch (CLI::ArgumentMismatch const& e) {
            return missing(e.what());
        } catch (CLI::ParseError const& e) {
            return Misuse{fmt::format("cannot read this: {}", report::visible(e.what()))};
        }
        if (help_) {
            return Answer{std::string{help_of(command_)}};
        }
        if (auto instead = take_files()) {
            return instead;
        }
        for (auto const& value : values_) {
            if (value.option->count() > 0 && !value.take(value.option->results().back())) {
                return Misuse{fmt::format("{} takes {}, not \"{}\"", value.option->get_name(), value.wants,
                                          report::visible(value.option->results().back()))};
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] Words names() const {
        Words names;
        for (auto const* option : app_.get_options()) {
            for (auto const& name : option->get_lnames()) {
                names.push_back("--" + name);
            }
            for (auto const& name : option->get_snames()) {
                names.push_back("-" + name);
            }
        }
        return names;
    }

  private:
    struct Value {
        CLI::Option* option;
        std::string wants;
        std::function<bool(std::string const&)> take;
    };

    /// What CLI11 leaves are names of files and options that nobody knows. It is not asked to
    /// tell them apart, because it takes a name like `[a,b]` for a list.
    std::optional<Options> take_files() {
        auto names_only = false;
        for (auto const& word : app_.remaining()) {
            if (word == "--" && !names_only) {
                names_only = true;
            } else if (!names_only && word.size() > 1 && word.front() == '-') {
                return unknown(word);
            } else if (to_ != nullptr) {
                to_->push_back(word);
            }
        }
        return std::nullopt;
    }

    /// CLI11's message begins with the option's name.
    Misuse missing(std::string_view message) const {
        auto const name = message.substr(0, message.find(':'));
        auto const found = std::ranges::find_if(
            values_, [name](Value const& value) { return value.option->get_name() == name; });
        return Misuse{found == values_.end() ? fmt::format("{} needs something behind it", name)
                                             : fmt::format("{} takes {}", name, found->wants)};
    }

    Misuse unknown(std::string const& option) const {
        auto const typed = option.substr(0, option.find('='));
        auto problem = fmt::format("{} has no option {}", command_, report::visible(typed));
        for (int distance = 1; distance <= 2; ++distance) {
            for (auto const& name : names()) {
                if (name.size() > 3 && edit_distance(typed, name, distance) <= distance) {
                    return Misuse{fmt::format("{}; did you mean {}?", problem, name)};
                }
            }
        }
        return Misuse{fmt::format("{}; lengthwise {} --help shows all", problem, command_)};
    }

    std::string command_;
    CLI::App app_;
    bool help_ = false;
    Words* to_ = nullptr;
    std::vector<Value> values_;
};

/// One of a few words.
template <typename T>
std::function<bool(std::string const&)> one_of(T& to, std::vector<std::pair<std::string_view, T>> words) {
    return [&to, words = std::move(words)](std::string const& text) {
        for (auto const& [word, meaning] : words) {
            if (text == word) {
                to = meaning;
                return true;
            }
        }
        return false;
    };
}

void add_look(Reader& reader, Look& look) {
    reader.value("--color", "auto, always or never",
                 one_of(look.colour,
                        {{"auto", Colour::automatic}, {"always", Colour::always}, {"never", Colour::never}}));
    reader.flag("--ascii", look.ascii);
    reader.value("--width", "columns, 40 to 400", [&look](std::string const& text) {
        look.width = number(text, 40, 400);
        return look.width.has_value();
    });
}

void add_target(Reader& reader, Target& target) {
    reader.value("--output,-o", "a file's name", [&target](std::string const& text) {
        target.file = text;
        return !text.empty();
    });
    reader.flag("--force", target.force);
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
    reader.value("--lane", "a lane's number, 1 to 100", [&wish](std::string const& text) {
        auto const lane = number(text, 1, limits::lanes);
        wish.lane = lane ? std::optional{static_cast<int>(*lane)} : std::nullopt;
        return lane.has_value();
    });
}

void add_format(Reader& reader, Format& format) {
    reader.value("--format", "text or json",
                 one_of(format, {{"text", Format::text}, {"json", Format::json}}));
}

void add(Reader& reader, Tally& tally) {
    reader.files(tally.files);
    add_wish(reader, tally.wish);
    reader.value("--by", "stroke, mode, effort, gear or section", [&tally](std::string const& text) {
        tally.by = calc::find_by(text);
        return tally.by.has_value();
    });
    add_format(reader, tally.format);
    add_look(reader, tally.look);
    add_target(reader, tally.target);
}

void add(Reader& reader, Deck& deck) {
    reader.files(deck.files);
    add_wish(reader, deck.wish);
    reader.value("--today", "a date, 2027-05-04", [&deck](std::string const& text) {
        deck.today = parse_date(text);
        return deck.today.has_value();
    });
    reader.value("--pool", "a pool's length, 25m, 25yd or \"33 1/3 m\"", [&deck](std::string const& text) {
        deck.pool = pool(text);
        return deck.pool.has_value();
    });
    add_look(reader, deck.look);
    add_target(reader, deck.target);
}

void add(Reader& reader, Check& check) {
    reader.files(check.files);
    reader.flag("--strict", check.strict);
    add_format(reader, check.format);
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

Options read_deck(Words const& arguments) {
    auto options = read<Deck>("deck", arguments);
    auto const* const deck = std::get_if<Deck>(&options);
    if (deck != nullptr && deck->files.size() > 1) {
        return Misuse{"deck takes one file"};
    }
    return options;
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
    if (words.size() > 1) {
        return Misuse{"explain takes one word"};
    }
    explain.word = words.empty() ? "" : words.front();
    return explain;
}

Options no_command(std::string_view word) {
    auto const shown = report::visible(word);
    for (int distance = 1; distance <= 2; ++distance) {
        for (auto const command : commands) {
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
    return Answer{std::string{general_help()}};
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
    if (command == "tally") {
        return read<Tally>(command, rest);
    }
    if (command == "deck") {
        return read_deck(rest);
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
    if (command == "explain") {
        return read_explain(rest);
    }
    return no_command(command);
}

Words option_names(std::string_view command) {
    Reader reader{command};
    Tally tally;
    Deck deck;
    Check check;
    Tidy tidy;
    TypedPace pace;
    Explain explain;
    Words words;
    if (command == "tally") {
        add(reader, tally);
    } else if (command == "deck") {
        add(reader, deck);
    } else if (command == "check") {
        add(reader, check);
    } else if (command == "tidy") {
        add(reader, tidy);
    } else if (command == "pace") {
        add(reader, pace);
    } else {
        add(reader, words, explain);
    }
    return reader.names();
}

} // namespace lengthwise::cli
