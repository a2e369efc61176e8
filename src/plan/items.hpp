#pragma once

#include "plan/load.hpp"
#include "plan/readings.hpp"
#include "plan/sets.hpp"
#include "plan/terms.hpp"
#include "plan/work.hpp"

#include <cstdint>
#include <optional>
#include <unordered_map>

namespace lengthwise::plan {

/// Reads the lines of sections into Plan::items. Groups recurse, no deeper than limits::nesting.
class ItemReader {
  public:
    ItemReader(Work& work, Sets& sets) : work_(work), sets_(sets), terms_(work) {}

    /// A new session begins: its limits count from 0. What it is timed with is part of what comes
    /// down to a set: the threshold in force, and the nearest settings that have factors.
    void begin_session(Index threshold, Index factors);

    /// The lines of a section, nodes `first` to `end`; the first item, or no_index when there are none.
    [[nodiscard]] Index lines(grammar::Tree const& tree, std::uint32_t first, std::uint32_t end,
                              ContextId context);

  private:
    /// What comes down to a reading, and how many parentheses and uses are around it.
    struct Here {
        ContextId context = 0;
        int depth = 0;
    };
    struct Body {
        Index first = no_index;
        Load load;
    };

    std::optional<Index> line(grammar::Tree const& tree, std::uint32_t node, ContextId context);
    Index pause(grammar::Tree const& tree, std::uint32_t node);
    Index note(grammar::Tree const& tree, std::uint32_t node);
    Load item(grammar::Tree const& tree, std::uint32_t node, Here here);
    Load reps(Behind behind, std::uint32_t first, Index index, Here here);
    Load group(Behind const& behind, std::uint32_t node, Index index, Here here);
    Load use(Behind const& behind, std::uint32_t name, Index index, Here here);
    Body children(grammar::Tree const& tree, std::uint32_t first, std::uint32_t end, Here here);
    Body set_body(std::uint32_t set, Here here, Span use);
    Body group_body(grammar::Tree const& tree, std::uint32_t node, Here here);

    /// Terms, rounds and the changed rounds of a group or use; `body` reads its inside with what comes down.
    template <typename ReadBody>
    Load rounds(Behind const& behind, Index index, Here here, ReadBody const& body);

    std::optional<std::int64_t> amount(grammar::Tree const& tree, std::uint32_t node,
                                       grammar::WrittenUnit unit, Pool const& pool);
    bool ladder(grammar::Tree const& tree, std::uint32_t first, std::uint32_t end, Item& item,
                Pool const& pool);
    [[nodiscard]] Index close(Index index, Item item);
    void weigh(Load const& more, Span at);
    [[nodiscard]] bool fits(int depth, Span at);
    [[nodiscard]] bool may_read(Span at);

    Work& work_;
    Sets& sets_;
    TermsReader terms_;
    Readings readings_;
    Load session_;
    std::uint32_t session_number_ = 0;
    Index threshold_ = no_index;
    Index factors_ = 0;
    int in_sets_ = 0;      ///< sets around what is read now
    bool stopped_ = false; ///< too many readings: nothing shared is read any more
    Span reading_;         ///< the use or selector that is being followed

    struct Place {
        std::uint32_t what = 0; ///< a set's number, or a group's offset
        ContextId context = 0;
        Index threshold = no_index;
        Index factors = 0;
        friend bool operator==(Place const&, Place const&) = default;
    };
    struct PlaceHash {
        std::size_t operator()(Place const& place) const {
            return (std::uint64_t{place.what} * 0x9e3779b97f4a7c15ULL ^ place.context) * 1'000'003ULL +
                   place.threshold * 31ULL + place.factors;
        }
    };
    std::unordered_map<Place, Body, PlaceHash> set_bodies_;
    std::unordered_map<Place, Body, PlaceHash> group_bodies_; ///< of rounds that a selector changes
};

} // namespace lengthwise::plan
