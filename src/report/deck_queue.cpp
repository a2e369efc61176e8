#include "report/deck_queue.hpp"

#include "calc/stretch.hpp"
#include "report/choose.hpp"
#include "report/deck_hand.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <limits>

namespace lengthwise::report {
namespace {

constexpr std::size_t most_swimmers = 20; ///< named; a lane holds no more
constexpr std::size_t name_room = 12;
constexpr std::size_t most_meetings = 4; ///< lines of them below a set
constexpr std::int64_t most_places = 3;  ///< in one of them

std::string ordinal(int n) {
    bool const teen = n / 10 % 10 == 1;
    auto const end = teen ? 0 : n % 10;
    return std::to_string(n) + (end == 1 ? "st" : end == 2 ? "nd" : end == 3 ? "rd" : "th");
}

/// To a whole second, up for what has to be waited for.
std::string seconds(Duration time, bool up) {
    return spell::clock(Duration::seconds((time.ms() + (up ? 999 : 0)) / 1000));
}

/// "200", "416": whole units of the pool's.
std::int64_t whole(calc::Exact const& distance, Unit unit) {
    return (distance / calc::Exact{one(unit).units()}).rounded();
}

/// "200, 417 and 633 m", "50, 100, 150 m … (12 times)".
std::string places(calc::Laps const& laps, Unit unit, bool ascii) {
    std::string text;
    auto const shown = std::min(laps.times, most_places);
    for (std::int64_t i = 0; i < shown; ++i) {
        bool const last = i + 1 == laps.times;
        text += i == 0 ? "" : last ? " and " : ", ";
        text += std::to_string(whole(laps.at(i), unit));
    }
    text += fmt::format(" {}", spell::symbol(unit));
    return laps.times <= most_places ? text
                                     : fmt::format("{} {} ({} times)", text, ascii ? "..." : "…", laps.times);
}

/// From one start of a rep to the next, as it is expected.
Duration start_to_start(plan::Plan const& plan, plan::Terms const& terms, Duration swim) {
    auto const& recovery = terms.recovery;
    if (recovery.kind == plan::Recovery::Kind::on) {
        auto const first = plan.send_offs.begin() + recovery.first_step;
        return std::max(swim, *std::min_element(first, first + recovery.steps));
    }
    return swim + calc::gap_of(recovery).expected;
}

} // namespace

void QueueReader::find(DeckClock const& lanes) {
    for (auto const& shown : lanes.shown) {
        if (asked_.swimmers) {
            queues_.push_back({shown.lane, {}, *asked_.swimmers});
        } else {
            add(shown.lane);
        }
    }
    if (!asked_.swimmers) {
        for (auto const& other : lanes.others) {
            add(other.lane);
        }
    }
}

void QueueReader::add(int lane) {
    bool const known = std::ranges::any_of(queues_, [&](Queue const& queue) { return queue.lane == lane; });
    auto order = calc::lane_order(plan_, lane, plan_.pool_of(plan_.sessions[session_]));
    if (order.size() > most_swimmers) {
        order.resize(most_swimmers);
    }
    if (!known && order.size() > 1) {
        auto const count = static_cast<int>(order.size());
        queues_.push_back({lane, std::move(order), count});
    }
}

std::vector<std::string> QueueReader::below(plan::Index line, std::optional<calc::SendOffs> const& set) {
    std::vector<std::string> texts;
    auto const& item = plan_.items[line];
    for (auto const& queue : queues_) {
        if (!item.swum_by(queue.lane)) {
            continue;
        }
        std::vector<std::string> own;
        if (set) {
            add_hands(own, queue, *set);
        }
        add_away(own, queue, line);
        add_meetings(own, queue, line);
        for (auto& text : own) { // what two lanes have alike stands there once
            if (std::ranges::find(texts, text) == texts.end()) {
                texts.push_back(std::move(text));
            }
        }
    }
    return texts;
}

std::string QueueReader::label(Queue const& queue, int place) const {
    return queue.swimmers.empty()
               ? ordinal(place + 1)
               : cut(visible(plan_.swimmers[queue.swimmers[static_cast<std::size_t>(place)]].name), name_room,
                     ascii_);
}

/// "Ann 00 45 30 15", and below it who follows.
void QueueReader::add_hands(std::vector<std::string>& texts, Queue const& queue, calc::SendOffs const& set) {
    std::size_t widest = 0;
    for (int place = 0; place < queue.count; ++place) {
        widest = std::max(widest, cells(label(queue, place)));
    }
    auto const steps = calc::steps_of(plan_, set);
    for (int place = 0; place < queue.count; ++place) {
        if (auto const hand = calc::hand_at_starts(steps, set.starts, asked_.gap * place)) {
            texts.push_back(pad_right(label(queue, place), widest) + " " + marks_text(*hand, ascii_));
            hands_ = true;
        }
    }
}

/// The first is home, or leaves again, before the last is away. The tightest rep of a line decides.
void QueueReader::add_away(std::vector<std::string>& texts, Queue const& queue, plan::Index line) {
    auto const need = asked_.gap * queue.count;
    auto const& pool = plan_.pool_of(plan_.sessions[session_]);
    std::optional<Duration> back;
    std::optional<Duration> again;
    for (auto const& rep : calc::lane_reps_of_line(plan_, line)) {
        auto const swim = first_swim(queue, rep);
        if (!swim) {
            continue;
        }
        judged_ = true;
        if (pool.has_length() && swim->distance > pool.length * 2) {
            auto const lap = calc::lap_time(swim->pace, pool.length);
            back = back ? std::min(*back, lap) : lap;
        }
        auto const time = Duration::ms((swim->pace * calc::Exact{rep.distance.units()}).rounded());
        auto const next = start_to_start(plan_, plan_.terms[rep.terms], time);
        again = again ? std::min(*again, next) : next;
    }
    auto const say = [&](char const* what, std::optional<Duration> after) {
        if (after && need > *after) {
            all_away_ = false;
            texts.push_back(fmt::format("the first {} after {}, {} need {} to get away", what,
                                        seconds(*after, false), queue.count, seconds(need, true)));
        }
    };
    say("is back", back);
    say("leaves again", again);
}

/// In the line's longest rep.
void QueueReader::add_meetings(std::vector<std::string>& texts, Queue const& queue, plan::Index line) {
    auto const& pool = plan_.pool_of(plan_.sessions[session_]);
    auto const reps = calc::lane_reps_of_line(plan_, line);
    auto const longest = std::ranges::max_element(reps, {}, &calc::LaneRep::distance);
    if (longest == reps.end() || queue.swimmers.empty() || !pool.has_length()) {
        return;
    }
    auto const met = meetings(queue, *longest);
    auto const shown = std::min(met.size(), most_meetings);
    texts.insert(texts.end(), met.begin(), met.begin() + static_cast<std::ptrdiff_t>(shown));
    meetings_ = meetings_ || !met.empty();
    if (met.size() > shown) {
        texts.push_back(fmt::format("and {} more so", met.size() - shown));
    }
}

std::vector<std::string> QueueReader::meetings(Queue const& queue, calc::LaneRep const& rep) const {
    auto const& around = clock_.pacing(session_, queue.lane);
    std::vector<std::optional<calc::LaneSwim>> swims;
    for (auto const swimmer : queue.swimmers) {
        swims.push_back(calc::swim_of(plan_, around, plan_.swimmers[swimmer], rep));
    }
    std::vector<std::string> met;
    for (std::size_t behind = 1; behind < swims.size(); ++behind) {
        for (std::size_t ahead = 0; ahead < behind; ++ahead) {
            if (swims[ahead] && swims[behind]) {
                met.push_back(meeting(queue, static_cast<int>(ahead), *swims[ahead], static_cast<int>(behind),
                                      *swims[behind]));
            }
        }
    }
    std::erase(met, "");
    return met;
}

/// "Ann laps Ben at 200 m", "Ben catches Ann after 17 m"; nothing where neither happens.
std::string QueueReader::meeting(Queue const& queue, int ahead, calc::LaneSwim const& first, int behind,
                                 calc::LaneSwim const& second) const {
    auto const& pool = plan_.pool_of(plan_.sessions[session_]);
    auto const gap = asked_.gap * (behind - ahead);
    if (auto const laps = calc::laps(first, second, gap, pool.length)) {
        return fmt::format("{} laps {} at {}", label(queue, ahead), label(queue, behind),
                           places(*laps, pool.unit, ascii_));
    }
    if (auto const caught = calc::caught_after(first, second, gap)) {
        return fmt::format("{} catches {} after {} {}", label(queue, behind), label(queue, ahead),
                           whole(*caught, pool.unit), spell::symbol(pool.unit));
    }
    return {};
}

std::optional<calc::LaneSwim> QueueReader::first_swim(Queue const& queue, calc::LaneRep const& rep) {
    if (!queue.swimmers.empty()) {
        return calc::swim_of(plan_, clock_.pacing(session_, queue.lane),
                             plan_.swimmers[queue.swimmers.front()], rep);
    }
    auto const time = clock_.rep(session_, queue.lane, rep.terms, rep.distance.units(), false);
    if (!time.timed || time.swim.expected.zero()) {
        return std::nullopt;
    }
    return calc::LaneSwim{calc::Exact{time.swim.expected.ms(), rep.distance.units()}, rep.distance};
}

std::string QueueReader::who(Queue const& queue) const {
    if (queue.swimmers.empty()) {
        return fmt::format("{} in a lane", queue.count);
    }
    std::vector<std::string> names;
    for (int place = 0; place < queue.count; ++place) {
        names.push_back(label(queue, place));
    }
    return fmt::format("lane {}: {}", queue.lane,
                       fold_parts(names, ", ", std::numeric_limits<std::size_t>::max()));
}

std::vector<std::string> QueueReader::foot() const {
    if (queues_.empty()) {
        return {"no lane has two swimmers with a threshold; four at its pace: --swimmers 4"};
    }
    std::vector<std::string> lanes;
    for (auto const& queue : queues_) {
        auto const text = who(queue);
        if (std::ranges::find(lanes, text) == lanes.end()) {
            lanes.push_back(text);
        }
    }
    std::vector<std::string> notes{fold_parts(lanes, "; ", std::numeric_limits<std::size_t>::max()) + ", " +
                                   spell::spaced(asked_.gap) + " apart"};
    if (judged_ && all_away_) {
        notes.push_back("all of them are away before the first is back");
    }
    if (hands_) {
        notes.push_back("behind each: the pace clock at each start, the first away at 00");
    }
    if (meetings_) {
        notes.push_back("laps at: what the faster has swum of the longest rep by then, both at an even pace");
    }
    return notes;
}

} // namespace lengthwise::report
