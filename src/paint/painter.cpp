#include "paint/painter.hpp"

#include "paint/pdf_finish.hpp"

#include <cmath>
#include <numbers>

#include <cairo-pdf.h>

namespace lengthwise::paint {
namespace {

constexpr double points_per_mm = 72 / 25.4;

cairo_status_t append(void* to, unsigned char const* bytes, unsigned int count) {
    static_cast<std::string*>(to)->append(reinterpret_cast<char const*>(bytes), count);
    return CAIRO_STATUS_SUCCESS;
}

/// Puts marks on a page, in mm.
class Brush {
  public:
    Brush(cairo_t* cairo, Shaper& shaper) : cairo_(cairo), shaper_(shaper) {}

    void operator()(cards::Text const& text) const {
        cairo_save(cairo_);
        cairo_translate(cairo_, text.left(), text.at.y);
        shaper_.show(cairo_, text.words, text.weight, text.em);
        cairo_restore(cairo_);
    }
    void operator()(cards::Line const& line) const {
        cairo_move_to(cairo_, line.from.x, line.from.y);
        cairo_line_to(cairo_, line.to.x, line.to.y);
        stroke(line.width);
    }
    void operator()(cards::Frame const& frame) const {
        auto const right = frame.at.x + frame.size.width;
        auto const bottom = frame.at.y + frame.size.height;
        auto const r = frame.radius;
        auto const quarter = std::numbers::pi / 2;
        cairo_new_sub_path(cairo_);
        cairo_arc(cairo_, right - r, frame.at.y + r, r, -quarter, 0);
        cairo_arc(cairo_, right - r, bottom - r, r, 0, quarter);
        cairo_arc(cairo_, frame.at.x + r, bottom - r, r, quarter, 2 * quarter);
        cairo_arc(cairo_, frame.at.x + r, frame.at.y + r, r, 2 * quarter, 3 * quarter);
        cairo_close_path(cairo_);
        stroke(frame.line);
    }
    void operator()(cards::Ring const& ring) const {
        auto const [x, y] = ring.centre;
        cairo_new_sub_path(cairo_);
        cairo_arc(cairo_, x, y, ring.radius, 0, 2 * std::numbers::pi);
        cairo_move_to(cairo_, x - 1, y);
        cairo_line_to(cairo_, x + 1, y);
        cairo_move_to(cairo_, x, y - 1);
        cairo_line_to(cairo_, x, y + 1);
        stroke(0.2);
    }

  private:
    void stroke(double width) const {
        cairo_set_line_width(cairo_, width);
        cairo_stroke(cairo_);
    }

    cairo_t* cairo_;
    Shaper& shaper_;
};

void paint(cairo_t* cairo, Shaper& shaper, cards::Picture const& picture) {
    Brush const brush{cairo, shaper};
    for (auto const& mark : picture.marks) {
        std::visit(brush, mark);
    }
}

} // namespace

PdfWriter::PdfWriter(Shaper& shaper, About const& about) : shaper_(shaper) {
    surface_ = cairo_pdf_surface_create_for_stream(append, &bytes_, 1, 1);
    cairo_pdf_surface_set_metadata(surface_, CAIRO_PDF_METADATA_TITLE, about.title.c_str());
    cairo_pdf_surface_set_metadata(surface_, CAIRO_PDF_METADATA_SUBJECT, about.subject.c_str());
    cairo_pdf_surface_set_metadata(surface_, CAIRO_PDF_METADATA_CREATOR, "lengthwise");
    cairo_pdf_surface_set_metadata(surface_, CAIRO_PDF_METADATA_CREATE_DATE, about.made.c_str());
    cairo_ = cairo_create(surface_);
}

PdfWriter::~PdfWriter() {
    cairo_destroy(cairo_);
    cairo_surface_destroy(surface_);
}

void PdfWriter::add(Page const& page) {
    cairo_pdf_surface_set_size(surface_, page.paper.width * points_per_mm, page.paper.height * points_per_mm);
    cairo_save(cairo_);
    cairo_scale(cairo_, points_per_mm, points_per_mm);
    cairo_set_source_rgb(cairo_, 0, 0, 0);
    for (auto const& placed : page.pictures) {
        cairo_save(cairo_);
        cairo_translate(cairo_, placed.at.x, placed.at.y);
        if (placed.upside_down) {
            cairo_translate(cairo_, placed.picture->size.width, placed.picture->size.height);
            cairo_rotate(cairo_, std::numbers::pi);
        }
        paint(cairo_, shaper_, *placed.picture);
        cairo_restore(cairo_);
    }
    Brush const brush{cairo_, shaper_};
    for (auto const& mark : page.marks) {
        brush(mark);
    }
    cairo_restore(cairo_);
    cairo_show_page(cairo_);
}

std::string PdfWriter::finish() {
    cairo_surface_finish(surface_);
    bool const fine = cairo_surface_status(surface_) == CAIRO_STATUS_SUCCESS &&
                      cairo_status(cairo_) == CAIRO_STATUS_SUCCESS;
    return fine ? finished(std::move(bytes_)) : std::string{};
}

std::string png(cards::Picture const& picture, Shaper& shaper, double dots_per_mm) {
    auto* const surface = cairo_image_surface_create(
        CAIRO_FORMAT_RGB24, static_cast<int>(std::ceil(picture.size.width * dots_per_mm)),
        static_cast<int>(std::ceil(picture.size.height * dots_per_mm)));
    auto* const cairo = cairo_create(surface);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_paint(cairo);
    cairo_scale(cairo, dots_per_mm, dots_per_mm);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    paint(cairo, shaper, picture);
    std::string bytes;
    bool const fine = cairo_surface_write_to_png_stream(surface, append, &bytes) == CAIRO_STATUS_SUCCESS;
    cairo_destroy(cairo);
    cairo_surface_destroy(surface);
    return fine ? bytes : std::string{};
}

} // namespace lengthwise::paint
