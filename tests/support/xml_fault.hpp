#pragma once

#include <string>
#include <string_view>

namespace lengthwise::support {

/// Why a text is no well-formed XML document (XML 1.0, Fifth Edition, 26 November 2008), with the byte; empty
/// where it is one. What this program never writes counts as a fault: CDATA sections, processing instructions
/// other than the first line's, entities of a document's own. `<!DOCTYPE html>` may stand first.
[[nodiscard]] std::string xml_fault(std::string_view text);

} // namespace lengthwise::support
