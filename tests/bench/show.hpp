#pragma once

#include <cstdint>
#include <filesystem>

/// The three parts of the report, each printed as it is measured.
namespace lengthwise::bench {

struct Options {
    std::uint64_t bytes = 100'000'000; ///< of notation, for the table
    int rounds = 7;
    std::filesystem::path program; ///< lengthwise itself
};

/// Readers beside each other on one plan.
void show_throughput(Options const& options);
/// The whole road from 1 to 200 MB.
void show_linearity(Options const& options);
/// A week's file from process start to printed totals.
void show_start(Options const& options);

} // namespace lengthwise::bench
