#pragma once

#include "calc/breakdown.hpp"
#include "calc/kit.hpp"
#include "calc/lane_times.hpp"
#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "report/choose.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// The figures of a plan as every screen and export shows them, worked out for one
/// scope at a time, so that a plan of many sessions is never held as a whole.
namespace lengthwise::report {

/// What one swimmer does in a scope, and what it takes.
struct Figures {
    calc::Totals totals;
    calc::Times times; ///< rests included; says itself what is unknown

    [[nodiscard]] std::optional<Band<Duration>> time() const { return times.total(); }
    /// What timed reps add; not in `totals`.
    [[nodiscard]] std::optional<Distance> estimated() const { return times.distance(); }
};

/// The share of one word.
struct WordFigures {
    std::uint32_t key = 0; ///< as in calc::Breakdown
    Figures figures;
};

/// The figures of a plan, a week, a session or a section, for all its lanes.
class Tally {
  public:
    /// `lanes`: those of the scope, of which the lowest has the plain totals.
    Tally(calc::Sums sums, calc::LaneTimes times, calc::LaneSet lanes);
    Tally() = default;

    /// Joins another scope's, as a plan's weeks make up the plan.
    void add(Tally const& more);

    /// The lane of the plain totals; 0 where the scope names none.
    [[nodiscard]] int lane() const { return calc::lowest(lanes_); }
    [[nodiscard]] calc::LaneSet const& lanes() const { return lanes_; }
    /// True where lines with a lane label stand inside, so that lanes may differ.
    [[nodiscard]] bool has_lane_lines() const { return sums_.lanes().any(); }
    /// False: lengths are unknown here, for want of a pool with a length.
    [[nodiscard]] bool has_lengths() const { return sums_.has_lengths(); }

    [[nodiscard]] Figures swum(int lane) const;
    [[nodiscard]] Figures if_time(int lane) const;
    [[nodiscard]] bool has_if_time(int lane) const { return sums_.if_time(lane).reps > 0; }

  private:
    calc::Sums sums_;
    calc::LaneTimes times_;
    calc::LaneSet lanes_;
};

/// Lengths swum in pools of one length.
struct PoolLengths {
    Pool pool;
    std::int64_t lengths = 0;
};

/// Works out tallies of what a scope holds. With a lane asked for, every tally is of
/// that lane alone.
class Summary {
  public:
    explicit Summary(plan::Plan const& plan, Scope scope = {}, std::optional<int> lane = {});

    [[nodiscard]] plan::Plan const& plan() const { return plan_; }
    [[nodiscard]] plan::Run weeks() const;                    ///< of Plan::weeks
    [[nodiscard]] plan::Run sessions(plan::Index week) const; ///< of Plan::sessions, in the scope

    [[nodiscard]] Tally whole();
    [[nodiscard]] Tally week(plan::Index week);
    /// This and the next are good until another session is asked for.
    [[nodiscard]] Tally const& session(plan::Index session);
    /// The sections of a session in their order, in its lanes.
    [[nodiscard]] std::vector<Tally> const& sections(plan::Index session);
    /// Everything inside one line of a session, whoever swims it.
    [[nodiscard]] calc::Totals totals_of(plan::Index session, plan::Item const& item) {
        return reckoner_.of_item(plan_.sessions[session], item);
    }
    /// Asked about single reps, lines and paces.
    [[nodiscard]] calc::Clock& clock() { return clock_.clock(); }
    /// What lines need, beginning anew.
    [[nodiscard]] calc::KitReader& kit() {
        kit_.begin_anew();
        return kit_;
    }

    /// What the scope holds of each word, for one lane, by key. Times are of swimming alone; a section's
    /// is all it takes.
    [[nodiscard]] std::vector<WordFigures> by(calc::By by, int lane);

    /// The unit for the whole scope: yards if all its sessions are in yards, else metres.
    [[nodiscard]] Unit unit() const;
    [[nodiscard]] Unit unit(plan::Index session) const;

    /// The lengths of one lane by pool: the pool of the file, or else the one with the
    /// most lengths, first. Pools without a length are left out.
    [[nodiscard]] std::vector<PoolLengths> pools(int lane);
    /// True if its sessions are not all in one pool.
    [[nodiscard]] bool has_several_pools() const;

  private:
    [[nodiscard]] std::vector<WordFigures> by_section(int lane);
    /// Reads a session, unless it was read last.
    void read(plan::Index session);

    /// Calls `visit` with the index of each session of the scope, in order.
    template <typename Visit>
    void each_session(Visit visit) const {
        for (auto week = weeks().first; week < weeks().end(); ++week) {
            auto const run = sessions(week);
            for (auto session = run.first; session < run.end(); ++session) {
                visit(session);
            }
        }
    }

    plan::Plan const& plan_;
    Scope scope_;
    std::optional<int> lane_;
    calc::Reckoner reckoner_;
    calc::LaneClock clock_;
    calc::KitReader kit_;
    plan::Index read_ = plan::no_index; ///< the session that was read last
    std::vector<calc::Sums> sums_;      ///< of its sections, on the way to tallies
    std::vector<Tally> sections_;       ///< of it
    Tally session_;
};

} // namespace lengthwise::report
