#include "generator.hpp"

#include "lines.hpp"
#include "phrases.hpp"
#include "random.hpp"
#include "twin.hpp"

#include <fmt/format.h>

#include <chrono>
#include <string_view>
#include <utility>

namespace lengthwise::bench {

namespace {

constexpr int plan_lap = 25;
constexpr std::uint64_t seed = 750;
constexpr std::uint64_t bytes_a_session = 380; ///< about
constexpr std::uint64_t weeks_wanted = 900;    ///< 999 is the notation's last; the rest is for chance

void opening_section(Twin& out, Random& random, int lap) {
    out.begin_section("warm-up", {});
    for (int i = random.between(1, 2); i > 0; --i) {
        warm_up_line(out, random, lap);
    }
    out.end_section();
}

void drill_section(Twin& out, Random& random, int lap) {
    out.begin_section("drill", {});
    for (int i = random.between(1, 2); i > 0; --i) {
        drill_line(out, random, lap);
    }
    out.end_section();
}

void main_section(Twin& out, Random& random, int lap) {
    out.begin_section("main", random.chance(10) ? random.pick(phrases::section_names) : std::string_view{});
    main_line(out, random, lap);
    if (random.chance(12)) {
        wait(out, random);
    }
    for (int i = random.between(1, 4); i > 0; --i) {
        main_line(out, random, lap);
        if (random.chance(3)) {
            out.comment(random.pick(phrases::comments));
        }
    }
    if (random.chance(12)) {
        two_lanes(out, random, lap);
    }
    if (random.chance(15)) {
        optional_sprints(out, random, lap);
    }
    out.end_section();
}

void closing_section(Twin& out, Random& random, int lap) {
    out.begin_section("cool-down", {});
    cool_down_line(out, random, lap);
    out.end_section();
}

void session(Twin& out, Random& random, std::string_view day) {
    auto const lap = random.chance(6) ? 2 * plan_lap : plan_lap;
    auto const start = 15 * random.between(24, 84);
    auto const slot = 15 * random.between(2, 6);
    out.begin_session(day, start, slot, random.pick(phrases::session_names), lap);
    opening_section(out, random, lap);
    if (random.chance(80)) {
        drill_section(out, random, lap);
    }
    main_section(out, random, lap);
    closing_section(out, random, lap);
    out.end_session();
}

std::string monday_of(int week) {
    using namespace std::chrono;
    year_month_day const date{sys_days{2027y / April / 19} + weeks{week - 1}};
    return fmt::format("{}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                       static_cast<unsigned>(date.day()));
}

void week(Twin& out, Random& random, int number, std::size_t sessions) {
    out.begin_week(number, monday_of(number));
    for (std::size_t i = 0; i < sessions; ++i) {
        session(out, random, phrases::days[i * phrases::days.size() / sessions]);
    }
    out.end_week();
}

void begin(Twin& out, std::string_view name) {
    out.begin_plan(name, plan_lap);
    define_sets(out);
    out.begin_weeks();
}

Generated finish(Twin& out) {
    out.end_plan();
    return {std::move(out.notation()), std::move(out.json()), out.sessions(), out.metres()};
}

} // namespace

Generated generate(std::uint64_t bytes, bool with_json) {
    Random random{seed};
    Twin out{with_json};
    begin(out, "Club archive");
    auto const sessions_a_week = bytes / bytes_a_session / weeks_wanted + 1;
    for (int number = 1; out.notation().size() < bytes; ++number) {
        week(out, random, number, sessions_a_week);
    }
    return finish(out);
}

Generated generate_week() {
    Random random{seed};
    Twin out{false};
    begin(out, "One week");
    week(out, random, 1, 3);
    return finish(out);
}

} // namespace lengthwise::bench
