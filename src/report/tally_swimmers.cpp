#include "report/choose_swimmer.hpp"
#include "report/swimmer_figures.hpp"
#include "report/tally_parts.hpp"
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

/// All known paces are for the same distance, which a head can then say.
std::optional<plan::Threshold> common_pace(All const& all) {
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

class SwimmersTable {
  public:
    SwimmersTable(Screen const& screen, All const& all)
        : screen_(screen), all_(all), unit_(screen.summary.unit()), per_(common_pace(all)),
          shares_(any(all, [](auto const& one) { return one.swimmer->share.value_or(100) != 100; })),
          lengths_(any(all, [](auto const& one) { return one.has_lengths; })),
          timed_(any(all, [](auto const& one) { return one.figures.totals.timed_reps > 0; })),
          estimated_(any(all, [](auto const& one) { return !one.figures.times.estimated.zero(); })),
          time_(any(all, [](auto const& one) { return one.figures.time().has_value(); })), table_(head()) {}

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
            all.push_back({"share"});
        }
        auto const figures = columns(shown());
        all.insert(all.end(), figures.begin(), figures.end());
        if (time_) {
            all.push_back({"min"});
        }
        if (per_) {
            all.push_back({"per " + spell::distance(per_->per, per_->per_unit, screen_.ascii())});
        }
        return all;
    }

    [[nodiscard]] Shown shown() const {
        return {
            .unit = unit_, .lengths = lengths_, .longest = true, .timed = timed_, .estimated = estimated_};
    }

    void row(SwimmerFigures const& one) {
        std::vector<Cell> cells{{visible(one.swimmer->name), {}},
                                {one.swimmer->lane ? std::to_string(*one.swimmer->lane) : "-", {}}};
        if (shares_) {
            cells.push_back({std::to_string(one.swimmer->share.value_or(100)) + " %", {}});
        }
        append_cells(cells, one.figures, shown(), screen_.ascii());
        if (time_) {
            auto const time = one.figures.time();
            cells.push_back({time ? band_minutes(*time, screen_.ascii()) : "?", {}});
        }
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
    Unit unit_;
    std::optional<plan::Threshold> per_;
    bool shares_;
    bool lengths_;
    bool timed_;
    bool estimated_;
    bool time_;
    Table table_;
};

} // namespace

std::string swimmers_screen(Screen const& screen, std::string_view name) {
    auto const& options = screen.options;
    auto const all = swimmer_figures(screen.plan(), options.scope, options.lane, options.swimmer);
    SwimmersTable table{screen, all};
    auto const text = table.text();
    return title(screen, {std::string{name} + ", by swimmer"}) + text + remarks(screen, table.sentences());
}

} // namespace lengthwise::report
