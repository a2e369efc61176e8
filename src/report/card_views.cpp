#include "report/card_views.hpp"

#include "calc/longest.hpp"
#include "calc/reps.hpp"
#include "report/card_backs.hpp"
#include "report/card_rows.hpp"
#include "report/card_words.hpp"
#include "report/choose.hpp"
#include "report/deck_clock.hpp"
#include "report/session_title.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::report {
namespace {

/// A rep of so many lengths is counted off.
constexpr std::int64_t long_rep = 12;
constexpr std::int64_t minutes_a_day = 1440;

class CardMaker {
  public:
    CardMaker(plan::Plan const& plan, calc::Reckoner& reckoner, calc::Clock& clock, plan::Index index,
              int lane)
        : plan_(plan), reckoner_(reckoner), clock_(clock), index_(index), session_(plan.sessions[index]),
          pool_(plan.pool_of(session_)), lane_(lane), timed_as_(timed_as(plan, clock, index, lane)),
          rows_(plan, index, timed_as_, reckoner, clock) {}

    Card make(std::string const& whose) {
        totals_ = reckoner_.of_session(session_).swum(lane_);
        known_ = !clock_.passes_limit(index_).has_value();
        head(whose);
        strip();
        if (known_ && session_.at) {
            lines_ = clock_.lines(index_, timed_as_);
        }
        each_item([&](plan::Item const& item, plan::Index index) {
            last_ = item.is_swum() && !item.optional && item.swum_by(lane_) ? index : last_;
        });
        for (auto i = session_.sections.first; i < session_.sections.end(); ++i) {
            section(plan_.sections[i]);
        }
        foot();
        return std::move(card_);
    }

  private:
    void head(std::string const& whose) {
        auto const parts = session_title(plan_, index_, pool_, false);
        card_.title = parts[0];
        card_.whose = !whose.empty() ? whose : lane_ != 0 ? "lane " + std::to_string(lane_) : "";
        when();
        facts();
        people();
        for (auto const settings : {plan_.weeks[session_.week].settings, session_.settings}) {
            for (auto const note : plan_.settings[settings].notes) {
                card_.notes.push_back(visible(note));
            }
        }
    }

    void when() {
        auto day = session_.date ? spell::short_day(*session_.date) : day_label(session_);
        if (session_.at) {
            day += (day.empty() ? "" : ", ") + spell::time_of_day(*session_.at);
        }
        auto const length = spell::distance(pool_.length, pool_.unit);
        auto const where = pool_.kind == Pool::Kind::open_water ? "open water"
                           : pool_.has_length()                 ? "pool " + length
                                                                : "";
        if (card_.title.empty()) {
            card_.title = std::exchange(day, {}); // one of the two is known
        }
        card_.when = {joined({day, where}, " · ")};
        if (pool_.has_length() && !day.empty()) {
            card_.when.push_back(day + " · " + length);
        }
    }

    [[nodiscard]] std::string figure(Distance distance) const { return spell::number(distance, pool_.unit); }

    /// Only on a day worth it: longer than ever, or as long as the race.
    void facts() {
        auto const usual = lane_ == 0 ? calc::lowest(calc::lanes_of(plan_)) : lane_;
        auto const before = calc::longest_before(plan_, index_, usual);
        bool const beats = before && totals_.longest > before->distance;
        bool const meets = plan_.race && totals_.longest >= plan_.race->distance;
        if (totals_.longest.zero() || (!beats && !meets)) {
            return;
        }
        std::vector<std::string> parts{"longest today " + figure(totals_.longest)};
        if (before) {
            parts.push_back("before " + figure(before->distance));
        }
        if (plan_.race) {
            auto const& race = *plan_.race;
            parts.push_back("race " + (race.unit == pool_.unit ? figure(race.distance)
                                                               : spell::distance(race.distance, race.unit)));
        }
        card_.facts = {joined(parts, ", ")};
        if (parts.size() > 2) {
            card_.facts.push_back(joined({parts.begin() + 1, parts.end()}, ", "));
        }
    }

    void people() {
        auto const* const threshold = clock_.pacing(index_, timed_as_).threshold();
        if (lane_ == 0 || threshold == nullptr) {
            return;
        }
        std::vector<std::string> names;
        for (auto const& swimmer : plan_.swimmers) {
            if (swimmer.lane && *swimmer.lane == lane_) {
                names.push_back(visible(swimmer.name));
            }
        }
        card_.people = joined({joined(names, ", "), pace_text(*threshold)}, " · ");
    }

