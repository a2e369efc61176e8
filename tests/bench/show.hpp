#pragma once

#include "goals.hpp"

#include <cstdint>
#include <filesystem>

/// The parts of the report. Each prints its details as it measures, if they are wanted, and adds its rows
/// to the table of goals.
namespace lengthwise::bench {

struct Options {
    std::uint64_t bytes = 100'000'000; ///< of notation, for the readers
    int rounds = 7;
    bool details = true;
    std::filesystem::path program; ///< lengthwise itself; empty: not built
    std::filesystem::path cards;   ///< lengthwise-cards, beside it; empty: not built
};

/// Readers beside each other on one plan.
void show_throughput(Options const& options, Goals& goals);
/// The whole road from 1 to 200 MB.
void show_linearity(Options const& options, Goals& goals);
/// A week's file from process start to printed totals.
void show_start(Options const& options, Goals& goals);

// What follows is small, and measures how much memory programs take: it has to come before anything large,
// since the kernel counts what a program had before it became another one.

/// `check` on one file and on many.
void measure_check(Options const& options, Goals& goals);
/// Plans composed in this process.
void measure_compose(Goals& goals);
/// Cards: laid out in this process, and painted by the program.
void measure_cards(Options const& options, Goals& goals);

} // namespace lengthwise::bench
