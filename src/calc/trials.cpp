#include "calc/trials.hpp"

#include "units/pace.hpp"

#include <algorithm>

namespace lengthwise::calc {
namespace {

using Kind = Remark::Kind;

Exact metres(Distance distance) {
    return {distance.units(), Distance::per_metre};
}

} // namespace

SortedTrials::SortedTrials(Trials const& trials) : trials_(trials) {
    std::vector<Counted> all(trials.swims.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
        Exact const timed{trials.swims[i].time.ms(), 1000};
        all[i] = {i, (timed * course_ratio(trials.course, trials.swims[i].course)).reduced()};
    }
    std::ranges::stable_sort(all, [this](Counted const& a, Counted const& b) {
        return swim(a).distance != swim(b).distance ? swim(a).distance < swim(b).distance
                                                    : a.seconds < b.seconds;
    });
    for (auto const& each : all) {
        if (!counted_.empty() && swim(counted_.back()).distance == swim(each).distance) {
            passed_over_.emplace_back(each.index, counted_.back().index);
        } else {
            counted_.push_back(each);
        }
    }
}

std::vector<std::size_t> SortedTrials::without_course() const {
    std::vector<std::size_t> found;
    for (auto const& each : counted_) {
        if (swim(each).course.kind == Pool::Kind::unsaid && trials_.course.kind != Pool::Kind::unsaid) {
            found.push_back(each.index);
        }
    }
    return found;
}

bool SortedTrials::agree(std::vector<Remark>& remarks) const {
    auto const before = remarks.size();
    for (std::size_t i = 1; i < counted_.size(); ++i) {
        auto const& shorter = counted_[i - 1];
        auto const& longer = counted_[i];
        if (!(shorter.seconds < longer.seconds)) {
            remarks.push_back({.kind = Kind::not_slower, .swim = longer.index, .other = shorter.index});
        } else if (metres(swim(shorter).distance) * longer.seconds <
                   metres(swim(longer).distance) * shorter.seconds) {
            remarks.push_back({.kind = Kind::faster, .swim = longer.index, .other = shorter.index});
        }
    }
    return remarks.size() == before;
}

std::vector<Point> SortedTrials::points() const {
    return points_without(trials_.swims.size());
}

std::vector<Point> SortedTrials::points_without(std::size_t left_out) const {
    std::vector<Point> points;
    for (auto const& each : counted_) {
        if (each.index != left_out) {
            points.push_back({each.seconds, metres(swim(each).distance)});
        }
    }
    return points;
}

/// Valid trials last about 2 to 15 min (Scott 2023, after others); 20 min is our own margin.
std::optional<Remark::Kind> SortedTrials::doubt(Duration time) const {
    if (time < Duration::minutes(2)) {
        return Kind::short_swim;
    }
    if (time > Duration::minutes(20)) {
        return Kind::long_swim;
    }
    return time < Duration::minutes(15) ? std::nullopt : std::optional{Kind::rather_long};
}

std::vector<Remark> SortedTrials::doubtful_times() const {
    std::vector<Remark> remarks;
    for (auto const& each : counted_) {
        if (auto const kind = doubt(swim(each).time)) {
            remarks.push_back({.kind = *kind, .swim = each.index});
        }
    }
    auto const [shortest, longest] =
        std::ranges::minmax_element(counted_, {}, [this](Counted const& each) { return swim(each).time; });
    auto const least = swim(*shortest).time;
    auto const most = swim(*longest).time;
    if (most * 2 < least * 3) { // common practice, no published source
        remarks.push_back({.kind = Kind::close, .swim = longest->index, .other = shortest->index});
    }
    if (most - least < Duration::minutes(5)) { // Scott 2023, after Bishop 1998
        remarks.push_back({.kind = Kind::little_apart, .swim = longest->index, .other = shortest->index});
    }
    return remarks;
}

std::optional<Remark> SortedTrials::decisive(Exact const& speed) const {
    constexpr std::int64_t percent = 2;
    Exact most{percent, 100};
    std::optional<Remark> found;
    for (auto const& each : counted_) {
        auto const points = points_without(each.index);
        if (points.size() < 2) {
            break;
        }
        auto const change = (line_through(points).slope / speed - 1).reduced();
        auto const moved = change < 0 ? Exact{-1} * change : change;
        if (most < moved) {
            most = moved;
            found = Remark{.kind = Kind::one_decides, .swim = each.index};
        }
    }
    return found;
}

} // namespace lengthwise::calc
