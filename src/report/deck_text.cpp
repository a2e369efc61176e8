#include "report/deck_text.hpp"

#include "report/deck_lines.hpp"
#include "report/deck_table.hpp"
#include "report/fold_set.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <numeric>
#include <string_view>
#include <utility>
#include <vector>

namespace lengthwise::report {
namespace {

constexpr std::size_t widest = 80;       ///< so that a deck can be shown large
constexpr std::size_t side_by_side = 80; ///< columns from which lanes may share the screen
constexpr std::size_t least_set = 34;    ///< cells that a set keeps beside them

class DeckWriter {
  public:
    DeckWriter(Deck const& deck, DeckStyle const& style, Paint const& paint)
        : deck_(deck), style_{std::min(style.width, widest), style.ascii}, paint_(paint) {}

    std::string write() {
        parts(deck_.title);
        parts(facts());
        for (auto const& note : deck_.notes) {
            line(note);
        }
        tables();
        foot();
        return std::move(text_);
    }

  private:
    void line(std::string_view text) {
        if (!text.empty()) {
            text_.append(fold(text, style_.width)).append("\n");
        }
    }

    void parts(std::vector<std::string> const& all) {
        text_.append(fold_parts(all, style_.ascii ? ", " : " · ", style_.width)).append("\n");
    }

    /// "longest today 750 · before 600 · race 750 m · kit: board"
    [[nodiscard]] std::vector<std::string> facts() const {
        std::vector<std::string> facts;
        if (deck_.lanes.size() == 1 && deck_.lanes.front().lane != 0) {
            facts.push_back("lane " + std::to_string(deck_.lanes.front().lane));
        }
        facts.push_back(by_lane("longest today", [](DeckLane const& lane) {
            return lane.swum.longest.zero() ? std::nullopt : std::optional{lane.swum.longest};
        }));
        if (std::any_of(deck_.lanes.begin(), deck_.lanes.end(),
                        [](auto const& lane) { return lane.before; })) {
            facts.push_back(by_lane("before", [](DeckLane const& lane) { return lane.before; }));
        }
        if (deck_.race) {
            facts.push_back("race " + race());
        }
        facts.push_back("kit: " + kit());
        return facts;
    }

    /// One figure where all lanes agree, else each lane's.
    template <typename Longest>
    [[nodiscard]] std::string by_lane(std::string_view what, Longest longest) const {
        std::vector<std::string> all;
        bool same = true;
        for (auto const& lane : deck_.lanes) {
            same = same && longest(lane) == longest(deck_.lanes.front());
            all.push_back(figure(longest(lane)) + " in lane " + std::to_string(lane.lane));
        }
        auto const text = same ? figure(longest(deck_.lanes.front())) : joined(all, ", ");
        return std::string{what} + " " + text;
    }

    /// The race line may be in the other unit; then every figure says its own.
    [[nodiscard]] std::string figure(std::optional<Distance> distance) const {
        if (!distance) {
            return "-";
        }
        auto const unit = deck_.pool.unit;
        bool const alone = deck_.race && deck_.race->unit == unit;
        auto const text = spell::number(near(*distance), unit, style_.ascii);
        return (near(*distance) == *distance ? "" : "about ") + text +
               (alone ? "" : " " + std::string{spell::symbol(unit)});
    }

    [[nodiscard]] std::string race() const {
        auto const& race = *deck_.race;
        auto const text = spell::distance(race.distance, race.unit, style_.ascii);
        return race.unit == deck_.pool.unit ? text : text + " (" + figure(race.distance) + ")";
    }

    /// A distance as it is said here: what was swum in another pool, to the whole metre or yard.
    [[nodiscard]] Distance near(Distance distance) const {
        auto const unit = one(deck_.pool.unit);
        bool const at_a_wall = deck_.pool.has_length() && Distance::divides(deck_.pool.length, distance);
        bool const sayable = distance.units() % (unit.units() / 24) == 0;
        return at_a_wall || sayable ? distance : unit * Distance::whole(distance * 2 + unit, unit * 2);
    }

    [[nodiscard]] std::string kit() const { return deck_.kit.empty() ? "none" : joined(deck_.kit, ", "); }

    static std::string joined(std::vector<std::string> const& all, std::string_view joint) {
        std::string text;
        for (auto const& one : all) {
            text.append(text.empty() ? "" : joint).append(one);
        }
        return text;
    }

