#include "cards/trial.hpp"

#include "cards/head.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::cards {
namespace {

Share share_of(Trial const& trial, std::size_t index) {
    Share share{index + 1, trial.starts.size(), {}, {}, {}, {}};
    auto const& lines = trial.body.lines;
    if (auto const* const before = index > 0 ? lines[trial.starts[index]].swum_before : nullptr) {
        share.so_far = before->so_far;
        share.lengths_so_far = before->lengths_so_far;
    }
    if (auto const* const swum =
            index + 1 < trial.starts.size() ? lines[trial.starts[index + 1]].swum_before : nullptr) {
        share.total = swum->so_far;
        share.lengths = swum->lengths_so_far;
    }
    return share;
}

void write(BodyLine const& line, double y, std::vector<Mark>& marks) {
    for (auto text : line.texts) {
        text.at.y += y;
        marks.emplace_back(std::move(text));
    }
}

/// Gives whether the longest rep is among them.
bool draw_lines(report::Card const& card, Trial const& trial, std::size_t first, std::size_t end, double y,
                Measure& measure, std::vector<Mark>& marks) {
    auto const& lines = trial.body.lines;
    auto const& setting = trial.setting;
    bool strip = false;
    if (first < end && goes_on(lines, first)) {
        auto const heading = continued(card, lines[first], setting, measure);
        y += heading.rise;
        write(heading, y, marks);
        y += lines[first].advance;
    } else if (first < end) {
        y += lines[first].rise;
    }
    std::vector<double> tops(trial.body.bars.size(), 0);
    std::vector<double> bottoms(trial.body.bars.size(), 0);
    for (auto i = first; i < end; ++i) {
        auto const& line = lines[i];
        y += i > first ? line.advance : 0;
        if (line.rule > 0 && i > first) {
            marks.emplace_back(Line{{safe_edge, y - line.rule}, {setting.right(), y - line.rule}, hair_rule});
        }
        write(line, y, marks);
        auto const capital = line.of_set ? setting.scale.capital : setting.scale.small();
        for (auto const bar : line.bars) {
            tops[bar] = tops[bar] > 0 ? tops[bar] : y - capital;
            bottoms[bar] = y + line.fall * 0.6;
        }
        strip = strip || line.strip;
    }
    for (std::size_t i = 0; i < tops.size(); ++i) {
        if (tops[i] > 0) {
            auto const& bar = trial.body.bars[i];
            auto const x = bar.x + bar.width / 2;
            marks.emplace_back(Line{{x, tops[i]}, {x, bottoms[i]}, bar.width});
        }
    }
    return strip;
}

} // namespace

Picture draw_card(report::Card const& card, Trial const& trial, std::size_t index, Measure& measure) {
    auto const& setting = trial.setting;
    auto const share = share_of(trial, index);
    auto head = head_of(card, share, setting, measure);
    auto foot = foot_of(card, share, setting, measure);
    Picture picture{setting.size, std::move(head.marks)};
    auto const end = index + 1 < trial.starts.size() ? trial.starts[index + 1] : trial.lines();
    bool const strip = draw_lines(card, trial, trial.starts[index], end, head.bottom + trial.rooms.top,
                                  measure, picture.marks);
    if (strip && trial.strip) {
        auto grown = *trial.strip;
        auto const used = height_of(trial.body.lines, trial.starts[index], end, trial.rooms);
        auto const room = foot.top - rule_gap * setting.scale.capital - head.bottom;
        auto const each = (room - used) / static_cast<double>(grown.row_ends.size());
        grown.cell_height = std::clamp(grown.cell_height + each, grown.cell_height, grown.most_height);
        auto const y = foot.top - strip_gap(setting) - grown.height();
        draw(grown, y, setting, measure, picture.marks);
    }
    picture.marks.insert(picture.marks.end(), foot.marks.begin(), foot.marks.end());
    frame(picture, setting.hole, false);
    return picture;
}

} // namespace lengthwise::cards
