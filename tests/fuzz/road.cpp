#include "fuzz/road.hpp"

#include "check/register.hpp"
#include "fuzz/promise.hpp"
#include "fuzz/target.hpp"

#include <algorithm>

/// The whole road: a text is read, resolved, reckoned, judged, made to fit and shown in every way.
namespace lengthwise::fuzz {
namespace {

constexpr plan::Index most_sessions = 2; ///< shown one by one, of a plan that may have a thousand

std::string shown(Reading const& reading, std::uint64_t choice) {
    if (!reading.clean()) {
        return findings_shown(reading.errors, reading, false);
    }
    auto const& plan = reading.plan();
    auto text = findings_shown(check::check(plan), reading, true);
    add_up(plan);
    text += plan_shown(plan, choice);
    auto const count = static_cast<plan::Index>(plan.sessions.size());
    for (plan::Index i = 0; i < std::min(count, most_sessions); ++i) {
        auto const session = static_cast<plan::Index>((choice + i) % count);
        text += session_shown(plan, session, choice);
        text += cards_shown(plan, session, choice);
    }
    return text;
}

} // namespace

void run(std::string_view bytes) {
    auto const choice = number_of(bytes);
    auto const texts = texts_of(bytes);
    auto const first = shown(read(texts), choice);
    if (choice % 8 == 0) { // one input in eight, for speed
        promise(first == shown(read(texts), choice), "the same text twice is shown the same way twice");
    }
}

} // namespace lengthwise::fuzz
