#include "report/session_title.hpp"

#include "report/choose.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <limits>

namespace lengthwise::report {
namespace {

std::string when(plan::Session const& session) {
    std::vector<std::string> parts{session.date ? spell::day(*session.date) : day_label(session)};
    if (session.at) {
        parts.push_back(spell::time_of_day(*session.at));
    }
    if (session.slot()) {
        parts.push_back(spell::spaced(*session.slot()));
    }
    return fold_parts(parts, ", ", std::numeric_limits<std::size_t>::max());
}

std::string pool_part(Pool const& pool, bool ascii) {
    switch (pool.kind) {
    case Pool::Kind::open_water:
        return "open water";
    case Pool::Kind::pool:
        return "pool " + spell::distance(pool.length, pool.unit, ascii);
    case Pool::Kind::unsaid:
        break;
    }
    return {};
}

} // namespace

std::vector<std::string> session_title(plan::Plan const& plan, plan::Index session, Pool const& pool,
                                       bool ascii) {
    auto const& own = plan.sessions[session];
    auto const time = when(own);
    auto const name = own.name.empty() && time.empty() ? session_label(plan, session) : visible(own.name);
    return {name, time, pool_part(pool, ascii)};
}

} // namespace lengthwise::report
