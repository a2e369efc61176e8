#include "meanings.hpp"

namespace lengthwise::grammar {
namespace {

using enum Meaning::Example;

constexpr auto table = std::to_array<Meaning>({
    {"lane",
     "a line that only some lanes swim",
     lines,
     "lane 1: 6 x 100 crawl on 2:30\nlane 2: 5 x 100 crawl on 2:45\nlane 1-2: 4 x 50 back rest 20s\n",
     "Neighbouring lane lines are alternatives; unmarked lines are for all. Totals without a lane are those "
     "of the "
     "lowest.",
     {Word::lane}},
    {"if time",
     "a line for the end, if there is time for it",
     lines,
     "if time: 4 x 25 sprint on 0:50\nlane 2: if time: 50 back\n",
     "Left out of totals, slot and longest rep, and shown apart.",
     {Word::if_, Word::time}},
    {"pause",
     "everybody waits",
     lines,
     "4 x 100 crawl rest 20s\npause 2min \"drink\"\n4 x 50 crawl rest 20s\n",
     "A line of its own. It takes the place of the rest before it.",
     {Word::pause}},
    {"use",
     "a set by its name",
     file,
     "set \"steps\" = 50, 100, 50 crawl rest 20s\npool 25m\nsession\n  main\n    use \"steps\" easy\n    2 x "
     "use \"steps\" rest 1min\n",
     "As good as the set's text in parentheses.",
     {Word::use}},
    {"x",
     "how many reps or rounds",
     lines,
     "4 x 50 crawl rest 20s\n3 x (200 crawl + 50 back) rest 1min\n",
     "A blank may stand on each side, or none beside a digit.",
     {Word::x}},
    {"m, yd",
     "metres and yards",
     lines,
     "200m crawl\n220yd crawl\n",
     "A number without a unit has that of the pool.",
     {Word::metres, Word::yards}},
    {"lengths",
     "as often as the pool is long",
     lines,
     "6 lengths choice easy\n",
     "Not in open water, nor where no pool is named.",
     {Word::lengths}},
    {"s, min, h",
     "seconds, minutes and hours",
     lines,
     "10min crawl easy\n4 x 50 rest 20s\n4 x 50 on 1:15\n",
     "A clock says the same: 90s is 1:30.",
     {Word::seconds, Word::minutes, Word::hours}},
    {"(", "a group: items in parentheses", lines,
     "3 x (200 crawl steady + 50 back easy) rest 1min\n2 x (\n  100 crawl\n  50 kick\n) rest 30s\n",
     "`+` or a new line parts them. What stands behind it holds for all inside that say nothing themselves."},
    {"+", "parts the items of a group", lines, "3 x (200 crawl steady + 50 back easy) rest 1min\n",
     "Only in parentheses; a new line does the same."},
    {",", "a ladder, several send-offs, gear, or a selector", lines,
     "100, 200, 100 crawl rest 20s\n3 x 100 on 2:10, 2:05, 2:00\n100 pull with buoy, paddles\n"
     "4 x 50 rest 20s, odds easy\n",
     "A blank follows it. What it goes on with is said by the word or number behind it."},
    {"/", "parts a rep", lines, "50 as 25 kick / 25 crawl\n", "Behind `as`, a blank on each side."},
    {"\"", "a name or a note", lines, "\"long arms\"\n4 x 50 drill \"fist\" \"thumb outside\" rest 20s\n",
     "On one line. Behind a heading, `drill`, `use` and the words that name something it is a name; else a "
     "note "
     "for people."},
    {"#", "a comment, for whoever edits the file", lines, "4 x 50 crawl rest 20s # later: more of this\n",
     "It ends with the line and counts for nothing."},
});

} // namespace

std::span<Meaning const> meanings_of_joints() {
    return table;
}

} // namespace lengthwise::grammar
