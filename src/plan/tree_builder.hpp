#pragma once

#include "grammar/tree.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <string_view>

namespace lengthwise::plan {

/// How a time is spelled: "90s" for a slot or break, "1:30" on a clock, or in the shortest
/// words ("20s", "2min", "1:30").
enum class TimeStyle : std::uint8_t { shortest, clock, with_unit };

/// Puts a syntax tree together node by node, in text order. Private to src/plan.
///
/// What the tree views is a text of its own: its strings and rule names, and a mark for
/// each line, so that offsets rise as in a written text and blank lines can be seen in it.
class TreeBuilder {
  public:
    /// Begins a line, with a blank one before it if asked.
    void line(bool blank_before = false);

    /// Opens a container; close() ends the one opened last that is still open.
    [[nodiscard]] std::uint32_t open(grammar::Kind kind, Word word = Word::none);
    void close(std::uint32_t container);

    /// An item; `count` 1 is not written.
    [[nodiscard]] std::uint32_t open_item(std::uint32_t count);

    void leaf(grammar::Kind kind, std::uint32_t value = 0);
    void word(grammar::Kind kind, Word word, std::uint32_t value = 0);
    void string(grammar::Kind kind, std::string_view text);
    void rule_name(std::string_view name);
    void time(grammar::Kind kind, Duration time, TimeStyle style = TimeStyle::shortest);
    /// "20-40s" as two leaves; one where both ends agree.
    void range(grammar::Kind low, grammar::Kind high, Range<Duration> range);
    void node(grammar::Node node);

    [[nodiscard]] std::uint32_t size() const { return tree_.size(); }

    [[nodiscard]] grammar::Tree take();

  private:
    [[nodiscard]] std::uint32_t here() const { return static_cast<std::uint32_t>(text_.size()); }

    grammar::Tree tree_;
    std::string text_;
};

} // namespace lengthwise::plan
