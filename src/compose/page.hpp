#pragma once

#include "compose/day_sizes.hpp"
#include "plan/plan.hpp"
#include "units/date.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// The sessions of a composed plan before they are text: few shapes, sizes known, so that what has
/// to hold of them can be counted.
namespace lengthwise::compose {

/// Sizes of reps, sections and sessions: there and back to the start, one length in pools of 40 m or more.
using Laps = int;

enum class Stroke : std::uint8_t { crawl, back, choice };
enum class Mode : std::uint8_t { swim, kick, pull, drill };
enum class Effort : std::uint8_t { unsaid, easy, steady, threshold, hard };
enum class Shape : std::uint8_t { plain, build, descend, negative_split };

/// How a rep, or a part of one, is swum.
struct Manner {
    Stroke stroke = Stroke::crawl;
    Mode mode = Mode::swim;
    Effort effort = Effort::unsaid; ///< unsaid: the heading's
    Shape shape = Shape::plain;
    bool gear = false;        ///< a board for kick, a buoy for pull
    std::string_view drill{}; ///< its name

    friend bool operator==(Manner const&, Manner const&) = default;
};

/// A part of a rep; all parts add up to it or go into it a whole number of times.
struct Part {
    int halves = 2; ///< in half laps
    Manner manner{};
};

struct Rep {
    Laps laps = 1;
    Manner manner{};
    std::vector<Part> parts{}; ///< none: swum in one manner
    int rest = 0;              ///< s behind it; 0: nothing said
};

/// Some reps of a line at another effort.
enum class Pattern : std::uint8_t { none, odds_and_evens, last };

/// One line on the whiteboard, with the notes above it.
struct Line {
    enum class Form : std::uint8_t {
        reps,   ///< `count` of the one rep
        ladder, ///< the reps once, all in the first one's manner
        rounds  ///< `count` times all the reps
    };

    std::vector<std::string> above{}; ///< each on a line of its own
    Form form = Form::reps;
    int count = 1;
    std::vector<Rep> reps{};
    Laps piece = 0;  ///< broken at so many laps, for 20 s; 0: in one go
    int descend = 0; ///< `descend 1-n`
    Pattern pattern = Pattern::none;
    Effort odds = Effort::unsaid;  ///< of the pattern; with `last` that of the others
    Effort evens = Effort::unsaid; ///< with `last` that of the last one
    int rest = 0;                  ///< s behind each rep, or behind each round
    int send_off = 0;              ///< s from start to start
    std::string note{};            ///< behind it
};

/// The break in a rep that is broken, s.
inline constexpr int short_break = 20;

[[nodiscard]] Laps laps(Line const& line);
[[nodiscard]] Laps laps(std::vector<Line> const& lines);
/// What is swum hard, in half laps.
[[nodiscard]] int hard_halves(Line const& line);
/// The longest stretch without a stop.
[[nodiscard]] Laps longest_rep(Line const& line);
[[nodiscard]] int rep_count(Line const& line);
/// All that is said of rest in it, the last one too, s; a send-off's is not known here.
[[nodiscard]] int rest_in(Line const& line);
/// Would a coach read them as one line written twice?
[[nodiscard]] bool alike(Line const& a, Line const& b);

struct Section {
    SectionKind kind = SectionKind::main;
    std::string_view name{};          ///< empty for none
    std::vector<std::string> notes{}; ///< at its top
    std::vector<Line> lines{};
};

struct Session {
    DayKind kind = DayKind::pace;
    Date date{};
    Laps laps = 0;
    std::string title{};
    std::vector<Section> sections{};

    [[nodiscard]] Section const* section(SectionKind kind) const;
};

struct Week {
    int number = 1;
    std::string title{};
    std::vector<Session> sessions{};
};

// Lines of the everyday kinds.

[[nodiscard]] constexpr Manner crawl(Effort effort = Effort::unsaid, Shape shape = Shape::plain) {
    return {.effort = effort, .shape = shape};
}
[[nodiscard]] constexpr Manner crawl_build() {
    return crawl(Effort::unsaid, Shape::build);
}
[[nodiscard]] constexpr Manner choice(Effort effort = Effort::unsaid) {
    return {.stroke = Stroke::choice, .effort = effort};
}
[[nodiscard]] constexpr Manner kick(bool board) {
    return {.mode = Mode::kick, .gear = board};
}
[[nodiscard]] constexpr Manner pull() {
    return {.mode = Mode::pull, .gear = true};
}
[[nodiscard]] constexpr Manner drill(std::string_view name) {
    return {.mode = Mode::drill, .drill = name};
}

/// `count x size`, with `rest` s behind each (0: unsaid).
[[nodiscard]] Line reps(int count, Laps size, Manner manner, int rest = 0, std::string note = {});

} // namespace lengthwise::compose
