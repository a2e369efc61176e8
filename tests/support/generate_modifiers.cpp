#include "support/generate_modifiers.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace lengthwise::test {

using Owner = Front::Owner;

void ModifierGenerator::behind_item(Front const& front) {
    write(in_order(choose(front), front.split), front);
    if (draft_.chance(draft_.wanted.selectors)) {
        selectors(front);
    }
}

void ModifierGenerator::defaults() {
    Front const heading{.owner = Owner::heading};
    write(in_order(choose(heading), false), heading);
    if (draft_.chance(20)) {
        pen_.word("rest");
        draft_.rest();
    }
}

/// One of a class at most. `with stops` stands behind reps alone, and not beside `with nothing`.
ModifierGenerator::Clauses ModifierGenerator::choose(Front const& front) {
    bool const item = front.owner == Owner::item;
    bool const selector = front.owner == Owner::selector;
    Clauses clauses;
    auto const maybe = [&](int percent, Clause clause) {
        if (draft_.chance(percent)) {
            clauses.push_back(clause);
        }
    };
    maybe(40, Clause::stroke);
    maybe(25, Clause::mode);
    maybe(40, Clause::effort);
    if (item && draft_.chance(15)) {
        clauses.push_back(draft_.one_of<Clause>({Clause::build, Clause::descend, Clause::negative_split}));
    } else if (selector || front.owner == Owner::part) {
        maybe(10, Clause::build);
    }
    if (front.owner != Owner::part && draft_.chance(20)) {
        bool const nothing = draft_.chance(20);
        maybe(nothing ? 100 : 0, Clause::nothing);
        maybe(nothing ? 0 : 90, Clause::gear);
        maybe(!nothing && !front.rounds && (item || selector) ? 20 : 0, Clause::stops);
    }
    maybe(item ? 35 : 0, Clause::recovery);
    maybe(front.piece != 0 ? 100 : 0, Clause::broken);
    for (int notes = 0; notes < 2; ++notes) {
        maybe(front.owner != Owner::heading ? 6 : 0, Clause::note);
    }
    if (selector && clauses.empty()) { // it has at least one
        clauses.push_back(Clause::effort);
    }
    return clauses;
}

/// Modifiers stand in any order. Behind a split only those may follow that end it, and notes behind them.
ModifierGenerator::Clauses ModifierGenerator::in_order(Clauses clauses, bool split) {
    for (auto left = clauses.size(); left > 1; --left) {
        std::swap(clauses[left - 1],
                  clauses[static_cast<std::size_t>(draft_.random.below(static_cast<int>(left)))]);
    }
    if (!split) {
        return clauses;
    }
    Clauses before;
    Clauses behind;
    for (auto const clause : clauses) {
        bool const ends_split = clause == Clause::gear || clause == Clause::nothing ||
                                clause == Clause::stops || clause == Clause::recovery ||
                                clause == Clause::descend || clause == Clause::negative_split;
        bool const may_follow = ends_split || (clause == Clause::note && !behind.empty());
        (may_follow && draft_.chance(70) ? behind : before).push_back(clause);
    }
    before.push_back(Clause::split);
    before.insert(before.end(), behind.begin(), behind.end());
    return before;
}

void ModifierGenerator::write(Clauses const& clauses, Front const& front) {
    for (std::size_t i = 0; i < clauses.size(); ++i) {
        write(clauses[i], front, i + 1 < clauses.size() && clauses[i + 1] == Clause::note);
    }
}

void ModifierGenerator::write(Clause clause, Front const& front, bool string_follows) {
    switch (clause) {
    case Clause::stroke:
        return stroke();
    case Clause::mode:
        return mode(front, string_follows);
    case Clause::effort:
        return effort(front);
    case Clause::build:
        return pen_.word("build");
    case Clause::descend:
        return descend(front);
    case Clause::negative_split:
        pen_.word("negative");
        return pen_.word("split");
    case Clause::gear:
        return gear();
    case Clause::nothing:
        pen_.word("with");
        return pen_.word("nothing");
    case Clause::stops:
        pen_.word("with");
        return pen_.word("stops");
    case Clause::broken:
        return broken(front);
    case Clause::split:
        return split(front);
    case Clause::recovery:
        return recovery(front);
    case Clause::note:
        return draft_.string();
    }
}

/// stroke = "crawl" | "back" | "breast" | "fly" | "medley" | "choice"
void ModifierGenerator::stroke() {
    pen_.word(
        draft_.one_of<std::string>({"crawl", "crawl", "crawl", "back", "breast", "fly", "medley", "choice"}));
}

/// mode = "swim" | "kick" | "pull" | "tread" | "drill" [ STRING ], where a string behind it is its name
void ModifierGenerator::mode(Front const& front, bool string_follows) {
    auto modes = std::vector<std::string>{"swim", "kick", "pull", "drill", "drill"};
    if (front.timed && !front.rounds) {
        modes.push_back("tread");
    }
    auto const mode = draft_.one_of(modes);
    pen_.word(mode);
    if (mode == "drill" && (string_follows || draft_.chance(70))) {
        draft_.string();
    }
}

