#pragma once

#include <string>
#include <string_view>

namespace lengthwise::support {

/// Why a text is no JSON document (RFC 8259, December 2017), with the byte; empty where it is one.
[[nodiscard]] std::string json_fault(std::string_view text);

} // namespace lengthwise::support
