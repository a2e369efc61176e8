#pragma once

#include "calc/threshold.hpp"

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

/// Trials made comparable: of one course, the fastest of each distance, by distance.
/// Private to threshold.cpp.
namespace lengthwise::calc {

struct Counted {
    std::size_t index = 0; ///< of Trials::swims
    Exact seconds;         ///< in the trials' course
};

class SortedTrials {
  public:
    /// `trials` outlives it.
    explicit SortedTrials(Trials const& trials);

    [[nodiscard]] std::vector<Counted> const& counted() const { return counted_; }

    /// Each swim that does not count, with the one of its distance that does.
    [[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> const& passed_over() const {
        return passed_over_;
    }

    /// Swims whose course is not known where the trials' is.
    [[nodiscard]] std::vector<std::size_t> without_course() const;

    /// True when every longer swim took longer, at no higher mean speed; else says which did not.
    [[nodiscard]] bool agree(std::vector<Remark>& remarks) const;

    /// Distances on times, for the line.
    [[nodiscard]] std::vector<Point> points() const;
    [[nodiscard]] std::vector<Point> points_without(std::size_t swim) const;

    /// Times outside those that the method was validated for, and times too close to each other.
    [[nodiscard]] std::vector<Remark> doubtful_times() const;

    /// The swim that moves the speed most when it is left out, if by more than 2 %.
    [[nodiscard]] std::optional<Remark> decisive(Exact const& speed) const;

  private:
    [[nodiscard]] Swim const& swim(Counted const& counted) const { return trials_.swims[counted.index]; }
    [[nodiscard]] std::optional<Remark::Kind> doubt(Duration time) const;

    Trials const& trials_;
    std::vector<Counted> counted_;
    std::vector<std::pair<std::size_t, std::size_t>> passed_over_;
};

} // namespace lengthwise::calc
