#include "compose/calendar.hpp"

#include "calc/growth.hpp"

#include <algorithm>

namespace lengthwise::compose {

namespace {

using std::chrono::days;

/// A race this many days into its week or later leaves that week whole enough to count.
constexpr auto late_in_week = days{4};

constexpr int eased_percent = 70;

class Maker {
  public:
    explicit Maker(Request const& request)
        : request_(request),
          whole_weeks_(static_cast<std::size_t>((request.race.on - request.from) / days{7})) {
        auto const race_week = start(whole_weeks_);
        auto const before_race = training_days(race_week);
        auto const counts = !before_race.empty() && request.race.on - race_week >= late_in_week;
        calendar_.counted = whole_weeks_ + (counts ? 1 : 0);
        calendar_.taper = calc::taper_weeks(request.race.distance,
                                            calendar_.counted + static_cast<std::size_t>(request.weeks_swum));
        auto const on_top = !before_race.empty() && !counts;
        all_ = calendar_.counted + (on_top ? 1 : 0);
    }

    Calendar make() {
        for (std::size_t i = 0; i < all_; ++i) {
            add(i);
        }
        lay_blocks();
        calendar_.build_weeks =
            static_cast<int>(std::ranges::count(calendar_.weeks, WeekKind::build, &CalendarWeek::kind));
        return std::move(calendar_);
    }

  private:
    [[nodiscard]] Date start(std::size_t week) const {
        return request_.from + days{7 * static_cast<std::int64_t>(week)};
    }

    /// Training days of the week from `from`, before race day, closed or not.
    [[nodiscard]] std::vector<Date> training_days(Date from) const {
        std::vector<Date> found;
        for (auto date = from; date < std::min(from + days{7}, request_.race.on); date += days{1}) {
            if (std::ranges::count(request_.days, weekday(date)) > 0) {
                found.push_back(date);
            }
        }
        return found;
    }

    [[nodiscard]] std::size_t build_end() const {
        return calendar_.counted > calendar_.taper ? calendar_.counted - calendar_.taper : 0;
    }

    /// Two taper weeks have 60 and 40 percent, one has half; what comes on top has the last of these.
    [[nodiscard]] int taper_percent(std::size_t week) const {
        auto const first_of_two = calendar_.taper == 2 && week == build_end();
        auto const share = calendar_.taper == 1 ? 50 : first_of_two ? 60 : 40;
        return static_cast<int>(
            std::min<std::int64_t>(share, limit_or(request_, "taper", calc::usual::taper)));
    }

    void add(std::size_t i) {
        CalendarWeek week;
        week.number = request_.first_week + static_cast<int>(i);
        week.from = start(i);
        week.days = training_days(week.from);
        std::erase_if(week.days, [&](Date date) { return std::ranges::count(request_.closed, date) > 0; });
        week.holds_race = i == whole_weeks_;
        if (week.days.empty()) {
            week.kind = WeekKind::empty;
        } else if (i >= build_end()) {
            week.kind = WeekKind::taper;
            week.percent = taper_percent(i);
        } else if (week.days.size() < request_.days.size()) {
            week.kind = WeekKind::eased;
            week.percent = eased_percent;
        }
        calendar_.weeks.push_back(std::move(week));
    }

    /// Each stretch of whole weeks has blocks of its own.
    void lay_blocks() {
        auto const whole = [](CalendarWeek const& week) { return week.kind == WeekKind::build; };
        for (auto at = calendar_.weeks.begin(); at != calendar_.weeks.end();) {
            auto const end = std::find_if_not(at, calendar_.weeks.end(), whole);
            for (auto const kind : blocks(static_cast<std::size_t>(end - at))) {
                at->kind = kind;
                at->percent = kind == WeekKind::recovery ? eased_percent : 100;
                ++at;
            }
            at = std::find_if(end, calendar_.weeks.end(), whole);
        }
    }

    Request const& request_;
    std::size_t whole_weeks_; ///< before the one that holds the race
    std::size_t all_ = 0;
    Calendar calendar_;
};

} // namespace

std::vector<WeekKind> blocks(std::size_t weeks) {
    auto const recoveries = weeks > 3 ? (weeks - 3 + 3) / 4 : 0;
    auto const count = recoveries + 1;
    auto const build = weeks - recoveries;
    auto const longer = build % count; // the last blocks, but two and one of three weeks
    std::vector<WeekKind> kinds;
    for (std::size_t block = 0; block < count; ++block) {
        auto const last_ones = block + longer >= count;
        auto const extra = weeks == 4 ? block == 0 : last_ones;
        kinds.insert(kinds.end(), build / count + (extra ? 1 : 0), WeekKind::build);
        if (block + 1 < count) {
            kinds.push_back(WeekKind::recovery);
        }
    }
    return kinds;
}

Calendar calendar_of(Request const& request) {
    return Maker{request}.make();
}

} // namespace lengthwise::compose
