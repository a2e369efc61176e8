#pragma once

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
    CardRows(plan::Plan const& plan, plan::Session const& session, calc::Reckoner& reckoner)
        : plan_(plan), session_(session), pool_(plan.pool_of(session)), reckoner_(reckoner) {}

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
    void split(CardRow& row, plan::Item const& item);
    void group(CardRow& row, plan::Item const& item, bool gap);
    static void unwrap(CardRow& row);
    void recovery(CardRow& row, plan::Recovery const& recovery, bool takes);
    [[nodiscard]] std::string part_words(plan::Part const& part, plan::Manner const& shared) const;
    [[nodiscard]] bool fits(plan::Item const& item);
    void count(plan::Item const& item, std::uint64_t& items) const;

    plan::Plan const& plan_;
    plan::Session const& session_;
    Pool const& pool_;
    calc::Reckoner& reckoner_;
    plan::Index longest_ = plan::no_index;
    plan::Manner held_;
    std::optional<Range<Duration>> rest_;
    bool rest_taken_ = false;
    std::uint64_t written_ = 0; ///< rows so far
};

} // namespace lengthwise::report
