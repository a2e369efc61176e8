#include "report/choose_swimmer.hpp"

#include "grammar/words.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <vector>

namespace lengthwise::report {
namespace {

constexpr std::size_t listed = 5;

std::string small(std::string_view text) {
    std::string result{text};
    std::ranges::transform(result, result.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return result;
}

using Found = std::vector<plan::Index>;

template <typename Fits>
Found swimmers_that(plan::Plan const& plan, Fits fits) {
    Found found;
    for (plan::Index i = 0; i < plan.swimmers.size(); ++i) {
        if (fits(plan.swimmers[i].name)) {
            found.push_back(i);
        }
    }
    return found;
}

/// All that fit equally well, the better ones first asked.
Found swimmers_like(plan::Plan const& plan, std::string_view asked) {
    auto const name = small(asked);
    auto found = swimmers_that(plan, [&](auto text) { return text == asked; });
    if (found.empty()) {
        found = swimmers_that(plan, [&](auto text) { return small(text) == name; });
    }
    if (found.empty()) {
        found = swimmers_that(plan, [&](auto text) { return small(text).starts_with(name); });
    }
    return found;
}

std::string names(plan::Plan const& plan, Found const& swimmers) {
    std::string text;
    for (std::size_t i = 0; i < std::min(swimmers.size(), listed); ++i) {
        text.append(i == 0 ? "" : ", ").append(visible(plan.swimmers[swimmers[i]].name));
    }
    return swimmers.size() > listed ? fmt::format("{} and {} more", text, swimmers.size() - listed) : text;
}

std::string nobody(plan::Plan const& plan, std::string_view asked) {
    auto const problem = fmt::format("no swimmer \"{}\"", visible(asked));
    if (plan.swimmers.empty()) {
        return problem + "; the plan names none";
    }
    for (int distance = 1; distance <= 2; ++distance) {
        for (auto const& swimmer : plan.swimmers) {
            if (edit_distance(small(asked), small(swimmer.name), distance) <= distance) {
                return fmt::format("{}; did you mean \"{}\"?", problem, visible(swimmer.name));
            }
        }
    }
    return fmt::format("{}; the plan has {}", problem,
                       names(plan, swimmers_that(plan, [](auto) { return true; })));
}

} // namespace

PickedSwimmer pick_swimmer(plan::Plan const& plan, Wish const& wish) {
    if (!wish.swimmer) {
        return {std::nullopt, wish.lane, {}};
    }
    auto const found = swimmers_like(plan, *wish.swimmer);
    if (found.empty()) {
        return {{}, {}, nobody(plan, *wish.swimmer)};
    }
    if (found.size() > 1) {
        return {{}, {}, fmt::format("\"{}\" may be {}", visible(*wish.swimmer), names(plan, found))};
    }
    auto const& swimmer = plan.swimmers[found.front()];
    if (swimmer.lane && wish.lane && *wish.lane != *swimmer.lane) {
        return {{},
                {},
                fmt::format("{} swims in lane {}, not in lane {}", visible(swimmer.name), *swimmer.lane,
                            *wish.lane)};
    }
    auto const own = swimmer.lane ? std::optional{int{*swimmer.lane}} : std::nullopt;
    return {found.front(), wish.lane ? wish.lane : own, {}};
}

std::string swimmer_label(plan::Swimmer const& swimmer) {
    auto const name = std::string{visible(swimmer.name)};
    return swimmer.share.value_or(100) == 100 ? name : fmt::format("{}, {} %", name, *swimmer.share);
}

} // namespace lengthwise::report
