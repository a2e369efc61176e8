#include "check/lapping.hpp"

#include "calc/lane_swimmers.hpp"
#include "check/seen.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include <fmt/core.h>

#include <cstdint>
#include <map>
#include <optional>
#include <unordered_set>
#include <utility>
#include <vector>

namespace lengthwise::check {

namespace {

/// The first and the last of a lane, fastest first. Of all pairs the first laps the last earliest.
struct Ends {
    plan::Index first = 0;
    plan::Index last = 0;
    Duration gap; ///< between them
};

struct Lapped {
    Ends ends;
    int lane = 0;
    calc::LaneRep rep;
    calc::Exact at;
};

class Lapping {
  public:
    explicit Lapping(Inquiry& inquiry) : inquiry_(inquiry), plan_(inquiry.plan) {
        std::map<int, int> counts;
        for (auto const& swimmer : plan_.swimmers) {
            if (swimmer.lane && swimmer.threshold && ++counts[*swimmer.lane] == 2) {
                lanes_.push_back(*swimmer.lane);
            }
        }
    }

    void judge() {
        Walk walk{plan_};
        for (plan::Index i = 0; i < plan_.sessions.size() && !lanes_.empty(); ++i) {
            auto const& session = plan_.sessions[i];
            if (plan_.pool_of(session).has_length() && !inquiry_.waived(session)) {
                for (int const lane : lanes_) {
                    judge(walk, i, lane);
                }
            }
        }
    }

  private:
    void judge(Walk& walk, plan::Index index, int lane) {
        auto const& session = plan_.sessions[index];
        Walk::View const view{reinterpret_cast<std::intptr_t>(&inquiry_.clock().pacing(index, lane)),
                              (std::int64_t{session.pool} << 8) + lane};
        auto const swum = [lane](plan::Item const& line) { return line.swum_by(lane); };
        walk.once(session, view, swum, [&](Met const& met) { look(met, index, lane); });
    }

    void look(Met const& met, plan::Index session, int lane) {
        if (!met.item.is_leaf() || said_.contains(met.item.span.begin)) {
            return;
        }
        if (auto const lapped = in_lane(met.item, session, lane)) {
            said_.insert(met.item.span.begin);
            say(met, *lapped);
        }
    }

    [[nodiscard]] std::optional<Lapped> in_lane(plan::Item const& item, plan::Index session, int lane) {
        auto const& pool = plan_.pool_of(plan_.sessions[session]);
        auto const& around = inquiry_.clock().pacing(session, lane);
        auto const ends = ends_of(lane, plan_.sessions[session].pool);
        for (auto const& rep : calc::lane_reps(plan_, static_cast<plan::Index>(&item - plan_.items.data()))) {
            if (rep.distance <= pool.length * 2) {
                continue;
            }
            auto const first = calc::swim_of(plan_, around, plan_.swimmers[ends.first], rep);
            auto const last = calc::swim_of(plan_, around, plan_.swimmers[ends.last], rep);
            auto const laps = first && last ? calc::laps(*first, *last, ends.gap, pool.length) : std::nullopt;
            if (laps) {
                return Lapped{ends, lane, rep, laps->first};
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] Ends ends_of(int lane, plan::Index pool) {
        auto const [known, is_new] = ends_.try_emplace({lane, pool});
        if (is_new) {
            auto const order = calc::lane_order(plan_, lane, plan_.pools[pool]);
            known->second = {order.front(), order.back(),
                             calc::usual_gap * (static_cast<std::int64_t>(order.size()) - 1)};
        }
        return known->second;
    }

    void say(Met const& met, Lapped const& lapped) {
        auto const& pool = plan_.pool_of(met.session);
        auto const unit = one(pool.unit);
        auto const at = unit * (lapped.at / calc::Exact{unit.units()}).rounded();
        inquiry_.warn(
            place(met.item),
            fmt::format("in lane {} {} laps {} at {} of {}", lapped.lane,
                        plan_.swimmers[lapped.ends.first].name, plan_.swimmers[lapped.ends.last].name,
                        said(at, pool), said(lapped.rep.distance, met.item.unit, pool)),
            "fastest first, 5 s apart; let them pass at the wall, or give them different lanes", used(met));
    }

    Inquiry& inquiry_;
    plan::Plan const& plan_;
    std::vector<int> lanes_; ///< with two swimmers or more that have a threshold
    std::map<std::pair<int, plan::Index>, Ends> ends_;
    std::unordered_set<std::uint32_t> said_; ///< where in the text
};

} // namespace

void judge_lapping(Inquiry& inquiry) {
    Lapping{inquiry}.judge();
}

} // namespace lengthwise::check
