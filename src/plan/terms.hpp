#pragma once

#include "plan/modifiers.hpp"
#include "plan/terms_memo.hpp"
#include "plan/work.hpp"

#include <cstdint>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace lengthwise::plan {

/// What stands behind one amount, group or use, in the tree.
struct Behind {
    grammar::Tree const& tree;
    std::uint32_t first = 0; ///< its first modifier …
    std::uint32_t end = 0;   ///< … and one past its last selector
    Owner owner = Owner::item;
    std::uint32_t count = 1; ///< reps or rounds

    /// The first selector, or `end`.
    [[nodiscard]] std::uint32_t first_selector() const;
};

/// Makes Terms. The same words behind the same count in the same context mean the same, so they are read
/// once: most lines of a file repeat what another has said.
class TermsReader {
  public:
    explicit TermsReader(Work& work) : work_(work) {}

    /// The terms of reps; selections included.
    [[nodiscard]] Index of_reps(Behind const& behind, ContextId context);

    /// The terms of a group or use; its selections are chosen (below) but have no bodies yet.
    [[nodiscard]] Index of_rounds(Behind const& behind, ContextId context);

    /// The selections behind it, checked against the count, laid over `base`. In text order, disjoint.
    [[nodiscard]] std::vector<Selection> choose(Behind const& behind, Index base, ContextId context);

    /// Appends them to the plan as those of `terms`.
    void attach(Index terms, std::vector<Selection> const& selections);

    /// What most items need to know of their terms, apart from them because terms are large:
    /// most of a plan's lines never look further.
    struct Gist {
        bool plain = false;        ///< nothing in them can clash with a count or an amount
        std::uint32_t rest = 0;    ///< ms, at its high end
        std::uint32_t longest = 0; ///< ms, of the send-offs
    };
    [[nodiscard]] Gist const& gist(Index terms) const { return gists_[terms]; }

  private:
    /// The terms of words known from before; else what `make` makes of them, remembered when it is sound.
    template <typename Make>
    [[nodiscard]] Index known_or(TermsMemo::Key const& key, Make const& make);

    Index add(Terms const& terms);
    [[nodiscard]] Terms read(Behind const& behind, ContextId context);
    [[nodiscard]] Run parts_of(grammar::Tree const& tree, std::uint32_t split, Pool const& pool,
                               Manner const& manner);
    [[nodiscard]] Run under(Run parts, Manner const& manner);
    [[nodiscard]] Selection selection(Behind const& behind, std::uint32_t node, std::uint32_t next);
    [[nodiscard]] Index laid_over(Behind const& behind, Index base, std::uint32_t node, ContextId context);

    Work& work_;
    TermsMemo known_;
    std::vector<Gist> gists_ = std::vector<Gist>(1); ///< beside Plan::terms
};

} // namespace lengthwise::plan
