#pragma once

#include "calc/prediction.hpp"
#include "calc/regression.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

/// Threshold pace from swims all out, by the critical-speed model D = D' + CS t: its speed CS
/// is the slope of distance on time, its reserve D' the intercept. Formulas, limits and their
/// sources: docs/threshold.md.
namespace lengthwise::calc {

/// A swim as it was timed.
struct Swim {
    Distance distance;
    Unit unit = Unit::metre; ///< that it was said in
    Duration time;           ///< above 0
    Pool course;             ///< unsaid: not known, its time is taken as it is
};

/// What is to be judged.
struct Trials {
    std::vector<Swim> swims;     ///< at least one
    Pool course;                 ///< all times are turned into those of this one
    Unit unit = Unit::metre;     ///< of the pace: per 100 of it
    bool stops = false;          ///< the swims had stops: a bound at most
    std::vector<Distance> asked; ///< to be predicted
    std::vector<Distance> usual; ///< the same, but without a word where it cannot be
};

/// What is to be said about trials. The words are the report's business.
struct Remark {
    enum class Kind : std::uint8_t {
        // no figure
        not_slower, ///< `swim` is longer than `other` and took no more time
        faster,     ///< `swim` is longer than `other` and was swum at a higher mean speed
        no_bound,   ///< one swim alone, and too short for a bound
        stops,      ///< swims with stops give no line
        no_pace,    ///< `pace` cannot be written down: below 1 s or a day and more
        // warnings
        short_swim,  ///< `swim` took under 2 min
        long_swim,   ///< over 20 min
        close,       ///< the longest time (`swim`) is under 1.5 times the shortest (`other`)
        odd_reserve, ///< D' is outside 6 to 44 m
        one_decides, ///< leaving `swim` out moves CS by over 2 %
        odd_pace,    ///< `pace` is outside 0:50 to 5:00 per 100 m
        // notes
        unused,       ///< `other` is the faster of two swims of one distance
        rather_long,  ///< `swim` took 15 to 20 min
        little_apart, ///< the longest time (`swim`) and the shortest (`other`) are under 5 min apart
        no_course,    ///< `swim` has no course, others have
        too_near,     ///< `distance` was asked for and is below the shortest swim, `swim`
        too_far,      ///< `distance` was asked for and there is nothing to predict it from
        not_from_one, ///< times were asked for; one swim predicts none
    };
    Kind kind{};
    std::size_t swim = 0; ///< of Trials::swims
    std::size_t other = 0;
    std::optional<Exact> pace{}; ///< seconds per 100 of the unit; behind a swim: without it
    Distance distance{};
};

/// The figure that trials give.
struct Threshold {
    Exact pace;                           ///< seconds per 100 of Trials::unit
    bool bound = false;                   ///< from one swim: this or faster
    Exact speed;                          ///< CS, metres a second
    Exact reserve;                        ///< D', metres; a bound has neither
    std::optional<StandardErrors> errors; ///< in m, m/s and m, from three swims on

    /// The pace to the second: half up, a bound up, as the slower second is the one that is sure.
    [[nodiscard]] Duration to_the_second() const;

    /// In seconds per 100 of the unit; from three swims on.
    [[nodiscard]] std::optional<double> pace_error() const;

    /// D' is fit for a plan: from three swims, and 6 to 44 m.
    [[nodiscard]] bool has_sound_reserve() const;

    /// What 30 minutes would be swum at: 3.2 % (Dekerle 2002) to 8.5 % (2007, docs/threshold.md) slower.
    struct HalfHour {
        Exact faster; ///< seconds per 100 of the unit
        Exact slower;
    };
    [[nodiscard]] HalfHour over_half_an_hour() const;
};

struct Judged {
    bool used = false;
    std::optional<Exact> residual; ///< metres beyond the line; of used swims where there is a line
};

struct Verdict {
    std::vector<Judged> swims;          ///< those of the trials
    std::optional<Threshold> threshold; ///< nothing: a remark says why
    std::vector<Remark> remarks;        ///< what stops a figure, then warnings, then notes
    std::vector<Prediction> predictions;
};

[[nodiscard]] Verdict judge(Trials const& trials);

/// The course that times are turned into: `pool` where it is said, else the first that a swim
/// has, else none.
[[nodiscard]] Pool reference_course(std::vector<Swim> const& swims, Pool const& pool);

/// What a pace is per 100 of: the course's unit; where there is none, yards if all swims are in yards.
[[nodiscard]] Unit pace_unit(std::vector<Swim> const& swims, Pool const& course);

/// The threshold as a plan's setting, to the second, with a sound reserve to the metre. There is one.
[[nodiscard]] plan::Threshold as_setting(Trials const& trials, Verdict const& verdict);

} // namespace lengthwise::calc
