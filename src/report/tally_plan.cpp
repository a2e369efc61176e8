#include "report/tally_parts.hpp"
#include "report/tally_time.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>
#include <map>

/// The whole plan: a row a week, `longest` to be read down to the race at its foot.
namespace lengthwise::report {
namespace {

/// How much more a lane swims than the plain totals' lane, week by week.
using Differences = std::vector<std::pair<plan::Index, Distance>>;

std::string more_or_less(Distance difference, Unit unit, bool ascii) {
    bool const less = difference < Distance{};
    auto const size = less ? Distance{} - difference : difference;
    return spell::distance(size, unit, ascii) + (less ? " less" : " more");
}

std::string in_weeks(Screen const& screen, Differences const& differences, Unit unit) {
    constexpr std::size_t named = 2;
    std::string text;
    if (differences.size() <= named) {
        for (auto const& [week, difference] : differences) {
            text.append(text.empty() ? "" : " and ")
                .append(more_or_less(difference, unit, screen.ascii()))
                .append(" in ")
                .append(week_label(screen.plan().weeks[week]));
        }
        return text;
    }
    Distance all;
    for (auto const& [week, difference] : differences) {
        all += difference;
    }
    auto const sum = all.zero() ? std::string{"as much"} : more_or_less(all, unit, screen.ascii());
    return sum + " in all, other figures in " + std::to_string(differences.size()) + " weeks";
}

/// Gathers what other lanes swim otherwise while the weeks go by.
class OtherLanes {
  public:
    void add(plan::Index week, Tally const& tally, int lane, std::vector<int> const& lanes) {
        auto const plain = tally.swum(lane).totals;
        for (int const other : lanes) {
            auto const totals = tally.swum(other).totals;
            auto& own = lanes_[other];
            if (totals.distance != plain.distance) {
                own.first.emplace_back(week, totals.distance - plain.distance);
            }
            own.second = std::max(own.second, totals.longest);
        }
    }

    [[nodiscard]] std::vector<std::string> remarks(Screen const& screen, Distance longest, Unit unit) const {
        std::vector<std::pair<Lane, calc::LaneSet>> alike;
        for (auto const& [lane, own] : lanes_) {
            Lane const& figures = own;
            auto found = std::find_if(alike.begin(), alike.end(),
                                      [&](auto const& other) { return other.first == figures; });
            if (found == alike.end()) {
                found = alike.insert(found, {own, {}});
            }
            found->second.set(static_cast<std::size_t>(lane));
        }
        std::vector<std::string> sentences;
        for (auto const& [own, lanes] : alike) {
            auto const who = lanes_label(lanes, screen.ascii());
            auto const swims = lanes.count() == 1 ? " swims " : " swim ";
            auto const rep = "longest rep " + spell::distance(own.second, unit, screen.ascii());
            if (!own.first.empty()) {
                auto sentence = who + swims + in_weeks(screen, own.first, unit);
                sentences.push_back(own.second == longest ? sentence : sentence + ", " + rep);
            } else if (own.second != longest) {
                sentences.push_back(who + ": " + rep);
            }
        }
        return sentences;
    }

  private:
    using Lane = std::pair<Differences, Distance>; ///< and its longest rep
    std::map<int, Lane> lanes_;
};

class PlanTable {
  public:
    explicit PlanTable(Screen const& screen)
        : screen_(screen), weeks_(tallies(screen)), whole_(sum_of(weeks_)), lane_(whole_.lane()),
          shown_(shown_of(whole_, screen.summary.unit(), true)), table_({}) {
        shown_.time = any_time(weeks_, lane_);
        table_ = Table{head()};
    }

    [[nodiscard]] std::string text() {
        auto const lanes = calc::numbers(whole_.lanes());
        auto const& weeks = screen_.plan().weeks;
        for (plan::Index i = 0; i < weeks.size(); ++i) {
            add_week(weeks[i], weeks_[i].swum(lane_));
            others_.add(i, weeks_[i], lane_, lanes);
        }
        add_sums();
        table_.fit(1, screen_.options.width, screen_.ascii());
        return title(screen_, {plan_label(screen_.plan()), lane_part(whole_), common_pace(screen_, lane_)}) +
               table_.text(screen_.paint) + remarks(screen_, sentences()) +
               unknown_time(screen_, {0, static_cast<plan::Index>(screen_.plan().sessions.size())}, whole_);
    }

  private:
    [[nodiscard]] static std::vector<Tally> tallies(Screen const& screen) {
        std::vector<Tally> weeks;
        for (plan::Index i = 0; i < screen.plan().weeks.size(); ++i) {
            weeks.push_back(screen.summary.week(i));
        }
        return weeks;
    }

    [[nodiscard]] static Tally sum_of(std::vector<Tally> const& weeks) {
        Tally whole;
        for (auto const& week : weeks) {
            whole.add(week);
        }
        return whole;
    }

    /// False where no week's time is known.
    [[nodiscard]] static bool any_time(std::vector<Tally> const& weeks, int lane) {
        return std::any_of(weeks.begin(), weeks.end(),
                           [&](Tally const& week) { return week.swum(lane).time().has_value(); });
    }

    [[nodiscard]] std::vector<Column> head() const {
        std::vector<Column> all{{"", false}, {"", false}, {"from", false}, {"sessions"}};
        auto const figures = columns(shown_);
        all.insert(all.end(), figures.begin(), figures.end());
        return all;
    }

    void add_week(plan::Week const& week, Figures const& figures) {
        std::vector<Cell> cells{{week_label(week), {}}, {visible(week.name), {}}};
        cells.push_back({week.from ? spell::day_of_month(*week.from) : std::string{}, {}});
        cells.push_back(count_cell(week.sessions.count));
        append_cells(cells, figures, shown_, screen_.ascii());
        table_.row(cells);
    }

    void add_sums() {
        table_.gap();
        std::vector<Cell> total{{"total", {}}, {}, {}};
        total.push_back(count_cell(static_cast<std::int64_t>(screen_.plan().sessions.size())));
        append_cells(total, whole_.swum(lane_), shown_, screen_.ascii());
        table_.row(total, Ink::bold);
        if (whole_.has_if_time(lane_)) {
            std::vector<Cell> cells{{"if time", {}}, {}, {}, {}};
            append_extra_cells(cells, whole_.if_time(lane_), shown_, screen_.ascii());
            table_.row(cells);
        }
        if (auto const& race = screen_.plan().race) {
            std::vector<Cell> cells{{"race", {}}, {}, {spell::day_of_month(race->on), {}}, {}, {}};
            if (shown_.lengths) {
                cells.emplace_back();
            }
            cells.push_back(distance_cell(race->distance, shown_.unit, screen_.ascii()));
            table_.row(cells, Ink::bold);
        }
    }

    [[nodiscard]] std::vector<std::string> sentences() const {
        auto all = others_.remarks(screen_, whole_.swum(lane_).totals.longest, shown_.unit);
        auto const pools = pool_remarks(screen_, lane_);
        all.insert(all.end(), pools.begin(), pools.end());
        auto const times = time_remarks(whole_, shown_.unit);
        all.insert(all.end(), times.begin(), times.end());
        return all;
    }

    Screen const& screen_;
    std::vector<Tally> weeks_;
    Tally whole_;
    int lane_;
    Shown shown_;
    Table table_;
    OtherLanes others_;
};

} // namespace

std::string plan_screen(Screen const& screen) {
    if (screen.plan().sessions.empty()) {
        return title(screen, {plan_label(screen.plan())}) + "no session, so nothing to sum\n";
    }
    return PlanTable{screen}.text();
}

} // namespace lengthwise::report
