#include "compose/clashes.hpp"

#include "compose/climb.hpp"
#include "compose/problem.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::compose {

namespace {

constexpr std::int64_t minutes_a_day = 1440;

/// The slot that holds the week of the race rep, whatever comes before; whole minutes.
std::int64_t least_slot(Request const& request, int build_weeks) {
    std::int64_t low = -1;
    auto high = minutes_a_day;
    while (high - low > 1) {
        auto const middle = low + (high - low) / 2;
        auto wider = request;
        wider.slot = Duration::minutes(middle);
        auto const problem = problem_of(wider, build_weeks);
        auto const holds = most_week(problem, problem.room, problem.race_rep, build_weeks) >=
                           least_week(problem, problem.race_rep, build_weeks);
        (holds ? high : low) = middle;
    }
    return high;
}

class Clashes {
  public:
    Clashes(Request const& request, Calendar const& calendar)
        : request_(request), problem_(problem_of(request, calendar.build_weeks)),
          due_(least_reps(problem_, most_growth(problem_))) {
        for (auto const& week : calendar.weeks) {
            if (week.kind == WeekKind::build) {
                numbers_.push_back(week.number);
            }
        }
    }

    std::vector<Clash> find() {
        rep();
        if (!found_.empty()) { // what is due before the race rep has no meaning then
            std::fill(due_.begin(), due_.end() - 1, 1);
        }
        week();
        slot();
        return std::move(found_);
    }

  private:
    void rep() {
        auto rep = 0;
        for (auto w = 0; w < problem_.build_weeks && rep < problem_.race_rep; ++w) {
            rep = next_rep(problem_, rep, problem_.rep_step);
        }
        if (rep < problem_.race_rep) {
            found_.push_back({Clash::Kind::rep, numbers_.back(), rep, problem_.race_rep});
        }
    }

    /// The first week that is too low for the least rep that is due in it.
    void week() {
        auto laps = 0;
        for (auto w = 0; w < problem_.build_weeks; ++w) {
            auto const wants = least_week(problem_, due_[static_cast<std::size_t>(w)], w + 1);
            laps = next_week(problem_, laps, problem_.week_growth);
            if (laps < wants) {
                found_.push_back({Clash::Kind::week, numbers_[static_cast<std::size_t>(w)], laps, wants});
                return;
            }
        }
    }

    void slot() {
        auto const wants = request_.threshold ? least_slot(request_, problem_.build_weeks) : 0;
        if (wants * Duration::minutes(1).ms() > request_.slot.ms()) {
            found_.push_back(
                {Clash::Kind::slot, numbers_.back(), request_.slot.ms() / Duration::minutes(1).ms(), wants});
        }
    }

    Request const& request_;
    Problem problem_;
    std::vector<int> due_; ///< by build week, the least rep
    std::vector<int> numbers_;
    std::vector<Clash> found_;
};

} // namespace

std::vector<Clash> clashes_of(Request const& request, Calendar const& calendar) {
    return Clashes{request, calendar}.find();
}

} // namespace lengthwise::compose
