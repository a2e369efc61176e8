#include "report/deck_facts.hpp"

#include "report/choose.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <limits>
#include <optional>
#include <string_view>

namespace lengthwise::report {
namespace {

using Longest = std::optional<Distance>;

std::string list(std::vector<std::string> const& parts) {
    return fold_parts(parts, ", ", std::numeric_limits<std::size_t>::max());
}

/// A distance as it is said here: what was swum in another pool, to the whole metre or yard.
Distance near(Distance distance, Pool const& pool) {
    auto const unit = one(pool.unit);
    bool const at_a_wall = pool.has_length() && Distance::divides(pool.length, distance);
    bool const sayable = distance.units() % (unit.units() / 24) == 0;
    return at_a_wall || sayable ? distance : unit * Distance::whole(distance * 2 + unit, unit * 2);
}

class Facts {
  public:
    Facts(Deck const& deck, bool ascii) : deck_(deck), ascii_(ascii) {}

    [[nodiscard]] std::vector<std::string> all() const {
        auto const today = [](DeckLane const& lane) {
            return lane.swum.longest.zero() ? Longest{} : Longest{lane.swum.longest};
        };
        auto const before = [](DeckLane const& lane) { return lane.before; };
        bool const known = std::any_of(deck_.lanes.begin(), deck_.lanes.end(), before);
        return {one_lane(), "longest today " + by_lane(today), known ? "before " + by_lane(before) : "",
                race(), "kit: " + (deck_.kit.empty() ? "none" : list(deck_.kit))};
    }

  private:
    [[nodiscard]] std::string one_lane() const {
        auto const lane = deck_.lanes.front().lane;
        return deck_.lanes.size() == 1 && lane != 0 ? "lane " + std::to_string(lane) : "";
    }

    /// One figure where all lanes agree, else each with its lanes.
    template <typename Of>
    [[nodiscard]] std::string by_lane(Of longest_of) const {
        std::vector<Longest> figures;
        std::vector<calc::LaneSet> lanes;
        for (auto const& lane : deck_.lanes) {
            auto const longest = longest_of(lane);
            auto const at = static_cast<std::size_t>(std::find(figures.begin(), figures.end(), longest) -
                                                     figures.begin());
            if (at == figures.size()) {
                figures.push_back(longest);
                lanes.emplace_back();
            }
            lanes[at].set(static_cast<std::size_t>(lane.lane));
        }
        std::vector<std::string> texts;
        for (std::size_t i = 0; i < figures.size(); ++i) {
            auto const whose = figures.size() > 1 ? " in " + lanes_label(lanes[i], ascii_) : "";
            texts.push_back(figure(figures[i]) + whose);
        }
        return list(texts);
    }

    [[nodiscard]] std::string figure(Longest distance) const {
        if (!distance) {
            return "-";
        }
        auto const& pool = deck_.pool;
        auto const said = near(*distance, pool);
        bool const alone = deck_.race && deck_.race->unit == pool.unit;
        return (said == *distance ? "" : "about ") +
               (alone ? spell::number(said, pool.unit, ascii_) : spell::distance(said, pool.unit, ascii_));
    }

    [[nodiscard]] std::string race() const {
        if (!deck_.race) {
            return {};
        }
        auto const& race = *deck_.race;
        auto const text = "race " + spell::distance(race.distance, race.unit, ascii_);
        return race.unit == deck_.pool.unit ? text : text + " (" + figure(race.distance) + ")";
    }

    Deck const& deck_;
    bool ascii_;
};

} // namespace

std::vector<std::string> deck_facts(Deck const& deck, bool ascii) {
    return Facts{deck, ascii}.all();
}

} // namespace lengthwise::report
