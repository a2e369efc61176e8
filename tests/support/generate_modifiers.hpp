#pragma once

#include "support/draft.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace lengthwise::test {

/// What stands in front of modifiers, as far as rules ask for it.
struct Front {
    enum class Owner : std::uint8_t { item, selector, part, heading };

    Owner owner = Owner::item;
    int count = 1;                     ///< reps or rounds
    bool rounds = false;               ///< of a group or use
    bool timed = false;                ///< a time is swum
    bool split = false;                ///< has parts
    Duration longest{};                ///< timed: the longest rep, its breaks included
    std::vector<std::int64_t> parts{}; ///< of a split: Distance units or milliseconds
    std::int64_t piece = 0;            ///< of a broken rep, likewise; 0 when it is not broken
    Duration pause{};                  ///< its break

    [[nodiscard]] bool distance() const { return owner != Owner::heading && !rounds && !timed; }
};

/// Writes modifiers and selectors production by production. What a rule of docs/notation.md
/// forbids is not written; what only a check would question is.
class ModifierGenerator {
  public:
    explicit ModifierGenerator(Draft& draft) : draft_(draft), pen_(draft.pen) {}

    /// { modifier } { selector }
    void behind_item(Front const& front);

    /// { default } of a heading
    void defaults();

  private:
    enum class Clause : std::uint8_t {
        stroke,
        mode,
        effort,
        build,
        descend,
        negative_split,
        gear,
        nothing,
        stops,
        broken,
        split,
        recovery,
        note
    };
    using Clauses = std::vector<Clause>;

    [[nodiscard]] Clauses choose(Front const& front);
    [[nodiscard]] Clauses in_order(Clauses clauses, bool split);
    void write(Clauses const& clauses, Front const& front);
    void write(Clause clause, Front const& front, bool string_follows);

    void stroke();
    void mode(Front const& front, bool string_follows);
    void effort(Front const& front);
    void exact_pace();
    void descend(Front const& front);
    void gear();
    void broken(Front const& front);
    void split(Front const& front);
    void part(std::int64_t amount, bool timed);
    void recovery(Front const& front);
    void send_offs(Front const& front);
    void selectors(Front const& front);
    void selector(std::string_view word, int number, Front const& item);

    Draft& draft_;
    Pen& pen_;
};

} // namespace lengthwise::test
