#pragma once

#include "plan/plan.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <unordered_map>

/// Who takes over what a heading or a group says.
namespace lengthwise::check {

/// The classes of modifiers that come down from outside.
enum class Class : std::uint8_t { stroke, mode, gear, effort };
inline constexpr std::array classes{Class::stroke, Class::mode, Class::gear, Class::effort};

[[nodiscard]] bool says(plan::Manner const& manner, Class what);

/// The lines for which a word of one class from outside still counts, put together: nothing nearer says one.
struct Heirs {
    bool any = false;
    std::optional<std::int64_t> amount{}; ///< of some rep of theirs with a distance
    bool several = false;                 ///< another has another one

    void add(plan::Plan const& plan, plan::Item const& leaf);
    void add(std::int64_t rep);
    void add(Heirs const& more);
};

/// Finds them. What several places share is read once, however many ask for it.
class HeirFinder {
  public:
    HeirFinder(plan::Plan const& plan, Class what) : plan_(plan), what_(what) {}

    /// All below a heading.
    [[nodiscard]] Heirs of_section(plan::Section const& section);
    /// All inside a group or a `use`, whatever that says itself.
    [[nodiscard]] Heirs inside(plan::Item const& group);

  private:
    [[nodiscard]] Heirs of(plan::Item const& item);
    [[nodiscard]] bool takes(plan::Item const& leaf) const;

    plan::Plan const& plan_;
    Class what_;
    std::unordered_map<plan::Index, Heirs> known_; ///< by body
};

} // namespace lengthwise::check
