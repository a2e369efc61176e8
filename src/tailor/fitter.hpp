#pragma once

#include "plan/plan.hpp"
#include "tailor/amounts.hpp"

#include <cstdint>
#include <vector>

namespace lengthwise::tailor {

/// Lines that read otherwise once they fit, ascending; an item keeps its index.
struct Changes {
    std::vector<plan::Index> changed;
    std::vector<plan::Index> timed; ///< those of them that keep a send-off, or a time to hold
};

/// Changes a plan's items in place, session by session. What several places share is reached once:
/// it reads the same from each of them, for the same set in two pools was read twice.
class Fitter {
  public:
    /// Both outlive this.
    Fitter(plan::Plan& plan, Changes& changes);

    /// Once a session at most; `fit.from` is its pool.
    void session(plan::Session const& session, Fit const& fit);

    /// Sets stand for what the sessions made of them; those that none uses go.
    void keep_used_sets();

  private:
    /// What becomes of an item and all inside it.
    enum class Change : std::uint8_t { unknown, none, figures, figures_under_a_time };

    void note(plan::Index line, Change change);
    [[nodiscard]] Change change_of(plan::Index index, Fit const& fit);
    [[nodiscard]] Change rounds(plan::Item const& item, Fit const& fit);
    [[nodiscard]] Change body(plan::Item const& item, plan::Index first, Fit const& fit);
    bool leaf(plan::Item& item, Fit const& fit);
    bool reps(plan::Item& item, Fit const& fit);
    bool ladder(plan::Item& item, Fit const& fit);
    [[nodiscard]] bool has_times(plan::Terms const& of) const;

    plan::Plan& plan_;
    Changes& changes_;
    std::vector<Change> seen_;            ///< beside Plan::items
    std::vector<plan::Index> set_bodies_; ///< beside Plan::sets: the first reading that was met
};

} // namespace lengthwise::tailor
