#include "cards/head.hpp"
#include "cards/wrap.hpp"

#include <string>

namespace lengthwise::cards {
namespace {

class FootWriter {
  public:
    FootWriter(Setting const& setting, Measure& measure)
        : setting_(setting), measure_(measure), small_(setting.scale.small_em()),
          base_(setting.size.height - safe_edge - fall_of_em * setting.scale.em()) {
        rule_ = base_ - rise_of_em * setting.scale.em() - rule_gap * setting.scale.capital;
        foot_.top = rule_ - heavy_rule / 2;
    }

    void caution(std::string const& text) {
        auto const pitch = small_pitch * setting_.scale.small();
        auto const lines = wrap(text, Weight::semibold, (setting_.right() - safe_edge) / small_, measure_);
        auto y = foot_.top - rule_gap * setting_.scale.capital - fall_of_em * small_ -
                 pitch * static_cast<double>(lines.size() - 1);
        foot_.top = y - rise_of_em * small_;
        for (auto const& line : lines) {
            put(safe_edge, y, line, Weight::semibold, small_, Anchor::left);
            y += pitch;
        }
    }

    /// Metres at the left, lengths at the right, between them the first wording that has room. Words give
    /// way to figures; a sum too wide to be large is small.
    void sums(std::string const& total, std::string const& lengths, report::Wordings const& middles) {
        auto const right = setting_.right();
        foot_.marks.emplace_back(Line{{safe_edge, rule_}, {right, rule_}, heavy_rule});
        auto const lengths_left = right - wide(lengths, Weight::semibold, small_);
        auto const air = 0.5 * small_;
        auto em = setting_.scale.em();
        em = safe_edge + wide(total, Weight::semibold, em) + air > lengths_left ? small_ : em;
        auto const total_end = safe_edge + wide(total, Weight::semibold, em);
        put(safe_edge, base_, total, Weight::semibold, em, Anchor::left);
        foot_.fits = total.empty() || total_end + air <= lengths_left;

        auto const label_left = lengths_left - wide("lengths ", Weight::medium, small_);
        bool const labelled = !lengths.empty() && label_left - air >= total_end;
        auto const end = labelled ? label_left : lengths_left;
        for (auto const& middle : middles) {
            auto const width = wide(middle, Weight::medium, small_);
            if (total_end + air + width + air <= end) {
                put((total_end + end - width) / 2, base_, middle, Weight::medium, small_, Anchor::left);
                break;
            }
        }
        if (labelled) {
            put(label_left, base_, "lengths", Weight::medium, small_, Anchor::left);
        }
        put(right, base_, lengths, Weight::semibold, small_, Anchor::right);
    }

    Foot finish() { return std::move(foot_); }

  private:
    double wide(std::string const& words, Weight weight, double em) {
        return measure_.width(words, weight) * em;
    }
    void put(double x, double y, std::string const& words, Weight weight, double em, Anchor anchor) {
        if (!words.empty()) {
            foot_.marks.emplace_back(Text{{x, y}, words, em, weight, anchor, wide(words, weight, em)});
        }
    }

    Setting const& setting_;
    Measure& measure_;
    double small_;
    double base_;
    double rule_ = 0;
    Foot foot_;
};

} // namespace

Foot foot_of(report::Card const& card, Share const& share, Setting const& setting, Measure& measure) {
    FootWriter writer{setting, measure};
    if (!setting.back && share.last() && !card.caution.empty()) {
        writer.caution(card.caution);
    }
    if (share.last()) {
        writer.sums(card.total, card.lengths, card.minutes);
    } else {
        auto const on = "on to " + std::to_string(share.number + 1) + "/" + std::to_string(share.of);
        writer.sums(share.total, share.lengths, {on});
    }
    return writer.finish();
}

} // namespace lengthwise::cards
