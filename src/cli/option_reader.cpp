#include "cli/option_reader.hpp"

#include "cli/help.hpp"
#include "cli/values.hpp"
#include "grammar/limits.hpp"
#include "grammar/words.hpp"
#include "report/width.hpp"

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::cli {

namespace {

struct Value {
    CLI::Option* option;
    std::string wants;
    std::function<bool(std::string const&)> take;
};

} // namespace

/// Its options, as CLI11 and as we know them.
struct Reader::Known {
    CLI::App app;
    std::vector<Value> values;
};

Reader::Reader(std::string_view command) : command_(command), known_(std::make_unique<Known>()) {
    known_->app.set_help_flag();
    known_->app.allow_extras();
    known_->app.add_flag("--help,-h", help_);
}

Reader::~Reader() = default;

void Reader::flag(char const* name, bool& to) {
    known_->app.add_flag(name, to);
}

void Reader::value(char const* name, std::string wants, std::function<bool(std::string const&)> take) {
    auto* const option = known_->app.add_option(name);
    option->type_size(1)->take_last();
    known_->values.push_back({option, std::move(wants), std::move(take)});
}

void Reader::each(char const* name, std::string wants, std::function<bool(std::string const&)> take) {
    auto* const option = known_->app.add_option(name);
    option->type_size(1)->take_all();
    known_->values.push_back({option, std::move(wants), std::move(take)});
}

std::optional<Options> Reader::read(std::vector<std::string> arguments) {
    std::ranges::reverse(arguments); // as CLI11 takes them
    try {
        known_->app.parse(std::move(arguments));
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
    for (auto const& value : known_->values) {
        for (auto const& text : value.option->reduced_results()) {
            if (value.option->count() > 0 && !value.take(text)) {
                return Misuse{fmt::format("{} takes {}, not \"{}\"", value.option->get_name(), value.wants,
                                          report::visible(text))};
            }
        }
    }
    return std::nullopt;
}

std::vector<KnownOption> Reader::known() const {
    std::vector<KnownOption> known;
    for (auto const* option : known_->app.get_options()) {
        auto& one = known.emplace_back();
        for (auto const& name : option->get_lnames()) {
            one.names.push_back("--" + name);
        }
        for (auto const& name : option->get_snames()) {
            one.names.push_back("-" + name);
        }
        auto const value = std::ranges::find(known_->values, option, &Value::option);
        one.wants = value == known_->values.end() ? "" : value->wants;
    }
    return known;
}

std::vector<std::string> Reader::names() const {
    std::vector<std::string> names;
    for (auto const& option : known()) {
        names.insert(names.end(), option.names.begin(), option.names.end());
    }
    return names;
}

/// What CLI11 leaves are names of files and options that nobody knows. It is not asked to
/// tell them apart, because it takes a name like `[a,b]` for a list.
std::optional<Options> Reader::take_files() {
    auto names_only = false;
    for (auto const& word : known_->app.remaining()) {
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
Misuse Reader::missing(std::string_view message) const {
    auto const name = message.substr(0, message.find(':'));
    auto const found = std::ranges::find_if(
        known_->values, [name](Value const& value) { return value.option->get_name() == name; });
    return Misuse{found == known_->values.end() ? fmt::format("{} needs something behind it", name)
                                                : fmt::format("{} takes {}", name, found->wants)};
}

Misuse Reader::unknown(std::string const& option) const {
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

} // namespace lengthwise::cli
