#pragma once

#include "page.hpp"
#include "tree.hpp"

#include <cstdint>

namespace lengthwise::grammar {

/// Writes items, and the leaves of any line, on a page. Private to grammar/write.cpp.
class ItemWriter {
  public:
    ItemWriter(Tree const& tree, Page& page) : tree_(tree), page_(page) {}

    /// An item on the line in hand, which lies `level` levels deep. A group that was written
    /// over several lines goes on over several.
    void item(std::uint32_t i, int level);

    /// The same with every group on the line in hand.
    void item_on_one_line(std::uint32_t i);

    void leaf(std::uint32_t i);

    /// The pool in force: its length in 1/600 of its unit when that is not a whole number, else
    /// 0. Bare numbers that stand for lengths of such a pool are written as lengths.
    std::uint32_t lap = 0;

  private:
    [[nodiscard]] Node const& node(std::uint32_t i) const { return tree_.nodes[i]; }
    void behind_amount(std::uint32_t first, std::uint32_t end, int level);
    void ladder(std::uint32_t first, std::uint32_t end);
    void group(std::uint32_t i, int level);
    void split(std::uint32_t i);
    void selector(std::uint32_t i);
    [[nodiscard]] bool means_lengths(std::uint32_t first, std::uint32_t end) const;
    [[nodiscard]] Node as_lengths(Node number) const;

    Tree const& tree_;
    Page& page_;
    bool on_one_line_ = false;
};

/// Where the line of node `i` begins: labels stand before their item's first byte.
[[nodiscard]] std::uint32_t line_begin(Tree const& tree, std::uint32_t i);

} // namespace lengthwise::grammar
