#pragma once

#include "cards/body.hpp"
#include "cards/wrap.hpp"

#include <string>
#include <vector>

namespace lengthwise::cards {

/// Begins lines and puts texts on the last of them. Private to the writing of bodies.
class LineWriter {
  public:
    LineWriter(report::Card const& card, Setting const& setting, Measure& measure)
        : setting_(setting), measure_(measure), em_(setting.scale.em()), small_em_(setting.scale.small_em()) {
        body.columns = columns_of(card, setting, measure);
    }

    Body body;
    // What the lines that are begun from now on have in common.
    std::size_t section = 0;
    Cut cut = Cut::torn;                   ///< of the next line alone
    std::string const* clock = nullptr;    ///< of the next line alone
    report::CardRow const* swum = nullptr; ///< the last whole row
    std::vector<std::uint32_t> bars;

    [[nodiscard]] Columns const& columns() const { return body.columns; }
    [[nodiscard]] Setting const& setting() const { return setting_; }
    [[nodiscard]] Measure& measure() const { return measure_; }
    [[nodiscard]] double em() const { return em_; }
    [[nodiscard]] double small_em() const { return small_em_; }
    [[nodiscard]] double width(std::string const& words, Weight weight, double em) const {
        return measure_.width(words, weight) * em;
    }
    [[nodiscard]] BodyLine& line() { return body.lines.back(); }

    void set_line();
    void small_line();

    /// Gives the text's right end; its left where it is set to the left of `x`.
    double put(double x, std::string const& words, Weight weight, double em, Anchor anchor = Anchor::left);
    /// The same of small words; blanks before them are room, not text.
    double put_behind(double x, std::string const& words);
    /// When a row leaves, before its line, where times stand there.
    void leave_time();
    /// At the right edge of a line.
    void lengths(BodyLine& at, std::string const& lengths, bool counts);

    void place(PlacedLine const& placed, double x);
    /// On small lines of their own, from `x` to the right edge.
    void pieces(std::vector<Piece> const& pieces, double x);
    void notes(std::vector<std::string> const& notes, double x);

  private:
    void begin(double advance, double em);

    Setting const& setting_;
    Measure& measure_;
    double em_;
    double small_em_;
};

} // namespace lengthwise::cards