    /// As many lanes side by side as there is room for, the others below.
    void tables() {
        std::vector<std::size_t> left(deck_.lanes.size());
        std::iota(left.begin(), left.end(), std::size_t{0});
        bool const several = left.size() > 1;
        while (!left.empty()) {
            auto together = left;
            while (together.size() > 1 && !fits(table(together))) {
                together.pop_back();
            }
            text_.append("\n");
            if (several && together.size() == 1) {
                auto const lane = "lane " + std::to_string(deck_.lanes[together.front()].lane);
                text_.append(paint_(Ink::bold, lane)).append("\n\n");
            }
            text_.append(table(together).text(paint_));
            left.erase(left.begin(), left.begin() + std::ptrdiff_t(together.size()));
        }
    }

    [[nodiscard]] bool fits(DeckTable const& table) const {
        return style_.width >= side_by_side && table.set_room() >= least_set;
    }

    [[nodiscard]] DeckTable table(std::vector<std::size_t> const& lanes) const {
        std::vector<std::string> heads;
        for (auto const lane : lanes) {
            heads.push_back(lanes.size() > 1 ? "lane " + std::to_string(deck_.lanes[lane].lane) : "");
        }
        return {deck_blocks(deck_, lanes, style_.ascii), std::move(heads),
                std::string{spell::symbol(deck_.pool.unit)}, style_.width};
    }

    void foot() {
        std::vector<std::string> notes;
        if (deck_.rest) {
            notes.push_back("rest " + spell::spaced(*deck_.rest, style_.ascii) + " where a line has none");
        }
        if (deck_.pool.kind == Pool::Kind::unsaid) {
            notes.push_back("no pool is named, so no lengths");
        }
        if (!notes.empty()) {
            text_.append("\n");
        }
        for (auto const& note : notes) {
            line(note);
        }
        if (deck_.move && (deck_.move->from != deck_.pool || deck_.move->percent != 100)) {
            text_.append("\n");
            moved(*deck_.move);
        }
    }

    void moved(DeckMove const& move) {
        if (!move.changed.empty()) {
            line("* made to fit " + fit_to(move) + "; written" + of_old_pool(move.from) + ":");
            for (auto const& before : move.changed) {
                was(before);
            }
        }
        if (move.changed.empty() || move.from.unit != deck_.pool.unit) {
            line((move.changed.empty() ? "every row reads" : "rows without * read") +
                 std::string{" as before, in "} + unit_word());
        }
        times(move.changed);
    }

    /// A line as it was written, its number in front.
    void was(DeckBefore const& before) {
        auto left = pad_right(number(before), 2) + "  ";
        for (auto const& part : fold_set((deck_.lanes.size() > 1 ? before.lanes : "") + before.set,
                                         style_.width - left.size())) {
            text_.append(std::exchange(left, std::string(left.size(), ' '))).append(part).append("\n");
        }
    }

    /// How fast is too fast is for the coach to say.
    void times(std::vector<DeckBefore> const& changed) {
        std::vector<std::string> rows;
        for (auto const& before : changed) {
            if (before.times_stay) {
                rows.push_back(before.number > 0 ? "row " + number(before) : "\"if time\"");
            }
        }
        if (!rows.empty()) {
            line("send-offs and times to hold stay as written: look at " + joined(rows, ", "));
        }
    }

    [[nodiscard]] std::string unit_word() const { return deck_.pool.unit == Unit::yard ? "yards" : "metres"; }

    static std::string number(DeckBefore const& before) {
        return before.number > 0 ? std::to_string(before.number) : "";
    }

    [[nodiscard]] std::string fit_to(DeckMove const& move) const {
        std::string const share = move.percent == 100 ? "" : std::to_string(move.percent) + " %, in ";
        auto const& pool = deck_.pool;
        return share + (pool.has_length()
                            ? "lengths of " + spell::distance(pool.length, pool.unit, style_.ascii)
                            : "whole " + unit_word());
    }

    [[nodiscard]] std::string of_old_pool(Pool const& pool) const {
        return pool.has_length() ? " for " + spell::distance(pool.length, pool.unit, style_.ascii) : "";
    }

    Deck const& deck_;
    DeckStyle style_;
    Paint const& paint_;
    std::string text_;
};

} // namespace

std::string deck_text(Deck const& deck, DeckStyle const& style, Paint const& paint) {
    return DeckWriter{deck, style, paint}.write();
}

} // namespace lengthwise::report
