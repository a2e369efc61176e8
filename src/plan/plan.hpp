#pragma once

#include "grammar/limits.hpp"
#include "grammar/span.hpp"
#include "grammar/tree.hpp"
#include "plan/manner.hpp"
#include "plan/rules.hpp"
#include "units/date.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/pool.hpp"
#include "units/range.hpp"

#include <compare>
#include <cstdint>
#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// The resolved plan: what a text means. Every default is filled in, every unit
/// explicit, every date worked out; repeats stay counts. Items lie in one array in
/// the order they are swum; a group is followed by what is inside it. What several
/// places share (a named set, a round's variant) is there once and pointed to.
namespace lengthwise::plan {

using Index = std::uint32_t;
inline constexpr Index no_index = 0xFFFF'FFFF;

/// How an amount was written, so that it can be spelled the same way again.
using grammar::WrittenUnit;

/// A run of one of Plan's arrays.
struct Run {
    Index first = 0;
    Index count = 0;

    [[nodiscard]] bool empty() const { return count == 0; }
    [[nodiscard]] Index end() const { return first + count; }
};

struct Item {
    enum class Kind : std::uint8_t {
        reps,         ///< `count` reps of `distance()`
        timed_reps,   ///< `count` reps of `duration()`
        ladder,       ///< `count` reps, their distances in Plan::rungs from `body` on
        timed_ladder, ///< the same with durations
        group,        ///< `count` rounds of the items from `body` on; `amount` is where Plan::after goes on
        use,          ///< `count` rounds of the one item at `body`; `amount` indexes Plan::uses
        pause,        ///< `duration()`; `body` indexes Plan::texts when it has a note
        note          ///< `body` indexes Plan::texts
    };

    Index body = no_index;
    Index terms = 0;          ///< into Plan::terms
    std::uint32_t amount = 0; ///< Distance units or milliseconds, by kind; limits::rep_km fits
    Span span;                ///< from its count to its last modifier, labels left out
    std::uint16_t count = 1;  ///< as said by kind; at least 1
    Kind kind = Kind::reps;
    WrittenUnit unit = WrittenUnit::bare; ///< of `amount`; no part of the meaning
    std::uint8_t first_lane = 0;          ///< lanes that swim it, both included; 0 and 0: every lane
    std::uint8_t last_lane = 0;
    bool optional = false; ///< `if time:`
    bool last = false;     ///< no sibling follows

