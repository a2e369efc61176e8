#include "check/register.hpp"
#include "cli/explain_word.hpp"
#include "cli/help.hpp"
#include "cli/options.hpp"
#include "grammar/meanings.hpp"
#include "support/read_plan.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>
#include <utf8proc.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

/// docs/man/ is made of what --help and `explain` say. With LENGTHWISE_UPDATE set its pages are written anew.
/// They are in mdoc, which mandoc and groff read.
namespace lengthwise {
namespace {

constexpr std::string_view date = "November 26, 2026"; // of the last change to this file

/// One character in roff.
std::string roff(utf8proc_int32_t c) {
    switch (c) {
    case '\\':
        return "\\e";
    case '-': // what is typed is no hyphen
        return "\\-";
    case '^':
        return "\\(ha";
    case '~':
        return "\\(ti";
    case '`':
        return "\\(ga";
    case '\'':
        return "\\(aq";
    default:
        return c < 0x80 ? std::string{static_cast<char>(c)} : fmt::format("\\[u{:04X}]", c);
    }
}

/// A text that roff shows as it is; a line may begin with a point.
std::string plain(std::string_view text) {
    std::string out;
    auto const* bytes = reinterpret_cast<utf8proc_uint8_t const*>(text.data());
    for (std::size_t at = 0; at < text.size();) {
        utf8proc_int32_t c = 0;
        at += static_cast<std::size_t>(
            utf8proc_iterate(bytes + at, static_cast<utf8proc_ssize_t>(text.size() - at), &c));
        out += (out.empty() || out.back() == '\n') && c == '.' ? "\\&" : "";
        out += roff(c);
    }
    return out;
}

/// Words of a macro's line: none is a macro of its own.
std::string heading(std::string_view text) {
    std::string out;
    for (std::size_t from = 0; from < text.size();) {
        auto const end = std::min(text.find(' ', from), text.size());
        out += (out.empty() ? "\\&" : " \\&") + plain(text.substr(from, end - from));
        from = end + 1;
    }
    return out;
}

/// Every sentence on a line of its own.
std::string sentences(std::string_view text) {
    auto out = plain(text);
    for (auto at = out.find(". "); at != std::string::npos; at = out.find(". ", at)) {
        out.replace(at, 2, ".\n");
    }
    return out + "\n";
}

std::string capital(std::string_view text) {
    std::string out{text};
    out.front() =
        out.front() >= 'a' && out.front() <= 'z' ? static_cast<char>(out.front() - 'a' + 'A') : out.front();
    return out;
}

std::string literal(std::string_view lines) {
    return ".Bd -literal\n" + plain(lines) + (lines.ends_with('\n') ? "" : "\n") + ".Ed\n";
}

std::string head(std::string_view name, std::string_view section, std::string_view what) {
    auto const version = std::get<cli::Answer>(cli::read_options({"--version"})).text;
    return fmt::format(".\\\" Made by the program's tests: tests/docs/manual_test.cpp\n"
                       ".Dd {}\n.Dt {} {}\n.Os {}.Sh NAME\n.Nm {}\n.Nd {}\n",
                       date, name == "lengthwise" ? "LENGTHWISE" : "LENGTHWISE-NOTATION", section, version,
                       name, what);
}

constexpr std::string_view about =
    R"(.Sh DESCRIPTION
.Nm
reads swim sets written the way a coach writes them on a whiteboard, and does the sums: metres, lengths,
the longest unbroken rep, times.
It finds what does not add up, says what to type instead, and prints a session to be read on a wet deck.
.Pp
How sets are written stands in
.Xr lengthwise-notation 5 ;
.Ic lengthwise explain
shows any word and any rule of it.
.Pp
No total, limit or check says that a session is safe for somebody.
Swim where a lifeguard watches; whoever has been ill or is in doubt asks a doctor first.
.Sh FILES OF PLANS
A plan is a text file whose name ends in
.Pa .swim .
Where several files may stand, a folder stands for the plans in it, and
.Sq \-
for standard input.
Many files are worked on at once, on all cores; what is said of them stays in their order.
.Sh COMMANDS
)";

constexpr std::string_view behind =
    R"(.Sh ENVIRONMENT
.Bl -tag -width NO_COLOR
.It Ev NO_COLOR
Present and not empty: no colour, unless
.Fl \-color Ar always
asks for it.
.It Ev TERM
.Li dumb :
no colour either.
.El
.Sh EXIT STATUS
.Bl -tag -width 143
.It 0
All is well.
.It 1
A plan has errors, or what was asked is not so.
.It 2
The call was not understood, or a file cannot be read or written.
.It 130 , 143 , 141
Ended by a signal, or by whoever read the results no further.
.El
.Sh EXAMPLES
A first plan, and what its week adds up to:
.Bd -literal -offset indent
lengthwise new
lengthwise tally plan.swim \-\-week 1
.Ed
.Pp
A plan that is checked whenever its editor saves it, with
.Xr entr 1 :
.Bd -literal -offset indent
ls *.swim | entr \-c lengthwise check /_
.Ed
.Pp
All plans of a folder, for a program:
.Bd -literal -offset indent
lengthwise tally plans \-\-format json
.Ed
.Sh SEE ALSO
.Xr entr 1 ,
.Xr lengthwise-notation 5
)";

