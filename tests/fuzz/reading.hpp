#pragma once

#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

/// From bytes to a plan, as the program has it.
namespace lengthwise::fuzz {

/// An input may hold two texts with this line between them: the plan, and the one file that it may include,
/// whatever name it gives it.
inline constexpr std::string_view divider = "--- more\n";

/// Behind this byte stand no texts, but what decides for the tests' generator of plans
/// (support/generate.hpp): most changes of a byte then make another plan without an error.
inline constexpr char generator_mark = '\0';

struct Texts {
    std::string plan;
    std::string more;
};
[[nodiscard]] Texts texts_of(std::string_view bytes);

struct Reading {
    std::shared_ptr<grammar::Bundle const> bundle;
    plan::Resolved resolved; ///< of no use when there are errors
    Diagnostics errors;      ///< of parsing, including and resolving, and of times that are too long

    [[nodiscard]] plan::Plan const& plan() const { return resolved.plan; }
    [[nodiscard]] bool clean() const { return !errors.has_errors(); }
    /// Empty without one.
    [[nodiscard]] std::string first_error() const {
        return clean() ? std::string{} : errors.kept().front().message;
    }
};
[[nodiscard]] Reading read(Texts const& texts);

/// A number that the bytes decide, to choose by: FNV-1a, 64 bits.
[[nodiscard]] std::uint64_t number_of(std::string_view bytes);

} // namespace lengthwise::fuzz
