#include "check/rules.hpp"
#include "check/seen.hpp"
#include "check/timed_lanes.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include "calc/reps.hpp"
#include "calc/reserve.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

namespace lengthwise::check {

namespace {

constexpr auto weakness =
    "in swimmers such forecasts are off by 28-29 % (Raimundo 2022); never a safety limit";

/// "estimate; D' 20 m assumed"
std::string basis(calc::Pacing const& pacing) {
    auto const reserve = Distance::units(pacing.twice_reserve({}).expected / 2);
    auto const in_yards =
        !Distance::divides(Distance::metres(1), reserve) && Distance::divides(Distance::yards(1), reserve);
    return fmt::format("estimate; D' {}{}", spell::distance(reserve, in_yards ? Unit::yard : Unit::metre),
                       pacing.threshold()->reserve ? "" : " assumed");
}

/// "rep 9 of 12", "rep 2 of 4, round 3 of 5", "this rep".
std::string place_in_line(calc::RunsOut const& found) {
    auto text = found.rep.of == 1 ? std::string{"this rep"}
                                  : fmt::format("rep {} of {}", found.rep.number, found.rep.of);
    auto between = ", ";
    for (auto round = found.rounds.rbegin(); round != found.rounds.rend(); ++round) {
        if (round->of > 1) {
            text += fmt::format("{}round {} of {}", between, round->number, round->of);
            between = " in ";
        }
    }
    return text;
}

/// An effort that says itself how much faster than threshold it is.
bool is_figure(plan::Effort const& effort) {
    return (effort.kind == plan::Effort::Kind::percent && effort.number > 100) ||
           (effort.kind == plan::Effort::Kind::word && effort.shift < Duration{});
}

std::string spelled(plan::Effort const& effort) {
    return effort.kind == plan::Effort::Kind::percent
               ? fmt::format("at {}%", effort.number)
               : fmt::format("{} minus {}", spelling(word_of(effort.word)),
                             spell::duration(Duration{} - effort.shift));
}

class Judge {
  public:
    explicit Judge(Inquiry& inquiry)
        : inquiry_(inquiry), lanes_(inquiry.plan), walk_(inquiry.plan),
          reserve_(inquiry.plan, inquiry.clock()) {}

    void session(plan::Index index) {
        emptied_.clear();
        for (auto const& lanes : lanes_.by_pace(inquiry_.clock(), index)) {
            auto const& pacing = inquiry_.clock().pacing(index, lanes.front());
            if (pacing.known()) {
                look(index, lanes, pacing);
                held_back(index, lanes, pacing);
            }
        }
        for (auto const& emptied : emptied_) {
            say(emptied, inquiry_.plan.sessions[index]);
        }
    }

  private:
    struct Emptied {
        calc::RunsOut found;
        calc::Pacing const* pacing = nullptr;
        std::vector<int> lanes;
    };

    /// Lanes of one pace differ where their lines do.
    void look(plan::Index index, std::vector<int> const& lanes, calc::Pacing const& pacing) {
        if (calc::lanes_of(inquiry_.plan, inquiry_.plan.sessions[index]).none()) {
            add(index, lanes, pacing);
            return;
        }
        for (int const lane : lanes) {
            add(index, {lane}, pacing);
        }
    }

    /// Of several lanes the one that runs out first is told of, and all that do so with it.
    void add(plan::Index index, std::vector<int> const& lanes, calc::Pacing const& pacing) {
        auto const over = reserve_.over(index, lanes.front());
        for (auto const& found : over ? over->runs_out : std::vector<calc::RunsOut>{}) {
            auto const same = std::ranges::find(emptied_, found.item,
                                                [](Emptied const& other) { return other.found.item; });
            if (same == emptied_.end() || comes_before(found, same->found)) {
                Emptied emptied{found, &pacing, lanes};
                same == emptied_.end() ? emptied_.push_back(std::move(emptied))
                                       : static_cast<void>(*same = std::move(emptied));
            } else if (!comes_before(same->found, found)) {
                same->lanes.insert(same->lanes.end(), lanes.begin(), lanes.end());
            }
        }
    }

    static bool comes_before(calc::RunsOut const& a, calc::RunsOut const& b) {
        if (a.line != b.line) {
            return a.line < b.line;
        }
        for (std::size_t i = 0; i < std::min(a.rounds.size(), b.rounds.size()); ++i) {
            if (a.rounds[i].number != b.rounds[i].number) {
                return a.rounds[i].number < b.rounds[i].number;
            }
        }
        return a.rep.number < b.rep.number;
    }

