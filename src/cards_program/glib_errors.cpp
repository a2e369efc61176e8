#include "cards_program/glib_errors.hpp"

#include "cli/plans.hpp"

#include <glib.h>
#include <string_view>

#include <unistd.h>

namespace lengthwise::cli {
namespace {

void put(std::string_view text) {
    while (!text.empty()) {
        auto const written = ::write(STDERR_FILENO, text.data(), text.size());
        if (written <= 0) {
            return;
        }
        text.remove_prefix(static_cast<std::size_t>(written));
    }
}

GLogWriterOutput say(GLogLevelFlags level, GLogField const* fields, gsize count, gpointer data) {
    if ((level & G_LOG_LEVEL_ERROR) == 0) {
        return g_log_writer_default(level, fields, count, data);
    }
    put("lengthwise: cannot paint cards: ");
    for (gsize i = 0; i < count; ++i) {
        if (std::string_view{fields[i].key} == "MESSAGE") {
            put(static_cast<char const*>(fields[i].value));
        }
    }
    put("\n");
    _exit(misused);
}

} // namespace

void say_glib_errors() {
    g_log_set_writer_func(say, nullptr, nullptr);
}

} // namespace lengthwise::cli
