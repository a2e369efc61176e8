#include "plan/load.hpp"

#include "units/checked.hpp"

#include <algorithm>
#include <limits>

namespace lengthwise::plan {
namespace {

constexpr auto top = std::numeric_limits<std::int64_t>::max();

std::int64_t sum(std::int64_t a, std::int64_t b) {
    return checked_add(a, b).value_or(top);
}
std::int64_t product(std::int64_t a, std::int64_t b) {
    return checked_mul(a, b).value_or(top);
}

std::int64_t longest_step(Plan const& plan, Recovery const& recovery) {
    std::int64_t longest = 0;
    for (auto i = recovery.first_step; i < recovery.first_step + recovery.steps; ++i) {
        longest = std::max(longest, plan.send_offs[i].ms());
    }
    return longest;
}

std::int64_t rep_ms(Plan const& plan, std::int64_t rep, bool timed, Terms const& terms) {
    auto ms = timed ? rep : 0;
    if (terms.broken.piece > 0 && rep > 0) {
        ms = sum(ms, product((rep - 1) / terms.broken.piece, terms.broken.pause.ms()));
    }
    return std::max(ms, longest_step(plan, terms.recovery));
}

} // namespace

void Load::add(Load const& more) {
    units = sum(units, more.units);
    reps = sum(reps, more.reps);
    ms = sum(ms, more.ms);
    height = std::max(height, more.height);
}

Load Load::times(std::int64_t rounds) const {
    return {product(units, rounds), product(reps, rounds), product(ms, rounds), height};
}

Load load_of(Plan const& plan, Item const& reps, Terms const& terms) {
    auto const rest = terms.recovery.kind == Recovery::Kind::rest ? terms.recovery.rest.high.ms() : 0;
    auto const one_rep = [&](std::int64_t rep) {
        return Load{reps.is_timed() ? 0 : rep, 1, sum(rep_ms(plan, rep, reps.is_timed(), terms), rest), 0};
    };
    if (!reps.is_ladder()) {
        return one_rep(reps.amount).times(reps.count);
    }
    Load load;
    for (auto i = reps.body; i < reps.body + reps.count; ++i) {
        load.add(one_rep(plan.rungs[i]));
    }
    return load;
}

} // namespace lengthwise::plan
