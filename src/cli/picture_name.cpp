#include "cli/picture_name.hpp"

#include "report/width.hpp"

#include <fmt/core.h>

#include <array>
#include <string_view>

namespace lengthwise::cli {
namespace {

constexpr std::array<std::string_view, 5> endings{".svg", ".pdf", ".png", ".jpg", ".jpeg"};

/// `wanted` is ".svg"; `what` "an SVG"; `option` all that is typed before the name.
std::optional<std::string> odd(std::optional<std::string> const& name, std::string_view wanted,
                               std::string_view what, std::string_view option) {
    for (auto const ending : endings) {
        if (name && ending != wanted && name->ends_with(ending)) {
            auto const stem = name->substr(0, name->size() - ending.size());
            return fmt::format("{} would hold {}; try: {} {}{}", report::visible(*name), what, option,
                               report::visible(stem), wanted);
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<std::string> odd_name(Chart const& chart) {
    return odd(chart.target.file, ".svg", "an SVG", "-o");
}

std::optional<std::string> odd_name(Cards const& cards) {
    auto const& name = cards.target.file;
    if (auto preview = odd(cards.preview, ".svg", "an SVG", "--preview")) {
        return preview;
    }
    if (cards.png) {
        return odd(name, ".png", "a PNG", "-o");
    }
    bool const picture = name && name->ends_with(".png");
    return odd(name, ".pdf", "a PDF", picture ? "--format png, or: -o" : "-o");
}

} // namespace lengthwise::cli
