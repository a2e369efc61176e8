#include "paint/pdf_finish.hpp"

#include <fmt/format.h>

#include <cstdlib>
#include <string_view>

namespace lengthwise::paint {
namespace {

constexpr std::string_view extras =
    "   /Lang (en)\n   /ViewerPreferences << /DisplayDocTitle true /PrintScaling /None "
    "/Duplex /DuplexFlipLongEdge >>\n";

/// The number behind the last `name`.
std::string_view number_behind(std::string_view pdf, std::string_view name) {
    auto at = pdf.rfind(name);
    if (at == std::string_view::npos) {
        return {};
    }
    at += name.size();
    auto const begin = pdf.find_first_of("0123456789", at);
    auto const end = pdf.find_first_not_of("0123456789", begin);
    return begin == std::string_view::npos || end == std::string_view::npos ? std::string_view{}
                                                                            : pdf.substr(begin, end - begin);
}

} // namespace

std::string finished(std::string pdf) {
    std::string const root{number_behind(pdf, "/Root ")};
    std::string const info{number_behind(pdf, "/Info ")};
    std::string const size{number_behind(pdf, "/Size ")};
    std::string const table{number_behind(pdf, "startxref")};
    auto const begin = pdf.rfind("\n" + root + " 0 obj\n<<");
    if (root.empty() || size.empty() || table.empty() || begin == std::string::npos) {
        return pdf;
    }
    auto const end = pdf.find("endobj", begin);
    auto const close = pdf.rfind(">>", end);
    if (end == std::string::npos || close == std::string::npos || close < begin) {
        return pdf;
    }
    auto catalog = pdf.substr(begin + 1, close - begin - 1);
    catalog.append(extras).append(">>\nendobj\n");
    if (pdf.back() != '\n') {
        pdf += '\n';
    }
    auto const offset = pdf.size();
    pdf += catalog;
    auto const xref = pdf.size();
    pdf += fmt::format("xref\n{} 1\n{:010} 00000 n \ntrailer\n<< /Size {}\n   /Root {} 0 R\n", root, offset,
                       size, root);
    if (!info.empty()) {
        pdf += fmt::format("   /Info {} 0 R\n", info);
    }
    pdf += fmt::format("   /Prev {}\n>>\nstartxref\n{}\n%%EOF\n", table, xref);
    return pdf;
}

} // namespace lengthwise::paint
