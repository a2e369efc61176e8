#pragma once

#include <string>
#include <vector>

/// Programs that share no code with this one, asked what they make of what it writes.
namespace lengthwise::support {

/// All that a shell command says on standard output.
[[nodiscard]] std::string output_of(std::string const& command);

/// What `filter` makes of JSON documents, a line each. Debian: jq.
[[nodiscard]] std::string jq(std::string const& documents, std::string const& filter);

/// A letter for each document: `+` where the JSON Schema (a file of the project) accepts it, `-` where not.
/// One start of Python for all, because it takes a while. Debian: python3-jsonschema.
[[nodiscard]] std::string schema_verdicts(std::string const& schema,
                                          std::vector<std::string> const& documents);

/// What a Python script says with `input` on its standard input. Debian: python3.
[[nodiscard]] std::string python(std::string const& script, std::string const& input);

} // namespace lengthwise::support
