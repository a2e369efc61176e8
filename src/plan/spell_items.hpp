#pragma once

#include "plan/plan.hpp"
#include "plan/spell.hpp"
#include "plan/spell_modifiers.hpp"
#include "plan/tree_builder.hpp"
#include "plan/versions.hpp"

/// Items spelled into a tree. Private to the spelling of plans.
namespace lengthwise::plan {

class ItemSpeller {
  public:
    ItemSpeller(Plan const& plan, TreeBuilder& tree, LineStyle style = {})
        : plan_(plan), tree_(tree), modifiers_(plan, tree), style_(style) {}

    /// A line of a section: an item, pause or note.
    void line(Item const& item, Pool const& pool);

    /// The item that a named set holds.
    void item(Versions<Item> const& item);

  private:
    void labels(Item const& item);
    void amount_or_group(Versions<Item> const& item);
    void ladder(Versions<Item> const& item);
    void group(Versions<Item> const& item);
    void use(Versions<Item> const& item);
    void children(Versions<Item> item);
    [[nodiscard]] Versions<Item> inside(Versions<Item> const& item) const;
    [[nodiscard]] Versions<Item> expanded(Versions<Item> item) const;
    [[nodiscard]] bool expands(Item const& item) const;
    [[nodiscard]] bool is_plain(Item const& item) const;
    [[nodiscard]] Terms const& terms_of(Item const& item) const { return plan_.terms[item.terms]; }

    Plan const& plan_;
    TreeBuilder& tree_;
    ModifierSpeller modifiers_;
    LineStyle style_;
};

} // namespace lengthwise::plan
