#pragma once

#include "tree.hpp"
#include "write.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lengthwise::grammar {

/// The sheet that `write` writes on: keeps lines, indentation, blank lines and comments in
/// order. Whoever writes says in text order where each line began in the source; comments
/// that stand before it are put in between. Private to grammar/write.cpp.
class Page {
  public:
    explicit Page(Tree const& tree) : tree_(tree) {}

    /// Begins a line for what stands at `begin`, `level` levels deep.
    void start_line(std::uint32_t begin, int level);

    /// The same for the `)` of a group: comments before it belong to the items, one level deeper.
    void start_closing_line(std::uint32_t begin, int level);

    /// A word, a blank before it unless it opens the line or a group.
    void say(std::string_view word);

    /// The same without a blank before it.
    void append(std::string_view text);

    /// The same without a blank on either side: "(", ", ", "-".
    void join(std::string_view text);

    /// Closing comments and the last line end.
    void finish();

    [[nodiscard]] Traced take() { return {std::move(out_), std::move(origins_)}; }

  private:
    void comments_before(std::uint32_t begin, int level);
    void break_line(std::uint32_t begin, int level);
    void put_comment(Comment comment, int level);
    [[nodiscard]] std::size_t blanks_start(std::uint32_t begin, std::string_view blanks) const;
    [[nodiscard]] bool follows_blank_line(std::uint32_t begin) const;
    [[nodiscard]] bool shares_line(std::uint32_t begin) const;

    Tree const& tree_;
    std::string out_;
    std::vector<std::uint32_t> origins_;
    std::size_t next_comment_ = 0;
    int level_ = 0;          ///< of the line in hand
    bool fresh_ = true;      ///< the next word needs no blank before it
    bool commented_ = false; ///< the line in hand has its comment
};

} // namespace lengthwise::grammar
