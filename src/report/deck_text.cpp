#include "report/deck_text.hpp"

#include "report/choose.hpp"
#include "report/deck_clock_words.hpp"
#include "report/deck_facts.hpp"
#include "report/deck_lines.hpp"
#include "report/deck_table.hpp"
#include "report/fold_set.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <limits>
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
        parts(deck_facts(deck_, style_.ascii));
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

    /// As many lanes side by side as there is room for, the others below.
    void tables() {
        auto left = columns();
        bool const several = left.size() > 1;
        if (several && style_.width >= side_by_side) {
            measure(left);
        }
        while (!left.empty()) {
            auto together = left;
            together.resize(most_together(left));
            while (together.size() > 1 && !table(together).has_room_for_sets(least_set)) {
                together.pop_back();
            }
            text_.append("\n");
            if (several && together.size() == 1) {
                text_.append(paint_(Ink::bold, head(together.front()))).append("\n\n");
            }
            text_.append(table(together).text(paint_));
            left.erase(left.begin(), left.begin() + std::ptrdiff_t(together.size()));
        }
    }

    /// Lanes that swim the same rows, as the first of them.
    struct Column {
        std::size_t place = 0; ///< in Deck::lanes
        calc::LaneSet lanes;
        std::size_t takes = 0; ///< cells in a table of its own, where measured
        std::size_t needs = 0; ///< cells for its sets
    };

    [[nodiscard]] std::vector<Column> columns() const {
        std::vector<Column> columns;
        for (std::size_t place = 0; place < deck_.lanes.size(); ++place) {
            auto found = std::find_if(columns.begin(), columns.end(),
                                      [&](Column const& column) { return same_rows(column.place, place); });
            if (found == columns.end()) {
                found = columns.insert(found, Column{place, {}, 0, 0});
            }
            found->lanes.set(static_cast<std::size_t>(deck_.lanes[place].lane));
        }
        return columns;
    }

    [[nodiscard]] bool same_rows(std::size_t a, std::size_t b) const {
        return std::all_of(deck_.sections.begin(), deck_.sections.end(),
                           [&](DeckSection const& section) {
                               return std::all_of(
                                   section.rows.begin(), section.rows.end(), [&](DeckRow const& row) {
                                       return row.swum[a] == row.swum[b] && row.start[a] == row.start[b];
                                   });
                           }) &&
               deck_.clock.shown[a].takes == deck_.clock.shown[b].takes;
    }

    [[nodiscard]] std::string head(Column const& column) const {
        return lanes_label(column.lanes, style_.ascii);
    }

    void measure(std::vector<Column>& columns) const {
        for (auto& column : columns) {
            auto const alone = table({column});
            column.takes = alone.lanes_take();
            column.needs = alone.sets_need(least_set);
        }
    }

    /// The first so many may fit, by what each takes alone; more cannot, so their table is not even made:
    /// with a hundred lanes those would be by far the most work.
    [[nodiscard]] std::size_t most_together(std::vector<Column> const& columns) const {
        if (style_.width < side_by_side) {
            return 1;
        }
        std::size_t takes = 0;
        std::size_t needs = 0;
        std::size_t most = 0;
        for (auto const& column : columns) {
            takes += column.takes;
            needs = std::max(needs, column.needs);
            if (takes + needs > style_.width) {
                break;
            }
            ++most;
        }
        return std::max<std::size_t>(most, 1);
    }

    [[nodiscard]] DeckTable table(std::vector<Column> const& columns) const {
        std::vector<std::string> heads;
        std::vector<std::size_t> places;
        for (auto const& column : columns) {
            heads.push_back(columns.size() > 1 ? head(column) : "");
            places.push_back(column.place);
        }
        return {deck_blocks(deck_, places, style_.ascii),
                {std::move(heads), moments_head(deck_.clock), std::string{spell::symbol(deck_.pool.unit)}},
                style_.width};
    }

    void foot() {
        auto notes = clock_notes(deck_, style_.ascii);
        auto const rest_and_pace = this->rest_and_pace();
        notes.insert(notes.begin(), rest_and_pace.begin(), rest_and_pace.end());
        if (deck_.pool.kind == Pool::Kind::unsaid) {
            notes.push_back("no pool is named, so no lengths");
        }
        notes.insert(notes.end(), deck_.queue.begin(), deck_.queue.end());
        if (has_hand()) {
            notes.push_back("hand: the pace clock at each start, the set begun at 00");
        }
        std::erase(notes, "");
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

    /// On one line where there is room.
    [[nodiscard]] std::vector<std::string> rest_and_pace() const {
        auto const rest =
            deck_.rest ? "rest " + spell::spaced(*deck_.rest, style_.ascii) + " where a line has none" : "";
        auto const pace = clock_pace(deck_, style_.ascii);
        auto const both = rest + "; " + pace;
        bool const joined = !rest.empty() && !pace.empty() && cells(both) <= style_.width;
        return joined ? std::vector{both} : std::vector{rest, pace};
    }

    [[nodiscard]] bool has_hand() const {
        return std::ranges::any_of(deck_.sections, [](DeckSection const& section) {
            return std::ranges::any_of(section.rows, [](DeckRow const& row) { return !row.hand.empty(); });
        });
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
            auto const all = fold_parts(rows, ", ", std::numeric_limits<std::size_t>::max());
            line("send-offs and times to hold stay as written: look at " + all);
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
        return pool.has_length() && pool != deck_.pool
                   ? " for " + spell::distance(pool.length, pool.unit, style_.ascii)
                   : "";
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
