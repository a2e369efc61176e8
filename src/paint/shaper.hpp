#pragma once

#include "cards/type.hpp"
#include "paint/fonts.hpp"

#include <cstddef>
#include <memory>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include <cairo.h>

namespace lengthwise::paint {

/// Turns texts into glyphs, once for each text: at one size, scaled when painted.
class Shaper final : public cards::Measure {
  public:
    explicit Shaper(FontSource own);
    ~Shaper() override;

    double width(std::string_view words, cards::Weight weight) override;

    /// Shows it with its baseline at the origin, from there to the right.
    void show(cairo_t* cairo, std::string_view words, cards::Weight weight, double em);

    /// Characters that no font on this machine has.
    [[nodiscard]] std::set<char32_t> const& missing() const { return missing_; }

  private:
    struct Run;
    struct Shaped;
    struct Face {
        PangoAttrList* attributes = nullptr;
        PangoItem* plain = nullptr; ///< how plain letters are shaped
    };

    Shaped const& shaped(std::string_view words, cards::Weight weight);
    Shaped shape(std::string_view words, Face& face, PangoContext* context, bool final);
    void prepare(Face& face, cards::Weight weight);
    void note_missing(std::string_view words, Run const& run);

    FontSource own_;
    FontSource system_; ///< made when it is needed
    Face faces_[2];
    struct Hash {
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
    };
    using Known = std::unordered_map<std::string, Shaped, Hash, std::equal_to<>>;
    Known known_[2];
    std::unordered_map<std::string, double, Hash, std::equal_to<>> widths_[2];
    std::set<char32_t> missing_;
};

} // namespace lengthwise::paint
