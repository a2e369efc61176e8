#pragma once

#include "grammar/tree.hpp"
#include "plan/plan.hpp"
#include "plan/work.hpp"

#include <cstdint>
#include <optional>

/// Reads what stands behind an amount, a part, a selector or a heading: one
/// modifier of a class, checked where the text alone decides.
namespace lengthwise::plan {

/// The classes of which one item may say one thing.
enum class Class : std::uint8_t { stroke, mode, effort, shape, gear, stops, split, broken, recovery, none };

/// Whose modifiers these are; decides what may stand there.
enum class Owner : std::uint8_t { item, group, part, selector, heading };

/// What was written, before anything comes down from outside.
struct Said {
    Manner manner;
    Shape shape;
    bool stops = false;
    bool nothing = false; ///< `with nothing`
    Recovery recovery;
    std::optional<std::uint32_t> split; ///< its node
    Broken broken;
    Run notes;
};

/// Reads the modifiers from node `first` up to `end` or the first selector. `pool` is in force there.
[[nodiscard]] Said read_modifiers(Work& work, grammar::Tree const& tree, std::uint32_t first,
                                  std::uint32_t end, Pool const& pool, Owner owner);

/// Reports every second modifier of a class from node `first` up to `end` or the first selector, naming both.
void check_once(Report& report, grammar::Tree const& tree, std::uint32_t first, std::uint32_t end);

/// A modifier with the leaves that belong to it: `rest 20-40s`, `with fins, paddles`.
[[nodiscard]] Span clause_of(grammar::Tree const& tree, std::uint32_t node);

/// One past the modifiers of the part at `part`, in a split that ends at `end`.
[[nodiscard]] std::uint32_t part_end(grammar::Tree const& tree, std::uint32_t part, std::uint32_t end);

/// The class of a modifier node; `none` for notes, selectors and the nodes that follow a modifier.
[[nodiscard]] Class class_of(grammar::Node const& node);

} // namespace lengthwise::plan
