#pragma once

#include "cards/line_writer.hpp"

namespace lengthwise::cards {

/// Writes single rows of the set: on the line what is to be done, below it how. Private to the writing of
/// bodies.
class RowWriter {
  public:
    explicit RowWriter(LineWriter& lines) : lines_(lines), em_(lines.em()), small_em_(lines.small_em()) {}

    /// `counts`: its lengths are part of the sum.
    void write(report::CardRow const& row, bool counts);

    /// A split had no room for its halves.
    [[nodiscard]] bool clashed() const { return clashed_; }

  private:
    double amounts(report::CardRow const& row);
    std::vector<Piece> words(report::CardRow const& row, double x);
    double wrapped(std::string const& text, double x);
    void right(report::CardRow const& row, double end, std::vector<Piece>& below);
    [[nodiscard]] bool put_halves(report::CardRow const& row, double end);
    void add_rest(report::CardRow const& row, bool recovered, std::vector<Piece>& below) const;

    LineWriter& lines_;
    double em_;
    double small_em_;
    bool clashed_ = false;
};

} // namespace lengthwise::cards
