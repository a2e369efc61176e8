#include "show.hpp"

#include "generator.hpp"
#include "measure.hpp"
#include "reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::bench {

namespace {

/// What one row's rounds took.
struct Row {
    std::string name;
    std::string title;
    std::uint64_t bytes = 0;
    std::vector<double> seconds{};
    std::int64_t heap = 0; ///< 0: not measured
};

void check(Reader const& reader, Generated const& plan) {
    if (reader.sessions() != plan.sessions) {
        throw std::runtime_error{
            fmt::format("{}: {} sessions of {}", reader.title(), reader.sessions(), plan.sessions)};
    }
    if (auto const metres = reader.metres(); metres && *metres != plan.metres) {
        throw std::runtime_error{fmt::format("{}: {} m of {}", reader.title(), *metres, plan.metres)};
    }
}

void time_round(Reader& reader, Generated const& plan, std::vector<double>& seconds) {
    reader.load(reader.spelling() == Spelling::json ? plan.json : plan.notation);
    auto const start = now();
    reader.read();
    seconds.push_back(now() - start);
    check(reader, plan);
    reader.release();
}

Readers all_readers() {
    auto readers = our_readers();
    for (auto& peer : peer_readers()) {
        readers.push_back(std::move(peer));
    }
    return readers;
}

class Table {
  public:
    Table(Generated plan, Workshop const& workshop, std::filesystem::path const& program)
        : plan_(std::move(plan)), readers_(all_readers()), notation_(workshop.at("plan.swim")),
          json_(workshop.at("plan.json")) {
        write(notation_, plan_.notation);
        write(json_, plan_.json);
        for (auto const& reader : readers_) {
            auto const is_json = reader->spelling() == Spelling::json;
            rows_.push_back({std::string{reader->name()}, std::string{reader->title()},
                             (is_json ? plan_.json : plan_.notation).size()});
        }
        commands_.push_back({"wc", "-l", notation_.string()});
        rows_.push_back({"wc", "wc -l FILE", plan_.notation.size()});
        if (!program.empty()) {
            commands_.push_back({program.string(), "tally", notation_.string()});
            rows_.push_back({"program", "lengthwise tally FILE", plan_.notation.size()});
        }
    }

    /// The first round warms up and is not counted.
    void measure(int rounds) {
        for (int i = 0; i <= rounds; ++i) {
            fmt::print(stderr, "\rround {} of {}", i, rounds);
            round();
            if (i == 0) {
                for (auto& row : rows_) {
                    row.seconds.clear();
                }
            }
        }
        fmt::print(stderr, "\r{:20}\r", "");
        for (std::size_t i = 0; i < readers_.size(); ++i) {
            auto const& reader = *readers_[i];
            auto const& file = reader.spelling() == Spelling::json ? json_ : notation_;
            rows_[i].heap = read_apart(reader.name(), file, true).heap;
        }
    }

    void print() const {
        fmt::print("{:.1f} MB of notation, {} sessions; the same plan as JSON: {:.1f} MB\n\n",
                   megabytes(plan_.notation.size()), plan_.sessions, megabytes(plan_.json.size()));
        fmt::print("{:28}{:>8}{:>13}{:>11}{:>12}\n", "", "MB/s", "sessions/s", "to parse", "heap/byte");
        for (auto const& row : rows_) {
            print(row);
        }
        fmt::print("\nMB/s: of the row's own text. To parse: its sessions/s over those of the first\n"
                   "row, round by round. Heap: most bytes held at once per byte of text, the text\n"
                   "included. The peers build their tree of the JSON and know nothing of swimming.\n"
                   "Lines that name a FILE are whole programs, from start to end.\n");
    }

    void print_goals() const {
        auto const& parse = row("parse");
        auto const& road = row("road");
        fmt::print("\n{:44}{:>8}{:>13}{:>13}\n", "", "here", "goal", "stretch");
        goal("parse, MB/s", speed(parse), 250, 400);
        goal("parse to tally, MB/s", speed(road), 150, 200);
        goal("parse over Boost.JSON monotonic, sessions/s",
             median_ratio(row("boost-monotonic").seconds, parse.seconds), 1, 2);
        goal("parse over simdjson, sessions/s", median_ratio(row("simdjson").seconds, parse.seconds), 0, 1);
        fmt::print("{:44}{:>8.2f}{:>13}\n", "parse to tally, heap/byte", heap(road),
                   heap(road) <= 4 ? "4 met" : "4 MISSED");
    }

  private:
    [[nodiscard]] Row const& row(std::string_view name) const {
        return *std::find_if(rows_.begin(), rows_.end(), [&](Row const& row) { return row.name == name; });
    }
    static double megabytes(std::size_t bytes) { return static_cast<double>(bytes) / 1e6; }
    static double speed(Row const& row) { return megabytes(row.bytes) / median(row.seconds); }
    static double heap(Row const& row) {
        return static_cast<double>(row.heap) / static_cast<double>(row.bytes);
    }

    static std::string verdict(double here, double wanted) {
        return wanted == 0 ? "" : fmt::format("{} {}", wanted, here >= wanted ? "met" : "MISSED");
    }
    static void goal(std::string_view title, double here, double wanted, double stretch) {
        fmt::print("{:44}{:>8.{}f}{:>13}{:>13}\n", title, here, here < 20 ? 2 : 0, verdict(here, wanted),
                   verdict(here, stretch));
    }

    void round() {
        for (std::size_t i = 0; i < readers_.size(); ++i) {
            time_round(*readers_[i], plan_, rows_[i].seconds);
        }
        for (std::size_t i = 0; i < commands_.size(); ++i) {
            rows_[readers_.size() + i].seconds.push_back(run_well(commands_[i]).seconds);
        }
    }

    void print(Row const& row) const {
        auto const sessions = static_cast<double>(plan_.sessions) / median(row.seconds);
        fmt::print("{:28}{:>8.0f}{:>13.0f}{:>11.2f}{:>12}\n", row.title, speed(row), sessions,
                   median_ratio(rows_.front().seconds, row.seconds),
                   row.heap == 0 ? "-" : fmt::format("{:.2f}", heap(row)));
    }

    Generated plan_;
    Readers readers_;
    std::filesystem::path notation_;
    std::filesystem::path json_;
    std::vector<std::vector<std::string>> commands_;
    std::vector<Row> rows_; ///< of the readers, then of the commands
};

} // namespace

void show_throughput(Options const& options) {
    Workshop const workshop;
    Table table{generate(options.bytes, true), workshop, options.program};
    table.measure(options.rounds);
    table.print();
    table.print_goals();
}

} // namespace lengthwise::bench
