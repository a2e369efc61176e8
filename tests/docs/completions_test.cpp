#include "check/register.hpp"
#include "cli/help.hpp"
#include "cli/options.hpp"
#include "grammar/codes.hpp"
#include "grammar/words.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// docs/completions/ is made of the tables of commands, options, rules, codes and words. With
/// LENGTHWISE_UPDATE set its files are written anew.
namespace lengthwise {
namespace {

using Words = std::vector<std::string>;

std::string joined(Words const& words) {
    std::string text;
    for (auto const& word : words) {
        text += (text.empty() ? "" : " ") + word;
    }
    return text;
}

/// "text or json" are two words to choose from; "a lane's number, 1 to 100" is none.
Words choices(std::string_view wants) {
    Words words;
    auto const last = wants.rfind(" or ");
    auto list = std::string{wants};
    if (last == std::string_view::npos) {
        return {};
    }
    list.replace(last, 4, ", ");
    for (std::size_t from = 0; from < list.size();) {
        auto const end = std::min(list.find(", ", from), list.size());
        words.push_back(list.substr(from, end - from));
        from = end + 2;
        if (words.back().find_first_of(" \"'") != std::string::npos) {
            return {};
        }
    }
    return words;
}

bool wants_a_file(std::string_view wants) {
    return wants == "a file's name" || wants == "a plan's file" || wants == "an SVG's name";
}

/// All that `explain` knows under one word.
Words explained() {
    std::set<std::string> words;
    for (auto const* rule : check::rules()) {
        words.emplace(rule->name);
    }
    for (auto const& code : grammar::codes) {
        words.emplace(code.code);
    }
    for (auto i = static_cast<int>(Word::none) + 1; i < static_cast<int>(Word::count_); ++i) {
        words.emplace(spelling(static_cast<Word>(i)));
    }
    return {words.begin(), words.end()};
}

Words names_of(std::string_view command) {
    Words names;
    for (auto const& option : cli::known_options(command)) {
        names.insert(names.end(), option.names.begin(), option.names.end());
    }
    return names;
}

/// Behind a command, if no option stands there.
std::string_view kind(cli::Command const& command) {
    return command.takes.starts_with("FILE") ? "plans" : command.takes == "WORD" ? "words" : "nothing";
}

std::string bash() {
    std::string commands;
    std::string values;
    std::string options;
    for (auto const& command : cli::commands) {
        commands += std::string{command.name} + " ";
        options += fmt::format("    {})\n        options='{}'\n        behind={}\n        ;;\n", command.name,
                               joined(names_of(command.name)), kind(command));
        for (auto const& option : cli::known_options(command.name)) {
            for (auto const& name : option.wants.empty() ? Words{} : option.names) {
                auto const words = choices(option.wants);
                values +=
                    fmt::format("    {}:{}) {} ;;\n", command.name, name,
                                wants_a_file(option.wants) ? "_lengthwise_take -f"
                                : words.empty()            ? ":"
                                                : fmt::format("_lengthwise_take -W '{}'", joined(words)));
            }
        }
    }
    return "# Completion of lengthwise for bash. Made by the program's tests.\n\n"
           "_lengthwise_take() {\n"
           "    mapfile -t COMPREPLY < <(compgen \"$@\" -- \"${COMP_WORDS[COMP_CWORD]}\")\n"
           "}\n\n"
           "_lengthwise_plans() {\n"
           "    local folders\n"
           "    _lengthwise_take -f -X '!*.swim'\n"
           "    mapfile -t folders < <(compgen -d -- \"${COMP_WORDS[COMP_CWORD]}\")\n"
           "    COMPREPLY+=(\"${folders[@]}\")\n"
           "}\n\n"
           "_lengthwise() {\n"
           "    local command=${COMP_WORDS[1]} before=${COMP_WORDS[COMP_CWORD - 1]} options='' "
           "behind=nothing\n"
           "    COMPREPLY=()\n"
           "    if ((COMP_CWORD == 1)); then\n"
           "        _lengthwise_take -W '" +
           commands + "help --help --version'\n        return\n    fi\n    case $command:$before in\n" +
           values +
           "    *) _lengthwise_else ;;\n    esac\n}\n\n"
           "_lengthwise_else() {\n"
           "    case $command in\n" +
           options + "    help)\n        _lengthwise_take -W '" + commands +
           "'\n        return\n        ;;\n    esac\n"
           "    if [[ ${COMP_WORDS[COMP_CWORD]} == -* ]]; then\n"
           "        _lengthwise_take -W \"$options\"\n"
           "    elif [[ $behind == plans ]]; then\n"
           "        _lengthwise_plans\n"
           "    elif [[ $behind == words ]]; then\n"
           "        _lengthwise_take -W '" +
           joined(explained()) + "'\n    fi\n}\n\ncomplete -o filenames -F _lengthwise lengthwise\n";
}

std::string fish() {
    std::string text = "# Completion of lengthwise for fish. Made by the program's tests.\n\n"
                       "complete -c lengthwise -f\n"
                       "complete -c lengthwise -n __fish_use_subcommand -l help -s h\n"
                       "complete -c lengthwise -n __fish_use_subcommand -l version\n";
    for (auto const& command : cli::commands) {
        auto const there =
            fmt::format("complete -c lengthwise -n '__fish_seen_subcommand_from {}'", command.name);
        text += fmt::format("\ncomplete -c lengthwise -n __fish_use_subcommand -a {} -d '{}'\n", command.name,
                            command.gist);
        if (kind(command) == "plans") {
            text += there + " -k -a '(__fish_complete_suffix .swim)'\n";
        } else if (kind(command) == "words") {
            text += there + " -a '" + joined(explained()) + "'\n";
        }
        for (auto const& option : cli::known_options(command.name)) {
            text += there;
            for (auto const& name : option.names) {
                text += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
            }
            auto const words = choices(option.wants);
            text += option.wants.empty()         ? ""
                    : wants_a_file(option.wants) ? " -r -F"
                    : words.empty()              ? " -x"
                                                 : " -x -a '" + joined(words) + "'";
            auto wants = option.wants;
            for (auto at = wants.find('\''); at != std::string::npos; at = wants.find('\'', at + 2)) {
                wants.replace(at, 1, "\\'");
            }
            text += (wants.empty() || !words.empty() ? "" : " -d '" + wants + "'") + "\n";
        }
    }
    return text;
}

/// Quoted for zsh; a colon or bracket would end the description.
std::string described(std::string_view wants) {
    std::string text;
    for (char const c : wants) {
        text += c == '\''                          ? "'\\''"
                : c == ':' || c == '[' || c == ']' ? std::string{'\\', c}
                                                   : std::string{c};
    }
    return text;
}

std::string zsh_option(cli::KnownOption const& option) {
    auto const words = choices(option.wants);
    auto const value = option.wants.empty()         ? ""
                       : wants_a_file(option.wants) ? ":file:_files"
                       : words.empty()              ? ": :"
                                                    : ": :(" + joined(words) + ")";
    std::string text;
    for (auto const& name : option.names) {
        text += fmt::format(" \\\n                '({}){}[{}]{}'", joined(option.names), name,
                            described(option.wants.empty() || !words.empty() ? name : option.wants), value);
    }
    return text;
}

std::string zsh() {
    std::string list;
    std::string cases;
    for (auto const& command : cli::commands) {
        list += fmt::format("        '{}:{}'\n", command.name, described(command.gist));
        cases += fmt::format("            {})\n            _arguments", command.name);
        for (auto const& option : cli::known_options(command.name)) {
            cases += zsh_option(option);
        }
        cases += kind(command) == "plans"   ? " \\\n                '*:plan:_files -g \"*.swim(-.)\"'\n"
                 : kind(command) == "words" ? " \\\n                '*:word:(" + joined(explained()) + ")'\n"
                                            : "\n";
        cases += "            ;;\n";
    }
    return "#compdef lengthwise\n# Completion of lengthwise for zsh. Made by the program's tests.\n\n"
           "_lengthwise() {\n"
           "    local curcontext=$curcontext state line\n"
           "    local -a commands\n"
           "    commands=(\n" +
           list +
           "    )\n"
           "    _arguments -C '(- *)--help[what there is]' '(- *)--version[which one]' '1: :->command' '*::: "
           ":->rest'\n"
           "    case $state in\n"
           "    command) _describe command commands ;;\n"
           "    rest)\n"
           "        case $words[1] in\n" +
           cases + "        esac\n        ;;\n    esac\n}\n\n_lengthwise \"$@\"\n";
}

std::string const folder = LENGTHWISE_ROOT "/docs/completions/";

bool is_installed(std::string const& program) {
    return std::system(("command -v " + program + " > /dev/null").c_str()) == 0;
}

/// What bash offers behind these words of a command line, sorted.
std::string offered(std::string const& words, support::TempFolder const& at) {
    auto const out = at.path("offered");
    auto const script = "cd '" + at.path("shelf") + "' && source " + folder +
                        "lengthwise.bash && COMP_WORDS=(" + words +
                        ") && COMP_CWORD=$((${#COMP_WORDS[@]} - 1)) && _lengthwise && printf '%s\\n' "
                        "\"${COMPREPLY[@]}\" | LC_ALL=C sort | paste -sd,";
    at.file("script", script);
    REQUIRE(std::system(("bash " + at.path("script") + " > " + out).c_str()) == 0);
    auto text = support::bytes_of(out);
    return text.substr(0, text.find_last_not_of('\n') + 1);
}

} // namespace

TEST_CASE("completions are what the program knows", "[completions]") {
    for (auto const& [name, text] :
         {std::pair{"lengthwise.bash", bash()}, {"lengthwise.fish", fish()}, {"_lengthwise", zsh()}}) {
        INFO(name);
        if (std::getenv("LENGTHWISE_UPDATE") != nullptr) {
            std::ofstream{folder + name} << text;
        }
        CHECK((support::bytes_of(folder + name) == text)); // long: the name says enough
    }
}

TEST_CASE("words to choose from are told from others", "[completions]") {
    CHECK(choices("text or json") == Words{"text", "json"});
    CHECK(choices("auto, always or never") == Words{"auto", "always", "never"});
    CHECK(choices("a lane's number, 1 to 100").empty());
    CHECK(choices("a day or a name").empty());
    CHECK(choices("a time, 20min, 90s or 1:30").empty());
    CHECK(choices("a file's name").empty());
}

TEST_CASE("bash completes commands, options, their values, plans and rules", "[completions]") {
    support::TempFolder const at;
    at.file("shelf/six.swim", "");
    at.file("shelf/six.txt", "");
    at.file("shelf/two words.swim", "");
    at.file("shelf/plans/a.swim", "");
    CHECK(offered("lengthwise ta", at) == "tally");
    CHECK(offered("lengthwise t", at) == "tally,tidy");
    CHECK(offered("lengthwise tally --sw", at) == "--swimmer");
    CHECK(offered("lengthwise tally --by s", at) == "section,stroke,swimmer");
    CHECK(offered("lengthwise cards --size h", at) == "half");
    CHECK(offered("lengthwise tally --week ''", at).empty());
    CHECK(offered("lengthwise tally s", at) == "six.swim");
    CHECK(offered("lengthwise check plan.swim ''", at) == "plans,six.swim,two words.swim");
    CHECK(offered("lengthwise tally -o six.t", at) == "six.txt");
    CHECK(offered("lengthwise explain race-r", at) == "race-rep");
    CHECK(offered("lengthwise explain snork", at) == "snorkel");
    CHECK(offered("lengthwise help ch", at) == "chart,check");
    CHECK(offered("lengthwise pace ''", at).empty());
}

TEST_CASE("fish and zsh can read theirs", "[completions]") {
    if (is_installed("fish")) {
        CHECK(std::system(("fish --no-execute " + folder + "lengthwise.fish").c_str()) == 0);
        CHECK(std::system(("test \"$(fish --no-config -c 'source " + folder +
                           "lengthwise.fish; complete -C \"lengthwise tally --by str\"')\" = stroke")
                              .c_str()) == 0);
    }
    if (is_installed("zsh")) {
        CHECK(std::system(("zsh -n " + folder + "_lengthwise").c_str()) == 0);
    }
}

} // namespace lengthwise
