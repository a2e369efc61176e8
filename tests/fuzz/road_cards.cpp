#include "calc/totals.hpp"
#include "cards/back.hpp"
#include "cards/card.hpp"
#include "cards/sheet.hpp"
#include "cards/svg.hpp"
#include "fuzz/promise.hpp"
#include "fuzz/road.hpp"
#include "report/card_views.hpp"
#include "support/card_checks.hpp"
#include "support/xml_fault.hpp"

namespace lengthwise::fuzz {
namespace {

using support::Hole;

void are_in_order(std::vector<cards::Picture> const& pictures, cards::Wanted const& wanted, Hole hole,
                  std::string_view sentence) {
    for (auto const& picture : pictures) {
        no_fault(support::fault_of(picture, wanted.distance, wanted.hole ? hole : Hole::none), sentence);
    }
}

std::string drawn(report::Card const& card, cards::Wanted const& wanted) {
    support::FakeMeasure measure;
    auto laid = cards::lay_out(card, wanted, measure);
    if (!laid.problem.empty()) {
        return laid.problem;
    }
    are_in_order(laid.fronts, wanted, Hole::right, "texts on a card stand inside, apart and large enough");
    no_fault(support::lost_on(laid, card, !wanted.back), "nothing of a session is lost on its cards");
    if (wanted.back) {
        auto const backs =
            cards::backs_of(card, laid.strip, wanted.size, wanted.distance, wanted.hole, measure);
        are_in_order(backs, wanted, Hole::left,
                     "texts on a card's back stand inside, apart and large enough");
        laid.fronts.insert(laid.fronts.end(), backs.begin(), backs.end());
    }
    auto svg = cards::svg(laid.fronts, card.title);
    no_fault(support::xml_fault(svg), "cards are well-formed XML");
    return svg;
}

} // namespace

std::string cards_shown(plan::Plan const& plan, plan::Index session, std::uint64_t choice) {
    report::CardViews views{plan};
    auto const lanes = calc::numbers(calc::lanes_of(plan, plan.sessions[session]));
    auto const back = choice % 2 == 0   ? report::BackKind::none
                      : choice % 4 == 1 ? report::BackKind::overview
                                        : report::BackKind::pace;
    auto const card = views.card(session, lanes.empty() ? 0 : lanes[choice % lanes.size()], back);
    std::string text;
    auto const& sizes = cards::card_sizes();
    for (auto const* const size : {&sizes[choice % sizes.size()], cards::find_card_size("quarter")}) {
        text += drawn(card, {.size = cards::size_on(*size, cards::a4, cards::usual_margin),
                             .distance = choice % 5 == 0 ? 1500.0 : 700.0,
                             .hole = choice % 3 == 0,
                             .back = card.back.has_value()});
    }
    return text;
}

} // namespace lengthwise::fuzz
