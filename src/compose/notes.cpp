#include "compose/notes.hpp"

#include "compose/author.hpp"
#include "compose/drill_section.hpp"
#include "compose/set_book.hpp"

#include <algorithm>
#include <string_view>

namespace lengthwise::compose {

namespace {

constexpr std::string_view on_watch = "Lifeguard on watch, never alone; unsure of your health? Ask a doctor";
constexpr std::string_view go_outdoors =
    "Racing outdoors? Go there twice now: guarded, in company, wetsuit on";
// Cold shock passes in a few minutes: House 2017, J R Nav Med Serv 103:189-193.
constexpr std::string_view wade_in = "Outdoors: wade in, wait until the breath is calm, then swim";

Section& section(Session& session, SectionKind kind) {
    return *std::ranges::find(session.sections, kind, &Section::kind);
}

/// The note that can be missed most easily: that drills have ended, then one behind a line of the main part.
void drop_one(Session& session) {
    auto* last = static_cast<Line*>(nullptr);
    for (auto& part : session.sections) {
        for (auto& line : part.lines) {
            if (line.note == same_feeling) {
                line.note.clear();
                return;
            }
            last = line.note.empty() ? last : &line;
        }
    }
    if (last != nullptr) {
        last->note.clear();
    }
}

} // namespace

std::size_t notes_in(Session const& session) {
    std::size_t count = 0;
    for (auto const& section : session.sections) {
        count += section.notes.size();
        for (auto const& line : section.lines) {
            count += line.above.size() + (line.note.empty() ? 0 : 1);
        }
    }
    return count;
}

void add_notes(Session& session, Occasion const& occasion) {
    auto const& place = occasion.place;
    auto& main = section(session, SectionKind::main).notes;
    auto const long_day = place.day == DayKind::long_day;
    if (occasion.first) {
        section(session, SectionKind::warm_up).notes.emplace_back(on_watch);
    }
    if (occasion.open_water && long_day && occasion.looking) {
        main.emplace_back(go_outdoors);
    }
    if (occasion.open_water && long_day && place.kind == WeekKind::taper) {
        main.emplace_back(wade_in);
    }
    if (place.last && long_day) {
        main.emplace_back(nothing_new);
    }
    for (auto count = notes_in(session); count > most_notes; --count) {
        drop_one(session);
    }
}

} // namespace lengthwise::compose
