#include "cli/help.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::cli {

namespace {

/// How the general help lays them out; a row without a command is an empty line.
using Row = std::array<std::string_view, 2>;
constexpr std::array rows{
    Row{"new", "compose"}, Row{"check", "tidy"}, Row{}, Row{"tally", "deck"},
    Row{"chart", "cards"}, Row{"export", ""},    Row{}, Row{"pace", "explain"},
};

constexpr std::string_view new_help =
    R"(lengthwise new: a first plan to start from, plan.swim

  --today 2027-05-04               dated from the next Monday

  -o FILE  --force                 another name; over an old one

  lengthwise new
  lengthwise new --today 2027-05-04 -o may.swim
)";

constexpr std::string_view tally =
    R"(lengthwise tally FILE...: totals of a plan, a week, a session

  --week N  --session DAY|"NAME"   what of it
  --lane N  --swimmer "NAME"       one lane, or one swimmer
  --by stroke|mode|effort|gear|section|swimmer
                                   how much of each
  --format json                    for programs

  FILE may be a folder, all its .swim files, or - for standard
  input.

  -o FILE  --force                 into a file; over an old one
  --color auto|always|never  --ascii  --width N

  lengthwise tally plan.swim --week 2
  lengthwise tally plan.swim --by mode --lane 1
)";

constexpr std::string_view deck =
    R"(lengthwise deck FILE: one session for the pool side

  --week N  --session DAY|"NAME"   which one
  --today 2027-05-04               the one of that day
  --lane N  --swimmer "NAME"       one lane, or one swimmer
  --pool 25yd                      elsewhere, * = changed
  --start 07:00                    when it begins
  --left 20min  --after ROW        late: what still fits
  --gap 5s  --swimmers 4           one behind the other

  -o FILE  --force                 into a file; over an old one
  --color auto|always|never  --ascii  --width N

  lengthwise deck plan.swim --week 2 --session Tue
  lengthwise deck plan.swim --session "Long hall" --pool 25m
)";

constexpr std::string_view chart =
    R"(lengthwise chart FILE: longest rep and volume by week

  -o chart.svg  --force            a picture; over an old one
  --lane N  --swimmer "NAME"       one lane, or one swimmer
  --color auto|always|never  --ascii  --width N

  Without -o it is drawn in the terminal.

  lengthwise chart plan.swim
  lengthwise chart plan.swim -o chart.svg
)";

constexpr std::string_view export_help =
    R"(lengthwise export FILE... --as KIND: for other programs

  --as html                        a page to read and print
  --as md                          for a newsletter or a message
  --as ics                         for a calendar
  --as csv                         for a spreadsheet
  --rows line|session|week         what a row of it is
  --as json                        for programs: all there is

  --week N  --session DAY|"NAME"   what of it
  --lane N  --swimmer "NAME"       one lane, or one swimmer

  FILE may be a folder, all its .swim files, or - for standard
  input. What each holds: docs/export.md

  -o FILE  --force                 into a file; over an old one
  --color auto|always|never  --ascii  --width N

  lengthwise export plan.swim --as html -o plan.html
  lengthwise export plan.swim --as csv --rows week --lane 1
)";

constexpr std::string_view check =
    R"(lengthwise check FILE...: what to mend in a plan

  --strict                         end with 1 on a warning too
  --format json|sarif              for programs

  FILE may be a folder, all its .swim files, or - for standard
  input. What a finding means: lengthwise explain RULE

  -o FILE  --force                 into a file; over an old one
  --color auto|always|never  --ascii  --width N

  lengthwise check plan.swim
  lengthwise check plans --strict
)";

constexpr std::string_view tidy =
    R"(lengthwise tidy FILE...: the neat spelling, in place

  --check                          only say what would change
  --stdout                         to standard output instead

  Meaning and comments stay. FILE may be a folder, all its
  .swim files, or - for standard input, and then to standard
  output.

  --color auto|always|never  --ascii  --width N

  lengthwise tidy plan.swim
  lengthwise tidy plans --check
)";

constexpr std::string_view pace =
    R"(lengthwise pace SWIM...: threshold pace from swims all out

  SWIM is a distance and a time: 200m 3:32, 36 lengths in
  31 min, 500yd 7:10 in 25yd. Two give a figure, more say how
  far it may be off, one gives a bound.

  --pool 25m                       where, if a swim says no in
  --predict 750m,1500m             times for these, or sprint
  --stops                          there were stops
  --into plan.swim                 write it into a plan
  --format json                    for programs

  Swim all out only if healthy and cleared by a doctor, with
  a lifeguard watching.

  -o FILE  --force                 into a file; over an old one
  --color auto|always|never  --ascii  --width N

  lengthwise pace 200m 3:32 400m 7:22
  lengthwise pace 200 2:32 400 5:22 800 11:08 --pool 25m
)";

