#include "source.hpp"

#include "encoding.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise {

Source::Source(std::string name, std::string text, std::uint32_t base)
    : name_(std::move(name)), text_(std::move(text)), base_(base) {}

Place Source::locate(std::uint32_t offset) const {
    if (line_starts_.empty()) {
        line_starts_.push_back(static_cast<std::uint32_t>(grammar::bom_bytes(text_))); // no part of the line
        for (std::size_t at = text_.find('\n'); at != std::string::npos; at = text_.find('\n', at + 1)) {
            line_starts_.push_back(static_cast<std::uint32_t>(at + 1));
        }
    }
    auto const local = std::min<std::uint32_t>(offset - base_, static_cast<std::uint32_t>(text_.size()));
    auto const inside = std::max(local, line_starts_.front());
    auto const line = std::prev(std::ranges::upper_bound(line_starts_, inside));
    auto const end = std::min(text_.find('\n', *line), text_.size());
    auto text = std::string_view{text_}.substr(*line, end - *line);
    if (text.ends_with('\r')) {
        text.remove_suffix(1);
    }
    return {
        .line = static_cast<std::uint32_t>(line - line_starts_.begin()) + 1,
        .byte = inside - *line + 1,
        .offset = local,
        .text = text,
    };
}

} // namespace lengthwise
