#include "cards/head.hpp"

#include "cards/wrap.hpp"

#include <algorithm>

namespace lengthwise::cards {
namespace {

constexpr double gap_of_title = 0.6; ///< em between a title and what stands at its right
constexpr double widest_side = 0.6;  ///< of the room, and no more is given to it
constexpr double title_pitch = 1.45; ///< capitals between the lines of a long one

class HeadWriter {
  public:
    HeadWriter(Setting const& setting, Measure& measure) : setting_(setting), measure_(measure) {}

    /// With `side` beside it, or below where the title then takes less.
    void title(std::string const& title, std::string const& side, bool whole) {
        auto const em = setting_.scale.em();
        auto const wide = side.empty() ? 0 : (measure_.width(side, Weight::semibold) + gap_of_title) * em;
        y_ += rise_of_em * em;
        auto const edge = right(y_ - setting_.scale.capital);
        auto const room = edge - safe_edge;
        auto lines = wrap(title, Weight::semibold, (room - wide) / em, measure_);
        bool beside = wide < room * widest_side;
        if (!side.empty()) {
            auto alone = wrap(title, Weight::semibold, room / em, measure_);
            beside = beside && (!whole || lines.size() <= alone.size());
            if (!beside) {
                lines = std::move(alone);
            }
        }
        if (!whole && lines.size() > 1) {
            lines = {shortened(lines.front(), (beside ? room - wide : room) / em)};
        }
        for (std::size_t i = 0; i < lines.size(); ++i) {
            y_ += i > 0 ? title_pitch * setting_.scale.capital : 0;
            put(safe_edge, lines[i], Weight::semibold, em, Anchor::left);
            if (i == 0 && beside && !side.empty()) {
                put(edge, side, Weight::semibold, em, Anchor::right);
            }
        }
        if (!side.empty() && !beside) {
            small_lines(side, Weight::semibold);
        }
    }

    /// The fullest wording that fits on a line, else the last one on several.
    void wording(report::Wordings const& wordings) {
        for (auto const& words : wordings) {
            auto const at = next_small();
            if (measure_.width(words, Weight::medium) * setting_.scale.small_em() <=
                right(at - setting_.scale.small()) - safe_edge) {
                small_lines(words, Weight::medium);
                return;
            }
        }
        if (!wordings.empty()) {
            small_lines(wordings.back(), Weight::medium);
        }
    }

    void small_lines(std::string const& text, Weight weight) {
        auto const em = setting_.scale.small_em();
        auto const room = right(next_small() - setting_.scale.small()) - safe_edge;
        for (auto const& line : wrap(text, weight, room / em, measure_)) {
            y_ = next_small();
            put(safe_edge, line, weight, em, Anchor::left);
        }
    }

    Head finish() {
        y_ += fall_of_em * setting_.scale.small_em() + rule_gap * setting_.scale.capital;
        y_ = setting_.hole ? std::max(y_, hole_depth + heavy_rule / 2) : y_;
        head_.marks.emplace_back(Line{{safe_edge, y_}, {setting_.right(), y_}, heavy_rule});
        head_.bottom = y_ + heavy_rule / 2;
        return std::move(head_);
    }

  private:
    /// How far a line reaches whose letters begin at `top`.
    [[nodiscard]] double right(double top) const {
        return setting_.hole && top < hole_depth ? setting_.size.width - hole_room : setting_.right();
    }
    [[nodiscard]] double next_small() const { return y_ + small_pitch * setting_.scale.small(); }

    /// What fits of a name that the card before has in full.
    std::string shortened(std::string line, double room) {
        auto const short_of = [&] { return measure_.width(line + "…", Weight::semibold) > room; };
        while (short_of() && line.rfind(' ') != std::string::npos) {
            line.erase(line.rfind(' '));
        }
        return short_of() ? line : line + "…";
    }

    void put(double x, std::string const& words, Weight weight, double em, Anchor anchor) {
        head_.marks.emplace_back(
            Text{{x, y_}, words, em, weight, anchor, measure_.width(words, weight) * em});
    }

    Setting const& setting_;
    Measure& measure_;
    Head head_;
    double y_ = safe_edge;
};

} // namespace

Head head_of(report::Card const& card, Share const& share, Setting const& setting, Measure& measure) {
    HeadWriter writer{setting, measure};
    auto side = card.whose;
    if (share.of > 1) {
        side += (side.empty() ? "" : " · ") + share.label();
    }
    writer.title(card.title, side, share.first());
    if (!card.when.empty() && !card.when.front().empty()) {
        writer.wording(card.when);
    }
    if (!share.first()) {
        if (!share.so_far.empty()) {
            auto const from = "from " + std::to_string(share.number - 1) + "/" + std::to_string(share.of) +
                              ": " + share.so_far;
            auto const lengths = share.lengths_so_far.empty() ? "" : ", " + share.lengths_so_far + " lengths";
            writer.wording({from + lengths, from});
        }
        return writer.finish();
    }
    if (setting.level.third_line) {
        writer.wording(card.facts);
        writer.small_lines(card.people, Weight::medium);
    }
    return writer.finish();
}

} // namespace lengthwise::cards
