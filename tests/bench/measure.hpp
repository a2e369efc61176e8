#pragma once

#include "reader.hpp"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

/// Clocks, processes, files.
namespace lengthwise::bench {

/// What a stretch of this process took.
struct Took {
    double wall = 0; ///< seconds by the clock
    double core = 0; ///< seconds of a core, the kernel's work for this process included
};
class Watch {
  public:
    [[nodiscard]] Took took() const { return {wall() - wall_, core() - core_}; }

  private:
    static double wall();
    static double core();
    double wall_ = wall();
    double core_ = core();
};

[[nodiscard]] double median(std::vector<double> values);
/// Median of a[i] / b[i]: of pairs taken one right after the other.
[[nodiscard]] double median_ratio(std::vector<double> const& a, std::vector<double> const& b);

/// A program that ran to its end.
struct Run {
    Took took{};    ///< wall: from before the spawn until its standard output was closed and it had ended
    int status = 0; ///< its exit code; 128 + the signal that ended it
    std::int64_t resident = 0; ///< most bytes in memory at one time; no less than this process had before
    std::string output;
};
[[nodiscard]] Run run(std::vector<std::string> const& command);
/// The same, but throws unless it ended with 0, or with no more than `most`.
[[nodiscard]] Run run_well(std::vector<std::string> const& command, int most = 0);

/// One reading in this process, right after its start.
struct Reading {
    Took took{};
    std::uint64_t sessions = 0;
    std::int64_t heap = 0; ///< most bytes held by `operator new` at one time, the text among them
    std::int64_t resident =
        0; ///< most pages in memory at one time, in bytes, less those before the text came
};
/// With `count` the heap is counted, which costs time; without, it stays 0.
[[nodiscard]] Reading read_once(Reader& reader, std::filesystem::path const& file, bool count);
/// The same in a process of its own, started from this program.
[[nodiscard]] Reading read_apart(std::string_view reader, std::filesystem::path const& file, bool count);
/// What such a process does.
void answer_reading(std::string_view reader, std::filesystem::path const& file, bool count);

[[nodiscard]] std::string contents(std::filesystem::path const& file);
void write(std::filesystem::path const& file, std::string_view text);

/// A folder that goes when this does.
class Workshop {
  public:
    Workshop();
    Workshop(Workshop const&) = delete;
    Workshop& operator=(Workshop const&) = delete;
    ~Workshop();

    [[nodiscard]] std::filesystem::path at(std::string_view name) const { return folder_ / name; }

  private:
    std::filesystem::path folder_;
};

} // namespace lengthwise::bench
