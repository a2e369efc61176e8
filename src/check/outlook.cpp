#include "check/outlook.hpp"

#include "check/rules.hpp"
#include "check/swum.hpp"
#include "check/words.hpp"

#include "calc/growth.hpp"
#include "calc/longest.hpp"

#include <algorithm>
#include <limits>
#include <utility>
#include <vector>

namespace lengthwise::check {

namespace {

/// A longest rep and the number of its week.
struct Stop {
    std::int64_t week;
    Distance rep;
};

/// What stands before the first numbered week counts as the week before it.
std::vector<Stop> way_of(Swum const& swum) {
    auto const numbered = std::ranges::find_if(
        swum.weeks, [](SwumWeek const& swum_week) { return swum_week.week->number.has_value(); });
    if (numbered == swum.weeks.end()) {
        return {};
    }
    std::int64_t const start = std::int64_t{*numbered->week->number} - 1;
    std::vector<Stop> way;
    auto const add = [&way](std::int64_t week, Distance rep) {
        if (!rep.zero()) {
            way.push_back({week, rep});
        }
    };
    add(start, swum.plan.before ? swum.plan.before->longest : Distance{});
    for (auto const& week : swum.weeks) {
        auto const number = week.week->number;
        add(number ? std::int64_t{*number} : start, week.sums.swum(swum.lane).longest);
    }
    return way;
}

/// How many weeks behind `top` the rep is there, when it grows by `rise` in every `weeks` weeks. All is
/// reckoned in shares of `weeks`, so that the mean need not be rounded.
std::int64_t weeks_until(Distance asked, Distance top, Distance rise, std::int64_t weeks, Distance lap,
                         std::optional<std::int64_t> percent) {
    auto reach = top * weeks;
    auto const goal = asked * weeks;
    if (rise <= lap * weeks) { // which rep-step always allows
        return Distance::ceiling(goal - reach, rise);
    }
    std::int64_t count = 0;
    for (; reach < goal; ++count) {
        reach = std::min(reach + rise, calc::next_rep(reach, lap * weeks, percent));
    }
    return count;
}

/// Whole weeks from a week to race day, by the dates of the plan.
std::optional<std::int64_t> race_week(Swum const& swum) {
    for (auto const& week : swum.weeks) {
        if (week.week->number && week.week->from) {
            auto const days = (swum.plan.race->on - *week.week->from).count();
            return std::int64_t{*week.week->number} + (days >= 0 ? days / 7 : (days - 6) / 7);
        }
    }
    return std::nullopt;
}

std::optional<Trend> trend_of(Swum const& swum, Distance asked) {
    auto const way = way_of(swum);
    if (way.empty()) {
        return std::nullopt;
    }
    auto const top = *std::max_element(way.rbegin(), way.rend(),
                                       [](Stop const& a, Stop const& b) { return a.rep < b.rep; });
    auto const weeks = top.week - way.front().week;
    auto const rise = top.rep - way.front().rep;
    if (weeks <= 0 || rise.zero()) {
        return std::nullopt;
    }
    auto const limit = file_limit(swum.plan, rep_step.name);
    auto const lap = lap_of(swum.plan, swum.plan.sessions[swum.weeks.front().week->sessions.first]);
    auto const there = top.week + weeks_until(asked, top.rep, rise, weeks, lap,
                                              limit ? std::optional{limit->low} : std::nullopt);
    auto const race = race_week(swum);
    return Trend{Distance::units(rise.units() / weeks), there,
                 race ? std::optional{there - *race} : std::nullopt};
}

std::optional<plan::Index> first_session_of(Swum const& swum, Distance asked) {
    for (plan::Index i = 0; i < swum.plan.sessions.size(); ++i) {
        if (before_race(swum.plan, swum.plan.sessions[i]) &&
            calc::longest_of_session(swum.plan, i, swum.lane).distance >= asked) {
            return i;
        }
    }
    return std::nullopt;
}

/// Those who lack the same, whose rep grows alike.
class Hindmost {
  public:
    explicit Hindmost(Outlook& outlook) : outlook_(outlook) {}

    void look_at(Swum const& swum) {
        ++all_;
        auto const longest = longest_before_race(swum);
        if (count_ > 0 && longest > outlook_.longest) {
            return;
        }
        auto trend =
            longest < outlook_.asked.distance ? trend_of(swum, outlook_.asked.distance) : std::nullopt;
        auto const alike = count_ > 0 && longest == outlook_.longest && week(trend) == week(outlook_.trend);
        if (!alike && count_ > 0 && longest == outlook_.longest && week(trend) < week(outlook_.trend)) {
            return; // lacks as much, and would be there sooner
        }
        if (!alike) {
            outlook_.longest = longest;
            outlook_.trend = trend;
            lanes_.clear();
            swimmers_.clear();
            count_ = 0;
        }
        ++count_;
        if (swum.sharers == nullptr) {
            lanes_.push_back(swum.lane);
        } else {
            swimmers_ += (swimmers_.empty() ? "" : ", ") + names(*swum.sharers);
        }
    }

    void name() {
        if (count_ < all_) {
            outlook_.who = lanes_.empty() ? "" : lanes_.front() == 0 ? "the group" : lanes_named(lanes_);
            outlook_.who += (lanes_.empty() || swimmers_.empty() ? "" : " and ") + swimmers_;
        }
    }

  private:
    /// Never comes last.
    static std::int64_t week(std::optional<Trend> const& trend) {
        return trend ? trend->week : std::numeric_limits<std::int64_t>::max();
    }

    Outlook& outlook_;
    std::vector<int> lanes_;
    std::string swimmers_;
    std::size_t count_ = 0; ///< of those held
    std::size_t all_ = 0;
};

} // namespace

std::optional<Outlook> outlook(plan::Plan const& plan) {
    if (!plan.race) {
        return std::nullopt;
    }
    Outlook result;
    result.asked = race_rep_asked(plan);
    Hindmost hindmost{result};
    auto all = true;
    plan::Index last = 0;
    calc::Reckoner sums{plan};
    each_swum(plan, sums, [&](Swum const& swum) {
        hindmost.look_at(swum);
        auto const session = all ? first_session_of(swum, result.asked.distance) : std::nullopt;
        all = all && session.has_value();
        last = std::max(last, session.value_or(0));
    });
    hindmost.name();
    if (all) {
        result.reached = last;
    }
    return result;
}

} // namespace lengthwise::check
