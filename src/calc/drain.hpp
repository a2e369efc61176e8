#pragma once

#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

/// What swimming and resting do to the reserve (docs/time.md, "The reserve over a set"). How much of D' is
/// used up, x, goes through a swim, a rest, a round or a whole line as keep · x + add; so does x at each peak
/// in it. Whatever its size, three figures say what it does and one whether the reserve lasts.
namespace lengthwise::calc {

struct Drain {
    double keep = 1; ///< 0 to 1
    double add = 0;  ///< 0 or more, in the unit of x
    /// With all that passes D' cut off where it does, x ends at the smaller of keep · x + add and this.
    double most = std::numeric_limits<double>::infinity();
    /// The reserve lasts from every x up to this; infinite for what has no peak, below 0 for what
    /// empties even a full one.
    double lasts = std::numeric_limits<double>::infinity();

    [[nodiscard]] double at(double x) const { return keep > 0 ? keep * x + add : add; }
    [[nodiscard]] bool runs_out(double x) const { return x > lasts; }

    /// With `next` behind it.
    [[nodiscard]] Drain then(Drain const& next) const;

    /// `n` of it in a row, at least 0.
    [[nodiscard]] Drain times(std::int64_t n) const;
};

/// Faster than critical speed: `gain` is what is swum beyond it. Where `peak` is given, x above it at the
/// end means that the reserve has run out.
[[nodiscard]] Drain faster(double gain, double reserve, std::optional<double> peak);

/// Slower than critical speed, by `lag` in all, or a rest. Skiba et al. 2015, Eur J Appl Physiol 115:703-713
/// (from memory), with speed in the place of power after Skiba et al. 2012, Med Sci Sports Exerc
/// 44:1526-1532.
[[nodiscard]] Drain slower(double lag, double reserve);

/// The same thing over and over.
class Repeated {
  public:
    explicit Repeated(Drain const& once) : doubled_{once} {}

    /// The first of `n` in which the reserve runs out, counted from 0, found by doubling; `x` becomes what
    /// it is at its start. If it lasts, the last.
    [[nodiscard]] std::int64_t first_to_run_out(double& x, std::int64_t n);

  private:
    std::vector<Drain> doubled_; ///< once, twice, four times …
};

} // namespace lengthwise::calc
