#include "support/generate_items.hpp"

#include <algorithm>

namespace lengthwise::test {
namespace {

constexpr int deepest_group = 3;
constexpr int highest_set = 8; ///< far from limits::nesting

/// Metres of a length in the longest pool of courses(), rounded up.
constexpr std::int64_t longest_lap = 50;

} // namespace

KnownSet ItemGenerator::item(int level, std::int64_t budget, bool may_spread, int depth) {
    if (depth < deepest_group && draft_.chance(draft_.wanted.groups)) {
        return group(level, budget, may_spread, depth);
    }
    auto const sets = usable(budget, depth);
    if (!sets.empty() && draft_.chance(draft_.wanted.uses)) {
        return use(draft_.one_of(sets), budget);
    }
    return draft_.chance(draft_.wanted.ladders) ? ladder(budget) : reps(budget);
}

/// Writes a count now and then; `1 x` as well.
int ItemGenerator::count(int most, std::int64_t budget) {
    auto const n = draft_.between(1, static_cast<int>(std::clamp<std::int64_t>(budget, 1, most)));
    if (draft_.chance(n == 1 ? 5 : 70)) {
        pen_.times(n);
        return n;
    }
    return 1;
}

/// group = "(" [ NL ] item { ( [ NL ] "+" [ NL ] | NL ) item } [ NL ] ")"
KnownSet ItemGenerator::group(int level, std::int64_t budget, bool may_spread, int depth) {
    Front front{.rounds = true};
    front.count = count(6, budget / 100);
    bool const spread = may_spread && draft_.chance(30);
    auto const items = draft_.between(1, 3);
    KnownSet all{{}, counts_lengths()};
    pen_.open(spread, level + 1);
    for (int i = 0; i < items; ++i) {
        if (i > 0) {
            pen_.next_item(spread, level + 1, spread && draft_.chance(10));
        }
        auto const one = item(level + 1, budget / front.count / items, spread, depth + 1);
        all.weight += one.weight;
        all.height = std::max(all.height, one.height);
        all.lengths = all.lengths || one.lengths;
    }
    pen_.close(spread, level);
    all.weight *= front.count;
    ++all.height;
    modifiers_.behind_item(front);
    return all;
}

/// use = "use" STRING
KnownSet ItemGenerator::use(KnownSet const& set, std::int64_t budget) {
    Front front{.rounds = true};
    front.count = count(4, budget / set.weight);
    pen_.word("use");
    pen_.exact(set.name);
    modifiers_.behind_item(front);
    return {{}, set.lengths || counts_lengths(), set.height + 1, set.weight * front.count};
}

/// A pool without a length has no use for sets that count lengths.
std::vector<KnownSet> ItemGenerator::usable(std::int64_t budget, int depth) const {
    std::vector<KnownSet> sets;
    for (auto const& set : draft_.sets) {
        bool const lengths_known =
            draft_.course.everywhere != Everywhere::no || draft_.course.pool.has_length();
        if (set.weight <= budget && set.height + depth < highest_set && (!set.lengths || lengths_known)) {
            sets.push_back(set);
        }
    }
    return sets;
}

/// amount { "," amount }
KnownSet ItemGenerator::ladder(std::int64_t budget) {
    Front front{.timed = draft_.chance(draft_.wanted.timed)};
    front.count = draft_.between(2, 5);
    std::vector<std::int64_t> amounts;
    KnownSet all{{}, counts_lengths()};
    for (int i = 0; i < front.count; ++i) {
        amounts.push_back(amount(front.timed, budget / front.count));
        all.weight += weight(amounts.back(), front.timed);
        front.longest = std::max(front.longest, Duration::ms(front.timed ? amounts.back() : 0));
    }
    front.timed ? times(amounts) : steps(amounts);
    modifiers_.behind_item(front);
    return all;
}

void ItemGenerator::times(std::vector<std::int64_t> const& amounts) {
    for (std::size_t i = 0; i < amounts.size(); ++i) {
        if (i > 0) {
            pen_.comma();
        }
        draft_.write(Duration::ms(amounts[i]));
    }
}

/// Units stand on all, on none, or on the last for all.
void ItemGenerator::steps(std::vector<std::int64_t> const& amounts) {
    std::vector<Distance> distances;
    std::vector<std::vector<Spelling>> ways;
    for (auto const amount : amounts) {
        distances.push_back(Distance::units(amount));
        ways.push_back(writings(distances.back(), draft_.course));
    }
    auto const governed = ladder_writings(distances, draft_.course);
    if (!governed.empty() && draft_.chance(40)) {
        return draft_.write(governed);
    }
    auto const all_can_be = [&](bool unit) {
        return std::ranges::all_of(ways, [&](auto const& some) {
            return std::ranges::any_of(some, [&](Spelling const& way) { return says_unit(way) == unit; });
        });
    };
    bool const units = draft_.chance(50) ? all_can_be(true) : !all_can_be(false);
    for (std::size_t i = 0; i < ways.size(); ++i) {
        if (i > 0) {
            pen_.comma();
        }
        std::erase_if(ways[i], [&](Spelling const& way) { return says_unit(way) != units; });
        auto way = draft_.one_of(ways[i]);
        std::erase_if(way.others, [&](std::string const& other) { return says_unit({other}) != units; });
        pen_.word(way);
    }
}

/// [ NUM X ] amount, perhaps in parts or broken
KnownSet ItemGenerator::reps(std::int64_t budget) {
    Front front{.timed = draft_.chance(draft_.wanted.timed)};
    front.split = draft_.chance(draft_.wanted.splits);
    auto const rep = front.split ? amount_in_parts(front, budget) : amount(front.timed, budget);
    if (draft_.chance(draft_.wanted.broken)) {
        break_up(front, rep);
    }
    auto const breaks = front.piece == 0 ? 0 : (rep - 1) / front.piece;
    front.longest = Duration::ms(front.timed ? rep : 0) + breaks * front.pause;
    auto const one = front.timed ? weight(front.longest.ms(), true) : weight(rep, false);
    front.count = count(12, budget / one);
    draft_.write_amount(rep, front.timed);
    modifiers_.behind_item(front);
    return {{}, counts_lengths(), 0, one * front.count};
}

std::int64_t ItemGenerator::amount(bool timed, std::int64_t budget) {
    if (timed) {
        return draft_.seconds(10, static_cast<int>(std::clamp<std::int64_t>(budget, 10, 600))).ms();
    }
    auto const step = draft_.step();
    auto const most = std::clamp<std::int64_t>(budget / weight(step.units(), false), 1, 12);
    return step.units() * draft_.between(1, static_cast<int>(most));
}

/// Parts that add up to the rep, or to a whole fraction of it.
std::int64_t ItemGenerator::amount_in_parts(Front& front, std::int64_t budget) {
    auto const step = front.timed ? Duration::seconds(15).ms() : draft_.step().units();
    std::int64_t sum = 0;
    for (int parts = draft_.between(1, 3); parts > 0; --parts) {
        front.parts.push_back(step * draft_.between(1, 3));
        sum += front.parts.back();
    }
    auto const most = std::clamp<std::int64_t>(budget / weight(sum, front.timed), 1, 4);
    return sum * draft_.between(1, static_cast<int>(most));
}

/// Pieces are shorter than the rep, and whole lengths where there are any; in a set they can only be that
/// where it counts lengths.
void ItemGenerator::break_up(Front& front, std::int64_t rep) {
    auto const& course = draft_.course;
    bool const in_set = course.everywhere != Everywhere::no;
    if (in_set && !counts_lengths() && !front.timed) {
        return;
    }
    auto const pool_step = course.pool.has_length() ? course.pool.length : one(course.pool.unit) * 25;
    auto const step =
        front.timed ? Duration::seconds(5).ms() : (in_set ? Distance::metres(25) : pool_step).units();
    auto const most = (rep - 1) / step;
    if (most >= 1) {
        front.piece = step * draft_.between(1, static_cast<int>(most));
        front.pause = draft_.seconds(0, 30);
    }
}

/// In a set a length may be any.
std::int64_t ItemGenerator::weight(std::int64_t amount, bool timed) const {
    if (timed) {
        return amount / 1000 + 1;
    }
    auto const metres = amount / Distance::per_metre + 1;
    return counts_lengths() ? metres * longest_lap / 25 : metres;
}

} // namespace lengthwise::test