constexpr std::string_view sample = R"(pool 25m
rest 20-30s
session Tue 07:00 for 45min "Even and long"
  warm-up easy
    200 choice
  main
    3 x (100 crawl + 50 back easy) rest 40s
    lane 1: 4 x 50 crawl on 1:15, evens hard
    lane 2: 3 x 50 crawl rest 30s
  cool-down easy
    100 choice
)";

std::string program() {
    auto text = head("lengthwise", "1", "swim sets as on a whiteboard, sums done");
    text += ".Sh SYNOPSIS\n";
    for (auto const& command : cli::commands) {
        text += fmt::format(".Nm\n.Cm {}\n.Op Ar option ...\n", command.name);
        if (!command.takes.empty()) {
            auto const several = command.takes.ends_with("...");
            auto const name = command.takes.substr(0, command.takes.size() - (several ? 3 : 0));
            text += fmt::format("{}Ar {}{}\n", command.name == "explain" ? ".Op " : ".", name,
                                several ? " ..." : "");
        }
    }
    text += about;
    for (auto const& command : cli::commands) {
        text += ".Ss " + heading(fmt::format("{}: {}", command.name, command.gist)) + "\n" +
                literal(cli::help_of(command.name));
    }
    return text + std::string{behind};
}

std::string notation() {
    auto text = head("lengthwise-notation", "5", "how swim sets are written for lengthwise");
    text += R"(.Sh DESCRIPTION
A plan is a text in UTF-8, its name ends in
.Pa .swim .
A line is a statement, a heading or a set; what follows
.Sq #
is for people.
Headings and parentheses give it its shape, indentation does not.
.Bd -literal
)" + plain(sample) +
            ".Ed\n";
    auto const heads = {"STATEMENTS, SETTINGS, HEADINGS", "BEHIND AN AMOUNT", "LINES, UNITS, SIGNS"};
    auto title = heads.begin();
    for (auto const& some : grammar::meanings()) {
        text += ".Sh " + std::string{*title++} + "\n";
        for (auto const& meaning : some) {
            text += ".Ss " + heading(meaning.name) + "\n" + sentences(capital(meaning.title) + ".") +
                    literal(meaning.example);
            auto const paragraph = [&text](std::string const& more) {
                text += more.empty() ? "" : ".Pp\n" + sentences(more);
            };
            paragraph(meaning.takes().empty() ? "" : "Behind it: " + std::string{meaning.takes()} + ".");
            paragraph(std::string{meaning.text});
            auto const also = cli::also_read(meaning);
            paragraph(also.empty() ? "" : "Also read: " + also + ".");
        }
    }
    text += ".Sh RULES\nWhat\n.Ic lengthwise check\njudges;\n.Ic lengthwise explain\ntells more of each.\n"
            ".Bl -tag -width whole-lengths -compact\n";
    for (auto const* rule : check::rules()) {
        text += ".It " + heading(rule->name) + "\n" + sentences(rule->measures);
    }
    return text + ".El\n.Sh SEE ALSO\n.Xr lengthwise 1\n";
}

std::string const folder = LENGTHWISE_ROOT "/docs/man/";

std::string said_by(std::string const& command, support::TempFolder const& at) {
    auto const out = at.path("said");
    auto const code = std::system((command + " > " + out + " 2>&1").c_str());
    auto const text = support::bytes_of(out);
    return code == 0 || !text.empty() ? text : "ended otherwise than with 0";
}

bool is_installed(std::string const& program) {
    return std::system(("command -v " + program + " > /dev/null").c_str()) == 0;
}

} // namespace

TEST_CASE("the manual is what the program says of itself", "[manual]") {
    for (auto const& [name, text] :
         {std::pair{"lengthwise.1", program()}, std::pair{"lengthwise-notation.5", notation()}}) {
        INFO(name);
        if (std::getenv("LENGTHWISE_UPDATE") != nullptr) {
            std::ofstream{folder + name} << text;
        }
        CHECK((support::bytes_of(folder + name) == text)); // long: the name says enough
    }
}

TEST_CASE("the manual's pages are what their readers expect", "[manual]") {
    support::TempFolder const at;
    for (auto const* name : {"lengthwise.1", "lengthwise-notation.5"}) {
        INFO(name);
        if (is_installed("mandoc")) {
            CHECK(said_by("mandoc -T lint -W warning " + folder + name, at).empty());
        } else if (is_installed("groff")) {
            CHECK(said_by("groff -mdoc -Tutf8 -ww -z " + folder + name, at).empty());
        } else {
            WARN("skipped: neither mandoc nor groff is installed");
        }
    }
}

TEST_CASE("the manual's sample is read without an error", "[manual]") {
    CHECK(support::read_plan(std::string{sample}).error() == "");
}

TEST_CASE("the manual shows options as they are typed", "[manual]") {
    if (is_installed("mandoc")) {
        support::TempFolder const at;
        auto const text = said_by("mandoc -T utf8 " + folder + "lengthwise.1 | sed 's/.\\x08//g'", at);
        CHECK(text.find("  --by stroke|mode|effort|gear|section|swimmer\n") != std::string::npos);
        CHECK(text.find("lengthwise deck plan.swim --week 2 --session Tue") != std::string::npos);
    }
}

} // namespace lengthwise
