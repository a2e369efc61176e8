#include "tailor/late.hpp"

#include "calc/timeline.hpp"
#include "tailor/late_lines.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace lengthwise::tailor {
namespace {

using plan::Index;
using plan::Item;
using plan::Plan;
using Places = std::vector<std::size_t>; ///< in Late::lines

/// How many rows are timed with one of them put back: a session of a hundred thousand lines ends, too.
constexpr std::size_t most_put_back = 8;

/// One lane and the lines that it may swim.
class LateMaker {
  public:
    LateMaker(Plan const& plan, LateWish const& wish)
        : plan_(plan), wish_(wish), clock_(plan), stays_(plan.items.size()), late_(late_lines(plan, wish)) {}

    Late make() {
        if (late_.problem == Late::Problem::none && known()) {
            long_rows_ = long_rows(plan_, wish_, late_);
            leave_out();
            fill();
            put_back();
            cut();
        }
        return std::move(late_);
    }

  private:
    /// Else the lanes of unknown pace are all that is said.
    bool known() {
        keep({});
        std::vector<LateLane> unknown;
        std::copy_if(late_.lanes.begin(), late_.lanes.end(), std::back_inserter(unknown),
                     [this](LateLane const& lane) { return !lines(lane.lane).back().end; });
        if (unknown.empty()) {
            return true;
        }
        late_.lanes = std::move(unknown);
        late_.problem = Late::Problem::no_pace;
        return false;
    }

    /// While a lane is over, all of its lines that stand before in the order have gone. So what it
    /// needs to leave out depends on no other lane, and what goes is what any of them needs to.
    void leave_out() {
        order_ = dropping_order(plan_, long_rows_, late_);
        Places gone;
        for (auto const& lane : late_.lanes) {
            Places own;
            std::copy_if(order_.begin(), order_.end(), std::back_inserter(own),
                         [&](std::size_t place) { return item(place).swum_by(lane.lane); });
            own.resize(needed(lane.lane, own));
            gone.insert(gone.end(), own.begin(), own.end());
        }
        for (auto const place : gone) {
            late_.lines[place].left_out = true;
        }
    }

    /// How many of its own a lane needs to leave out: leaving out one more never takes longer.
    std::size_t needed(int lane, Places const& own) {
        std::size_t low = 0;
        auto high = own.size();
        while (low < high) {
            auto const count = (low + high) / 2;
            keep({own.begin(), own.begin() + static_cast<std::ptrdiff_t>(count)});
            if (end(lane).high <= wish_.left) {
                high = count;
            } else {
                low = count + 1;
            }
        }
        return high;
    }

    /// Times of what stays.
    void fill() {
        keep(left_out());
        for (std::size_t i = 0; i < late_.lanes.size(); ++i) {
            auto const lane = late_.lanes[i].lane;
            late_.lanes[i].end = end(lane);
            auto const swum = lines(lane);
            auto next = swum.begin();
            for (auto& line : late_.lines) {
                auto& cell = line.lanes[i];
                bool const row = plan_.items[line.item].is_swum();
                cell.stays = stays_[line.item] && plan_.items[line.item].swum_by(lane);
                // A pause before the lane's first row, or behind its last, is none.
                cell.stays = cell.stays && (row || (next != swum.begin() && next != swum.end()));
                if (cell.stays && row) {
                    cell.start = next->start->high;
                    ++next;
                }
            }
        }
        for (auto& line : late_.lines) {
            line.left_out = std::none_of(line.lanes.begin(), line.lanes.end(),
                                         [](LateCell const& cell) { return cell.stays; });
        }
    }

