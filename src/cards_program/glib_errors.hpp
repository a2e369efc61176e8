#pragma once

namespace lengthwise::cli {

/// An error that GLib takes for the end of the process (no further thread to be had) ends it in our words and
/// with our exit code, 2, instead of a trap. To be called before anything is painted.
void say_glib_errors();

} // namespace lengthwise::cli
