#include "calc/breakdown.hpp"
#include "calc/longest.hpp"
#include "fuzz/closed_form.hpp"
#include "fuzz/promise.hpp"
#include "support/expand.hpp"

#include <map>

namespace lengthwise::fuzz {
namespace {

/// The reps of some sessions, or of one section of them.
calc::Totals one_by_one(plan::Plan const& plan, plan::Run sessions, support::Swimmer swimmer,
                        plan::Section const* only = nullptr) {
    support::Adder adder{plan};
    for (auto i = sessions.first; i < sessions.end(); ++i) {
        support::expand(plan, plan.sessions[i], swimmer, [&](auto const& rep) {
            if (only == nullptr || rep.section == only) {
                adder.add(rep);
            }
        });
    }
    return adder.totals();
}

void are_equal(plan::Plan const& plan, calc::Sums const& sums, plan::Run sessions, int lane,
               std::string_view what, plan::Section const* only = nullptr) {
    promise(sums.swum(lane) == one_by_one(plan, sessions, {lane, false}, only),
            "sums are those of reps one by one", what);
    promise(sums.if_time(lane) == one_by_one(plan, sessions, {lane, true}, only),
            "sums of lines if time are those of reps one by one", what);
}

} // namespace

void sums_are_right(plan::Plan const& plan, calc::Reckoner& reckoner, int lane) {
    for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
        auto const& session = plan.sessions[i];
        are_equal(plan, reckoner.of_session(session), {i, 1}, lane, "a session");
        for (auto k = session.sections.first; k < session.sections.end(); ++k) {
            auto const& section = plan.sections[k];
            are_equal(plan, reckoner.of_section(session, section), {i, 1}, lane, "a section", &section);
        }
    }
    for (auto const& week : plan.weeks) {
        are_equal(plan, reckoner.of_week(week), week.sessions, lane, "a week");
    }
    auto const sums = reckoner.of_plan();
    are_equal(plan, sums, {0, static_cast<plan::Index>(plan.sessions.size())}, lane, "the plan");
    promise(calc::longest_of_plan(plan, lane).distance == sums.swum(lane).longest,
            "the longest rep is that of reps one by one");
}

void words_are_right(plan::Plan const& plan, int lane) {
    for (auto const by :
         {calc::By::stroke, calc::By::mode, calc::By::effort, calc::By::gear, calc::By::section}) {
        calc::Breakdown breakdown;
        calc::BreakdownReader reader{plan, by, lane};
        support::WordAdder adder{plan, by};
        for (auto const& session : plan.sessions) {
            reader.add_session(session, breakdown);
            support::expand(plan, session, {lane, false}, [&](auto const& rep) { adder.add(rep); });
        }
        std::map<std::string, calc::Totals> words;
        for (auto const& word : breakdown.words) {
            words[calc::word_of(by, word.key)] = word.totals;
        }
        promise(words == adder.words(), "sums by word are those of reps one by one", calc::spelling(by));
    }
}

} // namespace lengthwise::fuzz
