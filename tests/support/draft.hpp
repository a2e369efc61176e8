#pragma once

#include "support/course.hpp"
#include "support/generate.hpp"
#include "support/pen.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace lengthwise::test {

/// A named set that can be used.
struct KnownSet {
    std::string name;        ///< with its quotes
    bool lengths = false;    ///< it counts lengths, so the pool must have one
    int height = 0;          ///< parentheses and uses inside each other
    std::int64_t weight = 0; ///< about as many metres, or seconds of timed reps; never less
};

/// What the generator's files share.
struct Draft {
    Wanted wanted;
    Random random;
    Pen pen;
    std::vector<KnownSet> sets{};
    Course course{}; ///< in force where is written

    [[nodiscard]] bool chance(int percent) { return random.chance(percent); }
    [[nodiscard]] int between(int low, int high) { return random.between(low, high); }
    template <typename T>
    [[nodiscard]] T one_of(std::vector<T> const& choices) {
        return pick(random, choices);
    }

    void write(std::vector<Spelling> const& ways) { pen.word(one_of(ways)); }
    void write(Distance distance) { write(writings(distance, course)); }
    void write(Duration time) { write(writings(time)); }
    void write_amount(std::int64_t amount, bool timed) {
        timed ? write(Duration::ms(amount)) : write(Distance::units(amount));
    }
    void string() { pen.exact(quoted()); }

    /// A quoted text: mostly plain, sometimes one that needs care.
    [[nodiscard]] std::string quoted();
    [[nodiscard]] Duration seconds(int low, int high) { return Duration::seconds(between(low, high)); }

    /// What distances are made of here: a length, seldom half of one, or 25 of the unit.
    [[nodiscard]] Distance step();

    /// rest = duration | duration-range
    void rest();
};

} // namespace lengthwise::test
