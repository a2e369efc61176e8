#include "paint/fonts.hpp"

#include <array>

#include <pango/pangocairo.h>
#include <pango/pangofc-fontmap.h>

namespace lengthwise::paint {
namespace {

constexpr std::array files{"Inter-Medium.otf", "Inter-SemiBold.otf"};

FontSource source_of(FcConfig* config) {
    // Before the map is made: Pango otherwise reads the whole system's configuration beside ours.
    FcConfigSetCurrent(config);
    FontSource source;
    source.map.reset(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT));
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(source.map.get()), config);
    FcConfigDestroy(config); // the map holds it
    pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(source.map.get()), 72);
    source.context.reset(pango_font_map_create_context(source.map.get()));
    pango_context_set_round_glyph_positions(source.context.get(), FALSE);
    auto* const options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(source.context.get(), options);
    cairo_font_options_destroy(options);
    pango_context_set_language(source.context.get(), pango_language_from_string("en"));
    pango_context_set_base_dir(source.context.get(), PANGO_DIRECTION_LTR);
    return source;
}

/// Nothing where the folder lacks one of the files.
FcConfig* config_of(std::string const& folder) {
    auto* const config = FcConfigCreate();
    for (auto const* file : files) {
        auto const path = folder + "/" + file;
        if (FcConfigAppFontAddFile(config, reinterpret_cast<FcChar8 const*>(path.c_str())) == FcFalse) {
            FcConfigDestroy(config);
            return nullptr;
        }
    }
    return config;
}

} // namespace

void ObjectGone::operator()(void* object) const {
    g_object_unref(object);
}

std::vector<std::string> font_folders(char const* chosen) {
    if (chosen != nullptr && *chosen != '\0') {
        return {chosen};
    }
    return {"/usr/share/fonts/opentype/inter", "/usr/share/fonts/inter", "/usr/share/fonts/TTF",
            "/usr/local/share/fonts/inter", "/usr/share/fonts/truetype/inter"};
}

std::optional<FontSource> own_fonts(std::vector<std::string> const& folders) {
    for (auto const& folder : folders) {
        if (auto* const config = config_of(folder)) {
            return source_of(config);
        }
    }
    return std::nullopt;
}

FontSource system_fonts() {
    return source_of(FcInitLoadConfigAndFonts());
}

} // namespace lengthwise::paint
