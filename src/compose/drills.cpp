#include "compose/drills.hpp"

#include <algorithm>

namespace lengthwise::compose {

namespace {

constexpr std::array<std::string_view, 7> names{"Body line", "Breathing",   "Kick",           "Catch",
                                                "Timing",    "At the wall", "Finding the way"};

constexpr std::array table{
    Drill{push_and_glide, Focus::body, 0, "", "Long line, eyes down: glide before the first stroke"},
    Drill{"arms long, kick", Focus::body, 0, "", "Look at the floor, hips at the surface, small kick"},
    Drill{"side kick", Focus::body, 1, "arms long, kick",
          "Ear on the long arm, one hip up; change sides each rep"},

    Drill{bubbles, Focus::breath, 0, "", "Breathe out all the while the face is in the water"},
    Drill{"both sides", Focus::breath, 1, bubbles,
          "Breathe to the left, then to the right; need air? Take it"},
    Drill{"one arm", Focus::breath, 1, bubbles, "Other arm in front; turn the head with the shoulder"},
    Drill{"roll to breathe", Focus::breath, 1, "side kick",
          "Kick on the side; roll until the mouth is free, eye stays wet"},

    Drill{"kick on the back", Focus::kick, 0, "", "Knees stay under, toes just make the water boil"},
    Drill{"kick from the hip", Focus::kick, 0, "arms long, kick",
          "Loose ankles, quick and small, no bicycle"},
    Drill{"six-kick switch", Focus::kick, 1, "side kick",
          "Six kicks on one side, one stroke, six on the other"},

    Drill{"fist", Focus::catch_, 0, "", "Press back with the forearm, then open the hand"},
    Drill{"long dog paddle", Focus::catch_, 0, "", "Reach and pull under water, elbow above the hand"},
    Drill{"front scull", Focus::catch_, 1, "fist", "Elbows still, palms sweep out and in, feel the weight"},

    Drill{catch_up, Focus::timing, 0, "", "One hand waits in front until the other arrives"},
    Drill{"finger drag", Focus::timing, 0, "", "Fingertips draw a line on the water, elbow leads"},
    Drill{"one arm, other at the side", Focus::timing, 2, "one arm",
          "Roll from the hip; breathe away from the moving arm"},

    Drill{"touch and go", Focus::wall, 0, "", "Touch, tuck, push at once, glide, then stroke"},
    Drill{"open turn", Focus::wall, 1, "touch and go", "One hand on, knees up, fall to the side, push deep"},

    Drill{"eyes up", Focus::sight, 0, "", "Eyes just above the water, look, then roll to breathe"},
    Drill{"head-up crawl", Focus::sight, 1, "eyes up", "Six strokes chin at the surface, then swim on"},
    Drill{"blind six", Focus::sight, 1, "eyes up", "Lane clear? Six strokes eyes shut, look, correct"},
    Drill{"in the wake", Focus::sight, 1, "eyes up", "Out: close behind a partner's feet. Home: you lead"},
};

} // namespace

std::string_view name_of(Focus focus) {
    return names[static_cast<std::size_t>(focus)];
}

std::span<Drill const> drills() {
    return table;
}

Drill const& drill_named(std::string_view name) {
    return *std::ranges::find(table, name, &Drill::name);
}

} // namespace lengthwise::compose
