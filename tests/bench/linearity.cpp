#include "show.hpp"

#include "generator.hpp"
#include "measure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <vector>

namespace lengthwise::bench {

namespace {

/// The whole road over one size, each reading in a process of its own.
struct Point {
    std::filesystem::path file;
    double bytes = 0;
    std::vector<double> seconds{};
};

std::vector<Point> make_points(Workshop const& workshop) {
    std::vector<Point> points;
    for (auto const megabytes : {1ULL, 3ULL, 10ULL, 30ULL, 100ULL, 200ULL}) {
        auto const plan = generate(megabytes * 1'000'000, false);
        auto const file = workshop.at(fmt::format("{}.swim", megabytes));
        write(file, plan.notation);
        points.push_back({file, static_cast<double>(plan.notation.size())});
    }
    return points;
}

double seconds_a_byte(Point const& point) {
    return median(point.seconds) / point.bytes;
}

void print(std::vector<Point> const& points) {
    fmt::print("\nparse to tally by size, each reading in a fresh process\n\n");
    fmt::print("{:>8}{:>12}{:>12}{:>12}{:>16}\n", "MB", "core ms", "ns/byte", "heap/byte", "resident/byte");
    for (auto const& point : points) {
        auto const memory = read_apart("road", point.file, true);
        fmt::print("{:>8.0f}{:>12.1f}{:>12.2f}{:>12.2f}{:>16.2f}\n", point.bytes / 1e6,
                   median(point.seconds) * 1e3, seconds_a_byte(point) * 1e9,
                   static_cast<double>(memory.heap) / point.bytes,
                   static_cast<double>(memory.resident) / point.bytes);
    }
}

} // namespace

void show_linearity(Options const& options, Goals& goals) {
    Workshop const workshop;
    auto points = make_points(workshop);
    for (int i = 0; i < options.rounds; ++i) {
        for (auto& point : points) {
            point.seconds.push_back(read_apart("road", point.file, false).took.core);
        }
    }
    if (options.details) {
        print(points);
    }
    std::vector<double> each;
    std::ranges::transform(points, std::back_inserter(each), seconds_a_byte);
    auto const [least, most] = std::ranges::minmax(each);
    goals.add({"slowest over fastest, 1 to 200 MB", most / least, Bound::at_most, 1.3});
}

} // namespace lengthwise::bench
