#include "report/session_view.hpp"

#include "calc/kit.hpp"
#include "grammar/words.hpp"
#include "report/deck_clock.hpp"
#include "report/line_speller.hpp"
#include "report/tally_parts.hpp"

#include <algorithm>

namespace lengthwise::report {
namespace {

using plan::Item;

class ViewMaker {
  public:
    ViewMaker(Summary& summary, plan::Index session)
        : summary_(summary), plan_(summary.plan()), session_(plan_.sessions[session]), index_(session),
          speller_(plan_, session_), kit_(summary.kit()) {}

    SessionView make() {
        view_.session = index_;
        lanes();
        for (auto i = session_.sections.first; i < session_.sections.end(); ++i) {
            view_.sections.push_back({i, speller_.heading(plan_.sections[i]), {}});
            lines(plan_.sections[i]);
        }
        for (int gear = 0; gear < gear_words; ++gear) {
            if (kit_.kit().has(static_cast<Gear>(gear))) {
                view_.kit.emplace_back(spelling(word_of(static_cast<Gear>(gear))));
            }
        }
        return std::move(view_);
    }

  private:
    void lanes() {
        auto const& tally = summary_.session(index_);
        auto& clock = summary_.clock();
        bool const too_long = clock.passes_limit(index_).has_value();
        for (int const number : lanes_shown(tally)) {
            ViewLane lane{.lane = number, .swum = tally.swum(number), .if_time = tally.if_time(number)};
            lane.timed_as = timed_as(plan_, clock, index_, number);
            if (auto const* const pace = clock.pacing(index_, lane.timed_as).threshold()) {
                lane.threshold = *pace;
            }
            if (!too_long) {
                lane.takes = clock.session(index_, lane.timed_as).total();
            }
            view_.lines.push_back(too_long ? std::vector<calc::LineTimes>{}
                                           : clock.lines(index_, lane.timed_as));
            view_.lanes.push_back(lane);
        }
    }

    void lines(plan::Section const& section) {
        auto const items = plan::items_from(plan_, section.body);
        for (auto item = items.begin(); item != items.end(); ++item) {
            row_ += (*item).is_swum() && !(*item).optional ? 1 : 0;
            std::vector<bool> swum;
            for (auto const& lane : view_.lanes) {
                swum.push_back((*item).swum_by(lane.lane));
            }
            if (std::ranges::find(swum, true) != swum.end()) {
                line(*item, item.index(), std::move(swum));
            }
        }
    }

    void line(Item const& item, plan::Index index, std::vector<bool> swum) {
        ViewLine line{.kind = kind_of(item), .item = index, .set = speller_.notation(item)};
        line.row = line.kind == ViewLine::Kind::swum ? row_ : 0;
        line.swum = std::move(swum);
        if (line.swims()) {
            line.totals = summary_.totals_of(index_, item);
            kit_.add(item);
        }
        view_.sections.back().lines.push_back(std::move(line));
    }

    static ViewLine::Kind kind_of(Item const& item) {
        if (item.is_swum()) {
            return item.optional ? ViewLine::Kind::optional : ViewLine::Kind::swum;
        }
        return item.kind == Item::Kind::pause ? ViewLine::Kind::pause : ViewLine::Kind::note;
    }

    Summary& summary_;
    plan::Plan const& plan_;
    plan::Session const& session_;
    plan::Index index_;
    LineSpeller speller_;
    calc::KitReader& kit_;
    SessionView view_;
    int row_ = 0;
};

} // namespace

SessionView session_view(Summary& summary, plan::Index session) {
    return ViewMaker{summary, session}.make();
}

ViewTimes SessionView::times(std::size_t place, ViewLine const& line) const {
    auto const found = std::ranges::lower_bound(lines[place], line.item, {}, &calc::LineTimes::item);
    bool const there = found != lines[place].end() && found->item == line.item;
    return there ? ViewTimes{found->start, found->end} : ViewTimes{};
}

std::optional<Duration> longest_time(SessionView const& view) {
    Duration longest;
    for (auto const& lane : view.lanes) {
        if (!lane.takes) {
            return std::nullopt;
        }
        longest = std::max(longest, lane.takes->high);
    }
    return longest;
}

} // namespace lengthwise::report
