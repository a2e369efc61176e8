#include "compose/exhaustive.hpp"

#include "compose/session_time.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace lengthwise::support {

namespace {

using compose::DayKind;
using compose::Step;
using Int = std::int64_t;

class Exhauster {
  public:
    Exhauster(compose::Request const& request, int weeks, Int patience) : n_(weeks), patience_(patience) {
        auto const length = request.pool.length.units();
        u_ = request.pool.length < Distance::metres(40) ? 2 : 1;
        k_ = static_cast<Int>(request.days.size());
        auto race = request.race.distance.units();
        for (auto const& limit : request.limits) {
            auto const name = plan::rules[limit.rule].name;
            if (name == "race-rep") {
                race = (race * limit.low + 99) / 100;
            } else if (name == "rep-step") {
                rep_limit_ = limit.low;
            } else if (name == "week-growth") {
                week_limit_ = limit.low;
            } else if (name == "session-floor") {
                floor_ = (limit.low + u_ * length - 1) / (u_ * length);
            } else if (name == "slot") {
                usable_ = -limit.low;
            }
        }
        usable_ += request.slot.ms();
        race_rep_ = (race + u_ * length - 1) / (u_ * length);
        e0_ = request.longest.units() / length;
        v0_ = k_ * request.session.units() / length;
        if (request.threshold) {
            times_.emplace(request.pool, *request.threshold);
        }
        goal_ = goal();
    }

    Exhauster(compose::Problem const& problem, Int patience)
        : n_(problem.build_weeks), patience_(patience), u_(problem.lengths_a_lap), k_(problem.sessions),
          race_rep_(problem.race_rep), e0_(problem.today_longest), v0_(problem.today_week),
          rep_limit_(problem.rep_step), week_limit_(problem.week_growth), floor_(problem.session_floor),
          room_(&problem.room) {
        goal_ = goal();
    }

    Exhausted run() {
        walk();
        return std::move(best_);
    }

  private:
    static Int need(Int e) { return std::max(e + 3, (4 * e + 2) / 3); }

    /// In the slot, or in 95 % of it.
    [[nodiscard]] bool fits(DayKind kind, Int laps, Int rep, bool tight) const {
        if (room_ != nullptr) {
            return laps <= (kind == DayKind::long_day ? room_->long_day[static_cast<std::size_t>(rep)]
                                                      : room_->other_day);
        }
        if (!times_) {
            return true;
        }
        auto const [known, is_new] = taken_.try_emplace({kind, laps, rep}, 0);
        if (is_new) {
            known->second = times_->of(kind, static_cast<int>(laps), static_cast<int>(rep)).ms();
        }
        return known->second <= usable_ * (tight ? 95 : 100) / 100;
    }

    /// Is there a long day for this week at all?
    [[nodiscard]] bool holds(Int e, Int v, bool last, bool tight) const {
        for (auto a = need(e); a <= v; ++a) {
            auto const rest = v - a;
            auto const enough = !last || a >= floor_;
            auto const even = a * k_ >= v && 10 * k_ * a <= v * (10 + k_);
            auto const others = k_ == 1 ? rest == 0 : rest >= 4 * (k_ - 1);
            if (enough && even && others && fits(DayKind::long_day, a, e, tight) &&
                (k_ == 1 || fits(DayKind::pace, (rest + k_ - 2) / (k_ - 1), 1, tight))) {
                return true;
            }
        }
        return false;
    }

    [[nodiscard]] bool holds_once(Int e, Int v, bool last) {
        auto const [known, is_new] = held_.try_emplace({e, v, last}, false);
        if (is_new) {
            known->second = holds(e, v, last, false);
        }
        return known->second;
    }

    [[nodiscard]] Int goal() const {
        Int least = 0;
        for (Int v = 4; least == 0; ++v) {
            if (10 * k_ * std::max(need(race_rep_), floor_) <= v * (10 + k_) &&
                v - std::max(need(race_rep_), floor_) >= 4 * (k_ - 1) && v >= 4 * k_) {
                least = v;
            }
        }
        auto goal = std::max({2 * u_ * need(race_rep_), u_ * least,
                              std::max(v0_, std::min(5 * v0_ / 4, 3 * k_ / 2 * u_ * need(race_rep_)))});
        if (times_ || room_ != nullptr) {
            Int most = 0; // no slot of these cases holds 30 laps
            for (Int v = 30 * k_; v > 0 && most == 0; --v) {
                most = holds(race_rep_, v, true, true) ? v : 0;
            }
            goal = std::min(goal, u_ * most);
        }
        return std::max(goal, u_ * least);
    }

