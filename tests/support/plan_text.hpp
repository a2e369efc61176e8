#pragma once

#include "support/read_plan.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::support {

/// A file with one session in a pool, its main section holding `lines` (indented as they come).
[[nodiscard]] std::string session_with(std::string_view lines, std::string_view head = "pool 25m\n");

/// What is wrong with a text, in the order of place: "code | the words it stands at | message".
[[nodiscard]] std::vector<std::string> faults(std::string text,
                                              std::map<std::string, std::string> files = {});

/// The items of the first section of the first session, a line each: "4 x 50 m crawl kick …", what is in
/// force spelled out for every item, insides in braces. For tests to compare meanings by eye.
[[nodiscard]] std::vector<std::string> meanings(plan::Plan const& plan);

} // namespace lengthwise::support
