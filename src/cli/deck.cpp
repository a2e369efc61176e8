#include "calc/lane.hpp"
#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "report/choose.hpp"
#include "report/choose_swimmer.hpp"
#include "report/deck_text.hpp"
#include "report/late_text.hpp"
#include "tailor/late.hpp"
#include "tailor/pool.hpp"
#include "tailor/swimmer.hpp"

namespace lengthwise::cli {

namespace {

/// The session as it is, or made to fit another pool, one swimmer, or both.
report::Deck view(plan::Plan const& plan, report::DeckOptions shown, Deck const& options,
                  std::optional<plan::Index> swimmer) {
    if (swimmer) {
        auto const own = tailor::swum_by(plan, *swimmer);
        shown.swimmer = &plan.swimmers[*swimmer];
        shown.swum = &own;
        return report::deck_view(plan, shown, tailor::fit(plan, shown.session, *swimmer, options.pool));
    }
    if (!options.pool) {
        return report::deck_view(plan, shown);
    }
    auto const tailored = tailor::fit(plan, shown.session, {.pool = options.pool});
    return report::deck_view(plan, shown, tailored);
}

/// A session that runs late: what to swim of it.
int late(plan::Plan const& plan, tailor::LateWish const& wish, bool moved, Console& console) {
    auto const late = tailor::late(plan, wish);
    if (late.problem != tailor::Late::Problem::none) {
        console.say(report::late_problem(plan, wish, late, console.ascii));
        return late.problem == tailor::Late::Problem::no_pace ? has_errors : misused;
    }
    report::LateStyle const style{.width = console.width, .ascii = console.ascii, .moved = moved};
    console.out.write(report::late_text(plan, wish, late, style, console.out_paint));
    return fine;
}

/// The same, perhaps in another pool or for one swimmer.
int late(plan::Plan const& plan, plan::Index session, Deck const& options, report::PickedSwimmer const& who,
         Console& console) {
    tailor::LateWish wish{.session = session,
                          .after = static_cast<int>(options.after.value_or(0)),
                          .left = *options.left,
                          .lane = who.lane};
    if (!options.pool && !who.index) {
        return late(plan, wish, false, console);
    }
    auto const tailored = who.index ? tailor::fit(plan, session, *who.index, options.pool)
                                    : tailor::fit(plan, session, {.pool = options.pool});
    wish.session = 0;
    return late(tailored.plan, wish, options.pool.has_value(), console);
}

/// Asked for by either of its options.
std::optional<report::DeckQueue> queue(Deck const& options) {
    return options.gap || options.swimmers
               ? std::optional{report::DeckQueue{options.gap.value_or(calc::usual_gap), options.swimmers}}
               : std::nullopt;
}

} // namespace

int deck(Deck const& options, Files& files, Console& console) {
    auto const one = load_one("deck", options.files, files, console);
    if (!one.plan) {
        return one.code;
    }
    auto const& plan = one.plan->plan();
    auto const picked = report::pick_session(plan, options.wish, options.today, console.ascii);
    auto const who = report::pick_swimmer(plan, options.wish);
    if (!who.found() || !picked.found()) {
        console.say(who.found() ? picked.problem : who.problem);
        return misused;
    }
    if (options.left) {
        return late(plan, picked.scope.index, options, who, console);
    }
    report::DeckOptions const shown{.session = picked.scope.index,
                                    .lane = who.lane,
                                    .ascii = console.ascii,
                                    .start = options.start,
                                    .queue = queue(options)};
    console.out.write(report::deck_text(view(plan, shown, options, who.index),
                                        {.width = console.width, .ascii = console.ascii}, console.out_paint));
    say_warnings(*one.plan, picked.scope, console);
    return fine;
}

} // namespace lengthwise::cli
