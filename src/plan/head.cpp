#include "plan/head.hpp"

#include "plan/amounts.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::Node;
using grammar::Tree;

/// Race distances, shortest first, in the order of RaceKind. Source: World Triathlon
/// Competition Rules (super-sprint to standard); middle and long: common practice, no single rule book.
constexpr std::array<std::pair<RaceKind, Distance>, 5> race_distances{{
    {RaceKind::super_sprint, Distance::metres(400)},
    {RaceKind::sprint, Distance::metres(750)},
    {RaceKind::standard, Distance::metres(1500)},
    {RaceKind::middle, Distance::metres(1900)},
    {RaceKind::long_course, Distance::metres(3800)},
}};

class Head {
  public:
    Head(Work& work, Tree const& tree, Scope const& scope)
        : work_(work), tree_(tree), pool_(work.plan.pools[scope.pool]) {}

    void read() {
        for (std::uint32_t i = 0; i < tree_.size(); i = tree_.next(i)) {
            switch (tree_.nodes[i].kind) {
            case Kind::plan:
                read_name(i);
                break;
            case Kind::race:
                read_race(i);
                break;
            case Kind::before:
                read_before(i);
                break;
            case Kind::swimmer:
                read_swimmer(i);
                break;
            case Kind::week:
            case Kind::session:
                return;
            default:
                break;
            }
        }
    }

  private:
    bool twice(Span first, Span again, std::string_view what) {
        work_.report.error(code::twice, again, fmt::format("{} stands twice", what), "keep one",
                           {{first, "the first stands here"}});
        return true;
    }

    void read_name(std::uint32_t i) {
        if (i + 1 < tree_.size() && tree_.nodes[i + 1].kind == Kind::name) {
            work_.plan.name = work_.text_of(tree_, i + 1);
            work_.plan.span = tree_.span(i + 1);
        }
    }

    void read_race(std::uint32_t node) {
        if (work_.plan.race) {
            twice(work_.plan.race->span, tree_.span(node), "race");
            return;
        }
        Race race;
        race.span = tree_.span(node);
        for (auto i = node + 1; i < tree_.next(node); ++i) {
            auto const& part = tree_.nodes[i];
            if (part.kind == Kind::name) {
                race.name = work_.text_of(tree_, i);
            } else if (part.kind == Kind::race_kind) {
                race.kind = race_of(part.as_word());
                race.distance = race_distances[static_cast<std::size_t>(*race.kind)].second;
            } else if (part.kind == Kind::race_distance) {
                race.distance = distance_with_unit(work_.report, part).value_or(Distance{});
                race.unit = part.unit() == grammar::WrittenUnit::yards ? Unit::yard : Unit::metre;
            } else if (part.kind == Kind::date) {
                race.on = date_of(part);
            }
        }
        work_.plan.race = race;
    }

    void read_before(std::uint32_t node) {
        if (work_.plan.before) {
            twice(work_.plan.before->span, tree_.span(node), "before");
            return;
        }
        Before before;
        before.span = tree_.span(node);
        for (auto i = node + 1; i < tree_.next(node); ++i) {
            auto const distance = distance_in(work_.report, pool_, tree_.nodes[i]);
            if (tree_.nodes[i].kind == Kind::before_week) {
                before.week = distance;
            } else {
                before.longest = distance.value_or(Distance{});
            }
        }
        work_.plan.before = before;
    }

    void read_swimmer(std::uint32_t node) {
        Swimmer swimmer;
        swimmer.span = tree_.span(node);
        for (auto i = node + 1; i < tree_.next(node); i = tree_.next(i)) {
            read_field(i, swimmer);
        }
        auto const [same, is_new] = swimmers_.emplace(swimmer.name, swimmer.span);
        if (!is_new) {
            work_.report.error(code::twice, tree_.span(node + 1),
                               fmt::format("two swimmers are named \"{}\"", tree_.raw_string(node + 1)),
                               "rename one", {{same->second, "the first stands here"}});
            return;
        }
        work_.plan.swimmers.push_back(swimmer);
    }

    void read_field(std::uint32_t i, Swimmer& swimmer) {
        auto const& part = tree_.nodes[i];
        auto const again = [&](bool said, std::string_view what) {
            return said && twice(swimmer.span, tree_.span(i), what);
        };
        if (part.kind == Kind::name) {
            swimmer.name = work_.text_of(tree_, i);
        } else if (part.kind == Kind::threshold &&
                   !again(swimmer.threshold.has_value(), "the swimmer's threshold")) {
            swimmer.threshold = read_threshold(work_, tree_, i, pool_);
        } else if (part.kind == Kind::swimmer_lane &&
                   !again(swimmer.lane.has_value(), "the swimmer's lane")) {
            swimmer.lane = static_cast<std::uint8_t>(part.value);
        } else if (part.kind == Kind::swimmer_share &&
                   !again(swimmer.share.has_value(), "the swimmer's distance")) {
            swimmer.share = part.value;
            if (part.value < 1 || part.value > 200) {
                work_.report.error(code::amount, span_of(part),
                                   fmt::format("a share of {}%: from 1% to 200% are read", part.value));
            }
        }
    }

    Work& work_;
    Tree const& tree_;
    Pool pool_;
    std::unordered_map<std::string, Span> swimmers_; ///< where each stands first
};

} // namespace

void read_head(Work& work, Tree const& tree, Scope const& scope) {
    Head{work, tree, scope}.read();
}

Date date_of(Node const& leaf) {
    using namespace std::chrono;
    return sys_days{year{static_cast<int>(leaf.value / 10000)} / month{leaf.value / 100 % 100} /
                    day{leaf.value % 100}};
}

} // namespace lengthwise::plan
