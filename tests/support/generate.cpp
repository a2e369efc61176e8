#include "support/generate.hpp"

#include "support/draft.hpp"
#include "support/generate_head.hpp"
#include "support/generate_items.hpp"

#include <functional>
#include <utility>

namespace lengthwise::test {
namespace {

constexpr std::int64_t line_budget = 5000;

/// Weeks, sessions, sections and lines.
class WeekGenerator {
  public:
    WeekGenerator(Draft& draft, HeadGenerator& head)
        : draft_(draft), pen_(draft.pen), head_(head), items_(draft), modifiers_(draft) {}

    /// { session } { week }
    void weeks() {
        sessions(0, 1, draft_.between(0, draft_.wanted.sessions));
        auto number = 0;
        for (int left = draft_.between(0, draft_.wanted.weeks); left > 0; --left) {
            number += draft_.between(1, 2);
            week(number);
        }
    }

  private:
    /// week = "week" NUM [ "from" DATE ] [ STRING ] NL { setting NL } { session }
    void week(int number) {
        pen_.line(0, draft_.chance(60));
        pen_.word("week");
        pen_.exact(std::to_string(number));
        if (draft_.chance(60)) {
            pen_.word("from");
            pen_.exact(date(number, 0));
        }
        maybe_name();
        auto const outer = draft_.course;
        head_.settings(1);
        sessions(1, number, draft_.between(0, draft_.wanted.sessions));
        draft_.course = outer;
    }

    void sessions(int level, int week, int count) {
        for (; count > 0; --count) {
            session(level, week);
        }
    }

    /// session = "session" [ DAY | DATE ] [ TIME ] [ "for" duration ] [ STRING ] NL { setting NL } { section
    /// }
    void session(int level, int week) {
        pen_.line(level, draft_.chance(30));
        pen_.word("session");
        day_or_date(week);
        if (draft_.chance(50)) {
            auto const minutes = std::to_string(100 + draft_.between(0, 59)).substr(1);
            pen_.word({"07:" + minutes, {"7:" + minutes}});
        }
        if (draft_.chance(50)) {
            pen_.word("for");
            draft_.write(writings(Duration::minutes(draft_.between(4, 8) * 15), true));
        }
        maybe_name();
        auto const outer = draft_.course;
        head_.settings(level + 1);
        lanes_ = draft_.chance(draft_.wanted.lanes) ? draft_.between(1, 3) : 0;
        for (int left = draft_.between(0, 4); left > 0; --left) {
            section(level + 1);
        }
        draft_.course = outer;
    }

    void day_or_date(int week) {
        switch (draft_.between(0, 2)) {
        case 0:
            return pen_.word(
                draft_.one_of<Spelling>({{"Mon", {"Monday"}}, {"Wed", {"Wednesday"}}, {"Sun", {"Sunday"}}}));
        case 1:
            return pen_.exact(date(week, draft_.between(0, 6)));
        default:
            return;
        }
    }

    /// section = ( "warm-up" | "drill" | "main" | "cool-down" ) [ STRING ] { default } NL { line NL }
    void section(int level) {
        pen_.line(level, draft_.chance(10));
        pen_.word(draft_.one_of<Spelling>({{"warm-up", {"warm up", "warmup"}},
                                           {"drill"},
                                           {"main"},
                                           {"cool-down", {"cool down", "swim down", "warm  down"}}}));
        maybe_name();
        modifiers_.defaults();
        for (int left = draft_.between(0, draft_.wanted.lines); left > 0; --left) {
            line(level + 1);
        }
    }

    /// line = STRING | "pause" duration [ STRING ] | { label } item
    void line(int level) {
        pen_.line(level, draft_.chance(5));
        if (draft_.chance(8)) {
            return draft_.string();
        }
        if (draft_.chance(8)) {
            pen_.word("pause");
            draft_.write(draft_.seconds(0, 180));
            return maybe_name();
        }
        labels();
        items_.item(level, line_budget);
    }

    /// label = ( "lane" NUM [ "-" NUM ] | "if" "time" ) ":", one of each, in either order
    void labels() {
        bool const optional = draft_.chance(draft_.wanted.optional);
        bool const optional_first = draft_.chance(50);
        auto const if_time = [&] {
            pen_.word("if");
            pen_.word("time");
            pen_.colon();
        };
        if (optional && optional_first) {
            if_time();
        }
        if (lanes_ > 0 && draft_.chance(70)) {
            lane();
        }
        if (optional && !optional_first) {
            if_time();
        }
    }

    void lane() {
        auto const first = draft_.between(1, lanes_);
        pen_.word("lane");
        pen_.exact(std::to_string(first));
        if (first < lanes_ && draft_.chance(30)) {
            pen_.sign("-", false);
            pen_.exact(std::to_string(draft_.between(first + 1, lanes_)));
        }
        pen_.colon();
    }

    void maybe_name() {
        if (draft_.chance(40)) {
            draft_.string();
        }
    }

    Draft& draft_;
    Pen& pen_;
    HeadGenerator& head_;
    ItemGenerator items_;
    ModifierGenerator modifiers_;
    int lanes_ = 0; ///< of the session in hand
};

Draft draft(Wanted const& wanted) {
    return {wanted, Random{wanted.seed, wanted.bytes}, Pen{wanted.seed + 1, wanted.untidy}};
}

} // namespace

/// file = [ NL ] [ "plan" STRING NL ] { ( head | setting ) NL } { session } { week }
Generated generate(Wanted const& wanted) {
    Generated result;
    auto plan = draft(wanted);
    HeadGenerator head{plan, "set "};
    if (wanted.include) {
        auto library = draft(wanted);
        HeadGenerator{library, "library "}.library();
        result.library = library.pen.finish();
        plan.sets = library.sets;
        plan.random = library.random; // else the plan would begin like the library
    }
    head.file_head();
    WeekGenerator{plan, head}.weeks();
    result.text = plan.pen.finish();
    result.comments = plan.pen.comments();
    return result;
}

} // namespace lengthwise::test
