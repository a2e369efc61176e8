#include "report/late_text.hpp"

#include "calc/fits.hpp"
#include "report/choose.hpp"
#include "report/late_table.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>
#include <vector>

namespace lengthwise::report {
namespace {

using tailor::Late;
using tailor::LateLine;
using tailor::LateWish;

constexpr std::size_t widest = 80;

std::string down(Duration time) {
    return spell::clock(Duration::seconds(time.ms() / Duration::seconds(1).ms()));
}

/// "0:29 over", "0:16 inside".
std::string beside(Duration end, Duration left) {
    return end > left ? late_second(end - left) + " over" : down(left - end) + " inside";
}

std::string joined(std::vector<std::string> const& parts) {
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        text += i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ";
        text += parts[i];
    }
    return text;
}

class LateWriter {
  public:
    LateWriter(plan::Plan const& plan, LateWish const& wish, Late const& late, LateStyle const& style,
               Paint const& paint)
        : plan_(plan), session_(plan.sessions[wish.session]), wish_(wish), late_(late), style_(style),
          paint_(paint) {
        style_.width = std::min(style_.width, widest);
    }

    std::string write() {
        line(head());
        text_ += LateTables{plan_, session_, late_, columns_, style_}.text(paint_);
        text_ += "\n";
        left_out();
        for (auto const& lanes : columns_) {
            over(lanes);
        }
        return std::move(text_);
    }

  private:
    void line(std::string_view text) { text_.append(fold(text, style_.width)).append("\n"); }

    [[nodiscard]] std::string head() const {
        auto const& pool = plan_.pool_of(session_);
        return fmt::format("{} left{}{}, times at the slow end", spell::clock(wish_.left),
                           wish_.after > 0 ? fmt::format(" after row {}", wish_.after) : "",
                           style_.moved ? ", in " + spell::distance(pool.length, pool.unit, style_.ascii)
                                        : "");
    }

    /// "left out: row 5 (with it 22:46 and 24:31) and "if time"". Figures are for choosing: where every
    /// lane is over as it is, there is nothing to choose.
    void left_out() {
        bool const choice = std::any_of(late_.lanes.begin(), late_.lanes.end(),
                                        [&](auto const& lane) { return lane.end.high <= wish_.left; });
        std::vector<std::string> parts;
        for (auto const& line : late_.lines) {
            if (line.left_out && line.number > 0) {
                auto const figures = choice ? with_it(line) : "";
                parts.push_back(fmt::format("row {}{}", line.number, figures));
            }
        }
        if (auto const optional = if_time(); !optional.empty()) {
            parts.push_back(optional);
        }
        if (!parts.empty()) {
            parts.front().insert(0, "left out: ");
            if (parts.size() > 1) { // the last two are read together
                auto const last = std::move(parts.back());
                parts.pop_back();
                parts.back() += " and " + last;
            }
            text_.append(fold_parts(parts, ", ", style_.width)).append("\n");
        } else if (choice) {
            line("nothing is left out");
        }
        alone();
    }

    /// What is said of the `if time` lines that are left out; nothing where there are none.
    [[nodiscard]] std::string if_time() const {
        bool out = false;
        bool stays = false;
        for (auto const& line : late_.lines) {
            bool const optional = plan_.items[line.item].optional;
            out |= optional && line.left_out;
            stays |= optional && !line.left_out;
        }
        return out ? stays ? "some \"if time\"" : "\"if time\"" : "";
    }

    /// Rows went from the end on, so a short one may be among them that would fit. Those of one lane
    /// fit one at a time; those that no lane shares do not get in each other's way.
    void alone() {
        std::vector<std::string> rows;
        std::vector<int> in_lane(late_.lanes.size());
        for (auto const& line : late_.lines) {
            bool any = false;
            bool fits = true;
            for (auto const& cell : line.lanes) {
                any |= cell.with_it.has_value();
                fits &= !cell.with_it || *cell.with_it <= wish_.left;
            }
            if (any && fits) {
                rows.push_back(fmt::format("row {}", line.number));
                for (std::size_t i = 0; i < in_lane.size(); ++i) {
                    in_lane[i] += line.lanes[i].with_it ? 1 : 0;
                }
            }
        }
        if (!rows.empty()) {
            bool const apart =
                std::all_of(in_lane.begin(), in_lane.end(), [](int count) { return count < 2; });
            line(fmt::format("{} {}: you choose", joined(rows),
                             rows.size() == 1 ? "alone fits"
                             : apart          ? "fit, each in its own lane"
                                              : "fit one at a time"));
        }
    }

