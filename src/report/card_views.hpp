#pragma once

#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "report/card_view.hpp"

#include <string>

namespace lengthwise::report {

/// What is printed on the other side.
enum class BackKind : std::uint8_t { none, overview, pace };

/// Makes the cards of one plan; it remembers what sessions share.
class CardViews {
  public:
    explicit CardViews(plan::Plan const& plan) : plan_(plan), reckoner_(plan), clock_(plan) {}

    /// The card of a session for one lane, 0 where it names none. `whose` beats "lane 1" at its head.
    [[nodiscard]] Card card(plan::Index session, int lane, BackKind back = BackKind::none,
                            std::string const& whose = {});

  private:
    plan::Plan const& plan_;
    calc::Reckoner reckoner_;
    calc::Clock clock_;
};

} // namespace lengthwise::report