    void strip() {
        auto const longest = calc::longest_of_session(plan_, index_, lane_);
        auto const lengths = calc::lengths_of(longest.distance, pool_);
        if (lengths && *lengths >= long_rep && longest.item != plan::no_index &&
            Distance::divides(pool_.length, longest.distance)) {
            card_.strip = CardStrip{longest.distance, *lengths, pool_};
            rows_.mark(longest.item);
        }
    }

    template <typename Look>
    void each_item(Look look) const {
        for (auto i = session_.sections.first; i < session_.sections.end(); ++i) {
            auto const items = plan::items_from(plan_, plan_.sections[i].body);
            for (auto item = items.begin(); item != items.end(); ++item) {
                look(*item, item.index());
            }
        }
    }

    void section(plan::Section const& section) {
        rows_.enter(section);
        CardSection shown;
        auto const items = plan::items_from(plan_, section.body);
        std::vector<std::string> hanging; // a note line belongs to what it precedes
        for (auto item = items.begin(); item != items.end(); ++item) {
            if (!(*item).swum_by(lane_)) {
                continue;
            }
            auto row = rows_.row(*item, item.index() == last_);
            if (row.kind == CardRow::Kind::note) {
                hanging.insert(hanging.end(), row.notes.begin(), row.notes.end());
                continue;
            }
            row.notes.insert(row.notes.begin(), hanging.begin(), hanging.end());
            hanging.clear();
            sums(row, *item, item.index());
            shown.rows.push_back(std::move(row));
        }
        if (!hanging.empty()) {
            shown.rows.push_back({.kind = CardRow::Kind::note, .notes = std::move(hanging)});
        }
        auto const& heading = plan_.heading_of(section);
        shown.name = spelling(word_of(section.kind));
        shown.title = visible(heading.name);
        shown.holds = rows_.holds();
        card_.sections.push_back(std::move(shown));
    }

    void sums(CardRow& row, plan::Item const& item, plan::Index index) {
        if (!item.optional) {
            auto const totals = reckoner_.of_item(session_, item);
            so_far_ += totals.distance;
            lengths_so_far_ += totals.lengths;
        }
        row.so_far = spell::distance(so_far_, pool_.unit);
        row.lengths_so_far = pool_.has_length() ? std::to_string(lengths_so_far_) : std::string{};
        auto const line = std::ranges::lower_bound(lines_, index, {}, &calc::LineTimes::item);
        if (line != lines_.end() && line->item == index && line->start) {
            auto const at = session_.at->minutes + line->start->expected.ms() / Duration::minutes(1).ms();
            row.clock = spell::time_of_day({static_cast<std::uint16_t>(at % minutes_a_day)});
        }
    }

    void foot() {
        card_.total = spell::distance(totals_.distance, pool_.unit);
        card_.lengths = pool_.has_length() ? std::to_string(totals_.lengths) : std::string{};
        auto const takes = known_ ? clock_.session(index_, timed_as_).total() : std::nullopt;
        if (takes) {
            auto const band = band_minutes(*takes);
            if (session_.slot()) {
                card_.minutes.push_back(band + " of " + slot_minutes(*session_.slot()));
            }
            card_.minutes.push_back(band + " min");
        } else if (session_.slot()) {
            card_.minutes.push_back(spell::spaced(*session_.slot()));
        }
        card_.caution = "Breathe freely; lifeguard on deck";
    }

    plan::Plan const& plan_;
    calc::Reckoner& reckoner_;
    calc::Clock& clock_;
    plan::Index index_;
    plan::Session const& session_;
    Pool const& pool_;
    int lane_;
    int timed_as_;
    CardRows rows_;
    calc::Totals totals_;
    plan::Index last_ = plan::no_index; ///< the line after which nothing is swum
    bool known_ = true;
    std::vector<calc::LineTimes> lines_;
    Distance so_far_;
    std::int64_t lengths_so_far_ = 0;
    Card card_;
};

} // namespace

Card CardViews::card(plan::Index session, int lane, BackKind back, std::string const& whose) {
    auto card = CardMaker{plan_, reckoner_, clock_, session, lane}.make(whose);
    if (back == BackKind::pace) {
        card.back = pace_back(plan_, clock_, session, lane, card);
    } else if (back == BackKind::overview) {
        card.back = overview_back(plan_, clock_, session, lane);
    }
    return card;
}

} // namespace lengthwise::report
