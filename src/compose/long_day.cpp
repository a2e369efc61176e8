#include "compose/long_day.hpp"

#include "compose/amounts.hpp"
#include "compose/fit.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <utility>

namespace lengthwise::compose {

namespace {

constexpr int rest_after_long = 60; ///< s

constexpr std::array<std::string_view, 4> advice{
    "first quarter slower than you want", "breathe out long, count laps in fours",
    "every 100 a check: long arm, loose legs", "hurried? Slow down for one lap"};

struct LongRep {
    std::string title;
    Manner manner;
    std::string note;
};

LongRep held_rep(Place const& place, std::string const& size) {
    if (place.build % 2 == 1) {
        return {size + ", second half stronger", crawl(steady(place), Shape::negative_split), {}};
    }
    return {size + ", every quarter alike", crawl(steady(place)), "every quarter in the same time"};
}

LongRep long_rep(Place const& place) {
    auto const size = amount(place.pool, place.rep);
    if (place.kind == WeekKind::taper) {
        return {size + " at race rhythm", crawl(Effort::steady), "race rhythm, calm start"};
    }
    if (is_easy(place)) {
        return {"Easy " + size, crawl(Effort::easy), "last lap as neat as the first"};
    }
    if (place.whole) {
        return {size + " in one go", crawl(Effort::easy), "the whole distance: slow first quarter"};
    }
    if (place.held) {
        return held_rep(place, size);
    }
    auto const effort = place.stage == 2 ? Effort::steady : Effort::easy;
    return {size + " in one go", crawl(effort),
            std::string{advice[static_cast<std::size_t>((place.build - 1) % 4)]}};
}

/// Reps of a lap are the longest there are.
MainSet lap_by_lap(Place const& place, Laps laps) {
    MainSet main{.title = "Lap by lap", .spare = laps};
    auto builds = turn(place) % 2 == 0;
    for (auto const& row : rows(laps, 1)) {
        main.lines.push_back(reps(row.count, 1, builds ? crawl_build() : crawl(Effort::easy), rest_at(1)));
        main.spare -= row.count;
        builds = !builds;
    }
    return main;
}

/// What is left behind the long rep, as it is filled.
class Filler {
  public:
    Filler(Place const& place, Laps laps) : place_(place), left_(laps) {}

    void lead_in() {
        auto const asked = place_.build % 2 == 0 || place_.held;
        if (place_.kind == WeekKind::build && asked && left_ >= 4 && left_ <= 12) {
            auto const count = left_ >= 8 ? 4 : 2;
            before_.push_back(reps(count, 1, crawl_build(), rest_at(1)));
            left_ -= count;
        }
    }

    void taper() {
        if (left_ < 2) {
            return;
        }
        auto const quick = std::min(left_, 4);
        FitTerms const terms{.most = 12, .spare = 2};
        auto found = fit(left_ - quick, place_.rep / 2, 2, terms);
        found = found ? found : fit(left_ - quick, place_.rep, 2, terms);
        if (!found && left_ - quick > 2) {
            fill_rows();
            return;
        }
        add(Fit{quick, 1, 0}, crawl_build());
        add(found, choice(Effort::easy));
    }

    void fill() {
        if (left_ > 12) {
            fill_much();
        } else if (left_ > 1) {
            auto const found = fit(left_, longest(), wish(), {.most = 12});
            left_ -= found ? found->count * found->size : 0;
            behind_.push_back(dressed(*found));
        }
    }

    [[nodiscard]] MainSet with(LongRep rep) && {
        MainSet main{.title = std::move(rep.title), .lines = std::move(before_), .spare = left_};
        auto const more = !behind_.empty();
        main.lines.push_back(
            reps(1, place_.rep, rep.manner, more ? rest_after_long : 0, std::move(rep.note)));
        std::ranges::move(behind_, std::back_inserter(main.lines));
        return main;
    }

  private:
    [[nodiscard]] Laps longest() const { return std::max(1, place_.rep / 2); }

    [[nodiscard]] Laps wish() const {
        auto const turn = place_.build % 4;
        return left_ < 4 || turn == 1 ? 1 : turn == 2 ? place_.rep / 3 : hundred(place_);
    }

    void add(std::optional<Fit> found, Manner manner) {
        if (found) {
            behind_.push_back(reps(found->count, found->size, manner, rest_at(1)));
            left_ -= found->count * found->size;
        }
    }

    /// Reps, and then laps that build, as few as they may be. Where the reps would be too many they are
    /// longer.
    void fill_much() {
        auto const pulled = place_.build % 2 == 0 && place_.kit.buoy;
        auto const manner = pulled ? pull() : crawl(steady(place_));
        auto const near = std::clamp(place_.rep / 3, 2, 4);
        for (auto const most : {longest(), std::max(1, place_.rep - 1)}) {
            for (auto const builds : {4, 6, 8, 10, 12}) {
                if (auto const found = fit(left_ - builds, most, near, {.most = 12})) {
                    add(found, manner);
                    add(Fit{builds, 1, 0}, crawl_build());
                    return;
                }
            }
        }
        fill_rows();
    }

    /// A day far longer than its rep.
    void fill_rows() {
        auto manner = choice(Effort::easy);
        for (auto const& row : rows(left_, place_.rep)) {
            add(row, manner);
            manner = manner.shape == Shape::build ? choice(Effort::easy) : crawl_build();
        }
    }

    [[nodiscard]] Line dressed(Fit const& found) const {
        auto line = reps(found.count, found.size, crawl(steady(place_)), rest_at(1));
        auto const turn = place_.build % 4;
        auto const much = found.count * found.size >= 4 && place_.kit.buoy;
        if (is_easy(place_)) {
            line.reps.front().manner = place_.build % 2 == 0 && much ? pull() : choice(Effort::easy);
        } else if (turn == 0 && found.count >= 3 && hard(place_) != steady(place_)) {
            pattern(line, Pattern::last, steady(place_), hard(place_));
        } else if (turn == 1 && found.count >= 4 && found.count % 2 == 0) {
            pattern(line, Pattern::odds_and_evens, Effort::easy, Effort::steady);
        } else if (turn == 2 && much) {
            line.reps.front().manner = pull();
        } else if (turn == 3 && (found.count == 3 || found.count == 4)) {
            line.reps.front().manner = crawl();
            line.descend = found.count;
        } else if (found.size == 1 && before_.empty()) {
            line.reps.front().manner = crawl_build();
        }
        return line;
    }

    static void pattern(Line& line, Pattern pattern, Effort most, Effort some) {
        line.reps.front().manner = crawl();
        line.pattern = pattern;
        line.odds = most;
        line.evens = some;
    }

    Place const& place_;
    Laps left_;
    std::vector<Line> before_;
    std::vector<Line> behind_;
};

} // namespace

MainSet main_of_long_day(Place const& place, Laps laps) {
    if (place.rep == 1) {
        return lap_by_lap(place, laps);
    }
    Filler filler{place, laps - place.rep};
    if (place.kind == WeekKind::taper) {
        filler.taper();
    } else {
        filler.lead_in();
        filler.fill();
    }
    return std::move(filler).with(long_rep(place));
}

} // namespace lengthwise::compose
