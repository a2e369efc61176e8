#include "support/generate_head.hpp"

#include "plan/rules.hpp"
#include "units/date.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <functional>
#include <utility>
#include <vector>

namespace lengthwise::test {
namespace {

constexpr std::int64_t set_budget = 1500;

template <typename T>
void shuffle(Random& random, std::vector<T>& all) {
    for (auto left = all.size(); left > 1; --left) {
        std::swap(all[left - 1], all[static_cast<std::size_t>(random.below(static_cast<int>(left)))]);
    }
}

} // namespace

std::string date(int week, int day) {
    using namespace std::chrono;
    return spell::iso(sys_days{2027y / March / 1} + days{7 * week + day});
}

/// Heads and settings stand in any order; what a bare number means, the pool decides before.
void HeadGenerator::file_head() {
    if (draft_.chance(70)) {
        pen_.line(0);
        pen_.word("plan");
        draft_.string();
    }
    draft_.course = draft_.one_of(courses());
    Statements statements;
    auto const maybe = [&](int percent, std::function<void()> statement) {
        if (draft_.chance(percent)) {
            statements.push_back(std::move(statement));
        }
    };
    maybe(draft_.course.tidy.empty() ? 0 : 100, [this] { pool(0); });
    maybe(draft_.wanted.include ? 100 : 0, [this] { include(); });
    maybe(50, [this] { race(); });
    maybe(50, [this] { before(); });
    for (int swimmers = draft_.between(0, 2); swimmers > 0; --swimmers) {
        maybe(50, [this] { swimmer(); });
    }
    auto const with_sets = draft_.chance(draft_.wanted.sets);
    for (int sets = draft_.between(1, 4); with_sets && sets > 0; --sets) {
        maybe(100, [this] { set(); });
    }
    add_settings(statements, 0);
    write(std::move(statements));
}

void HeadGenerator::settings(int level) {
    Statements statements;
    if (draft_.chance(25)) {
        auto choices = courses();
        choices.erase(choices.begin()); // nothing said
        draft_.course = draft_.one_of(choices);
        statements.push_back([this, level] { pool(level); });
    }
    if (draft_.chance(30)) {
        add_settings(statements, level);
    }
    write(std::move(statements));
}

void HeadGenerator::library() {
    for (int sets = draft_.between(1, 4); sets > 0; --sets) {
        set();
    }
}

/// Each once; limits and allows of a rule that judges the whole plan only in the file's head.
void HeadGenerator::add_settings(Statements& statements, int level) {
    auto const maybe = [&](int percent, std::function<void()> statement) {
        if (draft_.chance(percent)) {
            statements.push_back(std::move(statement));
        }
    };
    maybe(60, [=, this] { threshold(level); });
    maybe(50, [=, this] { rest(level); });
    for (auto const* word : {"back", "kick", "fins", "easy", "fly", "board"}) {
        maybe(8, [=, this] { factor(level, word); });
    }
    for (auto const& rule : plan::rules) {
        if (level == 0 || !rule.file_level) {
            maybe(rule.kind == plan::LimitKind::none ? 0 : 8, [=, this] { limit(level, rule); });
            maybe(5, [=, this] { allow(level, rule); });
        }
    }
    maybe(15, [=, this] { note(level); });
    maybe(5, [=, this] { note(level); });
}

void HeadGenerator::write(Statements statements) {
    shuffle(draft_.random, statements);
    for (auto const& statement : statements) {
        statement();
    }
}

void HeadGenerator::line(int level) {
    pen_.line(level, draft_.chance(5));
}

// --- head ---

/// race = "race" [ STRING ] ( KIND | distance ) "on" DATE
void HeadGenerator::race() {
    line(0);
    pen_.word("race");
    if (draft_.chance(60)) {
        draft_.string();
    }
    if (draft_.chance(60)) {
        pen_.word(draft_.one_of<Spelling>(
            {{"super-sprint"}, {"sprint"}, {"standard", {"olympic"}}, {"middle"}, {"long"}}));
    } else {
        draft_.write(writings_with_unit(one(draft_.one_of<Unit>({Unit::metre, Unit::yard})) *
                                        (50 * draft_.between(4, 80))));
    }
    pen_.word("on");
    pen_.exact(date(draft_.between(1, 20), 6));
}

/// swimmer = "swimmer" STRING { "threshold" pace | "lane" NUM | "distance" PERCENT }
void HeadGenerator::swimmer() {
    line(0);
    pen_.word("swimmer");
    pen_.exact("\"swimmer " + std::to_string(++named_) + "\"");
    Statements fields{
        [&] {
            pen_.word("threshold");
            pace();
        },
        [&] {
            pen_.word("lane");
            pen_.exact(std::to_string(draft_.between(1, 4)));
        },
        [&] {
            pen_.word("distance");
            pen_.exact(std::to_string(draft_.between(50, 150)) + "%");
        },
    };
    fields.erase(fields.begin() + draft_.between(0, 2)); // one of three may be missing
    write(std::move(fields));
}

/// before = "before" "longest" distance [ "week" distance ]
void HeadGenerator::before() {
    line(0);
    pen_.word("before");
    pen_.word("longest");
    draft_.write(draft_.step() * draft_.between(1, 20));
    if (draft_.chance(60)) {
        pen_.word("week");
        draft_.write(draft_.step() * draft_.between(20, 120));
    }
}

/// set = "set" STRING "=" item, with numbers that are right wherever it is used
void HeadGenerator::set() {
    auto name = "\"" + prefix_ + std::to_string(++named_) + "\"";
    auto const outer = std::exchange(draft_.course, Course{});
    draft_.course.everywhere = draft_.one_of<Everywhere>(
        {Everywhere::bare, Everywhere::bare, Everywhere::metres, Everywhere::yards, Everywhere::lengths});
    line(0);
    pen_.word("set");
    pen_.exact(name);
    pen_.sign("=", true);
    auto set = items_.item(0, set_budget);
    set.name = std::move(name);
    draft_.sets.push_back(std::move(set));
    draft_.course = outer;
}

/// include = "include" STRING
void HeadGenerator::include() {
    line(0);
    pen_.word("include");
    pen_.exact("\"library.swim\"");
}

// --- settings ---

/// "pool" ( distance | "open" "water" )
void HeadGenerator::pool(int level) {
    line(level);
    pen_.word("pool");
    pen_.word({draft_.course.tidy, draft_.course.others});
}

void HeadGenerator::threshold(int level) {
    line(level);
    pen_.word("threshold");
    pace();
}

/// pace = [ "about" ] duration [ "per" distance ] [ "in" ( distance | "open" "water" ) ] [ "reserve" distance
/// ]
void HeadGenerator::pace() {
    if (draft_.chance(20)) {
        pen_.word("about");
    }
    draft_.write(draft_.seconds(90, 180));
    if (draft_.chance(50)) {
        pen_.word("per");
        draft_.write(draft_.step() * draft_.between(1, 4));
    }
    if (draft_.chance(20)) {
        auto choices = courses();
        choices.erase(choices.begin());
        auto const where = draft_.one_of(choices);
        pen_.word("in");
        pen_.word({where.tidy, where.others});
    }
    if (draft_.chance(20)) {
        pen_.word("reserve");
        draft_.write(
            writings_with_unit(one(draft_.one_of<Unit>({Unit::metre, Unit::yard})) * draft_.between(5, 60)));
    }
}

/// "rest" rest
void HeadGenerator::rest(int level) {
    line(level);
    pen_.word("rest");
    draft_.rest();
}

/// "factor" WORD PERCENT
void HeadGenerator::factor(int level, std::string const& word) {
    line(level);
    pen_.word("factor");
    pen_.word(word);
    pen_.exact(std::to_string(draft_.between(50, 250)) + "%");
}

/// "limit" RULE value, the rule's kind deciding
void HeadGenerator::limit(int level, plan::Rule const& rule) {
    line(level);
    pen_.word("limit");
    pen_.exact(rule.name);
    switch (rule.kind) {
    case plan::LimitKind::percent:
        return pen_.exact(std::to_string(draft_.between(1, 120)) + "%");
    case plan::LimitKind::number:
        return pen_.exact(std::to_string(draft_.between(1, 5)));
    case plan::LimitKind::distance:
        return draft_.write(writings_with_unit(Distance::metres(50 * draft_.between(10, 60))));
    case plan::LimitKind::range:
        return draft_.rest();
    default:
        return draft_.write(draft_.seconds(0, 300));
    }
}

/// "allow" RULE [ STRING ]
void HeadGenerator::allow(int level, plan::Rule const& rule) {
    line(level);
    pen_.word("allow");
    pen_.exact(rule.name);
    if (draft_.chance(60)) {
        draft_.string();
    }
}

/// STRING: a note for the scope
void HeadGenerator::note(int level) {
    line(level);
    draft_.string();
}

} // namespace lengthwise::test
