#pragma once

#include "calc/walk.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"

#include <bitset>
#include <cstdint>
#include <optional>
#include <vector>

/// What a plan adds up to, in closed form over the tree: a repeat costs what one rep costs.
namespace lengthwise::calc {

/// Sums of one scope for one swimmer. Sessions are limited (grammar/limits.hpp), so the
/// sums of any file that can be read fit 64 bits.
struct Totals {
    Distance distance;              ///< of reps given as a distance
    Distance longest;               ///< the longest qualifying rep, 0 without one
    std::int64_t lengths = 0;       ///< rounded up once a rep; 0 where no pool has a length
    std::int64_t reps = 0;          ///< timed and broken reps are one each
    std::int64_t timed_reps = 0;    ///< of `reps`
    std::int64_t treading_reps = 0; ///< of `timed_reps`: those that do nothing but tread
    Duration timed;                 ///< of timed reps, treading included, breaks left out

    /// `rounds` times what `more` holds; `rounds` is at least 1.
    void add(Totals const& more, std::int64_t rounds = 1);

    friend bool operator==(Totals const&, Totals const&) = default;
};

[[nodiscard]] Totals sum(Totals a, Totals const& b);

/// Lanes 1 to 100, by number.
using LaneSet = std::bitset<128>;

/// The lanes ascending; the lowest, 0 without any.
[[nodiscard]] std::vector<int> numbers(LaneSet const& lanes);
[[nodiscard]] int lowest(LaneSet const& lanes);

/// The sums of a scope for every lane at once: what all swim is kept once, what a
/// label adds is kept by lane, the `if time` lines apart.
class Sums {
  public:
    /// The lanes named inside; none where no line has a lane label. The plain totals
    /// are those of the lowest.
    [[nodiscard]] LaneSet const& lanes() const { return lanes_; }

    /// What a swimmer of this lane swims; a lane that is not named, or 0: the unlabelled lines.
    [[nodiscard]] Totals swum(int lane) const;
    /// Its `if time` lines alone; no reps where there are none.
    [[nodiscard]] Totals if_time(int lane) const;

    /// True if a session inside is swum in a pool with a length.
    [[nodiscard]] bool has_lengths() const { return has_lengths_; }

    void add(Sums const& more);

  private:
    friend class Reckoner;
    struct Share {
        Totals swum;
        Totals if_time;

        [[nodiscard]] Totals& of(bool optional) { return optional ? if_time : swum; }
    };
    void reach(std::size_t lanes);

    Share everyone_;
    std::vector<Share> labelled_; ///< by lane; as long as the highest one needs
    LaneSet lanes_;
    bool has_lengths_ = false;
};

/// Reads one rep at a time into Totals; the walk does the rest.
struct TotalsMeasure {
    using Sum = Totals;
    void add(plan::Plan const& plan, plan::Item const& item, Pool const& pool, std::int64_t rounds,
             Totals& sum) const;
};

/// Sums a plan, remembering what several places share; one reader a plan.
class Reckoner {
  public:
    explicit Reckoner(plan::Plan const& plan) : plan_(plan), walk_(plan) {}

    /// Everything inside an item, whoever swims it; nothing for a pause or a note.
    [[nodiscard]] Totals of_item(plan::Session const& session, plan::Item const& item);

    [[nodiscard]] Sums of_section(plan::Session const& session, plan::Section const& section);
    [[nodiscard]] Sums of_session(plan::Session const& session);
    [[nodiscard]] Sums of_week(plan::Week const& week);
    [[nodiscard]] Sums of_plan();

    /// The same, added to what `sums` already holds.
    void add_section(plan::Session const& session, plan::Section const& section, Sums& sums);
    void add_session(plan::Session const& session, Sums& sums);
    void add_week(plan::Week const& week, Sums& sums);

  private:
    plan::Plan const& plan_;
    Walk<TotalsMeasure> walk_;
};

/// The lanes that a session names; none when its lines have no labels.
[[nodiscard]] LaneSet lanes_of(plan::Plan const& plan, plan::Session const& session);
[[nodiscard]] LaneSet lanes_of(plan::Plan const& plan, plan::Week const& week);
[[nodiscard]] LaneSet lanes_of(plan::Plan const& plan);

} // namespace lengthwise::calc