    [[nodiscard]] Distance distance() const { return Distance::units(amount); }
    [[nodiscard]] Duration duration() const { return Duration::ms(amount); }
    void set(Distance distance) { amount = static_cast<std::uint32_t>(distance.units()); }
    void set(Duration duration) { amount = static_cast<std::uint32_t>(duration.ms()); }
    [[nodiscard]] bool is_ladder() const { return kind == Kind::ladder || kind == Kind::timed_ladder; }
    [[nodiscard]] bool is_timed() const { return kind == Kind::timed_reps || kind == Kind::timed_ladder; }
    [[nodiscard]] bool is_swum() const { return kind < Kind::pause; } ///< contains reps
    [[nodiscard]] bool is_leaf() const { return kind < Kind::group; } ///< reps of its own
    [[nodiscard]] bool has_lanes() const { return first_lane != 0; }
    /// Does this lane swim it? Lane 0 is a swimmer of no lane: unlabelled lines only.
    [[nodiscard]] bool swum_by(int lane) const {
        return !has_lanes() || (lane >= first_lane && lane <= last_lane);
    }
};

static_assert(sizeof(Item) == 28); // a line of text is not much longer
static_assert(limits::rep_km * 1000 * Distance::per_metre <= 0xFFFF'FFFF);

/// One part of a split. Parts are of the rep's kind; their sum goes a whole number of times into it.
struct Part {
    std::int64_t amount = 0; ///< Distance units or milliseconds, like the rep
    WrittenUnit unit = WrittenUnit::bare;
    bool timed = false;
    bool build = false;
    Manner said;   ///< behind the part
    Manner manner; ///< in force
    Run notes;     ///< of Plan::texts
    Span span;
};

/// Where a rep is broken, and for how long.
struct Broken {
    std::int64_t piece = 0; ///< 0: not broken; else Distance units or milliseconds, like the rep
    bool timed = false;
    WrittenUnit unit = WrittenUnit::bare;
    Duration pause;
};

/// Some reps of an item, or rounds of a group, that are swum otherwise:
/// numbers first, first + step, … (`count` of them), counted from 1.
struct Selection {
    Word word = Word::odds;   ///< odds, evens, every, first, next, last
    std::uint32_t number = 0; ///< as written behind it; 0 when there was none
    std::uint32_t first = 1;
    std::uint32_t step = 1;
    std::uint32_t count = 1;
    Index terms =
        0; ///< of those reps: the item's with the selector's laid over; `said` is the selector's alone
    Index body = no_index; ///< group, use: the items of those rounds
    Span span;
};

/// All that stands behind an amount or a group.
struct Terms {
    Manner said;   ///< written behind this item itself
    Manner manner; ///< in force: with what comes down from outside
    Shape shape;
    bool stops = false;     ///< `with stops`
    Recovery said_recovery; ///< written behind this item itself
    Recovery recovery;      ///< in force; a group's is its own alone
    Broken broken;
    Run parts;      ///< of Plan::parts
    Run selections; ///< of Plan::selections, in text order, disjoint
    Run notes;      ///< of Plan::texts
};

/// What a heading says beside its word; most say nothing.
struct Heading {
    Text name;
    Manner said; ///< the section's defaults
    std::optional<Range<Duration>> said_rest;
};

struct Section {
    SectionKind kind = SectionKind::main;
    bool deeper = false;      ///< a `drill` heading indented deeper than the item above it
    std::uint16_t length = 0; ///< bytes of the heading, which is one line
    std::uint32_t begin = 0;  ///< of the heading
    Index heading = 0;        ///< of Plan::headings; 0: nothing said
    Index body = no_index;    ///< first item; no_index when empty

    [[nodiscard]] Span span() const { return {begin, begin + length}; }
};

static_assert(sizeof(Section) == 16);

struct Factor {
    Word word = Word::none; ///< a stroke, mode, gear or one of the five effort words
    std::uint32_t percent = 100;
    friend auto operator<=>(Factor const&, Factor const&) = default;
};

/// `low` and `high` in the rule's kind: percent, a number, Distance units or milliseconds; equal but for
/// ranges.
struct Limit {
    RuleId rule = 0;
    std::int64_t low = 0;
    std::int64_t high = 0;
    Span span;
};

struct Allow {
    RuleId rule = 0;
    Text reason;
    Span span;
};

/// A threshold pace, its unit and course fixed where it is written.
struct Threshold {
    Duration time; ///< for `per`
    Distance per;  ///< 100 of the pool's unit unless said
    Unit per_unit = Unit::metre;
    Pool course;                     ///< where it holds; unsaid: unknown, nothing is corrected
    std::optional<Distance> reserve; ///< D', 1 to 100 m
    bool about = false;
    bool said_per = false; ///< how it was written; no part of the meaning
    bool said_in = false;
    Span span;
};

/// What a file, a week or a session sets for all inside it; only what was written there.
struct Settings {
    std::optional<Pool> pool;
    std::optional<Range<Duration>> rest;
    std::optional<Threshold> threshold;
    std::vector<Factor> factors;
    std::vector<Limit> limits;
    std::vector<Allow> allows;
    std::vector<Text> notes;
};

struct Session {
    Text name;
    Span span;          ///< of the session's own line
    Index settings = 0; ///< own; 0: none
    Index week = 0;
    Index pool = 0;                  ///< in force, of Plan::pools
    Index threshold = no_index;      ///< in force, of Plan::thresholds; no_index: none
    Run sections;                    ///< of Plan::sections
    std::optional<Date> date;        ///< worked out; nothing when undated
    std::optional<std::uint8_t> day; ///< as written, 0 Monday … 6 Sunday
    bool said_date = false;          ///< the date itself was written
    std::optional<TimeOfDay> at;
    std::uint32_t slot_ms = 0; ///< 0: none
    Span slot_span;            ///< `for 45min`

    [[nodiscard]] std::optional<Duration> slot() const {
        return slot_ms == 0 ? std::nullopt : std::optional{Duration::ms(slot_ms)};
    }
};

struct Week {
    std::optional<std::uint32_t> number; ///< nothing for the sessions before any `week`
    std::optional<Date> from;            ///< worked out
    bool said_from = false;
    Text name;
    Span span; ///< of its line; of its first session when unnumbered
    Index settings = 0;
    Run sessions; ///< of Plan::sessions
};

struct Race {
    Text name;
    std::optional<RaceKind> kind;
    Distance distance;
    Unit unit = Unit::metre;
    Date on;
    Span span;
};

struct Before {
    Distance longest;
    std::optional<Distance> week;
    Span span;
};

struct Swimmer {
    Text name;
    Span span;
    std::optional<Threshold> threshold;
    std::optional<std::uint8_t> lane;
    std::optional<std::uint32_t> share; ///< `distance 80%`
};

/// Where a set is used.
struct Use {
    Index set = 0;  ///< of Plan::sets
    Index next = 0; ///< of Plan::items: behind what was read for it
};

/// A named set that is used; its first reading stands for its text.
struct NamedSet {
    Text name;
    Index body = no_index;
    Span span;
};

struct Plan {
    Text name;
    Span span; ///< of the name; empty without one
    std::optional<Race> race;
    std::optional<Before> before;
    std::vector<Swimmer> swimmers;

    std::vector<Week> weeks;
    std::vector<Session> sessions;
    std::vector<Section> sections;
    std::vector<Item> items;

    std::vector<Terms> terms{Terms{}};
    std::vector<Heading> headings{Heading{}};
    std::vector<Part> parts;
    std::vector<Selection> selections;
    std::vector<std::int64_t> rungs;     ///< Distance units or milliseconds
    std::vector<WrittenUnit> rung_units; ///< beside `rungs`; no part of the meaning
    std::vector<Duration> send_offs;
    std::vector<Text> texts;
    std::vector<NamedSet> sets;
    std::vector<Use> uses;
    std::vector<Settings> settings{Settings{}}; ///< 0: nothing set
    Index file_settings = 0;                    ///< the file's own
    std::vector<Pool> pools;
    std::vector<Threshold> thresholds;

    std::shared_ptr<std::deque<std::string>> kept =
        std::make_shared<std::deque<std::string>>(); ///< texts that had escapes

    /// The index behind an item and all that was written inside it: of its next sibling, if it has one.
    [[nodiscard]] Index after(Index index) const {
        auto const& item = items[index];
        return item.kind == Item::Kind::group ? item.amount
               : item.kind == Item::Kind::use ? uses[item.amount].next
                                              : index + 1;
    }
    /// The set that a use names.
    [[nodiscard]] NamedSet const& set_of(Item const& use) const { return sets[uses[use.amount].set]; }
    [[nodiscard]] Heading const& heading_of(Section const& section) const {
        return headings[section.heading];
    }
    [[nodiscard]] Pool const& pool_of(Session const& session) const { return pools[session.pool]; }
};

/// Siblings from `first` on: `for (Item const& item : items_from(plan, section.body))`. Empty for no_index.
class Siblings {
  public:
    class Iterator {
      public:
        Iterator(Plan const& plan, Index at) : plan_(&plan), at_(at) {}
        Item const& operator*() const { return plan_->items[at_]; }
        Iterator& operator++() {
            at_ = plan_->items[at_].last ? no_index : plan_->after(at_);
            return *this;
        }
        [[nodiscard]] Index index() const { return at_; }
        bool operator!=(Iterator const& other) const { return at_ != other.at_; }

      private:
        Plan const* plan_;
        Index at_;
    };

    Siblings(Plan const& plan, Index first) : plan_(plan), first_(first) {}
    [[nodiscard]] Iterator begin() const { return {plan_, first_}; }
    [[nodiscard]] Iterator end() const { return {plan_, no_index}; }

  private:
    Plan const& plan_;
    Index first_;
};

[[nodiscard]] inline Siblings items_from(Plan const& plan, Index first) {
    return {plan, first};
}

/// True when both mean the same: all but spans and the way amounts were written.
[[nodiscard]] bool same_meaning(Plan const& a, Plan const& b);

} // namespace lengthwise::plan
