#pragma once

#include "calc/breakdown.hpp"
#include "calc/paces.hpp"
#include "calc/walk.hpp"
#include "plan/plan.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <cstdint>
#include <unordered_map>
#include <vector>

/// Swimming time by word: how long a session is swum easy, how long it is kicked. Splits go by
/// their parts; rests, waits, pauses and the breaks of `broken` are no word's, so the words add
/// up to the swimming time of calc::Times.
namespace lengthwise::calc {

struct WordTime {
    std::uint32_t key = 0; ///< as in Breakdown; calc::word_of spells it
    Band<Duration> swimming;
    Distance estimated;   ///< what its share of timed reps goes, rounded down once a rep to whole lengths
    bool known = true;    ///< false where one of its reps has no pace
    bool measured = true; ///< false where it is not known how far one of its timed reps goes
};

/// Words with reps, by key.
struct WordTimes {
    std::vector<WordTime> words;

    WordTime& of(std::uint32_t key);
    void add(WordTimes const& more, std::int64_t rounds = 1);
};

/// Breaks the time of a plan down for one lane, `if time` lines left out. Not by section: that is
/// Clock::sections.
class WorkReader {
  public:
    WorkReader(plan::Plan const& plan, By by, int lane) : plan_(plan), by_(by), lane_(lane), paces_(plan) {}
    WorkReader(WorkReader const&) = delete;
    WorkReader& operator=(WorkReader const&) = delete;

    void add_session(plan::Session const& session, WordTimes& sum);

  private:
    struct Measure {
        using Sum = WordTimes;
        By by = By::stroke;
        Pacing const* pacing = nullptr;
        void add(plan::Plan const& plan, plan::Item const& item, Pool const& pool, std::int64_t rounds,
                 WordTimes& sum) const;
    };

    plan::Plan const& plan_;
    By by_;
    int lane_;
    Paces paces_;
    std::unordered_map<PacingId, Walk<Measure>> walks_;
};

} // namespace lengthwise::calc
