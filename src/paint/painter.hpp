#pragma once

#include "cards/sheet.hpp"
#include "paint/shaper.hpp"

#include <string>
#include <utility>
#include <vector>

namespace lengthwise::paint {

/// A picture on a page, perhaps on its head.
struct Placement {
    cards::Picture const* picture = nullptr;
    cards::Point at;
    bool upside_down = false;
};

struct Page {
    cards::Size paper;
    std::vector<Placement> pictures;
    std::vector<cards::Line> marks; ///< to cut along
};

/// What a document says about itself.
struct About {
    std::string title;
    std::string subject;
    std::string made; ///< ISO 8601: a day of the plan, never the clock's
};

/// Gathers pages; the file is there when all are.
class PdfWriter {
  public:
    PdfWriter(Shaper& shaper, About const& about);
    ~PdfWriter();
    PdfWriter(PdfWriter const&) = delete;
    PdfWriter& operator=(PdfWriter const&) = delete;

    void add(Page const& page);

    /// All of the file; empty where Cairo had no memory. To be asked once.
    [[nodiscard]] std::string finish();

  private:
    Shaper& shaper_;
    std::string bytes_;
    cairo_surface_t* surface_ = nullptr;
    cairo_t* cairo_ = nullptr;
};

/// One picture as a PNG, so many dots to the mm.
[[nodiscard]] std::string png(cards::Picture const& picture, Shaper& shaper, double dots_per_mm);

} // namespace lengthwise::paint
