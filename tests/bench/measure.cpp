#include "measure.hpp"

#include "heap.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <fstream>
#include <functional>
#include <iterator>
#include <sstream>
#include <stdexcept>
#include <utility>

#include <time.h>
#include <unistd.h>

namespace lengthwise::bench {

namespace {

/// A field of /proc/self/status in bytes. getrusage would not do: its peak outlives an
/// exec, so a child would begin with the size of what started it.
std::int64_t status_bytes(std::string_view field) {
    std::ifstream status{"/proc/self/status"};
    for (std::string line; std::getline(status, line);) {
        if (line.starts_with(field)) {
            return std::stoll(line.substr(field.size() + 1)) * 1024;
        }
    }
    throw std::runtime_error{"/proc/self/status has no " + std::string{field}};
}

} // namespace

double Watch::wall() {
    return std::chrono::duration<double>{std::chrono::steady_clock::now().time_since_epoch()}.count();
}

double Watch::core() {
    timespec time{};
    ::clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_nsec) * 1e-9;
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    auto const half = values.size() / 2;
    return values.size() % 2 == 1 ? values.at(half) : (values.at(half - 1) + values.at(half)) / 2;
}

double median_ratio(std::vector<double> const& a, std::vector<double> const& b) {
    std::vector<double> ratios;
    std::transform(a.begin(), a.end(), b.begin(), std::back_inserter(ratios), std::divides{});
    return median(std::move(ratios));
}

Reading read_once(Reader& reader, std::filesystem::path const& file, bool count) {
    Reading reading;
    auto const before = status_bytes("VmRSS:");
    if (count) {
        start_counting();
    }
    reader.load(contents(file));
    Watch const watch;
    reader.read();
    reading.took = watch.took();
    reading.heap = count ? peak_heap() : 0;
    reading.resident = status_bytes("VmHWM:") - before;
    reading.sessions = reader.sessions();
    reader.release();
    return reading;
}

void answer_reading(std::string_view reader, std::filesystem::path const& file, bool count) {
    auto const reading = read_once(*find_reader(reader), file, count);
    fmt::print("{} {} {} {} {}\n", reading.took.wall, reading.took.core, reading.sessions, reading.heap,
               reading.resident);
}

Reading read_apart(std::string_view reader, std::filesystem::path const& file, bool count) {
    auto const self = std::filesystem::read_symlink("/proc/self/exe").string();
    auto const answer = run_well({self, count ? "--count" : "--time", std::string{reader}, file.string()});
    Reading reading;
    std::istringstream words{answer.output};
    if (!(words >> reading.took.wall >> reading.took.core >> reading.sessions >> reading.heap >>
          reading.resident)) {
        throw std::runtime_error{"a reading answered: " + answer.output};
    }
    return reading;
}

std::string contents(std::filesystem::path const& file) {
    std::string text(std::filesystem::file_size(file), '\0');
    std::ifstream in{file, std::ios::binary};
    if (!in.read(text.data(), static_cast<std::streamsize>(text.size()))) {
        throw std::runtime_error{"cannot read " + file.string()};
    }
    return text;
}

void write(std::filesystem::path const& file, std::string_view text) {
    std::ofstream out{file, std::ios::binary};
    out.write(text.data(), static_cast<std::streamsize>(text.size()));
    if (!out.flush()) {
        throw std::runtime_error{"cannot write " + file.string()};
    }
}

Workshop::Workshop()
    : folder_(std::filesystem::temp_directory_path() / fmt::format("lengthwise-bench-{}", ::getpid())) {
    std::filesystem::create_directory(folder_);
}

Workshop::~Workshop() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
}

} // namespace lengthwise::bench
