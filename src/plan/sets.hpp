#pragma once

#include "grammar/tree.hpp"
#include "plan/work.hpp"

#include <cstdint>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace lengthwise::plan {

/// The named sets of a bundle: who is there, who uses whom. Building it finds
/// names given twice, names that are not there, and cycles.
class Sets {
  public:
    explicit Sets(Work& work);

    struct Entry {
        grammar::Tree const* tree = nullptr;
        std::uint32_t name = 0;                      ///< its name leaf; the item follows
        std::uint32_t end = 0;                       ///< one past its last node
        std::optional<Index> in_plan = std::nullopt; ///< its place in Plan::sets once it is used
        std::uint32_t seen_session = 0;              ///< the last session that read it, counted from 1

        [[nodiscard]] std::uint32_t item() const { return name + 1; }
    };

    /// The set that a `use`'s name leaf means; nothing (and no new finding inside a set, where building has
    /// said so) when there is none or following it would close a cycle.
    [[nodiscard]] std::optional<std::uint32_t> find(grammar::Tree const& tree, std::uint32_t name) const;
    [[nodiscard]] Entry& at(std::uint32_t set) { return entries_[set]; }

    /// `use` of a name that is not there. Says nothing where such a set has been found in a wrong place.
    void report_missing(grammar::Tree const& tree, std::uint32_t name);

    /// Sets that nothing read must still keep one modifier of a class.
    void check_unused();

  private:
    void collect(grammar::Tree const& tree);
    void check_names();
    [[nodiscard]] bool stands_elsewhere(std::string_view name) const;
    void cut_cycles();
    [[nodiscard]] std::vector<std::uint32_t> uses_in(Entry const& entry) const;

    Work& work_;
    std::vector<Entry> entries_; ///< in the order of their text
    std::unordered_map<std::string_view, std::uint32_t> by_name_;
    std::unordered_set<std::uint32_t> cut_; ///< names of uses that close a cycle, by offset
};

} // namespace lengthwise::plan