constexpr std::string_view compose =
    R"(lengthwise compose: a plan from today's swimming to race day

  --race sprint|1000m  --on 2027-06-06
                                   the swim of the race, its day
  --from 2027-04-26                the first day of week 1
  --days Tue,Fri  --slot 45min     when, and for how long
  --pool 25m                       one length
  --longest 200m                   today's longest swim
  --session 1000m                  today's session, in all

  --threshold 2:05                 for 100 m or yd; without it
                                   the plan says what it needs
  --at 19:00                       time of day
  --not 2027-05-17,2027-05-20      closed, or away
  --kit board,buoy|none            what lies at the poolside
  --race-name "Gull Island"        where it is
  --race-in-pool                   nothing about open water
  --limit "rep-step 25%"           another limit for a rule,
                                   may be given again
  --explain                        why each week is as it is

  --resume FILE --after "week 3"   after a break: what comes
    --longest 250m                 behind that week anew, all
                                   else from the plan, or said

  -o FILE  --force                 into a file; over an old one
  --color auto|always|never  --ascii  --width N

  lengthwise compose --race sprint --on 2027-06-06 \
    --from 2027-04-26 --days Tue,Fri --slot 45min --pool 25m \
    --threshold 2:05 --longest 300m --session 1000m -o plan.swim
  lengthwise compose --resume plan.swim --after "week 3" \
    --longest 200m --from 2027-05-24 -o plan.swim --force
)";

constexpr std::string_view cards =
    R"(lengthwise cards FILE: cards to print, laminate and take along

  --week N  --session DAY|"NAME"   which sessions, else all
  --lane N  --swimmer "NAME"       one lane's or swimmer's only

  --size quarter                   whole, half, quarter, eighth
                                   of the sheet, a5, a6, a7,
                                   3x5in, 4x6in
  --distance 70cm                  from the card to the eyes
  --sheet a4|letter  --margin 6mm  what the printer leaves white
  --back overview|pace             on the other side: turn the
                                   sheet over its long edge
  --hole                           where to punch for a cord
  --copies N                       of each card
  --test-sheet                     a bar of 50 mm to measure

  --format png                     one picture, for a phone
  --preview card.svg               a drawing of the first card

  -o FILE  --force                 into a file; over an old one
  --color auto|always|never  --ascii  --width N

  lengthwise cards plan.swim -o cards.pdf
  lengthwise cards plan.swim --week 2 --size half --distance 1m
      --hole --back pace -o week-2.pdf
)";

constexpr std::string_view explain =
    R"(lengthwise explain [WORD]: what a word or a rule means

  Without a word: a list of all there is.

  --color auto|always|never  --ascii  --width N

  lengthwise explain race-rep
  lengthwise explain lane
)";

struct Help {
    std::string_view command;
    std::string_view text;
};

constexpr std::array helps{
    Help{"new", new_help},       Help{"tally", tally},     Help{"deck", deck},       Help{"chart", chart},
    Help{"export", export_help}, Help{"check", check},     Help{"tidy", tidy},       Help{"pace", pace},
    Help{"cards", cards},        Help{"compose", compose}, Help{"explain", explain},
};

std::string_view gist_of(std::string_view command) {
    auto const found = std::ranges::find(commands, command, &Command::name);
    return found == commands.end() ? std::string_view{} : found->gist;
}

} // namespace

std::string general_help() {
    std::string text = "lengthwise: swim sets as on a whiteboard, sums done\n\n";
    for (auto const& [left, right] : rows) {
        auto line = left.empty() ? "" : fmt::format("  {:7} {:23}", left, gist_of(left));
        line += right.empty() ? "" : fmt::format("{:8} {}", right, gist_of(right));
        text += line.substr(0, line.find_last_not_of(' ') + 1) + '\n';
    }
    return text + "\n  lengthwise deck plan.swim --session Tue\n  lengthwise COMMAND --help\n\n"
                  "0: fine, 1: a plan has errors, 2: not understood, or a file\n"
                  "that cannot be read or written\n";
}

std::string_view help_of(std::string_view command) {
    auto const found = std::ranges::find(helps, command, &Help::command);
    return found == helps.end() ? std::string_view{} : found->text;
}

} // namespace lengthwise::cli
