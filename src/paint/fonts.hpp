#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <fontconfig/fontconfig.h>
#include <pango/pango.h>

/// The fonts that cards are set in: two files of Inter, opened by name. The system's own fonts are asked
/// only for letters that Inter lacks, because finding them takes longer than all the rest.
namespace lengthwise::paint {

/// Where the files are looked for, the first that has both.
[[nodiscard]] std::vector<std::string> font_folders(char const* chosen);

/// What the files come with, for those who have to install them.
inline constexpr char const* font_package = "fonts-inter";

struct ObjectGone {
    void operator()(void* object) const;
};
template <typename T>
using Object = std::unique_ptr<T, ObjectGone>;

/// A way to find fonts.
struct FontSource {
    Object<PangoFontMap> map;
    Object<PangoContext> context;
};

/// Inter alone, from a folder that has it; nothing where none has.
[[nodiscard]] std::optional<FontSource> own_fonts(std::vector<std::string> const& folders);

/// Everything the system has.
[[nodiscard]] FontSource system_fonts();

} // namespace lengthwise::paint
