#pragma once

#include "source.hpp"

#include <string>
#include <vector>

namespace lengthwise::grammar {

/// Puts `text` in the place of `span`; an empty span inserts.
struct Edit {
    Span span;
    std::string text;
};

/// The source's text with all edits made. Spans must not overlap; those of one
/// place are made in the order given.
[[nodiscard]] std::string apply(Source const& source, std::vector<Edit> edits);

} // namespace lengthwise::grammar
