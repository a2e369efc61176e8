#include "cli/cards_options.hpp"

#include "cards/sheet.hpp"
#include "cli/picture_name.hpp"
#include "cli/values.hpp"

#include <functional>
#include <utility>

namespace lengthwise::cli {

namespace {

/// "1m", "70cm", "6mm", "1.5m", within limits; mm.
std::function<bool(std::string const&)> size_in_mm(double& to, double low, double high) {
    return [&to, low, high](std::string const& text) {
        auto const size = millimetres(text);
        if (!size || *size < low || *size > high) {
            return false;
        }
        to = *size;
        return true;
    };
}

std::function<bool(std::string const&)> any_text(std::optional<std::string>& to) {
    return [&to](std::string const& text) {
        to = text;
        return !text.empty();
    };
}

} // namespace

void add(Reader& reader, Cards& cards) {
    reader.files(cards.files);
    add_wish(reader, cards.wish);
    std::string const sizes = "whole, half, quarter, eighth, a5, a6, a7, 3x5in or 4x6in";
    reader.value("--size", sizes, [&cards](std::string const& text) {
        cards.size = text;
        return cards::find_card_size(text) != nullptr;
    });
    reader.value("--sheet", "a4 or letter", one_of(cards.letter, {{"a4", false}, {"letter", true}}));
    reader.value("--margin", "what the printer leaves white, 0mm to 40mm", size_in_mm(cards.margin, 0, 40));
    reader.flag("--hole", cards.hole);
    reader.value(
        "--back", "overview or pace",
        one_of(cards.back, {{"overview", report::BackKind::overview}, {"pace", report::BackKind::pace}}));
    reader.value("--copies", "a number, 1 to 100", [&cards](std::string const& text) {
        auto const copies = number(text, 1, 100);
        cards.copies = copies.value_or(1);
        return copies.has_value();
    });
    reader.flag("--test-sheet", cards.test_sheet);
    reader.value("--distance", "how far away it is read, 30cm to 3m", size_in_mm(cards.distance, 300, 3000));
    reader.value("--preview", "an SVG's name", any_text(cards.preview));
    reader.value("--format", "pdf or png", one_of(cards.png, {{"pdf", false}, {"png", true}}));
    add_look(reader, cards.look);
    add_target(reader, cards.target);
}

Options read_cards(std::vector<std::string> const& arguments) {
    Reader reader{"cards"};
    Cards cards;
    add(reader, cards);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    if (cards.files.size() > 1) {
        return Misuse{"cards takes one file"};
    }
    if (auto odd = odd_name(cards)) {
        return Misuse{std::move(*odd)};
    }
    return cards;
}

} // namespace lengthwise::cli
