#pragma once

#include "cli/console.hpp"

#include <chrono>
#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace lengthwise::cli {

/// How far a command is with its files: "tally: 412 of 1200 files", one line that wipes itself. It comes
/// after a second, and only where somebody watches.
class Progress {
  public:
    using Moment = std::chrono::steady_clock::time_point;

    Progress(Output& err, bool watched, std::string_view command, std::size_t files,
             std::function<Moment()> now = std::chrono::steady_clock::now);
    ~Progress() { wipe(); }
    Progress(Progress const&) = delete;
    Progress& operator=(Progress const&) = delete;

    /// One more is done.
    void step();

    /// Room for other text: the line is gone, and comes back with a later step.
    void wipe();

  private:
    void draw();

    Output& err_;
    bool watched_;
    std::string command_;
    std::size_t files_;
    std::function<Moment()> now_;
    std::size_t done_ = 0;
    std::size_t drawn_ = 0; ///< cells that the line in sight takes
    Moment next_;           ///< not drawn again before it
};

} // namespace lengthwise::cli
