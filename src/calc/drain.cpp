#include "calc/drain.hpp"

#include <algorithm>
#include <cmath>

namespace lengthwise::calc {

Drain Drain::then(Drain const& next) const {
    Drain both;
    both.keep = keep * next.keep;
    both.add = next.at(add);
    both.most = std::min(next.most, next.at(most));
    auto const spare = next.lasts - add;
    if (keep > 0) {
        both.lasts = std::min(lasts, spare / keep);
    } else { // where it began makes no difference any more
        both.lasts = spare < 0 ? -std::numeric_limits<double>::infinity() : lasts;
    }
    return both;
}

Drain Drain::times(std::int64_t n) const {
    Drain all;
    for (auto doubled = *this; n > 0; n /= 2) {
        if (n % 2 == 1) {
            all = all.then(doubled);
        }
        if (n > 1) {
            doubled = doubled.then(doubled);
        }
    }
    return all;
}

Drain faster(double gain, double reserve, std::optional<double> peak) {
    Drain drain;
    drain.add = gain;
    drain.most = reserve;
    if (peak) {
        drain.lasts = *peak - gain;
    }
    return drain;
}

Drain slower(double lag, double reserve) {
    Drain drain;
    drain.keep = std::exp(-lag / reserve);
    return drain;
}

std::int64_t Repeated::first_to_run_out(double& x, std::int64_t n) {
    std::size_t power = 0;
    while ((std::int64_t{2} << power) < n) {
        if (doubled_.size() == ++power) {
            doubled_.push_back(doubled_.back().then(doubled_.back()));
        }
    }
    std::int64_t passed = 0;
    for (++power; power-- > 0;) {
        auto const& some = doubled_[power];
        auto const count = std::int64_t{1} << power;
        if (passed + count < n && !some.runs_out(x)) {
            x = some.at(x);
            passed += count;
        }
    }
    return passed;
}

} // namespace lengthwise::calc
