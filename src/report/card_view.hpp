#pragma once

#include "units/distance.hpp"
#include "units/pool.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// A session as a card shows it, worked out and put into words before anything is laid out.
/// Texts are safe to print; an empty one has nothing to say.
namespace lengthwise::report {

/// A line of the session, or something inside a group.
struct CardRow {
    enum class Kind : std::uint8_t { set, group, pause, note };

    Kind kind = Kind::set;
    bool optional = false;             ///< `if time`
    bool longest = false;              ///< holds the rep that Card::strip counts off
    std::string count{};               ///< "4"; empty for one rep or round
    std::vector<std::string> amount{}; ///< "50", "3min"; several are the steps of a ladder
    std::vector<std::string> what{}; ///< class by class, most telling first: "crawl", "steady", "with board"
    std::string halves{};            ///< "25 / 25": parts that are equal and add up once
    std::string plain_what{};        ///< "drill / crawl": shorter than `what` of a split,
    std::string parts{};             ///< and then "25 fist / 25 crawl" stands below
    std::string split{};             ///< "as 25 / 75": parts that have to be said
    std::string recovery{};          ///< "rest 30s", "on 0:50"; of a pause "pause 1min"
    std::vector<std::string> how{};  ///< what else: "odds steady, evens hard"
    std::string hand{};              ///< "hand 00 30"
    std::vector<std::string> notes{};
    std::string lengths{}; ///< of all reps or rounds: "8", "+4" when optional; inside a group of one round
    std::string clock{};   ///< "07:17"; of session lines alone
    std::string so_far{};  ///< metres or yards up to here; of session lines alone
    std::string lengths_so_far{};
    std::vector<CardRow> rows{}; ///< of a group
};

struct CardSection {
    std::string name{};               ///< "warm-up"
    std::string title{};              ///< "Wake up"
    std::vector<std::string> holds{}; ///< "easy", "rest 20s": what its rows do not say again
    std::vector<CardRow> rows{};
};

/// The longest rep, to be counted off.
struct CardStrip {
    Distance rep{};
    std::int64_t lengths = 0;
    Pool pool{};
};

/// What may stand in one place, the fullest first.
using Wordings = std::vector<std::string>;

/// A line of a card's back.
struct CardBackLine {
    std::string label{};              ///< small, above the figures
    std::vector<std::string> cells{}; ///< a figure a column; fewer leave the last ones empty
    Distance at{};                    ///< of passing times: how far into the rep; else 0
};

/// The back of a card: a table between a head and running text.
struct CardBack {
    std::string title{};
    Wordings head{};                    ///< small, below the title
    std::vector<std::string> columns{}; ///< their heads
    std::vector<CardBackLine> lines{};
    bool passing = false; ///< passing times: a place to write below each column but the first
    std::vector<std::string> when_short{}; ///< what to do when short of time
};

struct Card {
    std::string title{};
    std::string whose{};              ///< "lane 1"
    Wordings when{};                  ///< "Tue 4 May, 07:00 · pool 25 m"
    Wordings facts{};                 ///< "longest today 750, before 600, race 750"
    std::string people{};             ///< "Ada, Bo · 1:55 per 100 m"
    std::vector<std::string> notes{}; ///< of the week and the session
    std::vector<CardSection> sections{};
    std::optional<CardStrip> strip{};
    std::string total{};   ///< "1450 m"
    Wordings minutes{};    ///< "36–42 of 45 min"
    std::string lengths{}; ///< "58"; empty where the pool has no length
    std::string caution{};
    std::optional<CardBack> back{};
};

} // namespace lengthwise::report