    /// When a lane would end with a row put back: for those that would go back first.
    void put_back() {
        auto const out = left_out();
        std::size_t rows = 0;
        for (auto place = order_.rbegin(); place != order_.rend() && rows < most_put_back; ++place) {
            if (!late_.lines[*place].left_out || late_.lines[*place].number == 0) {
                continue;
            }
            auto without = out;
            std::erase(without, *place);
            keep(without);
            for (std::size_t i = 0; i < late_.lanes.size(); ++i) {
                auto const lane = late_.lanes[i].lane;
                if (item(*place).swum_by(lane)) {
                    late_.lines[*place].lanes[i].with_it = end(lane).high;
                }
            }
            ++rows;
        }
    }

    /// A lane that is over with its long rep still to come: how long might it be?
    void cut() {
        keep(left_out());
        for (std::size_t i = 0; i < late_.lanes.size(); ++i) {
            auto const row = long_rows_[i];
            if (late_.lanes[i].end.high > wish_.left && row != plan::no_index && stays_[row]) {
                late_.lanes[i].shorter = shorter(late_.lanes[i].lane, row);
            }
        }
    }

    /// Of a single unbroken rep alone: what else could be cut is for the coach to see.
    std::optional<ShorterRep> shorter(int lane, Index row) {
        auto const& written = plan_.items[row];
        auto const& terms = plan_.terms[written.terms];
        auto const& pool = plan_.pool_of(plan_.sessions[wish_.session]);
        if (written.kind != Item::Kind::reps || written.count > 1 || !terms.parts.empty() ||
            !terms.selections.empty() || terms.broken.piece > 0 || !pool.has_length()) {
            return std::nullopt;
        }
        auto cut = plan_;
        auto const end_at = [&](std::int64_t laps) {
            cut.items[row].set(lap(pool) * laps);
            calc::Clock clock{cut};
            return end(clock, lane).high;
        };
        auto const laps = Distance::ceiling(written.distance(), lap(pool));
        std::int64_t fits = 0;
        for (auto too_long = laps; too_long - fits > 1;) {
            auto const middle = (fits + too_long) / 2;
            (end_at(middle) <= wish_.left ? fits : too_long) = middle;
        }
        return fits > 0 ? std::optional{ShorterRep{written.distance(), lap(pool) * fits, end_at(fits)}}
                        : std::nullopt;
    }

    [[nodiscard]] Item const& item(std::size_t place) const { return plan_.items[late_.lines[place].item]; }

    [[nodiscard]] Places left_out() const {
        Places out;
        for (std::size_t place = 0; place < late_.lines.size(); ++place) {
            if (late_.lines[place].left_out) {
                out.push_back(place);
            }
        }
        return out;
    }

    /// All lines stay but those at `without`.
    void keep(Places const& without) {
        for (auto const& line : late_.lines) {
            stays_[line.item] = true;
        }
        for (auto const place : without) {
            stays_[late_.lines[place].item] = false;
        }
    }

    /// Pauses go with the row before them in a lane.
    std::vector<calc::LineTimes> lines(calc::Clock& clock, int lane) {
        bool row_stays = true;
        for (auto const& line : late_.lines) {
            auto const& item = plan_.items[line.item];
            if (!item.is_swum()) {
                stays_[line.item] = row_stays;
            } else if (line.number > 0 && item.swum_by(lane)) {
                row_stays = stays_[line.item];
            }
        }
        return clock.lines(wish_.session, lane, [this](Index index) { return stays_[index]; });
    }
    std::vector<calc::LineTimes> lines(int lane) { return lines(clock_, lane); }

    Band<Duration> end(calc::Clock& clock, int lane) {
        auto const swum = lines(clock, lane);
        return swum.empty() ? Band<Duration>{} : *swum.back().end;
    }
    Band<Duration> end(int lane) { return end(clock_, lane); }

    Plan const& plan_;
    LateWish const& wish_;
    calc::Clock clock_;
    std::vector<bool> stays_; ///< beside Plan::items; of pauses as the lane timed last has them
    Late late_;
    std::vector<Index> long_rows_;
    Places order_;
};

} // namespace

Late late(Plan const& plan, LateWish const& wish) {
    return LateMaker{plan, wish}.make();
}

} // namespace lengthwise::tailor
