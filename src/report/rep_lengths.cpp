#include "report/rep_lengths.hpp"

#include "calc/reps.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <unordered_set>

namespace lengthwise::report {
namespace {

using plan::Index;
using plan::Item;

/// Spells a line's reps in their order, and gives up once there is no more room.
class RepSpeller {
  public:
    RepSpeller(plan::Plan const& plan, Pool const& pool, std::size_t room)
        : plan_(plan), pool_(pool), room_(room) {}

    std::optional<std::string> spell(Item const& item) {
        add(item);
        return full() ? std::nullopt : std::optional{text_};
    }

  private:
    void add(Item const& item) {
        if (item.is_leaf()) {
            Index const rungs = item.is_ladder() ? item.count : 1;
            for (Index i = 0; i < rungs && !full(); ++i) {
                text_ += i > 0 ? "," : "";
                text_ += one(item, item.is_ladder() ? plan_.rungs[item.body + i] : item.amount);
            }
        } else if (item.kind == Item::Kind::use) {
            add(plan_.items[item.body]);
        } else {
            add_round(item);
        }
    }

    void add_round(Item const& group) {
        char const* joint = "";
        for (Item const& inner : plan::items_from(plan_, group.body)) {
            if (full()) {
                return;
            }
            text_ += joint;
            joint = "+";
            add(inner);
        }
    }

    [[nodiscard]] std::string one(Item const& item, std::int64_t amount) const {
        return item.is_timed() ? spell::duration(Duration::ms(amount))
                               : std::to_string(calc::lengths_of(Distance::units(amount), pool_).value_or(0));
    }

    [[nodiscard]] bool full() const { return cells(text_) > room_; }

    plan::Plan const& plan_;
    Pool const& pool_;
    std::size_t room_;
    std::string text_;
};

/// The shortest and the longest rep of a line, in lengths and in time.
class Extremes {
  public:
    Extremes(plan::Plan const& plan, Pool const& pool) : plan_(plan), pool_(pool) {}

    void add(Item const& item) {
        if (item.is_leaf()) {
            calc::each_rep(plan_, item, [&](std::int64_t amount, plan::Terms const&, std::int64_t) {
                auto const lengths = calc::lengths_of(Distance::units(amount), pool_).value_or(0);
                widen(item.is_timed() ? time_ : lengths_, item.is_timed() ? amount : lengths);
            });
        } else if (item.kind == Item::Kind::use) {
            add_once(item.body, [&] { add(plan_.items[item.body]); });
        } else if (item.is_swum()) {
            add_once(item.body, [&] {
                for (Item const& inner : plan::items_from(plan_, item.body)) {
                    add(inner);
                }
            });
        }
    }

    [[nodiscard]] std::string spell(bool ascii) const {
        if (lengths_) {
            auto const low = std::to_string(lengths_->low);
            return lengths_->single() ? low : low + (ascii ? "-" : "–") + std::to_string(lengths_->high);
        }
        return time_ ? spell::range({Duration::ms(time_->low), Duration::ms(time_->high)}, ascii) : "";
    }

  private:
    using Ends = std::optional<Range<std::int64_t>>;

    static void widen(Ends& ends, std::int64_t value) {
        ends = ends ? Range<std::int64_t>{std::min(ends->low, value), std::max(ends->high, value)}
                    : Range<std::int64_t>{value, value};
    }

    /// What several places share is looked at once.
    template <typename Look>
    void add_once(Index body, Look look) {
        if (seen_.insert(body).second) {
            look();
        }
    }

    plan::Plan const& plan_;
    Pool const& pool_;
    std::unordered_set<Index> seen_;
    Ends lengths_;
    Ends time_;
};

} // namespace

std::string rep_lengths(plan::Plan const& plan, Pool const& pool, Item const& item, std::size_t room,
                        bool ascii) {
    if (!pool.has_length() || !item.is_swum()) {
        return {};
    }
    if (auto text = RepSpeller{plan, pool, room}.spell(item)) {
        return *text;
    }
    Extremes extremes{plan, pool};
    extremes.add(item);
    return extremes.spell(ascii);
}

} // namespace lengthwise::report
