#include "check/second_look.hpp"
#include "check/seen.hpp"
#include "check/walk.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

#include <optional>

namespace lengthwise::check::second_look_at {

namespace {

using plan::Item;
using plan::Plan;
using plan::Recovery;

// --- a group swum without any rest -------------------------------------------------------

/// Reps of the group that another one of the same round follows, and how many of them have recovery.
struct Inner {
    std::int64_t followed = 0;
    std::int64_t rested = 0;
};

Inner inner_of(Plan const& plan, Item const& group) {
    Inner inner;
    for (auto const& item : plan::items_from(plan, group.body)) {
        if (!item.is_swum()) {
            continue;
        }
        auto const recovers = plan.terms[item.terms].recovery.kind != Recovery::Kind::none;
        inner.rested += recovers || !item.is_leaf() ? 1 : 0; // a group inside is looked at by itself
        inner.followed += !item.last || item.count > 1 ? 1 : 0;
    }
    return inner;
}

void unrested(Inquiry& inquiry, Met const& met) {
    if (met.item.kind != Item::Kind::group) {
        return;
    }
    auto const inner = inner_of(inquiry.plan, met.item);
    if (inner.followed > 0 && inner.rested == 0) {
        inquiry.note(met.item.span, "no rest inside the group, its reps are swum in one go",
                     "try: (100 rest 20s + 50 rest 10s)", used(met));
    }
}

// --- a pause shorter than the rest it replaces --------------------------------------------

/// The rest behind the last rep of an item: that of the outermost group which has one.
std::optional<Range<Duration>> rest_behind(Plan const& plan, Item const& item) {
    auto const& recovery = plan.terms[item.terms].recovery;
    if (recovery.kind == Recovery::Kind::rest) {
        return recovery.rest;
    }
    if (item.is_leaf() || recovery.kind != Recovery::Kind::none) {
        return std::nullopt;
    }
    auto const* last = &plan.items[item.body];
    if (item.kind == Item::Kind::group) {
        for (auto const& inner : plan::items_from(plan, item.body)) {
            last = &inner;
        }
    }
    return rest_behind(plan, *last);
}

/// The pauses between two neighbouring reps, and the rest that they replace.
class Gap {
  public:
    void swim(Item const& item) {
        swum_ = &item;
        pauses_ = {};
        first_ = nullptr;
    }
    void pause(Item const& item) {
        pauses_ += item.duration();
        first_ = first_ == nullptr ? &item : first_;
    }
    void judge(Inquiry& inquiry) const {
        auto const rest =
            first_ != nullptr && swum_ != nullptr ? rest_behind(inquiry.plan, *swum_) : std::nullopt;
        if (rest && pauses_ < rest->low && !pauses_.zero()) {
            inquiry.note(first_->span,
                         fmt::format("a pause of {} in the place of {} rest", spell::spaced(pauses_),
                                     spell::spaced(*rest)),
                         "a pause takes the place of the rest before it");
        }
    }

  private:
    Item const* swum_ = nullptr;
    Duration pauses_;
    Item const* first_ = nullptr;
};

void short_pauses(Inquiry& inquiry, plan::Session const& session) {
    Gap gap;
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        for (auto const& item : plan::items_from(inquiry.plan, inquiry.plan.sections[i].body)) {
            if (item.kind == Item::Kind::pause) {
                gap.pause(item);
            } else if (item.is_swum() && !item.optional) {
                gap.judge(inquiry);
                gap.swim(item);
            }
        }
    }
}

} // namespace

void rests(Inquiry& inquiry) {
    Walk walk{inquiry.plan};
    SeenInSets seen;
    for (auto const& session : inquiry.plan.sessions) {
        if (inquiry.waived(session)) {
            continue;
        }
        walk.once(session, {}, [&](Met const& met) {
            if (met.item.is_swum() && seen.first_time(met)) {
                unrested(inquiry, met);
            }
        });
        short_pauses(inquiry, session);
    }
}

} // namespace lengthwise::check::second_look_at
