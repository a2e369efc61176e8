#include "tree.hpp"

#include <algorithm>

namespace lengthwise::grammar {

namespace {

std::uint32_t end_of(Node const& node) {
    return node.begin + (node.is_string() ? node.value : node.length);
}

} // namespace

Span Tree::span(std::uint32_t i) const {
    auto const& node = nodes[i];
    auto const after = next(i);
    // Text order makes the subtree's last node its last in the text, too. An item's
    // `length` is its count, so only a container without children looks at its own.
    auto const end = after > i + 1 ? end_of(nodes[after - 1]) : end_of(node);
    return {node.begin, std::max(node.begin, end)};
}

std::string unescape(std::string_view raw) {
    std::string text;
    text.reserve(raw.size());
    for (std::size_t i = 0; i < raw.size(); ++i) {
        if (raw[i] == '\\' && i + 1 < raw.size()) {
            ++i;
        }
        text += raw[i];
    }
    return text;
}

std::string escape(std::string_view text) {
    std::string raw;
    raw.reserve(text.size());
    for (char const c : text) {
        if (c == '"' || c == '\\') {
            raw += '\\';
        }
        raw += c;
    }
    return raw;
}

} // namespace lengthwise::grammar