    void say(Emptied const& emptied, plan::Session const& session) {
        auto const& found = emptied.found;
        auto const& item = inquiry_.plan.items[found.item];
        if (!said_empty_.insert(item.span.begin).second) {
            return;
        }
        auto lanes = emptied.lanes;
        std::ranges::sort(lanes);
        auto const labelled = inquiry_.plan.items[found.line].has_lanes();
        inquiry_.note(place(item),
                      fmt::format("the reserve runs out in {}{} ({})", place_in_line(found),
                                  labelled ? std::string{} : lanes_.in(lanes, session),
                                  basis(*emptied.pacing)),
                      weakness, used_at(found));
    }

    std::vector<Related> used_at(calc::RunsOut const& found) const {
        return found.use == plan::no_index
                   ? std::vector<Related>{}
                   : std::vector<Related>{{inquiry_.plan.items[found.use].span, "used here"}};
    }

    /// Where the reserve makes an effort slower that was given as a figure. Beside the item this depends on
    /// the pacing alone.
    void held_back(plan::Index index, std::vector<int> const& lanes, calc::Pacing const& pacing) {
        auto const& session = inquiry_.plan.sessions[index];
        auto const swum = [&](plan::Item const& line) {
            return std::ranges::any_of(lanes, [&](int lane) { return line.swum_by(lane); });
        };
        Walk::View const view{reinterpret_cast<std::intptr_t>(&pacing), 0};
        walk_.once(session, view, swum, [&](Met const& met) {
            auto const& item = met.item;
            if (!item.is_leaf() || item.is_timed() || said_held_.contains(item.span.begin)) {
                return;
            }
            auto said = false;
            calc::each_rep(inquiry_.plan, item,
                           [&](std::int64_t amount, plan::Terms const& terms, std::int64_t) {
                               said = said || (gives_figure(terms) && held_back(met, terms, amount, pacing));
                           });
        });
    }

    bool gives_figure(plan::Terms const& terms) const {
        auto figure = terms.parts.empty() && is_figure(terms.manner.effort);
        for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
            figure = figure || is_figure(inquiry_.plan.parts[i].manner.effort);
        }
        return figure;
    }

    bool held_back(Met const& met, plan::Terms const& terms, std::int64_t amount,
                   calc::Pacing const& pacing) {
        auto const parts = calc::expected_parts(inquiry_.plan, pacing, terms, amount, false);
        auto const part = std::ranges::find_if(
            parts, [](auto const& one) { return one.asked && is_figure(one.manner->effort); });
        if (part == parts.end()) {
            return false;
        }
        said_held_.insert(met.item.span.begin);
        auto const second = Duration::seconds(1).ms();
        auto const asked = Duration::ms(part->asked->ms() / second * second);
        auto const takes = rounded_up(Duration::ms(static_cast<std::int64_t>(part->ms)));
        inquiry_.note(place(met.item),
                      fmt::format("{} {} would take {}, the reserve makes it {} ({})",
                                  said(Distance::units(part->amount), inquiry_.plan.pool_of(met.session)),
                                  spelled(part->manner->effort), spell::clock(asked), spell::clock(takes),
                                  basis(pacing)),
                      weakness, used(met));
        return true;
    }

    Inquiry& inquiry_;
    TimedLanes lanes_;
    Walk walk_;
    calc::Reserve reserve_;
    std::vector<Emptied> emptied_;                 ///< in the session in hand
    std::unordered_set<std::uint32_t> said_empty_; ///< where items begin
    std::unordered_set<std::uint32_t> said_held_;
};

void judge(Inquiry& inquiry) {
    auto const& sessions = inquiry.plan.sessions;
    Judge judge{inquiry};
    for (plan::Index i = 0; i < sessions.size(); ++i) {
        if (!inquiry.waived(sessions[i])) {
            judge.session(i);
        }
    }
}

} // namespace

Rule const feasible{
    .name = "feasible",
    .severity = Severity::note,
    .measures = "the reserve lasts over the set",
    .limit = "",
    .meaning =
        "Beyond critical speed a swimmer draws on a reserve, D', and below it and at rest gets it back. By "
        "expected times it lasts through every line, in every lane. An effort given as a figure (at 110%, "
        "threshold minus 5s) is not beyond it. Silent where there is no pace.",
    .why = "a set that empties the swimmer half way is another set from there on.",
    .source =
        "Skiba et al. 2015, Eur J Appl Physiol 115:703-713 (from memory), with speed for power by Skiba et "
        "al. "
        "2012, Med Sci Sports Exerc 44:1526-1532. An estimate that flatters: Raimundo et al. 2022, Front "
        "Physiol 13:952818 found it off by 28-29 % in swimmers. Never a safety limit",
    .good = "8 x 100 sprint rest 2min",
    .bad = "8 x 100 sprint rest 20s",
    .mend = "more rest, fewer reps or a slower effort; with a measured D': threshold 1:40 reserve 25m; or: "
            "allow feasible \"why\"",
    .judge = judge,
};

} // namespace lengthwise::check
