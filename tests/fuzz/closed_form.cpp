#include "fuzz/closed_form.hpp"
#include "calc/reserve.hpp"
#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "fuzz/promise.hpp"
#include "fuzz/target.hpp"
#include "support/closed_form.hpp"

/// Closed forms against the same reckoned rep by rep, for plans that are small enough for it.
namespace lengthwise::fuzz {
namespace {

constexpr std::int64_t most_reps = 5'000;
constexpr std::int64_t most_pieces = 20'000;
constexpr std::ptrdiff_t most_lanes = 7;

/// Rests that a rep is broken by are walked through too.
std::int64_t pieces_of(plan::Plan const& plan) {
    std::int64_t most = 1;
    for (auto const& terms : plan.terms) {
        if (terms.broken.piece > 0) {
            auto const rep =
                terms.broken.timed ? Duration::minutes(24 * 60).ms() : Distance::metres(100'000).units();
            most = std::max(most, rep / terms.broken.piece);
        }
    }
    return most;
}

bool is_small(plan::Plan const& plan) {
    calc::Reckoner reckoner{plan};
    std::int64_t reps = 0;
    for (auto const& session : plan.sessions) {
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            for (auto const& item : plan::items_from(plan, plan.sections[i].body)) {
                reps += item.is_swum() ? reckoner.of_item(session, item).reps : 0;
            }
        }
    }
    return reps <= most_reps && reps * pieces_of(plan) <= most_pieces * most_reps &&
           plan.sessions.size() <= 20;
}

/// Nobody's lane among them, as the last.
std::vector<int> some_lanes(plan::Plan const& plan) {
    auto lanes = support::lanes_to_try(plan);
    if (std::ssize(lanes) > most_lanes) {
        lanes.erase(lanes.begin() + most_lanes - 1, lanes.end() - 1);
    }
    return lanes;
}

} // namespace

void run(std::string_view bytes) {
    auto const reading = read(texts_of(bytes));
    if (!reading.clean() || !is_small(reading.plan())) {
        return;
    }
    auto const& plan = reading.plan();
    calc::Reckoner reckoner{plan};
    calc::Clock clock{plan};
    calc::Reserve reserve{plan, clock};
    for (int const lane : some_lanes(plan)) {
        sums_are_right(plan, reckoner, lane);
        for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
            times_are_right(plan, clock, i, lane);
            reserve_is_right(plan, clock, reserve, i, lane);
        }
    }
    words_are_right(plan, calc::lowest(calc::lanes_of(plan)));
}

} // namespace lengthwise::fuzz
