#include "cards/card.hpp"

#include "cards/body.hpp"
#include "cards/flow.hpp"
#include "cards/head.hpp"
#include "cards/strip.hpp"
#include "cards/trial.hpp"

#include <algorithm>
#include <optional>

namespace lengthwise::cards {
namespace {

constexpr int steps_of_type = 20;
/// A strip that would fill more of a card than this is left out.
constexpr double strip_share = 0.55;

class Layout {
  public:
    Layout(report::Card const& card, Wanted const& wanted, Measure& measure)
        : card_(card), wanted_(wanted), measure_(measure), floor_(height_of_arc(wanted.distance, set_arc)) {
        for (auto const& section : card.sections) {
            for (auto const& row : section.rows) {
                take_wider(widest_so_far_, row.so_far);
                take_wider(widest_lengths_, row.lengths_so_far);
            }
        }
    }

    Laid lay_out() {
        Laid laid;
        auto best = at_floor(laid.level);
        if (best.cards() > most_cards || !inside(best)) {
            laid.problem = best.cards() > most_cards ? "does not fit" : "is too wide for";
            return laid;
        }
        best = with_clocks(std::move(best));
        if (laid.level == 0) {
            best = grown(std::move(best));
        }
        best = opened(std::move(best));
        laid.scale = best.setting.scale;
        laid.strip = best.strip;
        for (std::size_t i = 0; i < best.starts.size(); ++i) {
            laid.fronts.push_back(draw_card(card_, best, i, measure_));
        }
        return laid;
    }

  private:
    void take_wider(std::string& known, std::string const& words) {
        if (measure_.width(words, Weight::medium) > measure_.width(known, Weight::medium)) {
            known = words;
        }
    }

    Trial attempt(Setting const& setting) {
        Trial trial{setting, body_of(card_, setting, measure_), {}, {}, {}, 0, true};
        for (std::size_t const most : {std::size_t{9}, most_cards}) { // as wide as "8/9", or "98/99"
            measure_rooms(trial, most);
            trial.starts = flow(trial.body.lines, trial.rooms);
            if (trial.starts.size() <= most) {
                break;
            }
        }
        return trial;
    }

    void measure_rooms(Trial& trial, std::size_t most) {
        auto const& setting = trial.setting;
        auto const room = [&](Share const& share) {
            auto const head = head_of(card_, share, setting, measure_);
            auto const foot = foot_of(card_, share, setting, measure_);
            trial.head_lines += head.marks.size();
            trial.sums_fit = trial.sums_fit && foot.fits;
            return foot.top - rule_gap * setting.scale.capital - head.bottom;
        };
        auto& rooms = trial.rooms;
        Share const on{most - 1, most, widest_so_far_, widest_lengths_, widest_so_far_, widest_lengths_};
        trial.head_lines = 0;
        trial.sums_fit = true;
        rooms.alone = room({});
        rooms.first = room({1, most});
        rooms.middle = room(on);
        rooms.last = room({most, most, widest_so_far_, widest_lengths_, {}, {}});
        rooms.top = rule_gap * setting.scale.capital;
        rooms.heading = rise_of_em * setting.scale.small_em();
        if (card_.strip) {
            auto strip = strip_of(*card_.strip, setting, measure_);
            if (strip.columns > 0 && strip.height() < strip_share * rooms.middle) {
                rooms.strip = strip.height() + strip_gap(setting);
                trial.strip = std::move(strip);
            }
        }
    }

    Setting setting(double capital, Level const& level) const {
        return {wanted_.size, {capital}, level, wanted_.hole, false, wanted_.back};
    }

    /// The first thing to give up that saves a card is given up.
    Trial at_floor(std::size_t& level) {
        auto best = attempt(setting(floor_, levels[0]));
        level = 0;
        for (std::size_t i = 1; i < levels.size() && best.cards() > 1; ++i) {
            auto trial = attempt(setting(floor_, levels[i]));
            if (trial.cards() < best.cards() || (!inside(best) && inside(trial))) {
                best = std::move(trial);
                level = i;
            }
        }
        return best;
    }

    /// No text reaches beyond the edges; long figures on a very small card might.
    static bool inside(Trial const& trial) {
        auto const& lines = trial.body.lines;
        return trial.sums_fit && std::all_of(lines.begin(), lines.end(), [&](BodyLine const& line) {
                   return std::all_of(line.texts.begin(), line.texts.end(), [&](Text const& text) {
                       return text.left() > safe_edge - 0.01 && text.right() < trial.setting.right() + 0.01;
                   });
               });
    }

    [[nodiscard]] bool timed() const {
        return std::any_of(
            card_.sections.begin(), card_.sections.end(), [](report::CardSection const& section) {
                return std::any_of(section.rows.begin(), section.rows.end(),
                                   [](report::CardRow const& row) { return !row.clock.empty(); });
            });
    }

    /// Leave times stand before each line where no line breaks for them.
    Trial with_clocks(Trial plain) {
        if (!timed()) {
            return plain;
        }
        auto setting = plain.setting;
        setting.clock_column = true;
        auto trial = attempt(setting);
        return as_good(trial, plain) ? trial : plain;
    }

    static bool as_good(Trial const& trial, Trial const& than) {
        return trial.cards() == than.cards() && !trial.breaks_more_than(than) &&
               trial.body.halves == than.body.halves && trial.strip.has_value() == than.strip.has_value() &&
               inside(trial);
    }

    /// The largest type with which no line breaks and no card is added.
    Trial grown(Trial best) {
        auto const largest = height_of_arc(wanted_.distance, largest_arc);
        int low = 0;
        int high = steps_of_type;
        while (low < high) {
            auto const middle = (low + high + 1) / 2;
            auto setting = best.setting;
            setting.scale.capital = floor_ + (largest - floor_) * middle / steps_of_type;
            auto trial = attempt(setting);
            if (as_good(trial, best)) {
                best = std::move(trial);
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return best;
    }

    /// What room is left goes between the lines, then into the strip.
    Trial opened(Trial best) {
        for (double pitch = largest_pitch; pitch > best.setting.level.pitch + 0.01; pitch -= 0.05) {
            auto setting = best.setting;
            setting.level.pitch = pitch;
            auto trial = attempt(setting);
            if (as_good(trial, best)) {
                return trial;
            }
        }
        return best;
    }

    report::Card const& card_;
    Wanted const& wanted_;
    Measure& measure_;
    double floor_;
    std::string widest_so_far_;
    std::string widest_lengths_;
};

} // namespace

Laid lay_out(report::Card const& card, Wanted const& wanted, Measure& measure) {
    return Layout{card, wanted, measure}.lay_out();
}

} // namespace lengthwise::cards
