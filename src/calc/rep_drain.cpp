#include "calc/rep_drain.hpp"

#include <algorithm>
#include <numeric>
#include <optional>
#include <vector>

namespace lengthwise::calc {
namespace {

/// What may be missing before the reserve is said to have run out: floating point and rounded times.
constexpr double slack = 0.01 * Distance::per_metre;

/// A part, as what it swims beyond critical speed; below 0 what it lags behind.
struct Leg {
    std::int64_t amount = 0;
    double beyond = 0;
};

class Rep {
  public:
    Rep(plan::Plan const& plan, Pacing const& pacing, plan::Terms const& terms, std::int64_t amount,
        bool timed)
        : tank_(tank_of(pacing)), broken_(terms.broken), amount_(amount) {
        auto emptied = 0.0;
        for (auto const& part : expected_parts(plan, pacing, terms, amount, timed)) {
            legs_.push_back({part.amount, part.distance * part.form - part.ms / tank_.rate});
            once_ += part.amount;
            emptied = std::max(emptied, part.emptied ? part.form : 0.0);
        }
        // A rep that is held to the whole reserve empties it even fresh, as much as its form is worth.
        limit_ = emptied > 0 ? tank_.reserve * std::max(1.25, emptied + 0.25) : tank_.reserve + slack;
    }

    Drain drain() const {
        if (broken_.piece == 0) {
            return swum(0, once_).times(amount_ / once_);
        }
        // Pieces and parts fall together again after this much.
        auto const pattern = legs_.size() == 1 ? broken_.piece : std::lcm(once_, broken_.piece);
        auto const whole = (amount_ - 1) / pattern;
        auto const before = whole > 0 ? in_pieces(0, pattern).then(pause()).times(whole) : Drain{};
        return before.then(in_pieces(whole * pattern, amount_));
    }

  private:
    Drain pause() const { return rest(tank_, broken_.pause); }

    /// From one place to another, a break between each piece and the next.
    Drain in_pieces(std::int64_t from, std::int64_t to) const {
        Drain all;
        for (auto at = from; at < to; at += broken_.piece) {
            all = (at > from ? all.then(pause()) : all).then(swum(at, std::min(at + broken_.piece, to)));
        }
        return all;
    }

    /// From one place to another without a stop, place 0 the beginning of the first part.
    Drain swum(std::int64_t from, std::int64_t to) const {
        Drain all;
        while (from < to) {
            auto begin = from / once_ * once_;
            if (begin == from && to - from >= 2 * once_) { // the parts again and again
                auto const times = (to - from) / once_;
                all = all.then(swum(0, once_).times(times));
                from += times * once_;
                continue;
            }
            for (auto const& leg : legs_) {
                auto const end = begin + leg.amount;
                auto const some = std::min(end, to) - std::max(begin, from);
                if (some > 0) {
                    all = all.then(part(leg, some));
                }
                begin = end;
            }
            from = std::min(begin, to);
        }
        return all;
    }

    Drain part(Leg const& leg, std::int64_t some) const {
        auto const beyond = leg.beyond * static_cast<double>(some) / static_cast<double>(leg.amount);
        if (leg.beyond < 0) {
            return slower(-beyond, tank_.reserve);
        }
        auto const rounding = 0.51 / tank_.rate; // half a millisecond: no reason to speak of a peak
        return faster(beyond, tank_.reserve, leg.beyond > rounding ? std::optional{limit_} : std::nullopt);
    }

    Tank tank_;
    plan::Broken const& broken_;
    std::int64_t amount_;
    std::int64_t once_ = 0; ///< all parts
    double limit_ = 0;
    std::vector<Leg> legs_;
};

} // namespace

Tank tank_of(Pacing const& pacing) {
    return {pacing.rate().approximate(), static_cast<double>(pacing.twice_reserve({}).expected) / 2};
}

Drain rest(Tank const& tank, Duration time) {
    return slower(static_cast<double>(time.ms()) / tank.rate, tank.reserve);
}

Drain rep_drain(plan::Plan const& plan, Pacing const& pacing, plan::Terms const& terms, std::int64_t amount,
                bool timed) {
    return Rep{plan, pacing, terms, amount, timed}.drain();
}

} // namespace lengthwise::calc
