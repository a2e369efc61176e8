#pragma once

#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"

#include <cstdint>
#include <optional>
#include <vector>

/// What a plan adds up to, in closed form over the tree: a repeat costs what one rep costs.
namespace lengthwise::calc {

/// Sums of one scope for one lane. Sessions are limited (grammar/limits.hpp), so the sums
/// of any file that can be read fit 64 bits.
struct Totals {
    Distance distance;      ///< of reps given as a distance
    Distance longest;       ///< the longest qualifying rep, 0 without one
    std::int64_t lengths = 0; ///< rounded up once a rep; 0 where no pool has a length
    std::int64_t reps = 0;    ///< timed and broken reps are one each
    std::int64_t timed_reps = 0;
    Duration timed;           ///< of timed reps, `tread` included, breaks left out

    Totals& operator+=(Totals const& more);
    friend bool operator==(Totals const&, Totals const&) = default;
};

/// Who swims, and which lines: the plain ones, or the `if time` ones alone.
struct Swim {
    int lane = 0; ///< 0: a swimmer of no lane, unlabelled lines only
    bool optional = false;
};

/// Sums plans, remembering what several places share; one reader a plan.
class Reckoner {
  public:
    explicit Reckoner(plan::Plan const& plan) : plan_(plan) {}

    [[nodiscard]] Totals item(plan::Session const& session, plan::Item const& item);
    [[nodiscard]] Totals section(plan::Session const& session, plan::Section const& section, Swim swim);
    [[nodiscard]] Totals session(plan::Session const& session, Swim swim);
    [[nodiscard]] Totals week(plan::Week const& week, Swim swim);
    [[nodiscard]] Totals plan(Swim swim);

  private:
    struct Shared {
        plan::Index body;
        plan::Index pool;
        Totals totals;
    };
    plan::Plan const& plan_;
    std::vector<Shared> shared_; ///< bodies reached from more than one place (helper's choice of structure)
};

/// The lanes that a session names, ascending; none when its lines have no labels.
[[nodiscard]] std::vector<int> lanes(plan::Plan const& plan, plan::Session const& session);
[[nodiscard]] std::vector<int> lanes(plan::Plan const& plan, plan::Week const& week);
[[nodiscard]] std::vector<int> lanes(plan::Plan const& plan);

/// Lengths of one rep: distance over pool, rounded up; nothing without a pool length.
[[nodiscard]] std::optional<std::int64_t> lengths_of(Distance rep, Pool const& pool);

} // namespace lengthwise::calc
