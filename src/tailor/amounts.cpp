#include "tailor/amounts.hpp"

#include "plan/plan.hpp"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace lengthwise::tailor {
namespace {

bool whole_in(Distance amount, Distance grain) {
    return !grain.zero() && Distance::divides(grain, amount);
}

/// Does it end at the far wall of the pool it was written for?
bool ends_away(Distance written, Pool const& pool) {
    return pool.has_length() && whole_in(written, pool.length) && !whole_in(written, lap(pool));
}

/// What amounts are rounded to.
Distance step(Distance written, Fit const& fit) {
    if (!fit.to.has_length()) {
        return one(fit.to.unit);
    }
    return ends_away(written, fit.from) ? fit.to.length : lap(fit.to);
}

/// `n` / `per`, to the nearest whole number, half down, at least 1.
std::int64_t nearest(std::int64_t n, std::int64_t per) {
    return std::max<std::int64_t>((2 * n + per - 1) / (2 * per), 1);
}

/// What parts can be made of: they stay multiples of `to` where all of them are of `from`.
struct Grain {
    Distance from; ///< 0: whatever they were
    Distance to;
};

/// From what coaches say most readily to what the notation can just write.
std::vector<Grain> grains(Fit const& fit) {
    std::vector<Grain> all;
    if (fit.from.has_length() && fit.to.has_length()) {
        all.push_back({fit.from.length, fit.to.length});
        all.push_back(
            {Distance::units(fit.from.length.units() / 2), Distance::units(fit.to.length.units() / 2)});
    }
    all.push_back({one(fit.from.unit), one(fit.to.unit)});
    all.push_back({Distance{}, Distance::units(one(fit.to.unit).units() / 24)});
    all.push_back({Distance{}, Distance::units(Distance::per_metre / 100)});
    return all;
}

/// The notation has fractions down to 1/24 and hundredths of a metre.
bool can_be_written(Distance grain, Unit unit) {
    return whole_in(grain, Distance::units(one(unit).units() / 24)) ||
           (unit == Unit::metre && whole_in(grain, Distance::units(Distance::per_metre / 100)));
}

bool suits(Grain const& grain, std::vector<Distance> const& written, Distance to, Fit const& fit) {
    auto const fits = [&](Distance part) { return grain.from.zero() || whole_in(part, grain.from); };
    return can_be_written(grain.to, fit.to.unit) && whole_in(to, grain.to) &&
           Distance::whole(to, grain.to) >= std::int64_t(written.size()) &&
           std::all_of(written.begin(), written.end(), fits);
}

/// The divisor of `n`, at least `low`, that is nearest to `n` / `times`; the smaller of two as near.
std::int64_t nearest_divisor(std::int64_t n, std::int64_t times, std::int64_t low) {
    auto best = n;
    auto const off = [&](std::int64_t d) { return std::abs(d * times - n); };
    auto const take = [&](std::int64_t d) {
        if (d >= low && (off(d) < off(best) || (off(d) == off(best) && d < best))) {
            best = d;
        }
    };
    for (std::int64_t d = 1; d <= n / d; ++d) {
        if (n % d == 0) {
            take(d);
            take(n / d);
        }
    }
    return best;
}

/// `count` grains dealt out in proportion to what was written; each part gets one at least.
std::vector<Distance> deal(std::vector<Distance> const& written, std::int64_t count, Distance grain) {
    auto const sum = std::accumulate(written.begin(), written.end(), Distance{});
    auto left = count;
    auto others = std::int64_t(written.size());
    std::vector<Distance> dealt;
    for (auto const part : written) {
        --others;
        auto const share =
            others == 0 ? left : std::min(nearest(part.units() * count, sum.units()), left - others);
        dealt.push_back(grain * share);
        left -= share;
    }
    return dealt;
}

} // namespace

Distance rep(Distance written, Fit const& fit) {
    auto const each = step(written, fit);
    auto const wanted = written.units() * std::int64_t{fit.percent};
    auto const count = nearest(wanted, each.units() * 100);
    bool const race = !fit.race.zero() && written >= fit.race;
    auto const rounded = race && each.units() * 100 * count < wanted ? count + 1 : count;
    return each * std::min(rounded, Distance::whole(Distance::metres(limits::rep_km * 1000), each));
}

std::optional<Distance> piece(Distance written, Distance from, Distance to, Fit const& fit) {
    auto const each = step(written, fit);
    auto const length = fit.to.has_length() ? fit.to.length : each;
    auto const lengths = Distance::whole(to, length);
    if (lengths < 2) {
        return std::nullopt;
    }
    auto const count = nearest(written.units() * lengths, from.units() * Distance::whole(each, length));
    auto const more = Distance::ceiling(to, each * count) > Distance::ceiling(from, written);
    return std::min(each * (more ? count + 1 : count), length * (lengths - 1));
}

std::optional<std::vector<Distance>> parts(std::vector<Distance> const& written, Distance from, Distance to,
                                           Fit const& fit) {
    auto const sum = std::accumulate(written.begin(), written.end(), Distance{});
    for (auto const& grain : grains(fit)) {
        if (suits(grain, written, to, fit)) {
            auto const count = nearest_divisor(Distance::whole(to, grain.to), Distance::whole(from, sum),
                                               std::int64_t(written.size()));
            return deal(written, count, grain.to);
        }
    }
    return std::nullopt;
}

} // namespace lengthwise::tailor
