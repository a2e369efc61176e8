#pragma once

#include "support/draft.hpp"
#include "support/generate_modifiers.hpp"

#include <cstdint>
#include <vector>

namespace lengthwise::test {

/// Writes items production by production.
class ItemGenerator {
  public:
    explicit ItemGenerator(Draft& draft) : draft_(draft), pen_(draft.pen), modifiers_(draft) {}

    /// item = ( NUM X body | amount { "," amount } | group | use ) { modifier } { selector }
    ///
    /// On the line in hand, `level` levels deep; worth at most about `budget` metres. A group on one line has
    /// no other that is `spread` over several.
    KnownSet item(int level, std::int64_t budget, bool may_spread = true, int depth = 0);

  private:
    KnownSet group(int level, std::int64_t budget, bool may_spread, int depth);
    KnownSet use(KnownSet const& set, std::int64_t budget);
    KnownSet ladder(std::int64_t budget);
    KnownSet reps(std::int64_t budget);
    int count(int most, std::int64_t budget);
    [[nodiscard]] std::vector<KnownSet> usable(std::int64_t budget, int depth) const;

    // Amounts are Distance units or milliseconds.
    [[nodiscard]] std::int64_t amount(bool timed, std::int64_t budget);
    [[nodiscard]] std::int64_t amount_in_parts(Front& front, std::int64_t budget);
    void break_up(Front& front, std::int64_t amount);
    void times(std::vector<std::int64_t> const& amounts);
    void steps(std::vector<std::int64_t> const& amounts);
    [[nodiscard]] std::int64_t weight(std::int64_t amount, bool timed) const;
    [[nodiscard]] bool counts_lengths() const { return draft_.course.everywhere == Everywhere::lengths; }

    Draft& draft_;
    Pen& pen_;
    ModifierGenerator modifiers_;
};

} // namespace lengthwise::test
