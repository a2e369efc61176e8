#pragma once

#include "report/paint.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lengthwise::cli {

/// Where text goes. Implementations: an open file, a text in memory.
class Output {
  public:
    Output() = default;
    Output(Output const&) = delete;
    Output& operator=(Output const&) = delete;
    virtual ~Output() = default;
    virtual void write(std::string_view text) = 0;
    virtual void flush() {} ///< what has been kept back goes out now
};

class TextOutput final : public Output {
  public:
    std::string text;
    void write(std::string_view more) override { text += more; }
};

/// What a command speaks through: results to `out`, all else to `err`.
struct Console {
    Output& out;
    Output& err;
    report::Paint out_paint{};
    report::Paint err_paint{};
    std::size_t width = 80;
    bool ascii = false;
    bool typed = false;   ///< standard input is a person at a terminal
    bool watched = false; ///< standard error is read by a person at a terminal

    /// Said on standard error once the result is in its place: behind "wrote FILE", and below it.
    std::string summary{};
    std::string below{};

    /// What the result is a new version of, where it is one: were it put over that file, then only as long as
    /// the file is still the same.
    struct Old {
        std::string name;
        std::string bytes;
    };
    std::optional<Old> old{};

    /// "lengthwise: …" and a line feed, on standard error.
    void say(std::string_view message);
};

/// What the terminal and the environment ask for.
struct Surroundings {
    bool in_is_terminal = false;
    bool out_is_terminal = false;
    bool err_is_terminal = false;
    bool no_colour = false;  ///< NO_COLOR is there and not empty, or TERM is dumb
    std::size_t columns = 0; ///< of the terminal; 0: unknown
};

} // namespace lengthwise::cli
