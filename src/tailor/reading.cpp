#include "tailor/reading.hpp"

namespace lengthwise::tailor {

using plan::WrittenUnit;

bool same_reading(Reading const& was, Reading const& now, Fit const& fit) {
    if (was.unit != now.unit) {
        return false;
    }
    switch (was.unit) {
    case WrittenUnit::bare:
        return was.amount * one(fit.to.unit).units() == now.amount * one(fit.from.unit).units();
    case WrittenUnit::lengths:
        return Distance::whole(was.amount, fit.from.length) == Distance::whole(now.amount, fit.to.length);
    default:
        return was.amount == now.amount;
    }
}

WrittenUnit unit_today(WrittenUnit was, Distance now, Pool const& pool) {
    auto const own = pool.unit == Unit::yard ? WrittenUnit::yards : WrittenUnit::metres;
    bool const walls = pool.has_length() && Distance::divides(pool.length, now);
    if (was == own) {
        return own;
    }
    if (walls && (was == WrittenUnit::lengths || !Distance::divides(one(pool.unit), now))) {
        return WrittenUnit::lengths;
    }
    return WrittenUnit::bare;
}

Reading rep_today(Reading const& was, Fit const& fit) {
    auto const amount = rep(was.amount, fit);
    return {amount, unit_today(was.unit, amount, fit.to)};
}

} // namespace lengthwise::tailor
