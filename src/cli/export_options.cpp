#include "cli/export_options.hpp"

#include <fmt/core.h>

namespace lengthwise::cli {

namespace {

constexpr std::string_view export_words = "json, csv, ics, html or md";

} // namespace

void add(Reader& reader, TypedExport& typed) {
    auto& plans = typed.plans;
    reader.files(plans.files);
    reader.value("--as", std::string{export_words}, [&typed](std::string const& text) {
        return one_of(typed.as.emplace(), {{"json", ExportKind::json},
                                           {"csv", ExportKind::csv},
                                           {"ics", ExportKind::ics},
                                           {"html", ExportKind::html},
                                           {"md", ExportKind::markdown}})(text);
    });
    reader.value("--rows", "line, session or week", [&typed](std::string const& text) {
        using Rows = report::CsvRows;
        return one_of(typed.rows.emplace(),
                      {{"line", Rows::line}, {"session", Rows::session}, {"week", Rows::week}})(text);
    });
    add_wish(reader, plans.wish);
    add_look(reader, plans.look);
    add_target(reader, plans.target);
}

Options read_export(std::vector<std::string> const& arguments) {
    Reader reader{"export"};
    TypedExport typed;
    add(reader, typed);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    if (!typed.as) {
        return Misuse{fmt::format("export as what? add --as {}", export_words)};
    }
    if (typed.rows && typed.as != ExportKind::csv) {
        return Misuse{"--rows is for csv; add --as csv"};
    }
    typed.plans.as = *typed.as;
    typed.plans.rows = typed.rows.value_or(report::CsvRows::line);
    return std::move(typed.plans);
}

} // namespace lengthwise::cli
