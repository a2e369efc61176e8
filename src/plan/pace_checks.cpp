#include "plan/pace_checks.hpp"

#include "plan/pace_of.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cstdint>
#include <set>
#include <tuple>
#include <unordered_set>
#include <vector>

namespace lengthwise::plan {
namespace {

bool speeds_up(Manner const& manner) {
    return manner.effort.kind == Effort::Kind::word && manner.effort.shift < Duration{} &&
           manner.mode != Mode::tread;
}

class PaceCheck {
  public:
    explicit PaceCheck(Work& work) : work_(work), plan_(work.plan), lanes_(work.plan) {}

    void run() {
        for (auto const& session : plan_.sessions) {
            pool_ = session.pool;
            for (auto section = session.sections.first; section < session.sections.end(); ++section) {
                for (Item const& line : items_from(plan_, plan_.sections[section].body)) {
                    for (auto const* threshold : paces_of(session, line)) {
                        threshold_ = threshold;
                        visit(line);
                    }
                }
            }
        }
    }

  private:
    /// The different paces at which a line may be swum.
    std::vector<Threshold const*> paces_of(Session const& session, Item const& line) const {
        std::vector<int> lanes{0};
        if (line.has_lanes()) {
            lanes.clear();
            for (int lane = line.first_lane; lane <= line.last_lane; ++lane) {
                lanes.push_back(lane);
            }
        } else {
            lanes.insert(lanes.end(), lanes_.lanes().begin(), lanes_.lanes().end());
        }
        std::vector<Threshold const*> paces;
        for (int const lane : lanes) {
            auto const* const pace = pace_of(plan_, lanes_, session, lane);
            if (pace != nullptr && std::ranges::find(paces, pace) == paces.end()) {
                paces.push_back(pace);
            }
        }
        return paces;
    }

    void visit(Item const& item) {
        if (!item.is_swum()) {
            return;
        }
        auto const selections = plan_.terms[item.terms].selections;
        std::uint32_t chosen = 0;
        for (auto i = selections.first; i < selections.end(); ++i) {
            auto const& selection = plan_.selections[i];
            chosen += selection.count;
            item.is_leaf() ? reps(item, plan_.terms[selection.terms]) : inside(item, selection.body);
        }
        if (chosen < item.count) {
            item.is_leaf() ? reps(item, plan_.terms[item.terms]) : inside(item, item.body);
        }
    }

    /// What several places share is looked at once for each pool and pace.
    void inside(Item const& item, Index body) {
        if (body == no_index || !seen_.emplace(body, pool_, threshold_).second) {
            return;
        }
        if (item.kind == Item::Kind::use) {
            Report::Inside const in_set{work_.report, item.span};
            visit(plan_.items[body]);
            return;
        }
        for (Item const& inner : items_from(plan_, body)) {
            visit(inner);
        }
    }

    void reps(Item const& item, Terms const& terms) {
        if (terms.parts.empty()) {
            rep(item, terms.manner);
        }
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            rep(item, plan_.parts[i].manner);
        }
    }

    void rep(Item const& item, Manner const& manner) {
        auto const minus = Duration{} - manner.effort.shift;
        if (!speeds_up(manner) || !takes_all(*threshold_, plan_.pools[pool_], minus) ||
            !said_.insert(item.span.begin).second) {
            return;
        }
        work_.report.error(code::amount, item.span,
                           fmt::format("threshold minus {} leaves no pace: the threshold is {} per {}",
                                       spell::duration(minus), spell::clock(threshold_->time),
                                       spell::distance(threshold_->per, threshold_->per_unit)),
                           "take fewer seconds away", {{threshold_->span, "the threshold"}});
    }

    Work& work_;
    Plan const& plan_;
    LanePaces lanes_;
    Index pool_ = 0;
    Threshold const* threshold_ = nullptr;
    std::set<std::tuple<Index, Index, Threshold const*>> seen_;
    std::unordered_set<std::uint32_t> said_; ///< items, by where they begin
};

} // namespace

void check_paces(Work& work) {
    auto const speeds = [](auto const& place) { return speeds_up(place.manner); };
    if (std::ranges::any_of(work.plan.terms, speeds) || std::ranges::any_of(work.plan.parts, speeds)) {
        PaceCheck{work}.run();
    }
}

} // namespace lengthwise::plan
