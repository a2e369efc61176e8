#include "support/stopwatch.hpp"

#include <algorithm>
#include <tuple>

namespace lengthwise::support {
namespace {

struct Event {
    enum class Kind { rep, round_begins, round_ends, pause };
    Kind kind = Kind::rep;
    Three swim{};
    Three rest{};
    std::int64_t send_off = 0;
    bool recovers = false; ///< of a round: it has a rest or send-off of its own
    bool known = true;
    std::size_t section = 0;
    std::size_t line = 0;
    std::size_t number = 0; ///< of the rep in Watched::reps
};

Three rest_after(plan::Recovery const& recovery) {
    using Kind = plan::Recovery::Kind;
    std::int64_t low = 0;
    std::int64_t high = 0;
    if (recovery.kind == Kind::rest) {
        low = recovery.rest.low.ms();
        high = recovery.rest.high.ms();
    } else if (recovery.kind == Kind::as_needed) {
        low = 10'000;
        high = 60'000;
    } else if (recovery.kind == Kind::breaths) {
        low = 2'000 * std::int64_t{recovery.number};
        high = 4'000 * std::int64_t{recovery.number};
    }
    return {low, (low + high) / 2, high};
}

/// Writes down everything that happens, in its order.
class Diary {
  public:
    Diary(plan::Plan const& plan, plan::Session const& session, int lane, Watched& watched)
        : plan_(plan), session_(session), lane_(lane), watched_(watched) {}

    void write(bool optional) {
        for (std::size_t s = 0; s < session_.sections.count; ++s) {
            section_ = s;
            watched_.sections.emplace_back();
            for (auto at = plan_.sections[session_.sections.first + s].body; at != plan::no_index;) {
                auto const& item = plan_.items[at];
                bool const mine =
                    item.first_lane == 0 || (item.first_lane <= lane_ && lane_ <= item.last_lane);
                if (item.kind == plan::Item::Kind::pause && !optional) {
                    Event pause;
                    pause.kind = Event::Kind::pause;
                    pause.rest.fill(item.amount);
                    events.push_back(pause);
                } else if (item.kind < plan::Item::Kind::pause && mine && item.optional == optional) {
                    watched_.lines.push_back({at, {}, {}});
                    write(item);
                }
                at = item.last ? plan::no_index : plan_.after(at);
            }
        }
    }

    std::vector<Event> events;

  private:
    static bool chooses(plan::Selection const& selection, std::uint32_t number) {
        auto chosen = selection.first;
        for (std::uint32_t k = 0; k < selection.count; ++k, chosen += selection.step) {
            if (chosen == number) {
                return true;
            }
        }
        return false;
    }

    void write(plan::Item const& item) {
        using Kind = plan::Item::Kind;
        auto const& own = plan_.terms[item.terms];
        auto const& recovery = own.recovery;
        for (std::uint32_t number = 1; number <= item.count; ++number) {
            auto terms = item.terms;
            auto body = item.body;
            for (std::uint32_t i = 0; i < own.selections.count; ++i) {
                auto const& selection = plan_.selections[own.selections.first + i];
                if (chooses(selection, number)) {
                    terms = selection.terms;
                    body = selection.body;
                }
            }
            Event event;
            event.section = section_;
            event.line = watched_.lines.size() - 1;
            event.rest = rest_after(recovery);
            event.recovers = recovery.kind != plan::Recovery::Kind::none;
            if (recovery.kind == plan::Recovery::Kind::on) {
                auto const step = recovery.steps == 1 ? 0 : number - 1;
                event.send_off = plan_.send_offs[recovery.first_step + step].ms();
            }
            numbers_.push_back(number);
            auto const up = [&] { numbers_.pop_back(); };
            if (item.kind == Kind::group || item.kind == Kind::use) {
                event.kind = Event::Kind::round_begins;
                events.push_back(event);
                inside(item, body);
                event.kind = Event::Kind::round_ends;
                events.push_back(event);
                up();
                continue;
            }
            bool const ladder = item.kind == Kind::ladder || item.kind == Kind::timed_ladder;
            bool const timed = item.kind == Kind::timed_reps || item.kind == Kind::timed_ladder;
            event.number = watched_.reps.size();
            auto const amount = ladder ? plan_.rungs[item.body + number - 1] : std::int64_t{item.amount};
            watched_.reps.push_back({watched_.lines.back().item,
                                     static_cast<plan::Index>(&item - plan_.items.data()),
                                     number,
                                     {numbers_.begin(), numbers_.end() - 1},
                                     &plan_.terms[terms],
                                     amount,
                                     timed,
                                     {},
                                     {}});
            swim(event, plan_.terms[terms], amount, timed);
            up();
        }
    }

