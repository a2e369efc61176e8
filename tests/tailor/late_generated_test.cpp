#include "calc/longest.hpp"
#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"
#include "tailor/late.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>
#include <random>
#include <string>
#include <vector>

/// Sessions that run late, held against plans whose text lacks the lines that are left out.
namespace lengthwise {
namespace {

using plan::Index;
using plan::Plan;
using tailor::Late;
using tailor::LateLine;

struct Case {
    std::string const& text;
    Plan const& plan;
    tailor::LateWish wish;
};

/// The text without those lines of the session for which `stays` is false; `if time` lines that stay
/// are lines like any other.
std::string text_of(Case const& c, std::function<bool(Index)> const& stays) {
    auto text = c.text;
    auto const sections = c.plan.sessions[c.wish.session].sections;
    for (auto s = sections.end(); s-- > sections.first;) {
        std::vector<Index> lines;
        auto const items = plan::items_from(c.plan, c.plan.sections[s].body);
        for (auto item = items.begin(); item != items.end(); ++item) {
            lines.push_back(item.index());
        }
        for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
            auto const& item = c.plan.items[*line];
            auto const begin = text.rfind('\n', item.span.begin - 1) + 1;
            auto const end = std::min(text.find('\n', item.span.end - 1), text.size());
            if (!stays(*line)) {
                text.erase(begin, end + 1 - begin);
            } else if (item.optional) {
                auto const at = text.find("if time: ", begin);
                REQUIRE(at < item.span.begin);
                text.erase(at, 9);
            }
        }
    }
    return text;
}

/// The times of a lane in such a text.
std::vector<calc::LineTimes> times_of(Case const& c, int lane, std::function<bool(Index)> const& stays) {
    auto const text = text_of(c, stays);
    auto const read = support::read_plan(text);
    INFO("without lines:\n" << text);
    REQUIRE(read.error() == "");
    calc::Clock clock{read.plan()};
    return clock.lines(c.wish.session, lane);
}

Duration end_of(std::vector<calc::LineTimes> const& lines) {
    return lines.empty() ? Duration{} : lines.back().end->high;
}

void check_times(Case const& c, Late const& late) {
    for (std::size_t i = 0; i < late.lanes.size(); ++i) {
        std::vector<Index> stays;
        std::vector<Duration> starts;
        for (auto const& line : late.lines) {
            if (line.lanes[i].stays) {
                stays.push_back(line.item);
            }
            if (line.lanes[i].start) {
                starts.push_back(*line.lanes[i].start);
            }
        }
        auto const lines = times_of(c, late.lanes[i].lane, [&](Index item) {
            return std::find(stays.begin(), stays.end(), item) != stays.end();
        });
        REQUIRE(lines.size() == starts.size());
        for (std::size_t row = 0; row < lines.size(); ++row) {
            REQUIRE(lines[row].start->high == starts[row]);
        }
        REQUIRE(end_of(lines) == late.lanes[i].end.high);
        if (!lines.empty()) {
            REQUIRE(lines.back().end->expected == late.lanes[i].end.expected);
        }
    }
}

SectionKind kind_of(Case const& c, LateLine const& line) {
    return c.plan.sections[line.section].kind;
}

bool is_row(Case const& c, LateLine const& line) {
    return c.plan.items[line.item].is_swum();
}

/// How early a row goes: `if time`, main, drill, warm-up, each from its end.
std::pair<int, int> turn(Case const& c, LateLine const& line) {
    auto const item = -static_cast<int>(line.item);
    if (line.number == 0) {
        return {0, item};
    }
    auto const kind = kind_of(c, line);
    return {kind == SectionKind::main ? 1 : kind == SectionKind::drill ? 2 : 3, item};
}

/// What goes had to go: with it and all that goes later, one of its lanes would be over.
void check_needed(Case const& c, Late const& late) {
    for (auto const& row : late.lines) {
        if (!row.left_out || !is_row(c, row)) {
            continue;
        }
        REQUIRE((row.number == 0 || kind_of(c, row) != SectionKind::cool_down));
        bool needed = false;
        for (std::size_t i = 0; i < late.lanes.size() && !needed; ++i) {
            auto const lane = late.lanes[i].lane;
            if (!c.plan.items[row.item].swum_by(lane)) {
                continue;
            }
            std::vector<Index> stays;
            bool row_stays = true;
            for (auto const& line : late.lines) {
                auto const& item = c.plan.items[line.item];
                if (is_row(c, line) && !item.swum_by(lane)) {
                    continue;
                }
                bool const pause = !is_row(c, line);
                bool const there = pause ? row_stays : !line.left_out || turn(c, line) >= turn(c, row);
                row_stays = pause || line.number == 0 ? row_stays : there;
                if (there) {
                    stays.push_back(line.item);
                }
            }
            needed = end_of(times_of(c, lane, [&](Index item) {
                         return std::find(stays.begin(), stays.end(), item) != stays.end();
                     })) > c.wish.left;
        }
        CAPTURE(row.number);
        REQUIRE(needed);
    }
}

/// The rows that hold a lane's longest rep, by number.
std::vector<int> long_rows(Case const& c, int lane) {
    auto const& session = c.plan.sessions[c.wish.session];
    auto const longest = calc::longest_of_session(c.plan, c.wish.session, lane).distance;
    calc::Reckoner reckoner{c.plan};
    std::vector<int> rows;
    int number = 0;
    for (auto s = session.sections.first; s < session.sections.end(); ++s) {
        for (plan::Item const& item : plan::items_from(c.plan, c.plan.sections[s].body)) {
            bool const row = item.is_swum() && !item.optional;
            number += row ? 1 : 0;
            if (row && item.swum_by(lane) && !longest.zero() &&
                reckoner.of_item(session, item).longest == longest) {
                rows.push_back(number);
            }
        }
    }
    return rows;
}

/// A lane that is over has its cool-down and long reps left, nothing else; they never go.
void check_kept(Case const& c, Late const& late) {
    std::vector<int> kept;
    for (auto const& lane : late.lanes) {
        auto const rows = long_rows(c, lane.lane);
        kept.insert(kept.end(), rows.begin(), rows.end());
        if (!rows.empty() && rows.front() > c.wish.after) {
            REQUIRE(std::any_of(late.lines.begin(), late.lines.end(), [&](LateLine const& line) {
                return !line.left_out && std::find(rows.begin(), rows.end(), line.number) != rows.end();
            }));
        }
    }
    for (std::size_t i = 0; i < late.lanes.size(); ++i) {
        for (auto const& line : late.lines) {
            if (late.lanes[i].end.high > c.wish.left && line.lanes[i].start) {
                bool const may_stay = kind_of(c, line) == SectionKind::cool_down ||
                                      std::find(kept.begin(), kept.end(), line.number) != kept.end();
                REQUIRE((line.number > 0 && may_stay));
            }
        }
    }
}

struct Counts {
    int answered = 0;
    int left_out = 0;
    int over = 0;
    int unknown = 0;
};

void check_case(Case const& c, Counts& counts) {
    INFO(c.text);
    CAPTURE(c.wish.session, c.wish.after, c.wish.left.ms(), c.wish.lane.value_or(0));
    auto const late = tailor::late(c.plan, c.wish);
    if (late.problem != Late::Problem::none) {
        counts.unknown += late.problem == Late::Problem::no_pace ? 1 : 0;
        return;
    }
    ++counts.answered;
    check_times(c, late);
    check_needed(c, late);
    check_kept(c, late);
    for (auto const& line : late.lines) {
        counts.left_out += line.left_out && is_row(c, line) ? 1 : 0;
    }
    for (auto const& lane : late.lanes) {
        counts.over += lane.end.high > c.wish.left ? 1 : 0;
    }
}

void check_seed(std::uint64_t seed, Counts& counts) {
    CAPTURE(seed);
    auto const made = test::generate({.seed = seed});
    auto const read = support::read_plan(made.text);
    REQUIRE(read.error() == "");
    std::mt19937_64 random{seed};
    for (Index session = 0; session < read.plan().sessions.size(); ++session) {
        tailor::LateWish wish;
        wish.session = session;
        wish.after = static_cast<int>(random() % 6);
        wish.left = Duration::seconds(static_cast<std::int64_t>(10 << random() % 12));
        auto const lane = static_cast<int>(random() % 5);
        wish.lane = lane == 0 ? std::nullopt : std::optional{lane};
        wish.lane = lane == 4 ? std::nullopt : wish.lane;
        check_case({made.text, read.plan(), wish}, counts);
    }
}

} // namespace

TEST_CASE("generated sessions that run late are timed as without the lines left out", "[late]") {
    Counts counts;
    for (std::uint64_t seed = 0; seed < 1'000; ++seed) {
        check_seed(seed, counts);
    }
    CHECK(counts.answered > 500);
    CHECK(counts.left_out > 500);
    CHECK(counts.over > 100);
    CHECK(counts.unknown > 50);
}

TEST_CASE("many generated sessions that run late are timed as without the lines left out", "[late][long]") {
    Counts counts;
    for (std::uint64_t seed = 1'000; seed < 21'000; ++seed) {
        check_seed(seed, counts);
    }
}

} // namespace lengthwise
