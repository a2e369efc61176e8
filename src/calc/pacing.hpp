#pragma once

#include "calc/band.hpp"
#include "calc/exact.hpp"
#include "calc/factors.hpp"
#include "plan/plan.hpp"
#include "units/pool.hpp"

#include <cstdint>

namespace lengthwise::calc {

/// `hard` and its figure: swum to be repeated.
[[nodiscard]] bool is_hard(plan::Effort const& effort);

/// What decides the time of a rep beside its own words: a threshold, a pool, the factors in force.
class Pacing {
  public:
    /// Without a threshold only exact paces are known. Threshold and factors outlive the pacing.
    Pacing(plan::Threshold const* threshold, Pool const& pool, Factors const& factors);

    [[nodiscard]] bool known() const { return threshold_ != nullptr; }
    [[nodiscard]] plan::Threshold const* threshold() const { return threshold_; }
    [[nodiscard]] Pool const& pool() const { return pool_; }
    [[nodiscard]] Factors const& factors() const { return *factors_; }

    /// R: milliseconds for a unit of distance at threshold in this pool, above 0. Only where known.
    [[nodiscard]] Exact const& rate() const { return rate_; }
    /// R': with what `threshold plus` or `minus` adds for 100 of the pool's unit.
    [[nodiscard]] Exact rate(plan::Effort const& effort) const;
    /// Twice B, in units of distance: what may be swum above threshold, low with low. Efforts that
    /// are swum to be repeated leave half of it unused.
    [[nodiscard]] Band<std::int64_t> twice_reserve(plan::Effort const& effort) const;
    /// What `threshold about` multiplies a finished time with.
    [[nodiscard]] Band<Exact> about() const;
    /// What `with stops` adds, milliseconds for a unit of distance.
    [[nodiscard]] Band<Exact> stops() const;

  private:
    plan::Threshold const* threshold_;
    Pool pool_;
    Factors const* factors_;
    Exact rate_;
};

} // namespace lengthwise::calc
