#include "calc/longest.hpp"

#include "calc/reps.hpp"
#include "calc/walk.hpp"

namespace lengthwise::calc {
namespace {

struct LongestMeasure {
    using Sum = LongestRep;
    void add(plan::Plan const& plan, plan::Item const& item, Pool const&, std::int64_t,
             LongestRep& sum) const {
        if (item.is_timed() || (!item.is_ladder() && item.distance() <= sum.distance)) {
            return;
        }
        auto const index = static_cast<plan::Index>(&item - plan.items.data());
        each_rep(plan, item, [&](std::int64_t rep, plan::Terms const& terms, std::int64_t) {
            sum.add({unbroken(plan, terms, Distance::units(rep)), index, plan::no_index});
        });
    }
};

class LongestReader {
  public:
    LongestReader(plan::Plan const& plan, int lane) : plan_(plan), lane_(lane), walk_(plan) {}

    void add(plan::Index index, LongestRep& longest) {
        auto const& session = plan_.sessions[index];
        LongestRep own;
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            for (plan::Item const& item : items_from(plan_, plan_.sections[i].body)) {
                if (!item.optional && item.swum_by(lane_)) {
                    walk_.add(item, session.pool, 1, own);
                }
            }
        }
        own.session = own.item == plan::no_index ? plan::no_index : index;
        longest.add(own);
    }

  private:
    plan::Plan const& plan_;
    int lane_;
    Walk<LongestMeasure> walk_;
};

LongestRep longest_of(plan::Plan const& plan, plan::Index first, plan::Index end, int lane) {
    LongestReader reader{plan, lane};
    LongestRep longest;
    for (auto i = first; i < end; ++i) {
        reader.add(i, longest);
    }
    return longest;
}

} // namespace

void LongestRep::add(LongestRep const& more, std::int64_t) {
    if (more.distance > distance) {
        *this = more;
    }
}

LongestRep longest_of_session(plan::Plan const& plan, plan::Index session, int lane) {
    return longest_of(plan, session, session + 1, lane);
}

LongestRep longest_of_week(plan::Plan const& plan, plan::Week const& week, int lane) {
    return longest_of(plan, week.sessions.first, week.sessions.end(), lane);
}

LongestRep longest_of_plan(plan::Plan const& plan, int lane) {
    return longest_of(plan, 0, static_cast<plan::Index>(plan.sessions.size()), lane);
}

std::optional<LongestRep> longest_before(plan::Plan const& plan, plan::Index session, int lane) {
    if (session == 0 && !plan.before) {
        return std::nullopt;
    }
    auto longest = longest_of(plan, 0, session, lane);
    if (plan.before) {
        longest.add({plan.before->longest, plan::no_index, plan::no_index});
    }
    return longest;
}

} // namespace lengthwise::calc
