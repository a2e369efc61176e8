#include "check/second_look.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include "units/spell.hpp"

#include <fmt/core.h>

#include <string_view>

namespace lengthwise::check::second_look_at {

namespace {

void missing_pool(Inquiry& inquiry) {
    auto found = false;
    Walk walk{inquiry.plan};
    for (auto const& session : inquiry.plan.sessions) {
        if (found || inquiry.plan.pool_of(session).kind != Pool::Kind::unsaid || inquiry.waived(session)) {
            continue;
        }
        walk.through(session, [&](Met const& met) {
            if (found || !met.item.is_leaf() || met.item.is_timed()) {
                return;
            }
            found = true;
            inquiry.warn(met.item.span,
                         "no pool is named, so a bare number is metres and lengths are unknown",
                         "before the first week or session: pool 25m");
        });
    }
}

void sections(Inquiry& inquiry) {
    for (auto const& session : inquiry.plan.sessions) {
        if (inquiry.waived(session)) {
            continue;
        }
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            auto const& section = inquiry.plan.sections[i];
            if (section.deeper) {
                inquiry.warn(section.span(), "this drill begins a new section",
                             "a drill to swim stands behind an amount: 4 x 50 drill");
            } else if (section.body == plan::no_index) {
                inquiry.warn(section.span(),
                             fmt::format("this {} is empty", spelling(word_of(section.kind))));
            }
        }
    }
}

/// 0:50 and 5:00 per 100 m.
constexpr auto fastest = Duration::seconds(50);
constexpr auto slowest = Duration::minutes(5);

void threshold(Inquiry& inquiry, plan::Threshold const& threshold) {
    // Below 24 h and 1 000 km, so the products stay far inside 64 bits.
    auto const ms = threshold.time.ms() * Distance::metres(100).units() / threshold.per.units();
    auto const pace = Duration::ms((ms + 500) / 1000 * 1000);
    if (Duration::ms(ms) < fastest || Duration::ms(ms) > slowest) {
        inquiry.warn(
            threshold.span,
            fmt::format("a threshold of {} per 100 m, swimmers have 0:50 to 5:00", spell::clock(pace)),
            "for which distance is it? try: threshold 1:55 per 100m");
    }
}

void thresholds(Inquiry& inquiry) {
    if (inquiry.waived()) {
        return;
    }
    for (auto const& settings : inquiry.plan.settings) {
        if (settings.threshold) {
            threshold(inquiry, *settings.threshold);
        }
    }
    for (auto const& swimmer : inquiry.plan.swimmers) {
        if (swimmer.threshold) {
            threshold(inquiry, *swimmer.threshold);
        }
    }
}

} // namespace

void places(Inquiry& inquiry) {
    missing_pool(inquiry);
    sections(inquiry);
    thresholds(inquiry);
}

} // namespace lengthwise::check::second_look_at
