#pragma once

#include "plan/plan.hpp"

#include <cstdint>
#include <string>
#include <unordered_map>

namespace lengthwise::report {

/// Spells a session's lines as a deck shows them, safe to print: what a named set holds
/// instead of its name, unless that would fill pages.
class LineSpeller {
  public:
    LineSpeller(plan::Plan const& plan, plan::Session const& session) : plan_(plan), session_(session) {}

    /// A line, pause or note, `if time:` in front where it is said, lanes left out.
    [[nodiscard]] std::string spell(plan::Item const& item);

    /// The same without `if time:`, and not safe to print: for programs that read the notation.
    [[nodiscard]] std::string notation(plan::Item const& item);

    /// `warm-up "Wake up" easy rest 20s`
    [[nodiscard]] std::string heading(plan::Section const& section) const;

  private:
    [[nodiscard]] std::uint64_t size_of(plan::Item const& item);

    plan::Plan const& plan_;
    plan::Session const& session_;
    std::unordered_map<plan::Index, std::uint64_t> sizes_; ///< by body: items with sets written out
};

} // namespace lengthwise::report
