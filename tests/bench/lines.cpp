#include "lines.hpp"

#include "phrases.hpp"

#include <array>

namespace lengthwise::bench {

namespace {

using Line = void (*)(Twin&, Random&, int lap);

void stroke_and_effort(Twin& out, Random& random) {
    out.word("stroke", random.pick(phrases::strokes));
    if (random.chance(70)) {
        out.word("effort", random.pick(phrases::efforts));
    }
}

void maybe_note(Twin& out, Random& random) {
    if (random.chance(6)) {
        out.note(random.pick(phrases::notes));
    }
}

/// `low` to `high` reps of up to `laps` lengths. Two statements, as the order in which a
/// call's arguments are worked out differs from compiler to compiler.
void some_reps(Twin& out, Random& random, int low, int high, int metres, int laps) {
    auto const count = random.between(low, high);
    out.reps(count, metres * random.between(1, laps));
}

void any_rest(Twin& out, Random& random) {
    if (random.chance(20)) {
        auto const low = 10 + 5 * random.below(3);
        out.rest(low, low + 10 + 5 * random.below(3));
    } else {
        out.rest(5 * random.between(2, 15));
    }
}

// --- warm-up and cool-down -------------------------------------------------------

void loosen(Twin& out, Random& random, int lap) {
    out.begin_item();
    if (random.chance(10)) {
        out.lengths(1, 2 * random.between(2, 6));
    } else {
        out.reps(1, 4 * lap * random.between(1, 3));
    }
    out.word("stroke", random.chance(70) ? "choice" : "crawl");
    out.word("effort", "easy");
    out.end_item();
}

void kick(Twin& out, Random& random, int lap) {
    out.begin_item();
    some_reps(out, random, 2, 8, lap, 2);
    out.word("mode", "kick");
    if (random.chance(60)) {
        out.gear({random.chance(80) ? "board" : "fins"});
    }
    maybe_note(out, random);
    out.end_item();
}

void by_the_clock(Twin& out, Random& random, int /*lap*/) {
    out.begin_item();
    out.timed(1, random.between(3, 10));
    out.word("stroke", "choice");
    out.word("effort", "easy");
    out.end_item();
}

// --- drill -------------------------------------------------------------------------

void split_drill(Twin& out, Random& random, int lap) {
    out.begin_item();
    out.reps(random.between(2, 8), 2 * lap);
    out.split({{lap, "mode", "drill", random.pick(phrases::drills)}, {lap, "stroke", "crawl"}});
    out.end_item();
}

void plain_drill(Twin& out, Random& random, int lap) {
    out.begin_item();
    some_reps(out, random, 2, 10, lap, 2);
    out.drill(random.pick(phrases::drills));
    if (random.chance(40)) {
        any_rest(out, random);
    }
    out.end_item();
}

void say(Twin& out, Random& random, int /*lap*/) {
    out.note_line(random.pick(phrases::notes));
}

// --- main ----------------------------------------------------------------------------

void intervals(Twin& out, Random& random, int lap) {
    out.begin_item();
    some_reps(out, random, 3, 12, lap, 8);
    if (random.chance(8)) {
        out.word("stroke", "crawl");
        out.percent(random.between(88, 105));
    } else {
        stroke_and_effort(out, random);
    }
    any_rest(out, random);
    maybe_note(out, random);
    out.end_item();
}

void on_the_clock(Twin& out, Random& random, int lap) {
    auto const laps = random.between(1, 4);
    auto const slot = 5 * ((laps * lap * 125 / 100 + random.between(10, 40)) / 5);
    out.begin_item();
    out.reps(2 * random.between(2, 6), laps * lap);
    out.word("stroke", "crawl");
    if (random.chance(25)) {
        out.send_off({slot});
        out.choose({{"odds", 0, "steady"}, {"evens", 0, "hard"}});
    } else if (random.chance(15)) {
        out.send_off({slot});
        out.choose({{"first", 2, "easy"}, {"last", 0, "sprint"}});
    } else {
        out.word("effort", random.pick(phrases::efforts));
        out.send_off({slot});
    }
    out.end_item();
}

void rounds(Twin& out, Random& random, int lap) {
    out.begin_item();
    auto const over_lines = random.chance(15);
    out.open_group(random.between(2, 5), over_lines);
    auto const items = random.between(2, 3);
    for (int i = 0; i < items; ++i) {
        out.begin_item();
        if (random.chance(60)) {
            some_reps(out, random, 1, 1, lap, 8);
        } else {
            some_reps(out, random, 2, 4, lap, 8);
        }
        stroke_and_effort(out, random);
        if (random.chance(40)) {
            any_rest(out, random);
        }
        out.end_item();
    }
    out.close_group();
    out.rest(15 * random.between(2, 8));
    out.end_item();
}

void ladder(Twin& out, Random& random, int lap) {
    auto const step = lap * random.between(1, 4);
    out.begin_item();
    if (random.chance(50)) {
        out.ladder({step, 2 * step, step});
    } else {
        out.ladder({step, 2 * step, 3 * step, 2 * step, step});
    }
    stroke_and_effort(out, random);
    any_rest(out, random);
    out.end_item();
}

void long_one(Twin& out, Random& random, int lap) {
    auto const laps = 4 * random.between(3, 10);
    out.begin_item();
    out.reps(1, laps * lap);
    out.word("stroke", "crawl");
    out.word("effort", random.chance(80) ? "steady" : "easy");
    if (random.chance(25)) {
        out.word("shape", "negative split");
    } else if (random.chance(15)) {
        out.broken(laps / 4 * lap, 15);
    }
    maybe_note(out, random);
    out.end_item();
}

void faster_each(Twin& out, Random& random, int lap) {
    out.begin_item();
    auto const cycles = random.between(1, 2);
    out.reps(4 * cycles, lap * random.between(1, 4));
    out.word("stroke", "crawl");
    out.descend(4);
    any_rest(out, random);
    out.end_item();
}

void pull(Twin& out, Random& random, int lap) {
    out.begin_item();
    some_reps(out, random, 2, 6, 2 * lap, 4);
    out.word("stroke", "crawl");
    out.word("mode", "pull");
    if (random.chance(30)) {
        out.gear({"buoy", "paddles"});
    } else {
        out.gear({"buoy"});
    }
    any_rest(out, random);
    out.end_item();
}

void named(Twin& out, Random& random, int /*lap*/) {
    out.begin_item();
    if (random.chance(50)) {
        out.use(ladder_set, ladder_set_metres);
    } else {
        out.use(turns_set, turns_set_metres);
        out.word("effort", "steady");
    }
    out.end_item();
}

constexpr std::array<Line, 6> warm_up_lines{loosen, loosen, loosen, kick, kick, by_the_clock};
constexpr std::array<Line, 6> drill_lines{split_drill, split_drill, plain_drill,
                                          plain_drill, plain_drill, say};
constexpr std::array<Line, 12> main_lines{intervals, intervals, intervals, on_the_clock, on_the_clock, rounds,
                                          rounds,    ladder,    long_one,  faster_each,  pull,         named};

} // namespace

void define_sets(Twin& out) {
    out.begin_set(ladder_set);
    out.begin_item();
    out.ladder({100, 200, 100});
    out.word("stroke", "crawl");
    out.rest(30);
    out.end_item();
    out.end_set();

    out.begin_set(turns_set);
    out.begin_item();
    out.open_group(3);
    for (auto const stroke : {"crawl", "back"}) {
        out.begin_item();
        out.reps(1, 50);
        out.word("stroke", stroke);
        out.end_item();
    }
    out.close_group();
    out.rest(45);
    out.end_item();
    out.end_set();
}

void warm_up_line(Twin& out, Random& random, int lap) {
    random.pick(warm_up_lines)(out, random, lap);
}
void drill_line(Twin& out, Random& random, int lap) {
    random.pick(drill_lines)(out, random, lap);
}
void main_line(Twin& out, Random& random, int lap) {
    random.pick(main_lines)(out, random, lap);
}
void cool_down_line(Twin& out, Random& random, int lap) {
    loosen(out, random, lap);
}

void two_lanes(Twin& out, Random& random, int lap) {
    auto const count = random.between(4, 10);
    auto const metres = lap * random.between(2, 6);
    for (int lane = 1; lane <= 2; ++lane) {
        out.begin_item(lane);
        out.reps(count - lane + 1, metres);
        stroke_and_effort(out, random);
        any_rest(out, random);
        out.end_item();
    }
}

void optional_sprints(Twin& out, Random& random, int lap) {
    out.begin_item(0, true);
    out.reps(random.between(2, 6), lap);
    out.word("stroke", "crawl");
    out.word("effort", "sprint");
    out.send_off({5 * random.between(9, 14)});
    out.end_item();
}

void wait(Twin& out, Random& random) {
    out.pause(30 * random.between(1, 5));
}

} // namespace lengthwise::bench
