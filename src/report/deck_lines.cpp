#include "report/deck_lines.hpp"

#include "report/deck_clock_words.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace lengthwise::report {
namespace {

using spell::Figure;

class BlockMaker {
  public:
    BlockMaker(Deck const& deck, std::vector<std::size_t> const& lanes, bool ascii)
        : deck_(deck), lanes_(lanes), ascii_(ascii) {}

    [[nodiscard]] DeckBlock section(DeckSection const& section) const {
        DeckBlock block{section.heading, {}};
        for (auto const& row : section.rows) {
            if (std::any_of(lanes_.begin(), lanes_.end(), [&](auto lane) { return row.swum[lane]; })) {
                block.lines.push_back(line(row));
            }
        }
        return block;
    }

    /// One lane has its lengths in their column; several have them below, each under its own.
    [[nodiscard]] DeckBlock totals() const {
        DeckBlock block;
        auto const add = [&](DeckLine line) {
            bool const filled = std::any_of(line.so_far.begin(), line.so_far.end(),
                                            [](Figure const& figure) { return !figure.whole.empty(); });
            if (filled || !line.lengths.empty()) {
                block.lines.push_back(std::move(line));
            }
        };
        add(swum());
        add(lengths());
        add(timed());
        add(if_time());
        return block;
    }

  private:
    [[nodiscard]] DeckLine line(DeckRow const& row) const {
        bool const optional = row.kind == DeckRow::Kind::optional;
        DeckLine line;
        line.number = row.number > 0 ? std::to_string(row.number) : "";
        line.changed = row.changed;
        line.set = (lanes_.size() > 1 ? row.lanes : "") + row.set;
        line.below = row.queue;
        if (!row.hand.empty()) {
            line.below.insert(line.below.begin(), row.hand);
        }
        line.swum = row.swims();
        if (deck_.pool.has_length() && row.swims()) {
            line.rep = row.rep;
            line.lengths =
                (optional ? "+" : "") + (row.lengths == 0 && !row.timed.zero() ? spell::duration(row.timed)
                                                                               : std::to_string(row.lengths));
        }
        for (auto const lane : lanes_) {
            bool const runs_on = row.kind == DeckRow::Kind::line && row.swum[lane];
            line.so_far.push_back(runs_on ? figure(row.so_far[lane]) : Figure{});
            if (deck_.clock.runs) {
                line.clock.push_back(runs_on ? time(row.start[lane]) : "");
            }
        }
        return line;
    }

    [[nodiscard]] std::string time(std::optional<Duration> after) const {
        return after ? moment(deck_.clock, *after) : "?";
    }

    [[nodiscard]] DeckLine swum() const {
        DeckLine line;
        line.set = "end";
        for (auto const place : lanes_) {
            line.so_far.push_back(figure(deck_.lanes[place].swum.distance));
            auto const& takes = deck_.clock.shown[place].takes;
            if (deck_.clock.runs) {
                line.clock.push_back(takes ? end_moment(deck_.clock, takes->expected) : "?");
            }
        }
        line.lengths = lengths_of_one(deck_.lanes[lanes_.front()].swum);
        return line;
    }

    /// What is left for the end, in metres, or in time where it is all timed.
    [[nodiscard]] DeckLine if_time() const {
        DeckLine line;
        line.set = "if time";
        for (auto const place : lanes_) {
            auto const& totals = deck_.lanes[place].if_time;
            auto sum =
                totals.distance.zero() ? Figure{spell::duration(totals.timed), {}} : figure(totals.distance);
            sum.whole.insert(0, "+");
            line.so_far.push_back(totals.reps > 0 ? sum : Figure{});
        }
        auto const& first = deck_.lanes[lanes_.front()].if_time;
        line.lengths = first.lengths > 0 ? lengths_of_one(first) : "";
        line.lengths.insert(0, line.lengths.empty() ? "" : "+");
        return line;
    }

    /// One lane's, where one is shown.
    [[nodiscard]] std::string lengths_of_one(calc::Totals const& totals) const {
        return lanes_.size() == 1 && deck_.pool.has_length() ? count(totals.lengths) : "";
    }

    [[nodiscard]] DeckLine lengths() const {
        DeckLine line;
        line.set = "lengths";
        for (auto const place : lanes_) {
            bool const shown = lanes_.size() > 1 && deck_.pool.has_length();
            line.so_far.push_back(shown ? Figure{count(deck_.lanes[place].swum.lengths), {}} : Figure{});
        }
        return line;
    }

    [[nodiscard]] DeckLine timed() const {
        DeckLine line;
        line.set = "timed, not in the " + std::string{deck_.pool.unit == Unit::yard ? "yards" : "metres"};
        for (auto const place : lanes_) {
            auto const time = deck_.lanes[place].swum.timed;
            line.so_far.push_back(time.zero() ? Figure{} : Figure{spell::duration(time), {}});
        }
        return line;
    }

    /// What does not exist is `-`, never 0.
    static std::string count(std::int64_t lengths) { return lengths == 0 ? "-" : std::to_string(lengths); }

    [[nodiscard]] Figure figure(Distance distance) const {
        return distance.zero() ? Figure{"-", {}} : spell::figure(distance, deck_.pool.unit, ascii_);
    }

    Deck const& deck_;
    std::vector<std::size_t> const& lanes_;
    bool ascii_;
};

} // namespace

std::vector<DeckBlock> deck_blocks(Deck const& deck, std::vector<std::size_t> const& lanes, bool ascii) {
    BlockMaker const maker{deck, lanes, ascii};
    std::vector<DeckBlock> blocks;
    for (auto const& section : deck.sections) {
        blocks.push_back(maker.section(section));
    }
    blocks.push_back(maker.totals());
    return blocks;
}

} // namespace lengthwise::report
