#include "check/rules.hpp"
#include "check/seen.hpp"
#include "check/timed_lanes.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include "calc/reps.hpp"
#include "calc/timeline.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace lengthwise::check {

namespace {

constexpr auto usual = Duration::seconds(5);

/// A rep or round against its send-off.
struct Start {
    Band<Duration> takes; ///< to the end of its last swim
    Duration busy;        ///< expected, with what send-offs inside it add
    Duration send_off;
    std::uint32_t number = 0; ///< counted from 1; 0 where all are alike

    [[nodiscard]] Duration left() const { return send_off - std::max(takes.expected, busy); }
};

/// Goes through the reps or rounds of one item that has a send-off, in one lane.
class Tightest {
  public:
    Tightest(plan::Plan const& plan, calc::Clock& clock, plan::Index session, int lane)
        : plan_(plan), clock_(clock), session_(session), lane_(lane) {}

    /// The one with least time left, the first of several; nothing where times are unknown.
    std::optional<Start> of(plan::Item const& item) {
        tightest_.reset();
        stretches_.clear();
        auto const& terms = plan_.terms[item.terms];
        auto const& recovery = terms.recovery;
        if (recovery.steps > 1 || item.is_ladder()) {
            one_by_one(item, recovery);
        } else {
            by_kind(item, terms);
        }
        return tightest_;
    }

  private:
    void one_by_one(plan::Item const& item, plan::Recovery const& recovery) {
        std::vector<plan::Selection const*> chooser(item.count, nullptr);
        for_each_selection(item, [&](plan::Selection const& selection) {
            for (std::uint32_t k = 0; k < selection.count; ++k) {
                chooser[selection.first - 1 + k * selection.step] = &selection;
            }
        });
        for (std::uint32_t i = 0; i < item.count; ++i) {
            take(item, chooser[i], i, plan_.send_offs[recovery.first_step + (recovery.steps > 1 ? i : 0)]);
        }
    }

    /// One send-off for all: those that are swum alike are looked at once.
    void by_kind(plan::Item const& item, plan::Terms const& terms) {
        auto const send_off = plan_.send_offs[terms.recovery.first_step];
        if (terms.selections.empty()) {
            take(item, nullptr, 0, send_off);
            if (tightest_) {
                tightest_->number = 0;
            }
            return;
        }
        std::vector<bool> chosen(item.count + std::size_t{1});
        for_each_selection(item, [&](plan::Selection const& selection) {
            for (std::uint32_t k = 0; k < selection.count; ++k) {
                chosen[selection.first - 1 + k * selection.step] = true;
            }
            take(item, &selection, selection.first - 1, send_off);
        });
        auto const other = std::ranges::find(chosen, false) - chosen.begin();
        if (other < item.count) {
            take(item, nullptr, static_cast<std::uint32_t>(other), send_off);
        }
    }

    template <typename Visit>
    void for_each_selection(plan::Item const& item, Visit visit) {
        auto const& selections = plan_.terms[item.terms].selections;
        for (auto i = selections.first; i < selections.end(); ++i) {
            visit(plan_.selections[i]);
        }
    }

    void take(plan::Item const& item, plan::Selection const* selection, std::uint32_t number,
              Duration send_off) {
        auto const stretch = stretch_of(item, selection, number);
        if (stretch.untimed != plan::no_index) {
            return;
        }
        Start const start{stretch.end, stretch.slots.expected, send_off, number + 1};
        if (!tightest_ || start.left() < tightest_->left()) {
            tightest_ = start;
        }
    }

    calc::Stretch stretch_of(plan::Item const& item, plan::Selection const* selection, std::uint32_t number) {
        auto const index = static_cast<plan::Index>(&item - plan_.items.data());
        if (item.is_ladder()) {
            auto const terms = selection != nullptr ? selection->terms : item.terms;
            auto const amount = plan_.rungs[item.body + number];
            return calc::stretch_of(clock_.rep(session_, lane_, terms, amount, item.is_timed()), index);
        }
        auto const [known, is_new] = stretches_.try_emplace(selection);
        if (is_new) {
            auto const terms = selection != nullptr ? selection->terms : item.terms;
            known->second = item.is_leaf()
                                ? calc::stretch_of(
                                      clock_.rep(session_, lane_, terms, item.amount, item.is_timed()), index)
                                : clock_.round(session_, lane_, index, selection);
        }
        return known->second;
    }

    plan::Plan const& plan_;
    calc::Clock& clock_;
    plan::Index session_;
    int lane_;
    std::optional<Start> tightest_;
    std::unordered_map<plan::Selection const*, calc::Stretch> stretches_; ///< of the item in hand
};

class Judge {
  public:
    explicit Judge(Inquiry& inquiry) : inquiry_(inquiry), lanes_(inquiry.plan), walk_(inquiry.plan) {}

    void session(plan::Index index) {
        auto const& session = inquiry_.plan.sessions[index];
        auto const limit = inquiry_.limit(session);
        breath_ = limit ? Duration::ms(limit->low) : usual;
        found_.clear();
        places_.clear();
        for (auto const& lanes : lanes_.by_pace(inquiry_.clock(), index)) {
            look(index, session, lanes);
        }
        for (auto const& found : found_) {
            if (seen_.first_time(found.met)) {
                say(found);
            }
        }
    }

