#pragma once

#include "compose/drills.hpp"
#include "compose/place.hpp"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Which drills a week has, and what is said of them.
namespace lengthwise::compose {

/// The drills of one week.
struct WeekDrills {
    Focus focus = Focus::body;
    std::string_view known; ///< from the week before, or a basic
    std::string_view fresh; ///< the week's own
    std::string_view third; ///< that of two weeks ago, for a third day
};

/// Remembers what was swum. Nothing is new in an easy week or a taper.
class DrillBook {
  public:
    /// The round of foci goes on behind so many weeks.
    explicit DrillBook(int weeks_swum = 0) : turns_(static_cast<std::size_t>(weeks_swum)) {}

    /// For each week with a session, in order, once. `place` is of any of its sessions.
    [[nodiscard]] WeekDrills open_week(Place const& place);

    /// A session uses a drill: what to say of it the first two times, else nothing.
    [[nodiscard]] std::optional<std::string> cue(std::string_view drill);

  private:
    struct Past {
        int week;
        std::string_view fresh;
    };

    [[nodiscard]] Focus next_focus(Place const& place);
    [[nodiscard]] std::string_view next_of(Focus focus, int stage) const;
    [[nodiscard]] std::string_view basic(std::string_view other, bool may_be_new) const;
    [[nodiscard]] std::string_view fresh_of_taper(int taper) const;
    [[nodiscard]] std::string_view weeks_ago(int week) const;
    [[nodiscard]] bool seen(std::string_view drill) const;
    void use(std::string_view drill, int week);
    [[nodiscard]] bool tired(std::string_view drill) const;

    struct Run {
        int last = 0;  ///< week
        int weeks = 0; ///< one behind the other
    };

    std::map<std::string_view, Run> runs_;
    std::map<std::string_view, int> sessions_;   ///< with a cue, by drill
    std::vector<std::string_view> used_;         ///< the last use of each, the oldest first
    std::vector<Past> past_;                     ///< the fresh drill of each week
    std::optional<std::string_view> last_build_; ///< the fresh drill of the last build week
    Focus focus_ = Focus::body;                  ///< of the last build week
    int opening_stage_ = 0;
    std::size_t turns_; ///< of the round of foci
};

} // namespace lengthwise::compose
