#include "report/deck_view.hpp"

#include "calc/kit.hpp"
#include "calc/longest.hpp"
#include "calc/tight_start.hpp"
#include "grammar/words.hpp"
#include "report/choose_swimmer.hpp"
#include "report/deck_clock.hpp"
#include "report/deck_hand.hpp"
#include "report/deck_queue.hpp"
#include "report/default_rest.hpp"
#include "report/line_speller.hpp"
#include "report/rep_lengths.hpp"
#include "report/session_title.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>

namespace lengthwise::report {
namespace {

using plan::Index;
using plan::Item;
using plan::Plan;

/// Cells for the lengths of one rep.
constexpr std::size_t rep_room = 9;

/// Works out one session, row by row.
class DeckMaker {
  public:
    /// `whole` is the plan as it stands in the file.
    DeckMaker(Plan const& whole, DeckOptions const& options, tailor::Tailored const* tailored)
        : whole_(whole), written_(whole.sessions[options.session]),
          plan_(tailored != nullptr ? tailored->plan : whole),
          session_(tailored != nullptr ? tailored->session() : written_), options_(options),
          tailored_(tailored), reckoner_(plan_), speller_(plan_, session_),
          written_speller_(whole_, written_), kit_(plan_), index_(tailored != nullptr ? 0 : options.session),
          timer_(plan_, index_), send_offs_(plan_) {}

    Deck make() {
        deck_.pool = plan_.pool_of(session_);
        deck_.race = plan_.race;
        deck_.rest = default_rest(plan_, session_);
        if (tailored_ != nullptr) {
            deck_.move = DeckMove{whole_.pool_of(written_), tailored_->percent, {}};
        }
        head();
        lanes();
        clock();
        for (auto i = session_.sections.first; i < session_.sections.end(); ++i) {
            section(plan_.sections[i]);
        }
        kit();
        if (queue_) {
            deck_.queue = queue_->foot();
        }
        return std::move(deck_);
    }

  private:
    void head() {
        auto const& pool = whole_.pool_of(written_);
        deck_.title = session_title(whole_, options_.session, deck_.pool, options_.ascii);
        if (pool.has_length() && pool != deck_.pool) {
            deck_.title.back() += " instead of " + spell::distance(pool.length, pool.unit, options_.ascii);
        }
        if (options_.swimmer != nullptr) {
            deck_.title.insert(deck_.title.begin() + 1, swimmer_label(*options_.swimmer));
        }
        notes(plan_.weeks[session_.week].settings);
        notes(session_.settings);
    }

    void notes(Index settings) {
        for (auto const note : plan_.settings[settings].notes) {
            deck_.notes.push_back(visible(note));
        }
    }

    /// A session without lane lines is compared with what the plan's lowest lane has swum.
    void lanes() {
        auto const sums = reckoner_.of_session(session_);
        auto numbers = calc::numbers(sums.lanes());
        if (options_.lane || numbers.empty()) {
            numbers = {options_.lane.value_or(0)};
        }
        auto const usual = calc::lowest(calc::lanes_of(whole_));
        auto const& swum = options_.swum != nullptr ? *options_.swum : whole_;
        for (auto const lane : numbers) {
            auto const before = calc::longest_before(swum, options_.session, lane == 0 ? usual : lane);
            deck_.lanes.push_back({lane, sums.swum(lane), sums.if_time(lane),
                                   before ? std::optional{before->distance} : std::nullopt});
        }
        so_far_.resize(deck_.lanes.size());
    }

    void clock() {
        std::vector<int> lanes;
        for (auto const& lane : deck_.lanes) {
            lanes.push_back(lane.lane);
        }
        deck_.clock = timer_.read(lanes, options_.start);
        if (options_.queue) {
            queue_.emplace(plan_, index_, timer_.clock(), *options_.queue, options_.ascii);
            queue_->find(deck_.clock);
        }
    }

    void section(plan::Section const& section) {
        deck_.sections.push_back({speller_.heading(section), {}});
        auto const items = plan::items_from(plan_, section.body);
        for (auto item = items.begin(); item != items.end(); ++item) {
            number_ += (*item).is_swum() && !(*item).optional ? 1 : 0;
            auto swum = swum_by(*item);
            if (std::find(swum.begin(), swum.end(), true) != swum.end()) {
                row(*item, item.index(), std::move(swum));
            }
        }
    }

