#include "report/choose_swimmer.hpp"
#include "report/swimmer_figures.hpp"
#include "report/tally_parts.hpp"
#include "report/tally_time.hpp"
#include "report/time_words.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>

/// Swimmers side by side: a row each, never added up.
namespace lengthwise::report {
namespace {

using All = std::vector<SwimmerFigures>;

template <typename Has>
bool any(All const& all, Has has) {
    return std::ranges::any_of(all, has);
}

/// A pace of the distance that all known paces are for, which the title can then say.
std::optional<plan::Threshold> common_distance(All const& all) {
    std::optional<plan::Threshold> first;
    for (auto const& one : all) {
        if (!one.pace) {
            continue;
        }
        if (first && (one.pace->per != first->per || one.pace->per_unit != first->per_unit)) {
            return std::nullopt;
        }
        first = one.pace;
    }
    return first;
}

std::string names(All const& all) {
    constexpr std::size_t named = 3;
    std::string text;
    for (std::size_t i = 0; i < std::min(all.size(), named); ++i) {
        text.append(i == 0 ? "" : ", ").append(visible(all[i].swimmer->name));
    }
    return all.size() > named ? fmt::format("{} and {} more", text, all.size() - named) : text;
}

All those(All const& all, bool (*is)(SwimmerFigures const&)) {
    All some;
    std::ranges::copy_if(all, std::back_inserter(some), is);
    return some;
}

Shown shown_of(Unit unit, All const& all) {
    return {.unit = unit,
            .lengths = any(all, [](auto const& one) { return one.has_lengths; }),
            .longest = true,
            .timed = any(all, [](auto const& one) { return one.figures.totals.timed_reps > 0; }),
            .estimated = any(all, [](auto const& one) { return !one.figures.times.estimated.zero(); }),
            .time = any(all, [](auto const& one) { return one.figures.time().has_value(); })};
}

class SwimmersTable {
  public:
    SwimmersTable(Screen const& screen, All const& all)
        : screen_(screen), all_(all), per_(common_distance(all)),
          shares_(any(all, [](auto const& one) { return one.swimmer->share.value_or(100) != 100; })),
          shown_(shown_of(screen.summary.unit(), all)), table_(head()) {}

    /// "pace per 100 m", where that is one for all.
    [[nodiscard]] std::string pace_part() const {
        return per_ ? "pace per " + spell::distance(per_->per, per_->per_unit, screen_.ascii()) : "";
    }

    [[nodiscard]] std::string text() {
        for (auto const& one : all_) {
            row(one);
        }
        table_.fit(0, screen_.options.width, screen_.ascii());
        return table_.text(screen_.paint);
    }

    [[nodiscard]] std::vector<std::string> sentences() const {
        std::vector<std::string> result;
        auto const lane = those(all_, [](auto const& one) { return one.has_lanes && !one.swimmer->lane; });
        if (!lane.empty()) {
            result.push_back(
                fmt::format("no lane for {}: counted in lane {}", names(lane), lane.front().lane));
        }
        auto const pace = those(all_, [](auto const& one) { return !one.pace && !one.several_paces; });
        if (!pace.empty()) {
            result.push_back(fmt::format("no threshold for {}, so no time", names(pace)));
        }
        if (shown_.estimated) {
            result.push_back(timed_apart(shown_.unit));
        }
        if (any(all_, [](auto const& one) { return one.figures.times.assumed != plan::no_index; })) {
            result.emplace_back("35, 20, 10 m of reserve assumed");
        }
        for (auto const& one :
             per_ ? All{} : those(all_, [](auto const& some) { return some.pace.has_value(); })) {
            result.push_back(visible(one.swimmer->name) + " " + pace_text(*one.pace, screen_.ascii()));
        }
        return result;
    }

  private:
    [[nodiscard]] std::vector<Column> head() const {
        std::vector<Column> all{{"", false}, {"lane"}};
        if (shares_) {
            all.push_back({"%"});
        }
        auto const figures = columns(shown_);
        all.insert(all.end(), figures.begin(), figures.end());
        if (per_) {
            all.push_back({"pace"});
        }
        return all;
    }

    void row(SwimmerFigures const& one) {
        std::vector<Cell> cells{{visible(one.swimmer->name), {}},
                                {one.swimmer->lane ? std::to_string(*one.swimmer->lane) : "-", {}}};
        if (shares_) {
            cells.push_back({std::to_string(one.swimmer->share.value_or(100)), {}});
        }
        append_cells(cells, one.figures, shown_, screen_.ascii());
        if (per_) {
            cells.push_back({pace(one), {}});
        }
        table_.row(cells);
    }

    [[nodiscard]] static std::string pace(SwimmerFigures const& one) {
        if (!one.pace) {
            return one.several_paces ? "several" : "?";
        }
        return (one.pace->about ? "about " : "") + spell::clock(one.pace->time);
    }

    Screen const& screen_;
    All const& all_;
    std::optional<plan::Threshold> per_;
    bool shares_;
    Shown shown_;
    Table table_;
};

} // namespace

std::string swimmers_screen(Screen const& screen, std::string_view name) {
    auto const& options = screen.options;
    auto const all = swimmer_figures(screen.plan(), options.scope, options.lane, options.swimmer);
    SwimmersTable table{screen, all};
    auto const text = table.text();
    return title(screen, {std::string{name} + ", by swimmer", table.pace_part()}) + text +
           remarks(screen, table.sentences());
}

} // namespace lengthwise::report
