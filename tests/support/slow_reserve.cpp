#include "support/slow_reserve.hpp"

#include "support/slow_pace.hpp"
#include "support/stopwatch.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace lengthwise::support {
namespace {

/// A piece of a rep, and whether its end is a peak at which the reserve may have run out.
struct Leg {
    SlowPiece piece;
    bool peak = false;
};

/// A rep cut at every part's and every piece's end, breaks between.
std::vector<Leg> legs_of(WatchedRep const& rep, SlowRep const& times) {
    std::vector<Leg> legs;
    auto const piece = rep.terms->broken.piece;
    std::int64_t at = 0;
    while (at < rep.amount) {
        for (auto const& part : times.parts) {
            auto const speed = part.goes * part.form / part.ms;
            auto const rounding = 0.51; // ms
            auto const peak = part.goes * part.form - part.ms / times.rate > rounding / times.rate;
            for (auto left = part.length; left > 0;) {
                auto const some = piece > 0 ? std::min(left, piece - at % piece) : left;
                auto const share = static_cast<double>(some) / static_cast<double>(part.length);
                legs.push_back({{speed, part.ms * share}, peak});
                at += some;
                left -= some;
                if (piece > 0 && at % piece == 0 && at < rep.amount) {
                    legs.push_back({{0, static_cast<double>(rep.terms->broken.pause.ms())}, false});
                }
            }
        }
    }
    return legs;
}

double limit_of(SlowRep const& times) {
    double factor = 0;
    for (auto const& part : times.parts) {
        if (part.emptied) {
            factor = std::max({factor, 1.25, part.form + 0.25});
        }
    }
    return factor > 0 ? factor * times.reserve : times.reserve + 0.01 * 30'000;
}

class Swim {
  public:
    Swim(plan::Plan const& plan, plan::Session const& session, int lane, Drink const& drink)
        : plan_(plan), session_(session), lane_(lane), drink_(drink) {}

    SlowReserve run(Watched const& watched) {
        auto const& reps = watched.reps;
        for (std::size_t i = 0; i < reps.size(); ++i) {
            if (i == 0 || reps[i].line != reps[i - 1].line) {
                begin_line();
            }
            swim(reps[i]);
            if (i + 1 < reps.size()) {
                auto const rest = reps[i + 1].start[1] - reps[i].start[1] - reps[i].swim[1];
                if (reps[i + 1].line != reps[i].line) {
                    end_line();
                }
                pass({0, static_cast<double>(rest)});
            }
        }
        end_line();
        result_.used = used_ / 30'000;
        return result_;
    }

  private:
    void begin_line() {
        ran_out_ = false;
        cut_ = used_;
    }

    /// A line that has run out goes on with what passes D' cut off.
    void end_line() { used_ = ran_out_ ? cut_ : used_; }

    void pass(SlowPiece const& piece) {
        used_ = drink_(tank_, piece, used_);
        cut_ = drink_(tank_, piece, cut_);
        if (piece.speed >= tank_.critical_speed) {
            cut_ = std::min(cut_, tank_.reserve);
        }
    }

    void swim(WatchedRep const& rep) {
        auto const key = std::tuple{rep.terms, rep.amount, rep.timed};
        auto const [known, is_new] = reps_.try_emplace(key);
        if (is_new) {
            known->second = slow_rep(plan_, session_, lane_, *rep.terms, rep.amount, rep.timed);
        }
        auto const& times = known->second;
        tank_ = {1 / times.rate, times.reserve};
        for (auto const& leg : legs_of(rep, times)) {
            pass(leg.piece);
            if (leg.peak && used_ > limit_of(times) && !ran_out_) {
                ran_out_ = true;
                result_.runs_out.push_back({rep.line, rep.item, rep.number, rep.rounds});
            }
        }
    }

    plan::Plan const& plan_;
    plan::Session const& session_;
    int lane_;
    Drink const& drink_;
    SlowTank tank_;
    double used_ = 0;
    double cut_ = 0;
    bool ran_out_ = false;
    SlowReserve result_;
    std::map<std::tuple<plan::Terms const*, std::int64_t, bool>, SlowRep> reps_;
};

} // namespace

double by_formula(SlowTank const& tank, SlowPiece const& piece, double used) {
    auto const beyond = (piece.speed - tank.critical_speed) * piece.ms;
    return beyond >= 0 ? used + beyond : used * std::exp(beyond / tank.reserve);
}

double by_steps(SlowTank const& tank, SlowPiece const& piece, double used) {
    auto const slope = [&](double x) {
        auto const beyond = piece.speed - tank.critical_speed;
        return beyond >= 0 ? beyond : beyond * x / tank.reserve;
    };
    auto const steps = std::max(1.0, std::ceil(piece.ms / 500));
    auto const h = piece.ms / steps;
    for (int i = 0; i < static_cast<int>(steps); ++i) {
        auto const a = slope(used);
        auto const b = slope(used + h / 2 * a);
        auto const c = slope(used + h / 2 * b);
        auto const d = slope(used + h * c);
        used += h / 6 * (a + 2 * b + 2 * c + d);
    }
    return used;
}

std::optional<SlowReserve> slow_reserve(plan::Plan const& plan, plan::Session const& session, int lane,
                                        Drink const& drink) {
    auto const watched = watch(plan, session, lane, false);
    for (auto const& rep : watched.reps) {
        if (!(slow_rep(plan, session, lane, *rep.terms, rep.amount, rep.timed).rate > 0)) {
            return std::nullopt;
        }
    }
    return Swim{plan, session, lane, drink}.run(watched);
}

} // namespace lengthwise::support
