#include "report/line_speller.hpp"

#include "grammar/strings.hpp"
#include "grammar/words.hpp"
#include "plan/spell.hpp"
#include "report/width.hpp"

namespace lengthwise::report {
namespace {

/// A line with more items than this keeps the names of its sets.
constexpr std::uint64_t most_items = 500;

} // namespace

std::string LineSpeller::spell(plan::Item const& item) {
    auto const text = notation(item);
    return visible(item.optional ? "if time: " + text : text);
}

std::string LineSpeller::notation(plan::Item const& item) {
    bool const expand = size_of(item) <= most_items;
    return plan::spell_line(plan_, session_, item, {.labels = false, .expand_sets = expand});
}

std::string LineSpeller::heading(plan::Section const& section) const {
    auto const& said = plan_.heading_of(section);
    std::string text{spelling(word_of(section.kind))};
    if (!said.name.empty()) {
        text.append(" \"").append(grammar::escape(said.name)).append("\"");
    }
    auto const defaults = plan::spell_defaults(said);
    return visible(text.append(defaults.empty() ? "" : " ").append(defaults));
}

/// Counts no further than it matters: sets in sets can hold millions.
std::uint64_t LineSpeller::size_of(plan::Item const& item) {
    if (!item.is_swum() || item.is_leaf()) {
        return 1;
    }
    if (auto const found = sizes_.find(item.body); found != sizes_.end()) {
        return found->second;
    }
    std::uint64_t size = 1;
    if (item.kind == plan::Item::Kind::use) {
        size += size_of(plan_.items[item.body]);
    } else {
        for (plan::Item const& inner : plan::items_from(plan_, item.body)) {
            size += size_of(inner);
            if (size > most_items) {
                size = most_items + 1;
                break;
            }
        }
    }
    sizes_.emplace(item.body, size);
    return size;
}

} // namespace lengthwise::report
