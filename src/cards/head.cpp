#include "cards/head.hpp"

#include "cards/wrap.hpp"

#include <algorithm>

namespace lengthwise::cards {
namespace {

constexpr double gap_of_title = 0.6; ///< em between a title and what stands at its right
constexpr double title_pitch = 1.45; ///< capitals between the lines of a long one

class HeadWriter {
  public:
    HeadWriter(Setting const& setting, Measure& measure) : setting_(setting), measure_(measure) {}

    void title(std::string const& title, std::string const& side) {
        auto const em = setting_.scale.em();
        auto const wide = measure_.width(side, Weight::semibold) * em;
        y_ += rise_of_em * em;
        auto room = right(y_ - setting_.scale.capital) - safe_edge;
        bool const beside = !side.empty() && wide < room * 0.6;
        auto const kept = beside ? wide + gap_of_title * em : 0;
        bool first = true;
        for (auto const& line : wrap(title, Weight::semibold, (room - kept) / em, measure_)) {
            y_ += first ? 0 : title_pitch * setting_.scale.capital;
            put(safe_edge, line, Weight::semibold, em, Anchor::left);
            if (first && beside) {
                put(right(y_ - setting_.scale.capital), side, Weight::semibold, em, Anchor::right);
            }
            first = false;
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
    writer.title(card.title, side);
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

Foot foot_of(report::Card const& card, Share const& share, Setting const& setting, Measure& measure) {
    auto const em = setting.scale.em();
    auto const small = setting.scale.small_em();
    auto const base = setting.size.height - safe_edge - fall_of_em * em;
    auto const right = setting.right();
    Foot foot;
    auto const wide = [&](std::string const& words, Weight weight, double size) {
        return measure.width(words, weight) * size;
    };
    auto const put = [&](double x, double y, std::string const& words, Weight weight, double size,
                         Anchor anchor) {
        if (!words.empty()) {
            foot.marks.emplace_back(Text{{x, y}, words, size, weight, anchor, wide(words, weight, size)});
        }
    };
    auto const rule = base - rise_of_em * em - rule_gap * setting.scale.capital;
    foot.top = rule - heavy_rule / 2;
    if (!setting.back && share.last() && !card.caution.empty()) {
        auto lines = wrap(card.caution, Weight::semibold, (right - safe_edge) / small, measure);
        auto y = foot.top - rule_gap * setting.scale.capital - fall_of_em * small -
                 small_pitch * setting.scale.small() * static_cast<double>(lines.size() - 1);
        foot.top = y - rise_of_em * small;
        for (auto const& line : lines) {
            put(safe_edge, y, line, Weight::semibold, small, Anchor::left);
            y += small_pitch * setting.scale.small();
        }
    }
    foot.marks.emplace_back(Line{{safe_edge, rule}, {right, rule}, heavy_rule});

    auto const& total = share.last() ? card.total : share.total;
    auto const& lengths = share.last() ? card.lengths : share.lengths;
    auto const total_end = safe_edge + wide(total, Weight::semibold, em);
    put(safe_edge, base, total, Weight::semibold, em, Anchor::left);
    auto const lengths_left = right - wide(lengths, Weight::semibold, small);
    std::string const label = "lengths";
    auto const label_left = lengths_left - wide("lengths ", Weight::medium, small);
    auto const air = 0.5 * small;
    bool const labelled = !lengths.empty() && label_left - air >= total_end;
    auto const end = labelled ? label_left : lengths.empty() ? right : lengths_left;

    auto const middles =
        share.last()
            ? card.minutes
            : report::Wordings{"on to " + std::to_string(share.number + 1) + "/" + std::to_string(share.of)};
    for (auto const& middle : middles) {
        auto const width = wide(middle, Weight::medium, small);
        if (total_end + air + width + air <= end) {
            put((total_end + end - width) / 2, base, middle, Weight::medium, small, Anchor::left);
            break;
        }
    }
    if (labelled) {
        put(label_left, base, label, Weight::medium, small, Anchor::left);
    }
    put(right, base, lengths, Weight::semibold, small, Anchor::right);
    return foot;
}

} // namespace lengthwise::cards
