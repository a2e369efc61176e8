#include "check/rules.hpp"
#include "check/seen.hpp"
#include "check/timed_lanes.hpp"
#include "check/walk.hpp"
#include "check/words.hpp"

#include "calc/tight_start.hpp"
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
        calc::TightStart start;
        std::vector<int> lanes;
    };

    void look(plan::Index index, plan::Session const& session, std::vector<int> const& lanes) {
        calc::TightStarts tightest{inquiry_.plan, inquiry_.clock(), index, lanes.front()};
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
    void add(Met const& met, calc::TightStart const& start, std::vector<int> const& lanes) {
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