    void inside(plan::Item const& item, plan::Index at) {
        while (at != plan::no_index) {
            write(plan_.items[at]);
            at =
                item.kind == plan::Item::Kind::use || plan_.items[at].last ? plan::no_index : plan_.after(at);
        }
    }

    void swim(Event event, plan::Terms const& terms, std::int64_t amount, bool timed) {
        auto const& rep = timed_once(terms, amount, timed);
        auto& section = watched_.sections[section_];
        section.known = section.known && rep.swim;
        section.measured = section.measured && (!timed || rep.covered);
        section.estimated += rep.covered.value_or(0);
        event.known = rep.swim.has_value();
        event.swim = rep.swim.value_or(Three{});
        for (std::size_t x = 0; x < 3; ++x) {
            section.swimming[x] += event.swim[x] - rep.breaks;
        }
        events.push_back(event);
    }

    SlowRep const& timed_once(plan::Terms const& terms, std::int64_t amount, bool timed) {
        auto const key = std::tuple{&terms, amount, timed};
        auto const known = reps_.find(key);
        return known != reps_.end()
                   ? known->second
                   : reps_.emplace(key, slow_rep(plan_, session_, lane_, terms, amount, timed)).first->second;
    }

    plan::Plan const& plan_;
    plan::Session const& session_;
    int lane_;
    Watched& watched_;
    std::size_t section_ = 0;
    std::vector<std::uint32_t> numbers_; ///< of the rounds in hand, and of the rep
    std::map<std::tuple<plan::Terms const*, std::int64_t, bool>, SlowRep> reps_;
};

/// Lets the clock run for one figure of the three.
void run(std::vector<Event> const& events, std::size_t x, Watched& watched) {
    std::int64_t slot_end = 0;
    std::int64_t swim_end = 0;
    std::int64_t gap = 0;
    std::int64_t pauses = 0;
    bool paused = false;
    bool known = true;
    Event const* before = nullptr;
    std::int64_t started = 0;
    std::vector<std::optional<std::int64_t>> rounds; // when those that are open began
    for (auto const& event : events) {
        switch (event.kind) {
        case Event::Kind::pause:
            paused = true;
            pauses += event.rest[x];
            break;
        case Event::Kind::round_begins:
            rounds.emplace_back();
            break;
        case Event::Kind::round_ends:
            if (event.send_off > 0) {
                slot_end = std::max(slot_end, *rounds.back() + event.send_off);
            }
            gap = event.recovers ? event.rest[x] : gap;
            rounds.pop_back();
            break;
        case Event::Kind::rep: {
            std::int64_t start = 0;
            if (before != nullptr) {
                start = slot_end + (paused ? pauses : gap);
                watched.sections[before->section].time[x] += start - started;
            }
            for (auto& round : rounds) {
                round = round.value_or(start);
            }
            auto& line = watched.lines[event.line];
            if (known && (before == nullptr || before->line != event.line)) {
                line.start = line.start.value_or(Three{});
                (*line.start)[x] = start;
            }
            known = known && event.known;
            slot_end = start + std::max(event.swim[x], event.send_off);
            swim_end = start + event.swim[x];
            gap = event.rest[x];
            pauses = 0;
            paused = false;
            before = &event;
            started = start;
            watched.reps[event.number].start[x] = start;
            watched.reps[event.number].swim[x] = event.swim[x];
            break;
        }
        }
        if (before != nullptr && known && event.kind != Event::Kind::pause &&
            event.kind != Event::Kind::round_begins) {
            auto& end = watched.lines[before->line].end;
            end = end.value_or(Three{});
            (*end)[x] = slot_end;
        }
        if (!known && before != nullptr) {
            watched.lines[before->line].end.reset();
        }
    }
    if (before != nullptr) {
        watched.sections[before->section].time[x] += swim_end - started;
        if (known) {
            (*watched.lines[before->line].end)[x] = swim_end;
        }
    }
}

} // namespace

Watched watch(plan::Plan const& plan, plan::Session const& session, int lane, bool optional) {
    Watched watched;
    Diary diary{plan, session, lane, watched};
    diary.write(optional);
    for (std::size_t x = 0; x < 3; ++x) {
        run(diary.events, x, watched);
    }
    return watched;
}

} // namespace lengthwise::support
