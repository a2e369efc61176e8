#include "support/course.hpp"

#include <numeric>

namespace lengthwise::test {
namespace {

/// A figure of `distance` in `unit`: whole, with a point (metres), or with a fraction.
std::vector<Spelling> figures(Distance distance, Unit unit) {
    auto const per = one(unit).units();
    auto const whole = std::to_string(distance.units() / per);
    auto const rest = distance.units() % per;
    if (rest == 0) {
        return {{whole}};
    }
    std::vector<Spelling> result;
    if (unit == Unit::metre && rest % (per / 100) == 0) {
        auto digits = std::to_string(100 + rest / (per / 100)).substr(1);
        auto const padded = whole + "." + digits;
        digits.erase(digits.find_last_not_of('0') + 1);
        result.push_back({whole + "." + digits, {padded}});
    }
    auto const common = std::gcd(rest, per);
    if (24 % (per / common) == 0) {
        auto const written = [&](std::int64_t times) {
            return whole + " " + std::to_string(rest / common * times) + "/" +
                   std::to_string(per / common * times);
        };
        bool const doubles = per / common <= 4; // 2, 3 and 4 have their double among the denominators
        result.push_back({written(1), doubles ? std::vector{written(2)} : std::vector<std::string>{}});
    }
    return result;
}

void add_unit(std::vector<Spelling>& to, std::vector<Spelling> const& figures, std::string const& tidy,
              std::vector<std::string> const& others) {
    for (auto const& [figure, figure_others] : figures) {
        bool const fraction = figure.find('/') != std::string::npos;
        Spelling spelling{figure + (fraction ? " " : "") + tidy};
        for (auto const& other : others) {
            spelling.others.push_back(figure + other);
        }
        for (auto const& other : figure_others) {
            spelling.others.push_back(other + " " + tidy);
        }
        to.push_back(spelling);
    }
}

Spelling in_lengths(std::int64_t count) {
    auto const n = std::to_string(count);
    return {n + (count == 1 ? " length" : " lengths"),
            {n + " lengths", n + "  length", "0" + n + " lengths"}};
}

/// A bare number that stands for so many lengths, though they are no whole number.
std::optional<std::int64_t> bare_count(Pool const& pool, std::int64_t lengths) {
    auto const per = one(pool.unit).units();
    auto const exact = pool.length.units() * lengths;
    for (auto const number : {exact / per, (2 * exact + per) / (2 * per)}) {
        if (exact % per != 0 && number > 0 && lengths_by_trying(pool, number) == lengths) {
            return number;
        }
    }
    return std::nullopt;
}

std::vector<Spelling> in_any_pool(std::int64_t number, Everywhere style) {
    auto const n = std::to_string(number);
    switch (style) {
    case Everywhere::metres:
        return {{n + "m", {n + " metres", n + " meter"}}};
    case Everywhere::yards:
        return {{n + "yd", {n + " yards"}}};
    case Everywhere::lengths:
        return {in_lengths(number / 25)};
    default:
        return {{n}};
    }
}

std::string joined(std::vector<std::string> const& steps) {
    std::string ladder;
    for (auto const& step : steps) {
        ladder += (ladder.empty() ? "" : ", ") + step;
    }
    return ladder;
}

std::optional<Spelling> ladder_in_unit(std::vector<Distance> const& steps, Unit unit) {
    std::vector<std::string> all;
    for (auto const step : steps) {
        auto const ways = figures(step, unit);
        if (ways.empty()) {
            return std::nullopt;
        }
        all.push_back(ways.front().tidy);
    }
    bool const fraction = all.back().find('/') != std::string::npos;
    std::string const name = unit == Unit::yard ? "yd" : "m";
    return Spelling{joined(all) + (fraction ? " " : "") + name, {joined(all) + "  " + name}};
}

/// Where bare numbers mean lengths that are not whole, all of them may be bare.
std::optional<Spelling> ladder_in_lengths(std::vector<Distance> const& steps, Pool const& pool) {
    std::vector<std::string> counts;
    std::vector<std::string> bare;
    bool inexact = false;
    for (auto const step : steps) {
        if (!pool.has_length() || !Distance::divides(pool.length, step)) {
            return std::nullopt;
        }
        auto const count = Distance::whole(step, pool.length);
        counts.push_back(std::to_string(count));
        if (auto const number = bare_count(pool, count)) {
            bare.push_back(std::to_string(*number));
            inexact = true;
        } else if (step.units() % one(pool.unit).units() == 0) {
            bare.push_back(std::to_string(step.units() / one(pool.unit).units()));
        }
    }
    auto const name = counts.back() == "1" ? " length" : " lengths";
    Spelling spelling{joined(counts) + name, {joined(counts) + " lengths"}};
    if (inexact && bare.size() == steps.size()) {
        spelling.others.assign(3, joined(bare));
    }
    return spelling;
}

} // namespace

std::vector<Course> const& courses() {
    auto const metres = [](std::int64_t n) { return Pool::of(Distance::metres(n), Unit::metre); };
    static std::vector<Course> const all{
        {Pool{}},
        {Pool::open_water(), "open water", {"Open  Water"}},
        {metres(25), "25m", {"25 metres", "25.0 m"}},
        {metres(50), "50", {"50.00"}},
        {metres(20), "20m", {"20  meter"}},
        {Pool::of(Distance::yards(25), Unit::yard), "25yd", {"25 yards", "25 yd"}},
        {Pool::of(Distance::units(1'000'000), Unit::metre), "33 1/3 m", {"33 2/6m", "33  8/24 metres"}},
        {Pool::of(Distance::units(1'005'840), Unit::yard), "36 2/3 yd", {"36 16/24 yards"}},
        {Pool::of(Distance::units(375'000), Unit::metre), "12.5m", {"12.50 m"}},
    };
    return all;
}

std::int64_t lengths_by_trying(Pool const& pool, std::int64_t number) {
    auto const per = one(pool.unit).units();
    std::int64_t first = 0;
    for (std::int64_t count = 1; pool.length.units() * (count - 1) <= number * per; ++count) {
        auto const exact = pool.length.units() * count;
        if (exact == number * per) {
            return count;
        }
        bool const cut = exact / per == number;
        bool const rounded = (2 * exact + per) / (2 * per) == number;
        first = first == 0 && (cut || rounded) ? count : first;
    }
    return first;
}

bool says_unit(Spelling const& way) {
    return way.tidy.find_first_of("mydlh") != std::string::npos; // of m, yd, length
}

std::vector<Spelling> ladder_writings(std::vector<Distance> const& steps, Course const& course) {
    std::vector<Spelling> result;
    if (course.everywhere == Everywhere::no) {
        for (auto const& way : {ladder_in_unit(steps, Unit::metre), ladder_in_unit(steps, Unit::yard),
                                ladder_in_lengths(steps, course.pool)}) {
            if (way) {
                result.push_back(*way);
            }
        }
    }
    return result;
}

std::vector<Spelling> writings_with_unit(Distance distance) {
    std::vector<Spelling> result;
    add_unit(result, figures(distance, Unit::metre), "m", {" m", " metres", " meter", "  metre"});
    add_unit(result, figures(distance, Unit::yard), "yd", {" yd", " yards", " yard"});
    return result;
}

std::vector<Spelling> writings(Distance distance, Course const& course) {
    if (course.everywhere != Everywhere::no) {
        return in_any_pool(distance.units() / Distance::per_metre, course.everywhere);
    }
    auto result = writings_with_unit(distance);
    auto const& pool = course.pool;
    bool const whole_laps = pool.has_length() && Distance::divides(pool.length, distance);
    if (whole_laps) {
        auto const count = Distance::whole(distance, pool.length);
        auto spelling = in_lengths(count);
        if (auto const bare = bare_count(pool, count)) {
            spelling.others.assign(3, std::to_string(*bare)); // what this pool is here for
        }
        result.push_back(spelling);
    }
    for (auto const& figure : figures(distance, pool.unit)) {
        bool const whole = figure.tidy.find_first_not_of("0123456789") == std::string::npos;
        auto const meant = whole && pool.has_length() ? lengths_by_trying(pool, std::stoll(figure.tidy)) : 0;
        if (meant == 0 || pool.length * meant == distance) {
            result.insert(result.end(), {figure, figure, figure}); // as most people write it
        }
    }
    return result;
}

std::vector<Spelling> writings(Duration time, bool with_unit) {
    auto const ms = time.ms();
    auto const seconds = ms / 1000;
    auto const two = [](std::int64_t n) { return std::to_string(100 + n).substr(1); };
    std::vector<Spelling> result;
    if (ms % 1000 == 0) {
        auto const n = std::to_string(seconds);
        result.push_back({n + "s", {n + " s", n + " sec", n + "secs", n + " second", n + " seconds"}});
    }
    if (ms % 60'000 == 0) {
        auto const n = std::to_string(seconds / 60);
        result.push_back({n + "min", {n + " min", n + "mins", n + " minute", n + " minutes"}});
    }
    if (ms % 3'600'000 == 0) {
        auto const n = std::to_string(seconds / 3600);
        result.push_back({n + "h", {n + " h", n + " hour", n + "hours"}});
    }
    if (with_unit) {
        return result;
    }
    auto fraction = ms % 1000 == 0 ? "" : "." + std::to_string(1000 + ms % 1000).substr(1);
    fraction.erase(fraction.find_last_not_of('0') + 1);
    auto const clock = two(seconds % 60) + fraction;
    auto const minutes = std::to_string(seconds / 60);
    auto const other = seconds < 60    ? ":" + clock
                       : seconds < 600 ? "0" + minutes + ":" + clock
                                       : minutes + ":" + clock;
    result.push_back({minutes + ":" + clock, {other}});
    if (seconds >= 3600 && ms % 1000 == 0) {
        result.push_back(
            {std::to_string(seconds / 3600) + ":" + two(seconds / 60 % 60) + ":" + two(seconds % 60)});
    }
    return result;
}

} // namespace lengthwise::test
