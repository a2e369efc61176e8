#pragma once

#include "calc/breakdown.hpp"
#include "calc/threshold.hpp"
#include "compose/request.hpp"
#include "compose/resume.hpp"
#include "report/card_views.hpp"
#include "report/choose.hpp"
#include "report/plan_csv.hpp"
#include "units/date.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What was asked for on the command line: a struct a command, read without any input or output.
namespace lengthwise::cli {

enum class Colour : std::uint8_t { automatic, always, never };
enum class Format : std::uint8_t { text, json, sarif };

/// How it is shown.
struct Look {
    Colour colour = Colour::automatic;
    bool ascii = false;
    std::optional<std::size_t> width; ///< 40 to 400; nothing: the terminal's, at most 80
};

/// Where it goes.
struct Target {
    std::optional<std::string> file; ///< nothing: standard output
    bool force = false;              ///< what is there may be replaced
};

struct Tally {
    std::vector<std::string> files;
    report::Wish wish;
    std::optional<calc::By> by;
    bool by_swimmer = false; ///< the swimmers side by side, instead of `by`
    Format format = Format::text;
    Look look;
    Target target;
};

struct Deck {
    std::vector<std::string> files; ///< one
    report::Wish wish;
    std::optional<Date> today;
    std::optional<Pool> pool;
    std::optional<TimeOfDay> start;     ///< nothing: as the plan says
    std::optional<Duration> left;       ///< the session runs late: this is left
    std::optional<std::uint32_t> after; ///< … behind this row
    std::optional<Duration> gap;        ///< between two who leave one after the other in a lane
    std::optional<int> swimmers;        ///< in a lane
    Look look;
    Target target;
};

/// In the terminal, or as a picture where it has a target.
struct Chart {
    std::vector<std::string> files; ///< one
    report::Wish wish;              ///< lane and swimmer
    Look look;
    Target target;
};

enum class ExportKind : std::uint8_t { json, csv, ics, html, markdown };

struct Export {
    std::vector<std::string> files;
    report::Wish wish;
    ExportKind as = ExportKind::json;
    report::CsvRows rows = report::CsvRows::line;
    Look look;
    Target target;
};

struct Check {
    std::vector<std::string> files;
    bool strict = false; ///< a warning ends with 1 too
    Format format = Format::text;
    Look look;
    Target target;
};

struct Tidy {
    std::vector<std::string> files;
    bool check = false;  ///< says what would change, changes nothing
    bool to_out = false; ///< to standard output, changes nothing
    Look look;
};

struct Pace {
    std::vector<calc::Swim> swims;
    Pool pool;                      ///< that the threshold is for; unsaid: the first swim's
    std::vector<Distance> predict;  ///< what was asked for
    bool stops = false;             ///< the swims had stops
    std::vector<std::string> files; ///< the plan to write into, if any
    Format format = Format::text;
    Look look;
    Target target;
};

/// Sizes in mm.
struct Cards {
    std::vector<std::string> files; ///< one, or none for a test sheet
    report::Wish wish;
    std::string size = "quarter";
    bool letter = false; ///< paper: A4 unless said
    double margin = 6;
    bool hole = false;
    report::BackKind back = report::BackKind::none;
    std::uint32_t copies = 1;
    bool test_sheet = false;
    double distance = 700;              ///< from the card to the eyes
    std::optional<std::string> preview; ///< an SVG's name
    bool png = false;
    Look look;
    Target target;
};

/// Asks nothing.
struct New {
    std::optional<Date> today;      ///< the week begins on the next Monday; nothing: it has no date
    std::vector<std::string> files; ///< none: it reads no plan
    Look look;
    Target target; ///< plan.swim unless said
};

/// Distances of today as they were typed; read once the pool is known.
struct Today {
    std::optional<std::string> longest;
    std::optional<std::string> session;
};

/// A plan that goes on otherwise behind one of its weeks.
struct Resume {
    std::string file;
    std::uint32_t after = 0;
    compose::Instead instead;
    Today today;
};

struct Compose {
    compose::Request request; ///< with `resume` only what that plan does not know: closed days, kit
    std::optional<Resume> resume;
    bool explain = false;           ///< the ramp, and what binds it where
    std::vector<std::string> files; ///< none
    Look look;
    Target target;
};

struct Explain {
    std::string word; ///< empty: a list of all there is
    Look look;
};

/// Text that was asked for: help, the version.
struct Answer {
    std::string text;
};

/// A call that is not understood.
struct Misuse {
    std::string problem; ///< one sentence, perhaps a list below it
};

using Options =
    std::variant<Answer, Misuse, New, Tally, Deck, Chart, Export, Check, Tidy, Pace, Cards, Compose, Explain>;

/// `arguments` are those behind the program's name.
[[nodiscard]] Options read_options(std::vector<std::string> const& arguments);

struct KnownOption {
    std::vector<std::string> names; ///< as they are typed: "--output", "-o"
    std::string wants;              ///< behind it, in words; empty: nothing
};

/// The options that a command knows. For what is made of them: completions, and tests of the help.
[[nodiscard]] std::vector<KnownOption> known_options(std::string_view command);

/// Their names alone.
[[nodiscard]] std::vector<std::string> option_names(std::string_view command);

} // namespace lengthwise::cli
