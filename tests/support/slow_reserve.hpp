#pragma once

#include "plan/plan.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

/// The reserve over a session, piece after piece in the order they are swum, without a look at src/calc.
namespace lengthwise::support {

/// Swimming at a speed, in crawl's worth, or resting.
struct SlowPiece {
    double speed = 0; ///< Distance units a ms
    double ms = 0;
};

struct SlowTank {
    double critical_speed = 0; ///< Distance units a ms
    double reserve = 0;        ///< D', Distance units
};

/// What a piece makes of the part of D' that is used up.
using Drink = std::function<double(SlowTank const&, SlowPiece const&, double used)>;

/// As the closed form of the model has it.
[[nodiscard]] double by_formula(SlowTank const& tank, SlowPiece const& piece, double used);
/// By small steps along the differential equation (Runge-Kutta of the fourth order).
[[nodiscard]] double by_steps(SlowTank const& tank, SlowPiece const& piece, double used);

struct SlowRunsOut {
    plan::Index line = 0;
    plan::Index item = 0;
    std::uint32_t number = 1;
    std::vector<std::uint32_t> rounds;

    friend bool operator==(SlowRunsOut const&, SlowRunsOut const&) = default;
};

struct SlowReserve {
    std::vector<SlowRunsOut> runs_out;
    double used = 0; ///< metres
};

/// Nothing where no pace is known.
[[nodiscard]] std::optional<SlowReserve> slow_reserve(plan::Plan const& plan, plan::Session const& session,
                                                      int lane, Drink const& drink);

} // namespace lengthwise::support
