#include "report/deck_hand.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::report {
namespace {

constexpr std::size_t most = 12; ///< marks that can be taken in at a glance: send-offs in steps of 5 s

} // namespace

std::string marks_text(calc::Hand const& hand, bool ascii) {
    std::string text;
    for (std::size_t i = 0; i < std::min(hand.marks.size(), most); ++i) {
        text += fmt::format("{}{:02}", i == 0 ? "" : " ", hand.marks[i]);
    }
    bool const all = hand.marks.size() <= most && !hand.more;
    return text + (all ? "" : ascii ? " ..." : " …");
}

std::string hand_text(plan::Plan const& plan, std::optional<calc::SendOffs> const& set, bool ascii) {
    if (!set || set->starts < 2) {
        return {};
    }
    auto const hand = calc::hand_at_starts(calc::steps_of(plan, *set), set->starts);
    return hand ? "hand " + marks_text(*hand, ascii) : "";
}

} // namespace lengthwise::report
