#include "contest.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <stdexcept>
#include <utility>

namespace lengthwise::bench {

namespace {

void check(Reader const& reader, Generated const& plan) {
    if (reader.sessions() != plan.sessions) {
        throw std::runtime_error{
            fmt::format("{}: {} sessions of {}", reader.title(), reader.sessions(), plan.sessions)};
    }
    if (auto const metres = reader.metres(); metres && *metres != plan.metres) {
        throw std::runtime_error{fmt::format("{}: {} m of {}", reader.title(), *metres, plan.metres)};
    }
}

Took read_here(Reader& reader, std::string text, Generated const& plan) {
    reader.load(std::move(text));
    Watch const watch;
    reader.read();
    auto const took = watch.took();
    check(reader, plan);
    reader.release();
    return took;
}

Readers all_readers() {
    auto readers = our_readers();
    for (auto& peer : peer_readers()) {
        readers.push_back(std::move(peer));
    }
    return readers;
}

} // namespace

Contest::Contest(std::uint64_t bytes, std::filesystem::path const& program)
    : plan_(generate(bytes, true)), readers_(all_readers()) {
    for (auto const& reader : readers_) {
        write(file_of(*reader), text_of(*reader));
        rows_.push_back({std::string{reader->name()}, std::string{reader->title()},
                         static_cast<double>(text_of(*reader).size())});
    }
    auto const notation = workshop_.at("plan.swim").string();
    auto const size = static_cast<double>(plan_.notation.size());
    commands_.push_back({"wc", "-l", notation});
    rows_.push_back({"wc", "wc -l FILE", size});
    if (!program.empty()) {
        commands_.push_back({program.string(), "tally", notation});
        rows_.push_back({"program", "lengthwise tally FILE", size});
    }
}

void Contest::measure(int rounds) {
    for (int i = 0; i <= rounds; ++i) {
        fmt::print(stderr, "\rround {} of {}", i, rounds);
        round(i > 0);
    }
    fmt::print(stderr, "\r{:20}\r", "");
    for (std::size_t i = 0; i < readers_.size(); ++i) {
        rows_[i].heap = read_apart(readers_[i]->name(), file_of(*readers_[i]), true).heap;
    }
}

void Contest::round(bool counts) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        auto const took = i < readers_.size() ? read_here(*readers_[i], text_of(*readers_[i]), plan_)
                                              : run_well(commands_[i - readers_.size()]).took;
        if (counts) {
            rows_[i].add(took);
        }
    }
}

Row const& Contest::row(std::string_view name) const {
    return *std::find_if(rows_.begin(), rows_.end(), [&](Row const& row) { return row.name == name; });
}

std::string const& Contest::text_of(Reader const& reader) const {
    return reader.spelling() == Spelling::json ? plan_.json : plan_.notation;
}

std::filesystem::path Contest::file_of(Reader const& reader) const {
    return workshop_.at(reader.spelling() == Spelling::json ? "plan.json" : "plan.swim");
}

} // namespace lengthwise::bench
