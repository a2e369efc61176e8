#pragma once

#include <string>

namespace lengthwise::paint {

/// Adds to a PDF what cairo cannot say: its language, that its title is shown, that it is printed at its
/// true size and turned over the long edge. One incremental update (ISO 32000-1, 7.5.6). A file that is not
/// as cairo writes it is given back as it is.
[[nodiscard]] std::string finished(std::string pdf);

} // namespace lengthwise::paint