    [[nodiscard]] std::vector<bool> swum_by(Item const& item) const {
        std::vector<bool> swum;
        for (auto const& lane : deck_.lanes) {
            swum.push_back(item.swum_by(lane.lane));
        }
        return swum;
    }

    [[nodiscard]] static std::string lanes_label(Item const& item) {
        if (!item.optional || !item.has_lanes()) {
            return {};
        }
        auto const last = item.last_lane > item.first_lane ? "-" + std::to_string(item.last_lane) : "";
        return "lane " + std::to_string(item.first_lane) + last + ": ";
    }

    void row(Item const& item, Index index, std::vector<bool> swum) {
        DeckRow row;
        row.set = speller_.spell(item);
        row.lanes = lanes_label(item);
        row.swum = std::move(swum);
        row.start.resize(deck_.lanes.size());
        if (item.is_swum()) {
            figures(row, item);
            row.start = timer_.starts(index);
            below(row, index);
            compare(row, index);
            kit_.add(item);
        } else if (item.kind == Item::Kind::pause) {
            row.kind = DeckRow::Kind::pause;
        }
        row.so_far = so_far_;
        deck_.sections.back().rows.push_back(std::move(row));
    }

    [[nodiscard]] std::vector<int> timed_lanes(DeckRow const& row) {
        std::vector<int> lanes;
        for (std::size_t i = 0; i < row.swum.size(); ++i) {
            if (row.swum[i]) {
                lanes.push_back(timed_as(plan_, timer_.clock(), index_, deck_.lanes[i].lane));
            }
        }
        return lanes;
    }

    /// The pace clock shows send-offs only where everybody leaves by them.
    void below(DeckRow& row, Index index) {
        auto set = send_offs_.of(plan_.items[index]);
        if (set && !calc::starts_are_made(plan_, timer_.clock(), index_, timed_lanes(row), *set)) {
            set.reset();
        }
        if (queue_) {
            row.queue = queue_->below(index, set);
        }
        if (!queue_ || queue_->empty()) {
            row.hand = hand_text(plan_, set, options_.ascii);
        }
    }

    void figures(DeckRow& row, Item const& item) {
        auto const totals = reckoner_.of_item(session_, item);
        row.kind = item.optional ? DeckRow::Kind::optional : DeckRow::Kind::line;
        row.number = item.optional ? 0 : number_;
        row.rep = rep_lengths(plan_, deck_.pool, item, rep_room, options_.ascii);
        row.lengths = totals.lengths;
        row.timed = totals.timed;
        for (std::size_t i = 0; i < so_far_.size(); ++i) {
            so_far_[i] += row.swum[i] && !item.optional ? totals.distance : Distance{};
        }
    }

    void compare(DeckRow& row, Index index) {
        if (tailored_ == nullptr) {
            return;
        }
        auto const among = [&](std::vector<Index> const& lines) {
            return std::binary_search(lines.begin(), lines.end(), index);
        };
        row.changed = among(tailored_->changed);
        if (row.changed) {
            deck_.move->changed.push_back({row.number, among(tailored_->timed), row.lanes,
                                           written_speller_.spell(whole_.items[index])});
        }
    }

    void kit() {
        for (int gear = 0; gear < gear_words; ++gear) {
            if (kit_.kit().has(static_cast<Gear>(gear))) {
                deck_.kit.emplace_back(spelling(word_of(static_cast<Gear>(gear))));
            }
        }
    }

    Plan const& whole_;
    plan::Session const& written_;
    Plan const& plan_;
    plan::Session const& session_;
    DeckOptions const& options_;
    tailor::Tailored const* tailored_;
    calc::Reckoner reckoner_;
    LineSpeller speller_;
    LineSpeller written_speller_;
    calc::KitReader kit_;
    Index index_; ///< of the session in plan_
    DeckTimer timer_;
    calc::SendOffReader send_offs_;
    std::optional<QueueReader> queue_;
    Deck deck_;
    int number_ = 0;
    std::vector<Distance> so_far_; ///< by lane
};

} // namespace

Deck deck_view(Plan const& plan, DeckOptions const& options) {
    return DeckMaker{plan, options, nullptr}.make();
}

Deck deck_view(Plan const& plan, DeckOptions const& options, tailor::Tailored const& tailored) {
    return DeckMaker{plan, options, &tailored}.make();
}

} // namespace lengthwise::report
