#include "bench/random.hpp"
#include "calc/swim_time.hpp"
#include "support/read_plan.hpp"
#include "support/slow_pace.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

/// Reps of all words and sizes against the pace model reckoned slowly, to the millisecond.
namespace lengthwise {
namespace {

using bench::Random;

/// A number of up to so many digits, small ones as often as large ones.
int figure(Random& random, int digits) {
    int most = 10;
    for (int i = random.below(digits); i > 0; --i) {
        most *= 10;
    }
    return random.between(1, most - 1);
}

Pool pool(Random& random, bool unsaid) {
    switch (random.below(unsaid ? 5 : 4)) {
    case 0:
        return Pool::of(Distance::metres(25), Unit::metre);
    case 1:
        return Pool::of(Distance::units(Distance::metres(1).units() + figure(random, 8) % 29'000'000),
                        Unit::metre);
    case 2:
        return Pool::of(Distance::yards(random.between(2, 50)), Unit::yard);
    case 3:
        return Pool::open_water();
    default:
        return {};
    }
}

plan::Effort effort(Random& random, bool hold) {
    using Kind = plan::Effort::Kind;
    plan::Effort effort;
    switch (random.below(hold ? 8 : 7)) {
    case 0:
        break;
    case 1:
    case 2:
        effort.kind = Kind::word;
        effort.word = static_cast<EffortWord>(random.below(5));
        break;
    case 3:
        effort.kind = Kind::word;
        effort.word = EffortWord::threshold;
        effort.shift = Duration::ms(figure(random, 6)); // minus is tried where it leaves a pace
        break;
    case 4:
        effort.kind = Kind::percent;
        effort.number = static_cast<std::uint32_t>(random.between(30, 150));
        break;
    case 5:
        effort.kind = Kind::rpe;
        effort.number = static_cast<std::uint32_t>(random.between(1, 10));
        break;
    case 6:
        effort.kind = Kind::pace;
        effort.time = Duration::ms(figure(random, 7));
        effort.per = Distance::units(figure(random, 8));
        break;
    default:
        effort.kind = Kind::hold;
        effort.time = Duration::ms(figure(random, 7));
        break;
    }
    return effort;
}

plan::Manner manner(Random& random, bool timed, bool hold) {
    plan::Manner manner;
    manner.stroke = static_cast<Stroke>(random.below(7));
    manner.mode = static_cast<Mode>(random.below(6));
    if (manner.mode == Mode::tread && !timed) {
        manner.mode = Mode::kick;
    }
    for (int gear = 0; gear < gear_words; ++gear) {
        if (random.chance(25)) {
            manner.gear.add(static_cast<Gear>(gear));
        }
    }
    manner.effort = effort(random, hold && !timed);
    return manner;
}

/// A plan of one session and one kind of rep, put together by hand: reading it from text would not
/// reach as far.
struct Sample {
    plan::Plan plan;
    std::int64_t amount = 0;
    bool timed = false;

    [[nodiscard]] plan::Session const& session() const { return plan.sessions.front(); }
    [[nodiscard]] plan::Terms& terms() { return plan.terms.front(); }
};

void add_factors(Random& random, Sample& sample) {
    std::vector<Word> const words{Word::crawl,   Word::back, Word::breast,  Word::fly,       Word::medley,
                                  Word::choice,  Word::swim, Word::kick,    Word::pull,      Word::tread,
                                  Word::drill,   Word::easy, Word::steady,  Word::threshold, Word::hard,
                                  Word::sprint,  Word::fins, Word::paddles, Word::buoy,      Word::board,
                                  Word::snorkel, Word::band, Word::wetsuit};
    for (auto const word : words) {
        if (random.chance(8)) {
            sample.plan.settings.front().factors.push_back(
                {word, static_cast<std::uint32_t>(figure(random, 3))});
        }
    }
}

void add_parts(Random& random, Sample& sample) {
    auto& terms = sample.terms();
    bool const held = terms.manner.effort.kind == plan::Effort::Kind::hold;
    std::int64_t sum = 0;
    for (int i = random.between(1, 4); i > 0; --i) {
        plan::Part part;
        part.amount = figure(random, 6);
        part.manner = manner(random, sample.timed, false);
        if (held) {
            part.manner.effort = terms.manner.effort;
        }
        sum += part.amount;
        sample.plan.parts.push_back(part);
    }
    terms.parts = {0, static_cast<plan::Index>(sample.plan.parts.size())};
    sample.amount = sum * random.between(1, 5);
}

Sample make(Random& random) {
    Sample sample;
    auto& plan = sample.plan;
    plan.weeks.emplace_back();
    plan.sessions.emplace_back();
    plan.pools.push_back(pool(random, true));
    if (random.chance(90)) {
        plan::Threshold threshold;
        threshold.time = Duration::ms(figure(random, 8));
        threshold.per = random.chance(60) ? Distance::metres(100) : Distance::units(figure(random, 9));
        threshold.course = pool(random, true);
        threshold.about = random.chance(30);
        if (random.chance(50)) {
            threshold.reserve = Distance::units(random.between(30'000, 3'000'000));
        }
        plan.thresholds.push_back(threshold);
        plan.sessions.front().threshold = 0;
    }
    add_factors(random, sample);
    sample.timed = random.chance(30);
    sample.amount = figure(random, sample.timed ? 7 : 9);
    sample.terms().manner = manner(random, sample.timed, true);
    sample.terms().stops = random.chance(20);
    if (random.chance(30)) {
        add_parts(random, sample);
    }
    if (random.chance(30) && sample.amount > 1) {
        auto& broken = sample.terms().broken;
        broken.piece = std::max<std::int64_t>(1, sample.amount / random.between(2, 40));
        broken.pause = Duration::ms(figure(random, 5));
    }
    return sample;
}

void check(Sample& sample) {
    calc::Factors const factors{calc::factors_of(sample.plan, sample.session())};
    auto const* const threshold = sample.plan.thresholds.empty() ? nullptr : &sample.plan.thresholds.front();
    calc::Pacing const pacing{threshold, sample.plan.pools.front(), factors};
    auto const ours = calc::rep_time(sample.plan, pacing, sample.terms(), sample.amount, sample.timed);
    auto const theirs =
        support::slow_rep(sample.plan, sample.session(), 0, sample.terms(), sample.amount, sample.timed);
    REQUIRE(ours.timed == theirs.swim.has_value());
    if (ours.timed) {
        auto const most = calc::longest_time.ms();
        REQUIRE(ours.swim.low.ms() == std::min(most, (*theirs.swim)[0]));
        REQUIRE(ours.swim.expected.ms() == std::min(most, (*theirs.swim)[1]));
        REQUIRE(ours.swim.high.ms() == std::min(most, (*theirs.swim)[2]));
        REQUIRE(ours.breaks.ms() == theirs.breaks);
    }
    if (sample.timed) {
        REQUIRE(ours.measured == theirs.covered.has_value());
        if (ours.measured) {
            REQUIRE((ours.estimated.units() == *theirs.covered ||
                     *theirs.covered > (calc::farthest - Distance::metres(1000)).units()));
        }
    }
}

void check_many(int from, int to) {
    for (int seed = from; seed < to; ++seed) {
        CAPTURE(seed);
        Random random{static_cast<std::uint64_t>(seed)};
        auto sample = make(random);
        check(sample);
    }
}

} // namespace

TEST_CASE("reps of all words and sizes take what the slow reckoning says") {
    check_many(0, 20'000);
}

TEST_CASE("many reps of all words and sizes take what the slow reckoning says", "[long]") {
    check_many(100'000, 1'100'000);
}

} // namespace lengthwise
