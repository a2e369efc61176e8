#pragma once

#include "compose/main_sets.hpp"
#include "compose/place.hpp"

#include <string>
#include <string_view>
#include <vector>

/// Which set a day of pace and technique has.
namespace lengthwise::compose {

/// A main part as it is handed out.
struct MainSet {
    std::string title{};
    std::vector<std::string> notes{}; ///< at its top
    std::vector<Line> lines{};
    Laps spare = 0; ///< laps of it that are left over, at most two
};

/// Remembers what was swum, so that neighbouring weeks differ and a set comes back harder.
class SetBook {
  public:
    /// For each day but the long one, in order, once; `laps` is 4 or more.
    [[nodiscard]] MainSet next(Place const& place, Laps laps);

  private:
    struct Use {
        DayKind day;
        Set set;
        int week;
        int build; ///< build weeks so far; 0: an easy or a taper week, which is nothing to come back to
        Line line; ///< its own, without what is swum beside it
        Laps laps;
    };
    struct Found {
        Set set;
        std::vector<Line> lines;
        Laps spare;
        std::size_t own; ///< the line that is the set's
    };

    [[nodiscard]] static std::string title_of(Found const& found);
    [[nodiscard]] int visit(Set set, Place const& place) const;
    [[nodiscard]] bool is_neighbour(Set set, Place const& place) const;
    [[nodiscard]] bool is_this_week(Set set, Place const& place) const;
    [[nodiscard]] std::optional<Found> fitting(Set set, Place const& place, Laps laps) const;
    [[nodiscard]] std::optional<Found> behind_block(Set set, Place const& place, Laps laps) const;
    [[nodiscard]] Found plain_rows(Place const& place, Laps laps) const;
    [[nodiscard]] Found choose(Place const& place, Laps laps) const;
    [[nodiscard]] std::string known(Place const& place, Found const& found) const;

    std::vector<Use> uses_;
};

/// Said in the last session.
inline constexpr std::string_view nothing_new = "Nothing new now: suit, goggles, breakfast as tried";

/// The set that is due on such a day, by week and stage.
[[nodiscard]] Set due(Place const& place);

} // namespace lengthwise::compose
