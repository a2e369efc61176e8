#include "cli/each_file.hpp"

#include "cli/process.hpp"
#include "cli/progress.hpp"

#include <algorithm>
#include <cstddef>
#include <deque>
#include <future>
#include <optional>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

namespace lengthwise::cli {

namespace {

/// What a file has to say, kept until its turn.
struct Part {
    Outcome outcome;
    std::optional<std::string> out; ///< nothing: it has written nothing, not even an empty text
    std::string err;
};

class KeptOutput final : public Output {
  public:
    std::optional<std::string> text;
    void write(std::string_view more) override {
        if (!text) {
            text.emplace();
        }
        *text += more;
    }
};

Console like(Console const& console, Output& out, Output& err) {
    return {.out = out,
            .err = err,
            .out_paint = console.out_paint,
            .err_paint = console.err_paint,
            .width = console.width,
            .ascii = console.ascii,
            .typed = console.typed,
            .watched = console.watched};
}

Part part_of(std::string const& name, Console const& console, FileWork const& work) {
    KeptOutput out;
    TextOutput err;
    auto own = like(console, out, err);
    auto outcome = work(name, own);
    return {std::move(outcome), std::move(out.text), std::move(err.text)};
}

/// Puts something before the first text that comes, if any does; an empty one will do.
class Opened final : public Output {
  public:
    Opened(Output& to, std::string_view opening) : to_(to), opening_(opening) {}

    [[nodiscard]] bool used() const { return used_; }
    void write(std::string_view text) override {
        to_.write(used_ ? std::string_view{} : opening_);
        used_ = true;
        to_.write(text);
    }
    void flush() override { to_.flush(); }

  private:
    Output& to_;
    std::string_view opening_;
    bool used_ = false;
};

/// So many are worked on one after the other by one thread: small files are not worth a thread each.
constexpr std::size_t most_in_batch = 16;

/// Goes through the files in their order, while others are worked on ahead of their turn.
class Round {
  public:
    Round(std::string_view command, std::vector<std::string> const& files, Console& console,
          FileWork const& work, Joint joint)
        : files_(files), console_(console), work_(work), joint_(joint),
          progress_(console.err, console.watched, command, files.size()) {}

    int go(int code) {
        while (next_ < files_.size()) {
            look_ahead();
            auto batch = std::move(ahead_.front());
            ahead_.pop_front();
            if (!batch.valid()) {
                code = std::max(code, at_once(files_[next_]));
                step();
                continue;
            }
            for (auto& part : batch.get()) {
                code = std::max(code, take(std::move(part)));
                step();
            }
        }
        progress_.wipe();
        return code;
    }

  private:
    using Batch = std::vector<Part>;

    void step() {
        ++next_;
        progress_.step();
    }

    void look_ahead() {
        while (begun_ < files_.size() && ahead_.size() < 2 * cores_) {
            auto const end = end_of_batch(begun_);
            ahead_.push_back(begin(begun_, end));
            begun_ = end;
        }
    }

    [[nodiscard]] bool alone(std::size_t file) const { return files_.size() == 1 || files_[file] == "-"; }

    [[nodiscard]] std::size_t end_of_batch(std::size_t first) const {
        auto const most = std::clamp<std::size_t>(files_.size() / (4 * cores_), 1, most_in_batch);
        auto end = first + 1;
        while (!alone(first) && end < files_.size() && end - first < most && !alone(end)) {
            ++end;
        }
        return end;
    }

    /// Nothing for what is left to its turn: standard input can only be read by one, and a single file
    /// need not keep what it says.
    std::future<Batch> begin(std::size_t first, std::size_t end) {
        if (alone(first)) {
            return {};
        }
        auto const work = [this, first, end] {
            Batch batch;
            for (auto i = first; i < end; ++i) {
                batch.push_back(part_of(files_[i], console_, work_));
            }
            return batch;
        };
        if (cores_ > 1) {
            try {
                SignalsHeld const held; // a new thread inherits it: signals stay the main thread's
                return std::async(std::launch::async, work);
            } catch (std::system_error const&) { // no further thread to be had
            }
        }
        return std::async(std::launch::deferred, work);
    }

    int take(Part part) {
        auto const silent = !part.out && part.err.empty() && !part.outcome.then;
        if (!silent) {
            progress_.wipe();
        }
        Opened out{console_.out, opening()};
        if (part.out) {
            out.write(*part.out);
        }
        console_.err.write(part.err);
        return finish(std::move(part.outcome), out);
    }

    int at_once(std::string const& name) {
        progress_.wipe();
        Opened out{console_.out, opening()};
        auto own = like(console_, out, console_.err);
        return finish(work_(name, own), out);
    }

    int finish(Outcome outcome, Opened& out) {
        auto own = like(console_, out, console_.err);
        auto const code = outcome.then ? std::max(outcome.code, outcome.then(own)) : outcome.code;
        first_ = first_ && !out.used();
        if (console_.watched) { // both streams in the order in which they were written
            console_.out.flush();
            console_.err.flush();
        }
        return code;
    }

    [[nodiscard]] std::string_view opening() const { return first_ ? joint_.before_first : joint_.between; }

    std::vector<std::string> const& files_;
    Console& console_;
    FileWork const& work_;
    Joint joint_;
    Progress progress_;
    std::size_t cores_ = std::max(1U, std::thread::hardware_concurrency());
    std::size_t next_ = 0;  ///< whose turn it is
    std::size_t begun_ = 0; ///< the first that nobody works on yet
    bool first_ = true;
    std::deque<std::future<Batch>> ahead_; // last: what still runs ends before the rest goes
};

} // namespace

int each_file(std::string_view command, Named const& named, Console& console, FileWork const& work,
              Joint joint) {
    return Round{command, named.files, console, work, joint}.go(named.code);
}

} // namespace lengthwise::cli
