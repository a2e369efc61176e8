#pragma once

#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "report/card_view.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace lengthwise::report {

/// Puts the items of one session into rows: what a named set holds instead of its name, unless
/// that would fill many cards.
class CardRows {
  public:
    /// Timed as lane `timed_as` (report::timed_as).
    CardRows(plan::Plan const& plan, plan::Index session, int timed_as, calc::Reckoner& reckoner,
             calc::Clock& clock)
        : plan_(plan), index_(session), session_(plan.sessions[session]), timed_as_(timed_as),
          pool_(plan.pool_of(session_)), reckoner_(reckoner), clock_(clock) {}

    /// What a section holds for all its rows, which then do not say it again.
    void enter(plan::Section const& section);
    /// "easy", "rest 20s", asked for when the section's rows are made: the rest is said only if one takes it.
    [[nodiscard]] std::vector<std::string> holds() const;

    /// A line of the section. `last`: no rep of the session follows.
    [[nodiscard]] CardRow row(plan::Item const& item, bool last);

    /// The leaf that row() marks as the longest; Plan::items' index.
    void mark(plan::Index longest) { longest_ = longest; }

  private:
    [[nodiscard]] CardRow swum(plan::Item const& item, bool gap);
    void leaf(CardRow& row, plan::Item const& item, bool gap);
    [[nodiscard]] std::string hand(plan::Item const& item);
    void split(CardRow& row, plan::Item const& item);
    void group(CardRow& row, plan::Item const& item, bool gap);
    static void unwrap(CardRow& row);
    void recovery(CardRow& row, plan::Recovery const& recovery, bool takes);
    [[nodiscard]] std::string part_words(plan::Part const& part, plan::Manner const& shared) const;
    [[nodiscard]] bool fits(plan::Item const& item);
    void count(plan::Item const& item, std::uint64_t& items) const;

    plan::Plan const& plan_;
    plan::Index index_; ///< of the session
    plan::Session const& session_;
    int timed_as_;
    Pool const& pool_;
    calc::Reckoner& reckoner_;
    calc::Clock& clock_;
    plan::Index longest_ = plan::no_index;
    plan::Manner held_;
    std::optional<Range<Duration>> rest_;
    bool rest_taken_ = false;
    std::uint64_t written_ = 0; ///< rows so far
};

} // namespace lengthwise::report
