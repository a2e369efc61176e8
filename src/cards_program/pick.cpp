#include "cards_program/pick.hpp"

#include "calc/totals.hpp"
#include "report/choose.hpp"
#include "report/width.hpp"

#include <algorithm>

namespace lengthwise::cli {
namespace {

using plan::Index;
using plan::Plan;

std::vector<Index> sessions_of(Plan const& plan, report::Scope const& scope) {
    plan::Run run{0, static_cast<Index>(plan.sessions.size())};
    if (scope.kind == report::Scope::Kind::week) {
        run = plan.weeks[scope.index].sessions;
    } else if (scope.kind == report::Scope::Kind::session) {
        run = {scope.index, 1};
    }
    std::vector<Index> sessions;
    for (auto i = run.first; i < run.end(); ++i) {
        sessions.push_back(i);
    }
    return sessions;
}

plan::Swimmer const* find_swimmer(Plan const& plan, std::string const& name) {
    auto const found = std::find_if(plan.swimmers.begin(), plan.swimmers.end(),
                                    [&](plan::Swimmer const& swimmer) { return swimmer.name == name; });
    return found == plan.swimmers.end() ? nullptr : &*found;
}

/// The session as one swimmer swims it, at that swimmer's own pace.
CardWish own_card(Plan const& plan, Index session, plan::Swimmer const& swimmer) {
    auto tailored = tailor::fit(plan, session, {.pool = {}, .percent = swimmer.share.value_or(100)});
    tailored.plan.swimmers = {swimmer};
    auto const lane = swimmer.lane ? int{*swimmer.lane} : 0;
    auto whose = report::visible(swimmer.name);
    return {session, lane, std::move(whose), std::make_shared<tailor::Tailored const>(std::move(tailored))};
}

std::string no_swimmer(Plan const& plan, std::string const& asked) {
    std::string known;
    for (auto const& swimmer : plan.swimmers) {
        known += (known.empty() ? "" : ", ") + report::visible(swimmer.name);
    }
    return "no swimmer \"" + report::visible(asked) + "\"; " +
           (known.empty() ? "the plan names none" : "the plan has " + known);
}

} // namespace

PickedCards pick_cards(Plan const& plan, Cards const& options, bool ascii) {
    PickedCards picked;
    auto const scope = report::pick_scope(plan, options.wish, ascii);
    picked.problem = scope.problem;
    auto const* const swimmer = options.swimmer ? find_swimmer(plan, *options.swimmer) : nullptr;
    if (scope.found() && options.swimmer && swimmer == nullptr) {
        picked.problem = no_swimmer(plan, *options.swimmer);
    }
    if (!picked.problem.empty()) {
        return picked;
    }
    for (auto const session : sessions_of(plan, scope.scope)) {
        if (swimmer != nullptr) {
            picked.cards.push_back(own_card(plan, session, *swimmer));
            continue;
        }
        auto lanes = calc::numbers(calc::lanes_of(plan, plan.sessions[session]));
        if (options.wish.lane || lanes.empty()) {
            lanes = {options.wish.lane.value_or(0)};
        }
        for (auto const lane : lanes) {
            picked.cards.push_back({session, lane});
            for (auto const& each : plan.swimmers) {
                if (each.share && each.share != 100U && each.lane && *each.lane == lane) {
                    picked.cards.push_back(own_card(plan, session, each));
                }
            }
        }
    }
    if (picked.cards.empty()) {
        picked.problem = "the plan has no session";
    }
    return picked;
}

} // namespace lengthwise::cli
