#pragma once

#include "generator.hpp"
#include "measure.hpp"
#include "reader.hpp"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::bench {

/// One reader or program, and what its rounds took.
struct Row {
    std::string name;
    std::string title;
    double bytes = 0;           ///< of its own text
    std::vector<double> core{}; ///< seconds of a core, round by round
    std::vector<double> wall{};
    std::int64_t heap = 0; ///< 0: not measured

    void add(Took const& took) {
        core.push_back(took.core);
        wall.push_back(took.wall);
    }
    [[nodiscard]] double speed() const { return bytes / 1e6 / median(core); }
    [[nodiscard]] double heap_a_byte() const { return static_cast<double>(heap) / bytes; }
};

/// All readers and programs on one generated plan, one after the other in every round.
class Contest {
  public:
    /// `program` is lengthwise itself; empty leaves it out.
    Contest(std::uint64_t bytes, std::filesystem::path const& program);

    /// One round to warm up, then `rounds` that count; then each reader's heap.
    void measure(int rounds);

    [[nodiscard]] std::vector<Row> const& rows() const { return rows_; }
    [[nodiscard]] Row const& row(std::string_view name) const;
    [[nodiscard]] Generated const& plan() const { return plan_; }

  private:
    void round(bool counts);
    [[nodiscard]] std::string const& text_of(Reader const& reader) const;
    [[nodiscard]] std::filesystem::path file_of(Reader const& reader) const;

    Workshop workshop_;
    Generated plan_;
    Readers readers_;
    std::vector<std::vector<std::string>> commands_;
    std::vector<Row> rows_; ///< of the readers, then of the commands
};

} // namespace lengthwise::bench
