#pragma once

#include "plan/plan.hpp"
#include "plan/spell_number.hpp"
#include "plan/tree_builder.hpp"
#include "plan/versions.hpp"

#include <cstdint>
#include <vector>

/// What stands behind an amount or heading, spelled into a tree. Private to the spelling of plans.
namespace lengthwise::plan {

/// A distance, found in each version as Distance units.
template <typename T, typename UnitsOf>
[[nodiscard]] std::vector<Measured> measured(Versions<T> const& versions, UnitsOf const& units_of) {
    std::vector<Measured> readings;
    readings.reserve(versions.size());
    for (auto const& [what, pool] : versions) {
        readings.push_back({Distance::units(units_of(*what)), *pool});
    }
    return readings;
}

class ModifierSpeller {
  public:
    ModifierSpeller(Plan const& plan, TreeBuilder& tree) : plan_(plan), tree_(tree) {}

    /// All that stands behind an amount or group, selectors included.
    void behind_item(Versions<Terms> const& terms);

    /// Stroke, mode, effort and gear, as behind a heading.
    void manner(Versions<Manner> const& said);

    /// A number leaf for the distance that `units_of` finds in each version.
    template <typename T, typename UnitsOf>
    void amount(grammar::Kind kind, Versions<T> const& versions, grammar::WrittenUnit unit,
                UnitsOf const& units_of) {
        distance(kind, measured(versions, units_of), unit);
    }

  private:
    void stroke_mode_effort(Versions<Manner> const& said);
    void effort(Versions<Manner> const& said);
    void shape(Shape const& shape);
    void broken(Versions<Terms> const& terms);
    void parts(Versions<Terms> const& terms);
    void part(Versions<Part> const& part);
    void gear(GearSet gear);
    void recovery(Recovery const& recovery);
    void notes(Run notes);
    void selections(Versions<Terms> const& terms);
    void selection(Versions<Selection> const& selections, Terms const& item);
    void distance(grammar::Kind kind, std::vector<Measured> const& readings, grammar::WrittenUnit unit);

    Plan const& plan_;
    TreeBuilder& tree_;
};

} // namespace lengthwise::plan
