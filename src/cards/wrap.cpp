#include "cards/wrap.hpp"

#include "report/width.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::cards {
namespace {

constexpr std::string_view joint = " ·";

std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        auto const blank = std::min(text.find(' '), text.size());
        if (blank > 0) {
            words.push_back(text.substr(0, blank));
        }
        text.remove_prefix(std::min(blank + 1, text.size()));
    }
    return words;
}

/// The first character with the marks that combine with it.
std::size_t first_character(std::string_view text) {
    auto const narrow = report::bytes_within(text, 1);
    return std::max<std::size_t>(narrow > 0 ? narrow : report::bytes_within(text, 2), 1);
}

/// Cuts a word that no line can hold.
class Lines {
  public:
    Lines(Weight weight, double width, Measure& measure)
        : weight_(weight), width_(width), blank_(measure.width(" ", weight)), measure_(measure) {}

    std::vector<std::string> of(std::string_view text) {
        for (auto const word : words_of(text)) {
            add(word);
        }
        flush();
        return std::move(lines_);
    }

  private:
    void add(std::string_view word) {
        auto const wide = measure_.width(word, weight_);
        auto const before = line_.empty() ? 0 : filled_ + blank_;
        if (before + wide <= width_) {
            line_.append(line_.empty() ? "" : " ").append(word);
            filled_ = before + wide;
            return;
        }
        flush();
        wide <= width_ ? add(word) : add_in_parts(word);
    }

    void add_in_parts(std::string_view word) {
        std::string part;
        while (!word.empty()) {
            auto const next = word.substr(0, std::min(first_character(word), word.size()));
            auto const longer = part + std::string{next};
            if (!part.empty() && measure_.width(longer, weight_) > width_) {
                lines_.push_back(std::move(part));
                part = next;
            } else {
                part = longer;
            }
            word.remove_prefix(next.size());
        }
        filled_ = measure_.width(part, weight_);
        line_ = std::move(part);
    }

    void flush() {
        if (!line_.empty()) {
            lines_.push_back(std::move(line_));
        }
        line_.clear();
        filled_ = 0;
    }

    Weight weight_;
    double width_;
    double blank_;
    Measure& measure_;
    std::vector<std::string> lines_;
    std::string line_;
    double filled_ = 0;
};

} // namespace

std::vector<std::string> wrap(std::string_view text, Weight weight, double width, Measure& measure) {
    return Lines{weight, width, measure}.of(text);
}

std::vector<std::string> wrap_evenly(std::string_view text, Weight weight, double width, Measure& measure) {
    auto lines = wrap(text, weight, width, measure);
    if (lines.size() < 2) {
        return lines;
    }
    auto least = width / 2;
    for (auto const word : words_of(text)) {
        least = std::max(least, measure.width(word, weight)); // no word is broken for it
    }
    if (least > width) {
        return lines;
    }
    auto most = width;
    for (int step = 0; step < 5; ++step) {
        auto const middle = (least + most) / 2;
        auto narrower = wrap(text, weight, middle, measure);
        if (narrower.size() <= lines.size()) {
            lines = std::move(narrower);
            most = middle;
        } else {
            least = middle;
        }
    }
    return lines;
}

PlacedLine placed_alone(Piece piece, Measure& measure) {
    Placed placed;
    placed.width = measure.width(piece.words, piece.weight);
    placed.piece = std::move(piece);
    PlacedLine line;
    line.push_back(std::move(placed));
    return line;
}

std::vector<PlacedLine> flow_pieces(std::vector<Piece> const& pieces, double width, Measure& measure) {
    std::vector<PlacedLine> lines;
    double filled = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        auto piece = pieces[i];
        bool const last = i + 1 == pieces.size();
        auto const room = last ? 0 : measure.width(joint, Weight::medium);
        auto const wide = measure.width(piece.words, piece.weight);
        auto const blank = measure.width(" ", Weight::medium);
        if (lines.empty() || filled + blank + wide + room > width) {
            auto const parts = wrap(piece.words, piece.weight, width - room, measure);
            for (auto const& part : parts) {
                lines.push_back(placed_alone({part, piece.weight}, measure));
                filled = lines.back().front().width;
            }
        } else {
            lines.back().push_back({piece, filled + blank, wide});
            filled += blank + wide;
        }
        if (!last && !lines.empty()) {
            lines.back().push_back({{"·", Weight::medium}, filled + blank, room - blank});
            filled += room;
        }
    }
    return lines;
}

} // namespace lengthwise::cards
