#pragma once

#include "calc/totals.hpp"
#include "plan/plan.hpp"
#include "tailor/pool.hpp"
#include "units/date.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// A session for the pool side: all that a deck shows, worked out, before anything
/// is laid out. Texts are safe to print.
namespace lengthwise::report {

/// One behind the other in a lane: asked for.
struct DeckQueue {
    Duration gap{};                ///< between two who leave
    std::optional<int> swimmers{}; ///< that many at the lane's pace; nothing: those the plan names
};

struct DeckOptions {
    plan::Index session = 0;   ///< of Plan::sessions, from pick_session
    std::optional<int> lane{}; ///< that one alone; nothing: every lane of the session
    bool ascii = false;
    plan::Swimmer const* swimmer = nullptr; ///< whose session it is, as the file names him
    plan::Plan const* swum = nullptr; ///< what he has swum before (tailor::swum_by); nothing: the plan itself
    std::optional<TimeOfDay> start{}; ///< it begins then, whatever the plan says
    std::optional<DeckQueue> queue{};
};

/// One line of the session.
struct DeckRow {
    enum class Kind : std::uint8_t {
        line,     ///< swum; numbered
        optional, ///< `if time:`; no number, outside running totals
        pause,
        note
    };
    Kind kind = Kind::note;
    int number = 0;       ///< by which the row is called out: counted over all lanes of the session; 0: none
    bool changed = false; ///< reads otherwise than in the file
    std::string rep{};    ///< lengths of one rep: "8", "4,8,4", "8+2", "1–16"; a time when timed
    std::int64_t lengths = 0;       ///< of the whole line
    Duration timed{};               ///< of its timed reps
    std::vector<bool> swum{};       ///< by place in Deck::lanes
    std::vector<Distance> so_far{}; ///< by place in Deck::lanes: what that lane has swum behind this row
    std::vector<std::optional<Duration>> start{}; ///< by place in Deck::lanes, counted from the session's
                                                  ///< first start; nothing: unknown, or not swum by that lane
    std::string hand{};                           ///< what the pace clock shows at each start: "hand 00 30"
    std::vector<std::string> queue{};             ///< who leaves when and who meets whom, one below the other
    std::string lanes{}; ///< "lane 1: " of an `if time` line, which stands in no lane's column
    std::string set{};   ///< as it is spelled, `if time:` in front

    [[nodiscard]] bool swims() const { return kind == Kind::line || kind == Kind::optional; }
};

struct DeckSection {
    std::string heading{}; ///< `drill "Body line" easy rest 20s`
    std::vector<DeckRow> rows{};
};

/// What one lane swims today, and has swum before.
struct DeckLane {
    int lane = 0; ///< 0: the session has no lane lines
    calc::Totals swum{};
    calc::Totals if_time{};
    std::optional<Distance> before{}; ///< the longest rep until today, where the file knows it
};

/// How a lane is timed.
struct DeckPace {
    int lane = 0; ///< 0: every lane without a pace of its own
    std::optional<plan::Threshold> threshold{};
    std::optional<Band<Duration>> takes{}; ///< the whole session
    bool reserve_assumed = false;          ///< one that the file does not give decides a time
};

/// When it begins and when it is over.
struct DeckClock {
    std::optional<TimeOfDay> from{}; ///< nothing: times are counted from 0:00
    std::optional<Duration> slot{};
    bool runs = false;              ///< a time behind the first is known
    bool too_long = false;          ///< it passes what may be timed, so nothing is known
    std::vector<DeckPace> shown{};  ///< by place in Deck::lanes
    std::vector<DeckPace> others{}; ///< lanes with a pace of their own, where the session names none
    bool turned_round = false;      ///< a lane's time is unknown and there is a slot: `fits` answers
    std::optional<Duration>
        fits{}; ///< the slowest threshold per 100 of the pool's unit, as calc/fits.hpp has it
};

/// A line as the file has it, under a row that changed.
struct DeckBefore {
    int number = 0;          ///< 0: of an optional line
    bool times_stay = false; ///< it has a send-off, or a time to hold, for what it was
    std::string lanes{};     ///< as DeckRow::lanes
    std::string set{};
};

/// What was done to make the session fit.
struct DeckMove {
    Pool from{};                 ///< the pool it was written for
    std::uint32_t percent = 100; ///< of each rep
    std::vector<DeckBefore> changed{};
};

struct Deck {
    std::vector<std::string> title{}; ///< "Long hall", "Thu 29 April 2027, 07:00, 45 min", "pool 33⅓ m"
    std::vector<std::string> notes{}; ///< of the week and the session
    Pool pool{};
    std::optional<plan::Race> race{};
    std::vector<std::string> kit{}; ///< every `with` word in force on a line that is shown
    std::vector<DeckLane> lanes{};  ///< ascending, at least one
    std::vector<DeckSection> sections{};
    std::optional<Range<Duration>> rest{}; ///< for lines that have none
    DeckClock clock{};
    std::vector<std::string> queue{}; ///< what rows say of swimmers one behind the other, explained
    std::optional<DeckMove> move{};
};

/// The deck of one session. Lanes are those that the session names, or the one asked for.
[[nodiscard]] Deck deck_view(plan::Plan const& plan, DeckOptions const& options);

/// The same made to fit another pool: figures of `tailored`, which was made of that session,
/// the longest rep until today of `plan`.
[[nodiscard]] Deck deck_view(plan::Plan const& plan, DeckOptions const& options,
                             tailor::Tailored const& tailored);

} // namespace lengthwise::report
