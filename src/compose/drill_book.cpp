#include "compose/drill_book.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::compose {

namespace {

/// In which order they go round, by the stage of the first week.
constexpr std::array<std::array<Focus, 6>, 3> rounds_of_foci{{
    {Focus::breath, Focus::body, Focus::kick, Focus::timing, Focus::catch_, Focus::wall},
    {Focus::body, Focus::breath, Focus::catch_, Focus::timing, Focus::kick, Focus::wall},
    {Focus::catch_, Focus::timing, Focus::breath, Focus::body, Focus::kick, Focus::wall},
}};

/// The way is found in the last build week, in longer plans in the last but two as well.
bool is_for_sight(Place const& place) {
    return place.build == place.build_weeks ||
           (place.build_weeks >= 6 && place.build == place.build_weeks - 2);
}

} // namespace

bool DrillBook::seen(std::string_view drill) const {
    return std::ranges::find(used_, drill) != used_.end();
}

void DrillBook::use(std::string_view drill, int week) {
    std::erase(used_, drill);
    used_.push_back(drill);
    auto& run = runs_[drill];
    if (run.last != week) {
        run.weeks = run.last == week - 1 ? run.weeks + 1 : 1;
        run.last = week;
    }
}

/// Four weeks running are enough of a drill.
bool DrillBook::tired(std::string_view drill) const {
    auto const found = runs_.find(drill);
    return found != runs_.end() && found->second.weeks >= 4 && found->second.last >= past_.back().week - 1;
}

std::optional<std::string> DrillBook::cue(std::string_view drill) {
    return ++sessions_[drill] <= 2 ? std::optional{std::string{drill_named(drill).cue}} : std::nullopt;
}

Focus DrillBook::next_focus(Place const& place) {
    if (is_for_sight(place)) {
        return Focus::sight;
    }
    auto const& round = rounds_of_foci[static_cast<std::size_t>(opening_stage_)];
    return round[turns_++ % round.size()];
}

/// The first that is new and whose needs are met; none: of those that are known the one longest unused.
std::string_view DrillBook::next_of(Focus focus, int stage) const {
    for (auto const& drill : drills()) {
        if (drill.focus == focus && drill.stage <= stage && !seen(drill.name) &&
            (drill.needs.empty() || seen(drill.needs))) {
            return drill.name;
        }
    }
    return *std::ranges::find_if(used_, [&](auto drill) { return drill_named(drill).focus == focus; });
}

/// A basic that is not the `other` one.
std::string_view DrillBook::basic(std::string_view other, bool may_be_new) const {
    for (auto const drill : {bubbles, push_and_glide}) {
        if (drill != other && (may_be_new || seen(drill))) {
            return drill;
        }
    }
    auto const found = std::ranges::find_if(used_, [&](auto drill) { return drill != other; });
    return found == used_.end() ? other : *found;
}

/// The drill of sight that was learnt first, in a second taper week the one learnt last.
std::string_view DrillBook::fresh_of_taper(int taper) const {
    auto found = std::string_view{};
    for (auto const& drill : drills()) {
        if (drill.focus == Focus::sight && seen(drill.name) && (found.empty() || taper > 1)) {
            found = drill.name;
        }
    }
    return found.empty() ? push_and_glide : found;
}

/// The fresh drill two weeks before, as far back as the plan goes.
std::string_view DrillBook::weeks_ago(int week) const {
    auto found = past_.front().fresh;
    for (auto const& past : past_) {
        found = past.week <= week ? past.fresh : found;
    }
    return found;
}

WeekDrills DrillBook::open_week(Place const& place) {
    WeekDrills drills;
    if (place.opening) {
        opening_stage_ = place.stage;
    }
    if (place.kind == WeekKind::build) {
        focus_ = next_focus(place);
        drills.fresh = next_of(focus_, place.stage);
        auto const first = place.stage == 2 ? catch_up : focus_ == Focus::breath ? push_and_glide : bubbles;
        drills.known = last_build_.value_or(first);
        if (drills.known == drills.fresh) {
            drills.known = basic(drills.fresh, true);
        }
        last_build_ = drills.fresh;
        drills.focus = focus_;
    } else if (place.kind == WeekKind::taper) {
        drills.focus = Focus::sight;
        drills.fresh = fresh_of_taper(place.taper);
        auto const first = past_.empty() ? bubbles : past_.front().fresh;
        drills.known = first == drills.fresh ? basic(drills.fresh, false) : first;
    } else {
        drills.fresh = last_build_.value_or(push_and_glide);
        drills.focus = last_build_ ? focus_ : Focus::body;
        drills.known = drills.fresh != push_and_glide && seen(push_and_glide)
                           ? push_and_glide
                           : basic(drills.fresh, place.opening);
    }
    if (place.usual_days > 1) { // else the one day is the long one, which has the fresh drill alone
        use(drills.known, place.week);
    }
    use(drills.fresh, place.week);
    past_.push_back({place.week, drills.fresh});
    drills.third = weeks_ago(place.week - 2);
    if (tired(drills.third)) {
        drills.third = drills.fresh;
    } else if (place.usual_days > 2) {
        use(drills.third, place.week);
    }
    return drills;
}

} // namespace lengthwise::compose