/// effort = "easy" | "steady" | "threshold" [ ( "plus" | "minus" ) duration ] | "hard" | "sprint"
///        | "at" ( PERCENT | duration "per" distance ) | "hold" duration | "rpe" NUM
void ModifierGenerator::effort(Front const& front) {
    bool const may_hold = front.distance() && front.owner != Owner::part && !front.split;
    switch (draft_.between(0, may_hold ? 10 : 9)) {
    case 0:
        pen_.word("threshold");
        pen_.word(draft_.one_of<std::string>({"plus", "minus"}));
        return draft_.write(draft_.seconds(1, 9));
    case 1:
        pen_.word("at");
        return pen_.exact(std::to_string(draft_.between(30, 150)) + "%");
    case 2:
        return exact_pace();
    case 3:
        pen_.word("rpe");
        return pen_.exact(std::to_string(draft_.between(1, 10)));
    case 10:
        pen_.word("hold");
        return draft_.write(Duration::ms(draft_.between(200, 1200) * 100));
    default:
        return pen_.word(
            draft_.one_of<Spelling>({{"easy"}, {"steady"}, {"threshold"}, {"hard"}, {"sprint", {"max"}}}));
    }
}

void ModifierGenerator::exact_pace() {
    pen_.word("at");
    draft_.write(draft_.seconds(60, 200));
    pen_.word("per");
    draft_.write(draft_.between(1, 4) * draft_.step());
}

/// shape = "build" | "descend" [ NUM "-" NUM ] | "negative" "split", the cycles coming out even
void ModifierGenerator::descend(Front const& front) {
    pen_.word("descend");
    std::vector<int> cycles;
    for (int n = 2; n <= front.count; ++n) {
        if (front.count % n == 0) {
            cycles.push_back(n);
        }
    }
    if (!cycles.empty() && draft_.chance(60)) {
        pen_.exact("1");
        pen_.sign("-", false);
        pen_.exact(std::to_string(draft_.one_of(cycles)));
    }
}

/// gear = "with" ( "nothing" | "stops" | GEAR { "," GEAR } )
void ModifierGenerator::gear() {
    static std::vector<Spelling> const all{
        {"fins"}, {"paddles"}, {"buoy", {"pull buoy"}}, {"board"}, {"snorkel"}, {"band"}, {"wetsuit"}};
    pen_.word("with");
    auto const first = draft_.between(0, 4); // in the order of the list, each once
    for (int i = first; i <= first + draft_.between(0, 2); ++i) {
        if (i > first) {
            pen_.comma();
        }
        pen_.word(all[static_cast<std::size_t>(i)]);
    }
}

/// broken = "broken" "at" amount "for" duration
void ModifierGenerator::broken(Front const& front) {
    pen_.word("broken");
    pen_.word("at");
    draft_.write_amount(front.piece, front.timed);
    pen_.word("for");
    draft_.write(writings(front.pause, true));
}

/// split = "as" part { "/" part }; part = amount { stroke | mode | effort | "build" | STRING }
void ModifierGenerator::split(Front const& front) {
    pen_.word("as");
    Front const part{.owner = Owner::part, .timed = front.timed};
    for (std::size_t i = 0; i < front.parts.size(); ++i) {
        if (i > 0) {
            pen_.word("/");
        }
        draft_.write_amount(front.parts[i], front.timed);
        write(in_order(choose(part), false), part);
    }
}

/// recovery = "rest" ( rest | "as" "needed" | NUM "breaths" ) | "on" duration { "," duration }
void ModifierGenerator::recovery(Front const& front) {
    switch (draft_.between(0, 5)) {
    case 0:
        pen_.word("rest");
        pen_.word("as");
        return pen_.word("needed");
    case 1:
        pen_.word("rest");
        pen_.exact(std::to_string(draft_.between(1, 9)));
        return pen_.word({"breaths", {"breath"}});
    case 2:
    case 3:
        return send_offs(front);
    default:
        pen_.word("rest");
        return draft_.rest();
    }
}

/// One step, or one for each rep or round; a timed rep is over when the next one leaves.
void ModifierGenerator::send_offs(Front const& front) {
    pen_.word({"on", {"off"}});
    bool const steps = front.count > 1 && front.count <= 8 && draft_.chance(40);
    for (int i = 0; i < (steps ? front.count : 1); ++i) {
        if (i > 0) {
            pen_.comma();
        }
        draft_.write(front.longest + draft_.seconds(20, 300));
    }
}

/// Selectors choose each rep or round once at most, and one at least.
void ModifierGenerator::selectors(Front const& front) {
    auto const left = [&](int used) { return front.count - used; };
    switch (draft_.between(0, 4)) {
    case 0:
        selector("odds", 0, front);
        if (front.count > 1 && draft_.chance(60)) {
            selector("evens", 0, front);
        }
        return;
    case 1:
        if (front.count > 1) {
            return selector("evens", 0, front);
        }
        [[fallthrough]];
    case 2:
        return selector("every", draft_.between(1, front.count), front);
    default:
        break;
    }
    int used = 0;
    for (std::string_view const word : {"first", "next", "last"}) {
        if (left(used) > 0 && draft_.chance(60)) {
            auto const number = draft_.between(0, std::min(left(used), 3));
            selector(word, number, front);
            used += std::max(number, 1);
        }
    }
}

/// selector = [ "," ] ( "odds" | "evens" | "every" ORDINAL | ( "first" | "next" | "last" ) [ NUM ] )
///            ( stroke | mode | effort | "build" | gear | STRING ) { … the same }
void ModifierGenerator::selector(std::string_view word, int number, Front const& item) {
    constexpr std::array endings{"th", "st", "nd", "rd"};
    pen_.free_comma();
    pen_.word(word);
    if (word == "every") {
        auto const ending =
            endings[static_cast<std::size_t>(number % 10 > 3 || number / 10 == 1 ? 0 : number % 10)];
        auto const digits = std::to_string(number);
        pen_.word({digits + ending, {digits + "th", digits + "st", digits + "nd"}});
    } else if (number != 0) {
        pen_.exact(std::to_string(number));
    }
    auto chosen = item;
    chosen.owner = Owner::selector;
    chosen.piece = 0;
    write(in_order(choose(chosen), false), chosen);
}

} // namespace lengthwise::test
