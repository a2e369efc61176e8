#include "takes.hpp"

#include <array>
#include <cstddef>

namespace lengthwise::grammar {

namespace {

constexpr auto statements = std::to_array<Takes>({
    {Word::plan, "a name in quotes", "plan \"Spring sprint\""},
    {Word::race, "its kind or distance, then \"on\" and a date", "race \"Gull Island\" sprint on 2027-05-16"},
    {Word::swimmer, "a name in quotes, then threshold, lane or distance",
     "swimmer \"Ada\" threshold 1:50 per 100m lane 1"},
    {Word::before, "\"longest\" and a distance", "before longest 300m week 2000m"},
    {Word::set, "a name in quotes, \"=\" and an item", "set \"fifties\" = 4 x 50 rest 15s"},
    {Word::include, "a file's name in quotes", "include \"drills.swim\""},
    {Word::pool, "a length or \"open water\"", "pool 25m"},
    {Word::threshold, "a time", "threshold 2:05 per 100m"},
    {Word::rest, "a time", "rest 15s"},
    {Word::factor, "a word and a percentage", "factor kick 140%"},
    {Word::limit, "a rule and a value", "limit slot 5min"},
    {Word::allow, "a rule, then a reason in quotes", "allow sessions \"holidays\""},
    {Word::week, "a number", "week 2 from 2027-04-26"},
    {Word::session, "a day, a time, a slot and a name", "session Tue 07:00 for 45min \"Longer reps\""},
    {Word::pause, "a time", "pause 2min"},
    {Word::warm, "\"up\"", "warm-up"},
    {Word::cool, "\"down\"", "cool-down"},
});

constexpr auto keywords = std::to_array<Takes>({
    {Word::rest, "a time", "rest 15s"},
    {Word::on, "a send-off", "on 1:30"},
    {Word::off, "a send-off", "on 1:30"},
    {Word::at, "a percentage or a pace", "at 95% or at 1:55 per 100"},
    {Word::hold, "a time", "hold 0:52"},
    {Word::rpe, "a number from 1 to 10", "rpe 6"},
    {Word::plus, "a time", "threshold plus 5s"},
    {Word::minus, "a time", "threshold minus 5s"},
    {Word::with, "gear", "with fins, with board, snorkel"},
    {Word::as, "its parts", "as 25 kick / 25 crawl"},
    {Word::broken, "\"at\" and a distance, \"for\" and a time", "broken at 250 for 15s"},
    {Word::per, "a distance", "per 100m"},
    {Word::for_, "a time with its unit", "for 45min"},
    {Word::use, "a set's name in quotes", "use \"fifties\""},
    {Word::lane, "a number", "lane 1: 4 x 50"},
    {Word::if_, "\"time\"", "if time: 4 x 25"},
    {Word::negative, "\"split\"", "negative split"},
    {Word::descend, "nothing, or its cycle", "descend 1-4"},
    {Word::every, "a number such as 3rd, then what changes", "every 3rd hard"},
    {Word::from, "a date", "from 2027-04-26"},
    {Word::reserve, "a distance", "reserve 20m"},
    {Word::in, "a length or \"open water\"", "in 50m"},
    {Word::open, "\"water\"", "open water"},
    {Word::longest, "a distance", "longest 300m"},
    {Word::distance, "a percentage", "distance 80%"},
    {Word::front, "\"crawl\"", "front crawl"},
    {Word::first, "how many, then what changes", "first 2 easy"},
    {Word::next, "how many, then what changes", "next 2 steady"},
    {Word::last, "how many, then what changes", "last hard"},
    {Word::odds, "what changes", "odds easy"},
    {Word::evens, "what changes", "evens hard"},
});

/// Those of both that take a name first.
constexpr auto names = std::to_array<Takes>({
    {Word::plan, "a name in quotes", {}},
    {Word::race, "a name in quotes", {}},
    {Word::swimmer, "a name in quotes", {}},
    {Word::set, "a name in quotes", {}},
    {Word::include, "a file's name in quotes", {}},
    {Word::use, "a set's name in quotes", {}},
});

template <std::size_t size>
Takes const* find(std::array<Takes, size> const& table, Word word) {
    for (auto const& entry : table) {
        if (word != Word::none && entry.word == word) {
            return &entry;
        }
    }
    return nullptr;
}

} // namespace

Takes const* takes_as_statement(Word word) {
    return find(statements, word);
}

Takes const* takes_as_keyword(Word word) {
    return find(keywords, word);
}

Takes const* takes_name(Word word) {
    return find(names, word);
}

} // namespace lengthwise::grammar
