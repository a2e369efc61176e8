#include "cli/progress.hpp"

#include <fmt/core.h>

#include <utility>

namespace lengthwise::cli {

namespace {

using namespace std::chrono_literals;

constexpr auto patience = 1s;
constexpr auto pause = 100ms; // a line that changes more often cannot be read

} // namespace

Progress::Progress(Output& err, bool watched, std::string_view command, std::size_t files,
                   std::function<Moment()> now)
    : err_(err), watched_(watched), command_(command), files_(files), now_(std::move(now)),
      next_(now_() + patience) {}

void Progress::step() {
    ++done_;
    if (watched_ && done_ < files_ && now_() >= next_) {
        wipe();
        draw();
    }
}

void Progress::wipe() {
    if (drawn_ > 0) {
        // Blanks instead of an escape sequence: they work on every terminal.
        err_.write(fmt::format("\r{:{}}\r", "", drawn_));
        err_.flush();
        drawn_ = 0;
    }
}

void Progress::draw() {
    auto const line = fmt::format("{}: {} of {} files", command_, done_, files_);
    err_.write(line);
    err_.flush();
    drawn_ = line.size();
    next_ = now_() + pause;
}

} // namespace lengthwise::cli
