#include "paint/shaper.hpp"

#include <algorithm>
#include <utility>

#include <pango/pangocairo.h>

namespace lengthwise::paint {
namespace {

/// The size at which texts are shaped.
constexpr double reference = 100;
/// Glyphs are kept for so many texts; widths, which are small, for more.
constexpr std::size_t most_shaped = 4096;
constexpr std::size_t most_widths = 200'000;
constexpr char const* features = "tnum=1, cv05=1, cv08=1";

bool is_plain(std::string_view words) {
    return std::all_of(words.begin(), words.end(), [](char c) { return c >= ' ' && c <= '~'; });
}

} // namespace

/// A piece of a text in one font.
struct Shaper::Run {
    PangoGlyphItem* item = nullptr;

    explicit Run(PangoGlyphItem* of) : item(of) {}
    Run(Run&& other) noexcept : item(std::exchange(other.item, nullptr)) {}
    Run& operator=(Run&& other) noexcept {
        std::swap(item, other.item);
        return *this;
    }
    ~Run() {
        if (item != nullptr) {
            pango_glyph_item_free(item);
        }
    }
    [[nodiscard]] bool lacks_glyphs() const {
        for (int i = 0; i < item->glyphs->num_glyphs; ++i) {
            if ((item->glyphs->glyphs[i].glyph & PANGO_GLYPH_UNKNOWN_FLAG) != 0) {
                return true;
            }
        }
        return false;
    }
};

struct Shaper::Shaped {
    std::vector<Run> runs; ///< from left to right
    double width = 0;      ///< em

    [[nodiscard]] bool lacks_glyphs() const {
        return std::any_of(runs.begin(), runs.end(), [](Run const& run) { return run.lacks_glyphs(); });
    }
};

Shaper::Shaper(FontSource own) : own_(std::move(own)) {
    prepare(faces_[0], cards::Weight::medium);
    prepare(faces_[1], cards::Weight::semibold);
}

Shaper::~Shaper() {
    for (auto& face : faces_) {
        pango_item_free(face.plain);
        pango_attr_list_unref(face.attributes);
    }
}

void Shaper::prepare(Face& face, cards::Weight weight) {
    auto* const font = pango_font_description_new();
    pango_font_description_set_family(font, "Inter, Noto Sans, DejaVu Sans, sans-serif");
    pango_font_description_set_weight(font, weight == cards::Weight::semibold ? PANGO_WEIGHT_SEMIBOLD
                                                                              : PANGO_WEIGHT_MEDIUM);
    pango_font_description_set_absolute_size(font, reference * PANGO_SCALE);
    face.attributes = pango_attr_list_new();
    pango_attr_list_insert(face.attributes, pango_attr_font_desc_new(font));
    pango_attr_list_insert(face.attributes, pango_attr_font_features_new(features));
    pango_font_description_free(font);
    auto* const items = pango_itemize(own_.context.get(), "a", 0, 1, face.attributes, nullptr);
    face.plain = static_cast<PangoItem*>(items->data);
    g_list_free(items);
}

Shaper::Shaped Shaper::shape(std::string_view words, Face& face, PangoContext* context, bool final) {
    Shaped shaped;
    auto const length = static_cast<int>(words.size());
    auto const add = [&](PangoItem* item) {
        auto* const glyphs = pango_glyph_string_new();
        pango_shape_full(words.data() + item->offset, item->length, words.data(), length, &item->analysis,
                         glyphs);
        auto* const run = g_slice_new0(PangoGlyphItem);
        run->item = item;
        run->glyphs = glyphs;
        shaped.width += pango_glyph_string_get_width(glyphs) / (reference * PANGO_SCALE);
        shaped.runs.emplace_back(run);
        if (final && shaped.runs.back().lacks_glyphs()) {
            note_missing(words, shaped.runs.back());
        }
    };
    if (is_plain(words)) {
        auto* const item = pango_item_copy(face.plain);
        item->offset = 0;
        item->length = length;
        item->num_chars = length;
        add(item);
        return shaped;
    }
    auto const direction = PANGO_DIRECTION_LTR;
    auto* const logical =
        pango_itemize_with_base_dir(context, direction, words.data(), 0, length, face.attributes, nullptr);
    auto* const visual = pango_reorder_items(logical);
    for (auto const* at = visual; at != nullptr; at = at->next) {
        add(static_cast<PangoItem*>(at->data));
    }
    g_list_free(visual);
    g_list_free(logical);
    return shaped;
}

Shaper::Shaped const& Shaper::shaped(std::string_view words, cards::Weight weight) {
    auto const at = static_cast<std::size_t>(weight);
    auto& known = known_[at];
    if (auto const found = known.find(words); found != known.end()) {
        return found->second;
    }
    auto shaped = shape(words, faces_[at], own_.context.get(), false);
    if (shaped.lacks_glyphs()) {
        if (!system_.context) {
            system_ = system_fonts();
        }
        shaped = shape(words, faces_[at], system_.context.get(), true);
    }
    if (known.size() >= most_shaped) {
        known.clear();
    }
    return known.emplace(words, std::move(shaped)).first->second;
}

double Shaper::width(std::string_view words, cards::Weight weight) {
    if (words.empty()) {
        return 0;
    }
    auto& widths = widths_[static_cast<std::size_t>(weight)];
    if (auto const found = widths.find(words); found != widths.end()) {
        return found->second;
    }
    auto const width = shaped(words, weight).width;
    if (widths.size() >= most_widths) {
        widths.clear();
    }
    widths.emplace(words, width);
    return width;
}

void Shaper::show(cairo_t* cairo, std::string_view words, cards::Weight weight, double em) {
    auto const& text = shaped(words, weight);
    std::string const ended{words}; // Pango looks for the end of what it is shown
    cairo_save(cairo);
    cairo_scale(cairo, em / reference, em / reference);
    double x = 0;
    for (auto const& run : text.runs) {
        cairo_move_to(cairo, x, 0);
        pango_cairo_show_glyph_item(cairo, ended.c_str(), run.item);
        x += pango_glyph_string_get_width(run.item->glyphs) / static_cast<double>(PANGO_SCALE);
    }
    cairo_restore(cairo);
}

void Shaper::note_missing(std::string_view words, Run const& run) {
    (void)words;
    for (int i = 0; i < run.item->glyphs->num_glyphs; ++i) {
        auto const glyph = run.item->glyphs->glyphs[i].glyph;
        if ((glyph & PANGO_GLYPH_UNKNOWN_FLAG) != 0) {
            missing_.insert(static_cast<char32_t>(glyph & ~PANGO_GLYPH_UNKNOWN_FLAG));
        }
    }
}

} // namespace lengthwise::paint
