#include "edit.hpp"

#include <algorithm>
#include <string_view>

namespace lengthwise::grammar {

std::string apply(Source const& source, std::vector<Edit> edits) {
    std::ranges::stable_sort(edits, {}, [](Edit const& edit) { return edit.span.begin; });
    std::string_view const text = source.text();
    std::string result;
    result.reserve(text.size());
    std::size_t kept = 0; // all before it is in the result or replaced
    for (auto const& [span, replacement] : edits) {
        auto const begin = std::max<std::size_t>(kept, span.begin - source.base());
        result.append(text, kept, begin - kept).append(replacement);
        kept = std::max<std::size_t>(begin, span.end - source.base());
    }
    return result.append(text, kept);
}

} // namespace lengthwise::grammar