    /// The least percents that the growths so far ask for.
    [[nodiscard]] Int week_percent(Int from, Int to) const {
        auto p = std::min<Int>(5, week_limit_);
        while (to - from > std::max(k_ * u_, p * from / 100)) {
            ++p;
        }
        return p;
    }
    [[nodiscard]] Int rep_percent(Int from, Int to) const {
        Int q = 0;
        while (to - from > std::max(u_, !rep_limit_ && q == 34 ? from / 3 : q * from / 100)) {
            ++q;
        }
        return q;
    }

    void walk() {
        best_.too_many = ++walked_ > patience_;
        if (static_cast<Int>(steps_.size()) == n_) {
            judge();
            return;
        }
        auto const e_before = steps_.empty() ? 0 : Int{steps_.back().rep};
        auto const v_before = steps_.empty() ? 0 : Int{steps_.back().laps};
        auto const e_high = std::max(e0_, u_ * e_before);
        auto const v_high = std::max(v0_, u_ * v_before);
        auto const last = static_cast<Int>(steps_.size()) + 1 == n_;
        auto const e_share = rep_limit_ ? e_high * *rep_limit_ / 100 : e_high / 3;
        auto const e_top = std::min(race_rep_, std::max(e_high + u_, e_high + e_share) / u_);
        auto const v_top = std::max(v_high + u_ * k_, v_high + v_high * week_limit_ / 100) / u_;
        for (auto e = std::max<Int>(1, e_before); e <= e_top; ++e) {
            for (auto v = std::max<Int>(4 * k_, v_before); v <= v_top && (!last || e == race_rep_); ++v) {
                if (best_.too_many) {
                    return;
                }
                if (holds_once(e, v, last)) {
                    steps_.push_back({static_cast<int>(e), static_cast<int>(v)});
                    walk();
                    steps_.pop_back();
                }
            }
        }
    }

    using Mark = std::tuple<Int, Int, Int, Int>;

    [[nodiscard]] Mark mark() const {
        Int p = std::min<Int>(5, week_limit_);
        Int q = 0;
        Int third = 0;
        Int fourth = 0;
        auto const m = std::max<Int>(1, n_ - std::min<Int>(2, n_ / 4));
        auto e = e0_;
        auto v = v0_;
        for (Int w = 1; w <= n_; ++w) {
            auto const& step = steps_[static_cast<std::size_t>(w - 1)];
            p = std::max(p, week_percent(v, u_ * step.laps));
            q = std::max(q, rep_percent(e, u_ * step.rep));
            e = std::max(e, Int{u_ * step.rep});
            v = std::max(v, Int{u_ * step.laps});
            auto const off = m * (u_ * step.rep - e0_) - std::min(w, m) * (u_ * race_rep_ - e0_);
            auto const away = n_ * (u_ * step.laps - v0_) - w * (goal_ - v0_);
            third += off * off;
            fourth += away * away;
        }
        return {p, q, third, fourth};
    }

    /// Climbs come lowest rep first, then lowest week, earliest week first: of equals the first stays.
    void judge() {
        ++best_.climbs;
        auto const here = mark();
        if (best_.steps.empty() || here < mark_) {
            mark_ = here;
            best_.steps = steps_;
            best_.week_percent = std::get<0>(here);
            best_.rep_percent = std::get<1>(here);
        }
    }

    Int n_;
    Int patience_;
    Int u_ = 2;
    Int k_ = 2;
    Int race_rep_ = 1;
    Int e0_ = 1;
    Int v0_ = 1;
    std::optional<Int> rep_limit_;
    Int week_limit_ = 10;
    Int floor_ = 0;
    Int usable_ = 0;                      ///< of the slot, ms
    compose::Room const* room_ = nullptr; ///< instead of a slot
    Int goal_ = 0;
    std::optional<compose::SessionTimes> times_;
    std::vector<Step> steps_;
    mutable std::map<std::tuple<DayKind, Int, Int>, Int> taken_; ///< times looked up once
    std::map<std::tuple<Int, Int, bool>, bool> held_;
    Int walked_ = 0;
    Mark mark_;
    Exhausted best_;
};

} // namespace

Exhausted exhaust(compose::Request const& request, int build_weeks, std::int64_t patience) {
    return Exhauster{request, build_weeks, patience}.run();
}

Exhausted exhaust(compose::Problem const& problem, std::int64_t patience) {
    return Exhauster{problem, patience}.run();
}

} // namespace lengthwise::support
