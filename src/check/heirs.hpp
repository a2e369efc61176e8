#pragma once

#include "plan/plan.hpp"

#include <array>
#include <cstdint>
#include <functional>
#include <unordered_set>

/// Who takes over what a heading or a group says.
namespace lengthwise::check {

/// The classes of modifiers that come down from outside.
enum class Class : std::uint8_t { stroke, mode, gear, effort };
inline constexpr std::array classes{Class::stroke, Class::mode, Class::gear, Class::effort};

[[nodiscard]] bool says(plan::Manner const& manner, Class what);

/// Finds the items for which a word of one class from outside still counts: nothing
/// nearer says one. What several places share is visited once.
class Heirs {
  public:
    using Visit = std::function<void(plan::Item const& leaf)>;

    Heirs(plan::Plan const& plan, Class what) : plan_(plan), what_(what) {}

    /// All below a heading.
    void of_section(plan::Section const& section, Visit const& visit);
    /// All inside a group or a `use`, whatever that says itself.
    void inside(plan::Item const& group, Visit const& visit);

  private:
    void at(plan::Item const& item, Visit const& visit);
    [[nodiscard]] bool takes(plan::Item const& leaf) const;

    plan::Plan const& plan_;
    Class what_;
    std::unordered_set<plan::Index> met_;
};

} // namespace lengthwise::check
