#include "calc/threshold.hpp"

#include "calc/trials.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

using Kind = Remark::Kind;

/// From here on a swim's mean pace bounds the threshold, as the pace of 30 min is slower still
/// (Dekerle 2002); below, the bound takes off the largest usual reserve.
constexpr auto bound_by_mean = Duration::minutes(20);
constexpr auto shortest_for_bound = Duration::minutes(2);
constexpr auto least_for_bound = Distance::metres(100);
constexpr std::int64_t usual_reserve = 35;

constexpr auto for_power_law = Duration::seconds(210);

Exact metres(Distance distance) {
    return {distance.units(), Distance::per_metre};
}

Exact per_100(Exact const& metres_per_second, Unit unit) {
    return (metres(one(unit) * 100) / metres_per_second).reduced();
}

/// 15 to 35 m and a typical error of 9 m to each side (Scott 2023).
bool is_usual_reserve(Exact const& metres) {
    return !(metres < 6) && !(Exact{44} < metres);
}

/// What a plan's threshold is asked about outside of; common practice, no published source.
bool is_usual_pace(Exact const& per_100m) {
    return !(per_100m < 50) && !(Exact{300} < per_100m);
}

class Judge {
  public:
    explicit Judge(Trials const& trials) : trials_(trials), sorted_(trials) {
        verdict_.swims.resize(trials.swims.size());
    }

    Verdict judge() {
        for (auto const& [swim, faster] : sorted_.passed_over()) {
            notes_.push_back({.kind = Kind::unused, .swim = swim, .other = faster});
        }
        for (auto const swim : sorted_.without_course()) {
            notes_.push_back({.kind = Kind::no_course, .swim = swim});
        }
        if (sorted_.counted().size() == 1) {
            bound();
        } else if (trials_.stops) {
            say({.kind = Kind::stops});
        } else if (sorted_.agree(verdict_.remarks)) {
            figure();
        }
        std::ranges::move(notes_, std::back_inserter(verdict_.remarks));
        return std::move(verdict_);
    }

  private:
    void say(Remark const& remark) { verdict_.remarks.push_back(remark); }

    /// One swim: this pace, or faster.
    void bound() {
        auto const swim = sorted_.counted().front();
        auto const& [distance, unit, time, course] = trials_.swims[swim.index];
        if (time < shortest_for_bound || distance < least_for_bound) {
            say({.kind = Kind::no_bound, .swim = swim.index});
            return;
        }
        auto const swum = metres(distance);
        auto const sure = time < bound_by_mean ? swum - usual_reserve : swum;
        Threshold threshold;
        threshold.bound = true;
        threshold.pace = per_100(sure / swim.seconds, trials_.unit);
        if (!trials_.asked.empty()) {
            notes_.push_back({.kind = Kind::not_from_one, .swim = swim.index});
        }
        settle(threshold);
    }

    void figure() {
        auto const line = line_through(sorted_.points());
        Threshold threshold;
        threshold.pace = per_100(line.slope, trials_.unit);
        threshold.speed = line.slope;
        threshold.reserve = line.intercept;
        threshold.errors = line.errors;
        if (!settle(threshold)) {
            return;
        }
        auto const& counted = sorted_.counted();
        for (std::size_t i = 0; i < counted.size(); ++i) {
            verdict_.swims[counted[i].index].residual = line.residuals[i];
        }
        doubts(line);
        predictions(line);
    }

    /// False for a pace that cannot be written down.
    bool settle(Threshold const& threshold) {
        auto const shown = threshold.to_the_second();
        if (shown.zero() || shown >= Duration::hours(24)) {
            say({.kind = Kind::no_pace, .pace = threshold.pace});
            return false;
        }
        verdict_.threshold = threshold;
        for (auto const& swim : sorted_.counted()) {
            verdict_.swims[swim.index].used = true;
        }
        if (!is_usual_pace(threshold.pace / metres(one(trials_.unit)))) {
            say({.kind = Kind::odd_pace, .pace = threshold.pace});
        }
        return true;
    }

