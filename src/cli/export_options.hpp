#pragma once

#include "cli/option_reader.hpp"
#include "cli/options.hpp"

#include <optional>
#include <string>
#include <vector>

/// The options of `export`.
namespace lengthwise::cli {

/// As it was typed: what it is exported as has to be said, rows may be.
struct TypedExport {
    std::optional<ExportKind> as;
    std::optional<report::CsvRows> rows;
    Export plans;
};

void add(Reader& reader, TypedExport& typed);

[[nodiscard]] Options read_export(std::vector<std::string> const& arguments);

} // namespace lengthwise::cli
