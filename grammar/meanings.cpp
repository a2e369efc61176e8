#include "meanings.hpp"

#include "takes.hpp"

#include <algorithm>

namespace lengthwise::grammar {

bool Meaning::tells(Word word) const {
    return word != Word::none && std::ranges::find(words, word) != words.end();
}

std::string_view Meaning::takes() const {
    auto const word = words.front();
    if (word == Word::none || name.substr(0, name.find(',')) != spelling(word)) {
        return {};
    }
    auto const* const found = kind == Example::lines ? takes_as_keyword(word) : takes_as_statement(word);
    auto const* const other = kind == Example::lines ? nullptr : takes_as_keyword(word);
    return found != nullptr ? found->what : other != nullptr ? other->what : std::string_view{};
}

std::array<std::span<Meaning const>, 3> meanings() {
    return {meanings_of_statements(), meanings_of_modifiers(), meanings_of_joints()};
}

} // namespace lengthwise::grammar