    void doubts(Line const& line) {
        for (auto const& remark : sorted_.doubtful_times()) {
            is_note(remark.kind) ? notes_.push_back(remark) : say(remark);
        }
        if (!is_usual_reserve(line.intercept)) {
            say({.kind = Kind::odd_reserve});
        }
        if (auto const remark = sorted_.decisive(line.slope)) {
            say(*remark);
        }
        for (auto& remark : verdict_.remarks) {
            if (remark.kind == Kind::short_swim || remark.kind == Kind::long_swim ||
                remark.kind == Kind::one_decides) {
                remark.pace = pace_without(remark.swim);
            }
        }
    }

    [[nodiscard]] static bool is_note(Kind kind) { return kind >= Kind::unused; }

    [[nodiscard]] std::optional<Exact> pace_without(std::size_t swim) const {
        auto const points = sorted_.points_without(swim);
        return points.size() < 2 ? std::nullopt
                                 : std::optional{per_100(line_through(points).slope, trials_.unit)};
    }

    void predictions(Line const& line) {
        auto const& shortest = sorted_.counted().front();
        auto const& longest = sorted_.counted().back();
        auto const& swim = trials_.swims[longest.index];
        auto const from = swim.time < for_power_law
                              ? std::nullopt
                              : std::optional{LongSwim{metres(swim.distance), longest.seconds}};
        for (auto const distance : trials_.usual) {
            auto const found = predict(line, from, distance);
            if (found && distance >= trials_.swims[shortest.index].distance) {
                verdict_.predictions.push_back(*found);
            }
        }
        for (auto const distance : trials_.asked) {
            if (distance < trials_.swims[shortest.index].distance) {
                notes_.push_back({.kind = Kind::too_near, .swim = shortest.index, .distance = distance});
            } else if (auto const found = predict(line, from, distance)) {
                verdict_.predictions.push_back(*found);
            } else {
                notes_.push_back({.kind = Kind::too_far, .swim = longest.index, .distance = distance});
            }
        }
    }

    Trials const& trials_;
    SortedTrials sorted_;
    Verdict verdict_;
    std::vector<Remark> notes_;
};

} // namespace

Duration Threshold::to_the_second() const {
    return Duration::seconds(bound ? -(Exact{-1} * pace).floor() : pace.rounded());
}

bool Threshold::has_sound_reserve() const {
    return errors && is_usual_reserve(reserve);
}

std::optional<double> Threshold::pace_error() const {
    if (!errors) {
        return std::nullopt;
    }
    // The derivative of u / CS by CS is -u / CS^2: the pace by the speed.
    return pace.approximate() / speed.approximate() * errors->slope;
}

Threshold::HalfHour Threshold::over_half_an_hour() const {
    return {pace * Exact{1032, 1000}, pace * Exact{1085, 1000}};
}

Verdict judge(Trials const& trials) {
    return Judge{trials}.judge();
}

Pool reference_course(std::vector<Swim> const& swims, Pool const& pool) {
    if (pool.kind != Pool::Kind::unsaid) {
        return pool;
    }
    auto const found =
        std::ranges::find_if(swims, [](Swim const& swim) { return swim.course.kind != Pool::Kind::unsaid; });
    return found == swims.end() ? Pool{} : found->course;
}

Unit pace_unit(std::vector<Swim> const& swims, Pool const& course) {
    auto const in_yards =
        std::ranges::all_of(swims, [](Swim const& swim) { return swim.unit == Unit::yard; });
    return course.kind == Pool::Kind::unsaid && in_yards ? Unit::yard : course.unit;
}

plan::Threshold as_setting(Trials const& trials, Verdict const& verdict) {
    auto const& threshold = *verdict.threshold;
    plan::Threshold setting;
    setting.time = threshold.to_the_second();
    setting.per_unit = trials.unit;
    setting.per = one(trials.unit) * 100;
    setting.said_per = true;
    setting.course = trials.course;
    setting.said_in = trials.course.kind != Pool::Kind::unsaid;
    setting.about = threshold.bound;
    if (threshold.has_sound_reserve()) {
        setting.reserve = Distance::metres(threshold.reserve.rounded());
    }
    return setting;
}

} // namespace lengthwise::calc