    [[nodiscard]] std::string with_it(LateLine const& line) const {
        std::vector<std::string> figures;
        auto const& all = columns_;
        LateLanes swum_by;
        for (auto const& lanes : all) {
            if (auto const& with_it = line.lanes[lanes.front()].with_it) {
                figures.push_back(late_second(*with_it));
                swum_by.insert(swum_by.end(), lanes.begin(), lanes.end());
            }
        }
        if (figures.empty()) {
            return {};
        }
        auto const some =
            figures.size() < all.size() ? " in " + late_label(late_, swum_by, style_.ascii) : "";
        return fmt::format(" (with it {}{})", joined(figures), some);
    }

    /// What is still missing, and what is the coach's to choose.
    void over(LateLanes const& lanes) {
        auto const& lane = late_.lanes[lanes.front()];
        if (lane.end.high <= wish_.left) {
            return;
        }
        auto const whose = late_label(late_, lanes, style_.ascii);
        line(fmt::format("{}{} at the slow end, expected {}{}", whose.empty() ? "" : whose + ": ",
                         beside(lane.end.high, wish_.left), beside(lane.end.expected, wish_.left),
                         lane.shorter ? ";" : ""));
        if (lane.shorter) {
            line(cut_short(*lane.shorter, whose.empty() ? "" : " there"));
        }
    }

    [[nodiscard]] std::string cut_short(tailor::ShorterRep const& cut, std::string_view there) const {
        auto const unit = plan_.pool_of(session_).unit;
        auto const race = plan_.race ? plan_.race->distance : Distance{};
        bool const was_race_rep = !race.zero() && cut.written >= race && cut.rep < race;
        return fmt::format("{}{} ends at {}{}: you choose", spell::distance(cut.rep, unit, style_.ascii),
                           there, late_second(cut.end), was_race_rep ? ", but is no race rep" : "");
    }

    plan::Plan const& plan_;
    plan::Session const& session_;
    LateWish const& wish_;
    Late const& late_;
    LateStyle style_;
    Paint const& paint_;
    std::vector<LateLanes> columns_ = late_columns(late_); ///< once: every row that is left out asks for them
    std::string text_;
};

/// The slowest threshold at which all that is left would fit, in the lanes that have none.
std::optional<Duration> slowest_fitting(plan::Plan const& plan, LateWish wish, Late const& late) {
    std::optional<Duration> slowest;
    for (auto const& lane : late.lanes) {
        wish.lane = lane.lane;
        auto const left = tailor::left_to_swim(plan, wish);
        auto const fits = calc::slowest_fitting(left, wish.session, wish.left);
        if (!fits) {
            return std::nullopt;
        }
        slowest = std::min(slowest.value_or(*fits), *fits);
    }
    return slowest;
}

std::string no_pace(plan::Plan const& plan, LateWish const& wish, Late const& late, bool ascii) {
    calc::LaneSet lanes;
    for (auto const& lane : late.lanes) {
        lanes.set(static_cast<std::size_t>(lane.lane));
    }
    auto const unit = plan.pool_of(plan.sessions[wish.session]).unit;
    return fmt::format("no threshold{}, so no times\n"
                       "      = a line in the file gives them: threshold 2:00 per 100{}\n"
                       "      = all that is left {}",
                       lanes.test(0) ? "" : " for " + lanes_label(lanes, ascii), spell::symbol(unit),
                       fits_text(wish.left, slowest_fitting(plan, wish, late), unit));
}

} // namespace

std::string late_text(plan::Plan const& plan, LateWish const& wish, Late const& late, LateStyle const& style,
                      Paint const& paint) {
    return LateWriter{plan, wish, late, style, paint}.write();
}

std::string late_problem(plan::Plan const& plan, LateWish const& wish, Late const& late, bool ascii) {
    switch (late.problem) {
    case Late::Problem::no_such_row:
        return late.rows == 0 ? "the session has no rows"
                              : fmt::format("no row {}; the session has rows 1 to {}", wish.after, late.rows);
    case Late::Problem::nothing_left:
        return wish.after == 0
                   ? std::string{"there is nothing to swim in this session"}
                   : fmt::format("nothing is left to swim{} behind row {}",
                                 wish.lane ? fmt::format(" in lane {}", *wish.lane) : "", wish.after);
    case Late::Problem::no_pace:
        return no_pace(plan, wish, late, ascii);
    case Late::Problem::none:
        break;
    }
    return {};
}

} // namespace lengthwise::report
