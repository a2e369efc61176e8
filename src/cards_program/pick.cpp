#include "cards_program/pick.hpp"

#include "calc/totals.hpp"
#include "report/choose.hpp"
#include "report/choose_swimmer.hpp"

namespace lengthwise::cli {
namespace {

using plan::Index;
using plan::Plan;

plan::Run sessions_of(Plan const& plan, report::Scope const& scope) {
    switch (scope.kind) {
    case report::Scope::Kind::session:
        return {scope.index, 1};
    case report::Scope::Kind::week:
        return plan.weeks[scope.index].sessions;
    case report::Scope::Kind::plan:
        break;
    }
    return {0, static_cast<Index>(plan.sessions.size())};
}

/// Swims less or more than the lane's line says.
bool has_share(plan::Swimmer const& swimmer) {
    return swimmer.share && *swimmer.share != 100;
}

void add_lane(Plan const& plan, Index session, int lane, std::vector<CardWish>& cards) {
    cards.push_back({session, lane, {}});
    for (Index i = 0; i < plan.swimmers.size(); ++i) {
        auto const& swimmer = plan.swimmers[i];
        if (has_share(swimmer) && swimmer.lane && *swimmer.lane == lane) {
            cards.push_back({session, lane, i});
        }
    }
}

} // namespace

PickedCards pick_cards(Plan const& plan, Cards const& options, bool ascii) {
    PickedCards picked;
    auto const scope = report::pick_scope(plan, options.wish, ascii);
    auto const who = report::pick_swimmer(plan, options.wish);
    picked.problem = who.found() ? scope.problem : who.problem;
    if (!picked.problem.empty()) {
        return picked;
    }
    auto const sessions = sessions_of(plan, scope.scope);
    for (auto session = sessions.first; session < sessions.end(); ++session) {
        if (who.index) {
            picked.cards.push_back({session, who.lane.value_or(0), who.index});
            continue;
        }
        auto lanes = calc::numbers(calc::lanes_of(plan, plan.sessions[session]));
        if (options.wish.lane || lanes.empty()) {
            lanes = {options.wish.lane.value_or(0)};
        }
        for (auto const lane : lanes) {
            add_lane(plan, session, lane, picked.cards);
        }
    }
    if (picked.cards.empty()) {
        picked.problem = "no session";
    }
    return picked;
}

} // namespace lengthwise::cli