  private:
    struct Found {
        Met met;
        Start start;
        std::vector<int> lanes;
    };

    void look(plan::Index index, plan::Session const& session, std::vector<int> const& lanes) {
        Tightest tightest{inquiry_.plan, inquiry_.clock(), index, lanes.front()};
        auto const swum = [&](plan::Item const& line) {
            return std::ranges::any_of(lanes, [&](int lane) { return line.swum_by(lane); });
        };
        Walk::View const view{reinterpret_cast<std::intptr_t>(&inquiry_.clock().pacing(index, lanes.front())),
                              breath_.ms()};
        walk_.once(session, view, swum, [&](Met const& met) {
            if (!met.item.is_swum() ||
                inquiry_.plan.terms[met.item.terms].recovery.kind != plan::Recovery::Kind::on) {
                return;
            }
            auto const start = tightest.of(met.item);
            if (start && (start->left() < Duration{} || start->send_off - start->takes.expected < breath_)) {
                add(met, *start, lanes);
            }
        });
    }

    /// An item is told of once, with its slowest lane.
    void add(Met const& met, Start const& start, std::vector<int> const& lanes) {
        auto const [place, is_new] = places_.try_emplace(&met.item, found_.size());
        std::vector<int> swimming;
        std::ranges::copy_if(lanes, std::back_inserter(swimming),
                             [&](int lane) { return met.line.swum_by(lane); });
        if (is_new) {
            found_.push_back({met, start, std::move(swimming)});
        } else if (start.left() < found_[place->second].start.left()) {
            found_[place->second].start = start;
            found_[place->second].lanes = std::move(swimming);
        }
    }

    void say(Found const& found) {
        auto const& start = found.start;
        auto const busy = start.busy > start.takes.expected && start.busy > start.send_off;
        auto const takes =
            busy ? spell::clock(rounded_up(start.busy)) + " with its own send-offs" : clocks(start.takes);
        auto const lane =
            found.met.line.has_lanes() ? std::string{} : lanes_.in(found.lanes, found.met.session);
        inquiry_.warn(place(found.met.item),
                      fmt::format("{} takes {}{}, the send-off is {}", subject(found), takes, lane,
                                  spell::clock(start.send_off)),
                      hint(found), used(found.met));
    }

    static std::string subject(Found const& found) {
        auto const& item = found.met.item;
        auto const word = item.is_leaf() ? "rep" : "round";
        return item.count == 1           ? fmt::format("the {}", word)
               : found.start.number == 0 ? fmt::format("a {}", word)
                                         : fmt::format("{} {}", word, found.start.number);
    }

    std::string hint(Found const& found) const {
        auto const& start = found.start;
        auto const end = std::max(start.takes.expected, start.busy);
        auto const left = start.send_off - start.takes.expected;
        auto const better =
            rounded_up(std::max(start.takes.expected + breath_, start.busy), Duration::seconds(5));
        auto const fact = end > start.send_off
                              ? fmt::format("expected {} is {} over", spell::clock(rounded_up(end)),
                                            spell::clock(rounded_up(end - start.send_off)))
                              : fmt::format("expected {} leaves {} s to breathe, {} is asked",
                                            spell::clock(rounded_up(start.takes.expected)), left.ms() / 1000,
                                            spell::spaced(breath_));
        auto const stepped = inquiry_.plan.terms[found.met.item.terms].recovery.steps > 1;
        return stepped ? fmt::format("{}; try {} there", fact, spell::clock(better))
                       : fmt::format("{}; try: on {}", fact, spell::clock(better));
    }

    Inquiry& inquiry_;
    TimedLanes lanes_;
    Walk walk_;
    SeenInSets seen_;
    Duration breath_;
    std::vector<Found> found_; ///< in the session in hand
    std::unordered_map<plan::Item const*, std::size_t> places_;
};

void judge(Inquiry& inquiry) {
    Judge judge{inquiry};
    auto const& sessions = inquiry.plan.sessions;
    for (plan::Index i = 0; i < sessions.size(); ++i) {
        if (!inquiry.waived(sessions[i])) {
            judge.session(i);
        }
    }
}

} // namespace

Rule const send_off{
    .name = "send-off",
    .severity = Severity::warning,
    .measures = "a send-off leaves time to breathe",
    .limit = "5s",
    .meaning =
        "The expected time of each rep, and of each round of a group on a send-off, ends at least this "
        "long before the next start, in every lane. Silent where there is no pace.",
    .why = "whoever comes in late leaves late, and the send-off that was to give a rhythm takes it away.",
    .source = "times as docs/time.md estimates them; the 5 s: common practice, no published source",
    .good = "4 x 100 on 2:00           at 1:47 a rep",
    .bad = "4 x 100 on 1:50           at 1:47 a rep",
    .mend = "give a later send-off, or a rest instead: rest 20s; or: limit send-off 3s",
    .judge = judge,
};

} // namespace lengthwise::check
