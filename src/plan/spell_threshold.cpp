#include "grammar/write.hpp"
#include "plan/spell.hpp"
#include "plan/spell_settings.hpp"
#include "plan/tree_builder.hpp"

namespace lengthwise::plan {

std::string spell_line(Threshold const& threshold) {
    TreeBuilder tree;
    tree.line();
    spell_threshold(tree, threshold, Pool{});
    auto text = grammar::write(tree.take());
    text.pop_back(); // its line end
    return text;
}

} // namespace lengthwise::plan
