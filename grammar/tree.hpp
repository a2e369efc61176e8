#pragma once

#include "span.hpp"
#include "strings.hpp"
#include "words.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

/// The syntax tree: what was written, in the order it was written, nothing worked
/// out. It is one flat array in text order. A container is followed by its
/// children and knows where they end; a leaf stands alone. Twelve bytes a node.
namespace lengthwise::grammar {

/// What a node is. Containers (`value` is the index one past their subtree) first.
enum class Kind : std::uint8_t {
    // --- containers ---
    race,      ///< [name] (race_kind | race_distance) date
    swimmer,   ///< name { threshold | swimmer_lane | swimmer_share }
    before,    ///< before_longest [before_week]
    set,       ///< name item
    threshold, ///< [about] pace_time [pace_per] [pace_in | pace_open_water] [reserve]
    limit,     ///< rule_name, then limit_number | limit_percent | limit_distance | limit_time [limit_time_to]
    allow,     ///< rule_name [note]
    week,      ///< week_number [week_from] [name] { setting } { session }
    session,   ///< [day | date] [time_of_day] [slot] [name] { setting } { section }
    section,   ///< word: heading; [name] { modifier } { item | pause [note] | note_line }
    item,      ///< [lane_label] [if_time] in either order, then amounts | group | use, modifiers, selectors;
    ///< `length` is the count before `x`, 0 when there is none; begin is its first byte after labels
    group,    ///< { item } group_end
    split,    ///< { part { stroke | mode | effort… | build | note } }
    selector, ///< word: odds … last; [selector_number] { stroke | mode | effort… | build | with… | note }
    last_container = selector,

    // --- leaves; `value` and `word` as said ---
    bad,           ///< a line that could not be read; its error is in the diagnostics
    plan,          ///< followed by a `name` leaf
    include,       ///< followed by a `name` leaf
    name,          ///< a STRING that names; value: its byte length, quotes included
    note,          ///< a STRING that is a note; value as above
    note_line,     ///< a STRING on a line of its own, or a note for the scope; value as above
    race_kind,     ///< word
    race_distance, ///< number
    date,          ///< value: year * 10000 + month * 100 + day, a day that exists
    swimmer_lane,  ///< value
    swimmer_share, ///< value: percent
    before_longest,
    before_week, ///< number
    pool,        ///< number
    pool_open_water,
    default_rest,   ///< duration; a range goes on in `rest_to`
    factor,         ///< word; value: percent
    rule_name,      ///< the rule's text is the span's
    limit_number,   ///< value
    limit_percent,  ///< value
    limit_distance, ///< number
    limit_time,
    limit_time_to, ///< duration
    about,
    pace_time, ///< duration
    pace_per,
    pace_in,
    reserve, ///< number
    pace_open_water,
    week_number, ///< value
    week_from,   ///< as date
    day,         ///< word: mon … sun
    time_of_day, ///< value: minutes since midnight
    slot,        ///< duration
    pause,       ///< duration; a note may follow
    lane_label,  ///< value: first | last << 16
    if_time,
    distance,     ///< number: one amount; several in a row are a ladder
    time,         ///< duration: one amount
    use,          ///< followed by a `name` leaf
    group_end,    ///< the closing parenthesis
    stroke,       ///< word
    mode,         ///< word; after `drill` a `name` leaf may follow
    effort,       ///< word: easy … sprint
    effort_shift, ///< after threshold; word: plus or minus; duration in `shift_time`
    shift_time,   ///< duration
    at_percent,   ///< value
    at_pace,      ///< duration, followed by at_per
    at_per,       ///< number
    hold,         ///< duration
    rpe,          ///< value
    build,
    negative_split,
    descend,     ///< value: 0 bare, else first | last << 16
    with,        ///< word: nothing, stops or a gear word; the clause's first
    with_more,   ///< word: a further gear word of the same clause
    part,        ///< number, or
    part_time,   ///< duration
    broken,      ///< number, or
    broken_time, ///< duration; both followed by broken_for
    broken_for,  ///< duration
    rest,        ///< duration; a range goes on in `rest_to`
    rest_to,     ///< duration
    rest_as_needed,
    rest_breaths,    ///< value
    on,              ///< duration; further send-offs in `on_more`
    on_more,         ///< duration
    selector_number, ///< value
};

[[nodiscard]] constexpr bool is_container(Kind kind) {
    return kind <= Kind::last_container;
}

/// The `word` of a number leaf: its unit, and whether it was written with a point.
/// Its `value` is the number in 1/600, so that the denominators 2, 3, 4, 6, 8, 12, 24
/// and two decimals are all whole; numbers above 7 000 000 are an error.
enum class WrittenUnit : std::uint8_t { bare, metres, yards, lengths };
inline constexpr std::uint32_t number_scale = 600;
inline constexpr std::uint8_t decimal_flag = 0x80;

/// The `word` of a duration leaf: how it was written. Its `value` is milliseconds,
/// but for `bare` (only the low end of a range, `20-40s`), whose value is the number.
enum class WrittenTime : std::uint8_t { bare, seconds, minutes, hours, clock, long_clock };

struct Node {
    std::uint32_t begin = 0; ///< offset of its first byte
    std::uint32_t value = 0;
    std::uint16_t length = 0; ///< bytes of a leaf (not of a STRING, see value); the count of an item
    Kind kind = Kind::bad;
    std::uint8_t word = 0; ///< a Word, WrittenUnit or WrittenTime, by kind

    [[nodiscard]] Word as_word() const { return static_cast<Word>(word); }
    [[nodiscard]] WrittenUnit unit() const { return static_cast<WrittenUnit>(word & ~decimal_flag); }
    [[nodiscard]] bool decimal() const { return (word & decimal_flag) != 0; }
    [[nodiscard]] WrittenTime written_time() const { return static_cast<WrittenTime>(word); }
    [[nodiscard]] bool is_string() const {
        return kind == Kind::name || kind == Kind::note || kind == Kind::note_line;
    }
};
static_assert(sizeof(Node) == 12);

/// A comment, from `#` to the end of its line.
struct Comment {
    std::uint32_t begin = 0;
    std::uint32_t end = 0;
};

struct Tree {
    std::vector<Node> nodes;
    std::vector<Comment> comments;    ///< in text order
    std::string_view text;            ///< what the offsets point into …
    std::uint32_t base = 0;           ///< … from this offset on
    std::shared_ptr<std::string> own; ///< the text of a tree that was spelled, not parsed

    /// Index of the node after `i` and its subtree.
    [[nodiscard]] std::uint32_t next(std::uint32_t i) const {
        return is_container(nodes[i].kind) ? nodes[i].value : i + 1;
    }
    [[nodiscard]] std::uint32_t size() const { return static_cast<std::uint32_t>(nodes.size()); }

    /// Where node `i` with its subtree stands.
    [[nodiscard]] Span span(std::uint32_t i) const;

    /// The bytes as written.
    [[nodiscard]] std::string_view slice(Span span) const {
        return text.substr(span.begin - base, span.size());
    }

    /// What a STRING leaf says: without quotes, escapes as written (`\"` stays two bytes).
    [[nodiscard]] std::string_view raw_string(std::uint32_t i) const {
        return text.substr(nodes[i].begin - base + 1, nodes[i].value - 2);
    }
};

} // namespace lengthwise::grammar
