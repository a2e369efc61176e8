#include "report/tally_parts.hpp"
#include "report/tally_time.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>

/// One week: a row a session, its sum, and the week before to compare.
namespace lengthwise::report {
namespace {

/// "race in 13 days", counted from the week's first day; nothing once it is over.
std::string until_race(plan::Week const& week, plan::Race const& race) {
    if (!week.from || race.on < *week.from) {
        return {};
    }
    auto const days = (race.on - *week.from).count();
    return days == 0 ? "race that day" : "race in " + std::to_string(days) + (days == 1 ? " day" : " days");
}

std::string week_title(Screen const& screen, plan::Week const& week) {
    auto label = week.number ? "Week " + std::to_string(*week.number) : plan_label(screen.plan());
    if (week.from) {
        label += " from " + spell::day(*week.from);
    }
    std::vector<std::string> parts{label, visible(week.name)};
    if (auto const& race = screen.plan().race) {
        auto const until = until_race(week, *race);
        auto const distance = race_part(screen, *race);
        parts.push_back(until);
        parts.push_back(until.empty() ? "race " + distance : distance);
    }
    return title(screen, parts);
}

/// Day and name; the label of what has neither.
std::vector<Cell> session_cells(plan::Plan const& plan, plan::Index index) {
    auto const& session = plan.sessions[index];
    auto const day = session.date ? spell::short_day(*session.date) : day_label(session);
    bool const bare = session.name.empty() && day.empty();
    return {{day, {}}, {bare ? session_label(plan, index) : visible(session.name), {}}};
}

struct OtherLanes {
    Figures figures;
    calc::LaneSet lanes;
};

/// The lanes whose sums differ from the plain ones; equal ones together.
std::vector<OtherLanes> other_lanes(Tally const& whole) {
    std::vector<OtherLanes> others;
    auto const plain = whole.swum(whole.lane());
    for (int const lane : calc::numbers(whole.lanes())) {
        auto const figures = whole.swum(lane);
        if (same(figures, plain)) {
            continue;
        }
        auto found = std::find_if(others.begin(), others.end(),
                                  [&](OtherLanes const& other) { return same(other.figures, figures); });
        if (found == others.end()) {
            found = others.insert(found, {figures, {}});
        }
        found->lanes.set(static_cast<std::size_t>(lane));
    }
    return others;
}

/// A week without lane lines goes by no lane's pace, and the sums of the plan by its lowest lane's:
/// where lanes have paces of their own it says which one this is.
std::string whose_time(Screen const& screen, Tally const& whole) {
    auto const& paced = screen.summary.clock().paced_lanes();
    if (whole.lane() != 0 || paced.empty() || !whole.swum(0).time()) {
        return {};
    }
    auto const pace = common_pace(screen, 0);
    return pace.empty() ? std::string{} : "min at " + pace + "; a lane's own with --lane";
}

class WeekTable {
  public:
    WeekTable(Screen const& screen, plan::Index index)
        : screen_(screen), index_(index), week_(screen.plan().weeks[index]), whole_(screen.summary.whole()),
          lane_(whole_.lane()), shown_(shown_of(whole_, screen.summary.unit(), true)), table_({}) {
        shown_.time = any_time();
        table_ = Table{head()};
    }

    [[nodiscard]] std::string text() {
        for (auto i = week_.sessions.first; i < week_.sessions.end(); ++i) {
            row(session_cells(screen_.plan(), i), screen_.summary.session(i).swum(lane_));
        }
        table_.gap();
        add_sums();
        add_if_time();
        add_week_before();
        table_.fit(1, screen_.options.width, screen_.ascii(), widest_label_);
        return table_.text(screen_.paint);
    }

    [[nodiscard]] Tally const& whole() const { return whole_; }

  private:
    /// False where no session's time is known.
    [[nodiscard]] bool any_time() const {
        bool any = whole_.swum(lane_).time().has_value();
        for (auto i = week_.sessions.first; i < week_.sessions.end() && !any; ++i) {
            any = screen_.summary.session(i).swum(lane_).time().has_value();
        }
        return any;
    }

    [[nodiscard]] std::vector<Column> head() const {
        std::vector<Column> all{{"", false}, {"", false}};
        auto const figures = columns(shown_);
        all.insert(all.end(), figures.begin(), figures.end());
        return all;
    }

    void row(std::vector<Cell> cells, Figures const& figures, Ink ink = Ink::plain) {
        append_cells(cells, figures, shown_, screen_.ascii());
        table_.row(cells, ink);
    }

    /// Only the sums of one lane add up, so they say whose they are.
    void add_sums() {
        auto const label = week_.number ? week_label(week_) : "total";
        auto const whose = whole_.has_lane_lines() ? "in lane " + std::to_string(lane_) : std::string{};
        row({{label, {}}, {whose, {}}}, whole_.swum(lane_), Ink::bold);
        for (auto const& other : other_lanes(whole_)) {
            auto const lanes = "in " + lanes_label(other.lanes, screen_.ascii());
            row({{}, {lanes, {}}}, other.figures);
            widest_label_ = std::max(widest_label_, cells(lanes));
        }
    }

    void add_if_time() {
        if (whole_.has_if_time(lane_)) {
            std::vector<Cell> cells{{"if time", {}}, {}};
            append_extra_cells(cells, whole_.if_time(lane_), shown_, screen_.ascii());
            table_.row(cells);
        }
    }

    /// In the same lane; a week without lanes is held against the lowest lane of the one before.
    void add_week_before() {
        if (index_ > 0) {
            auto const before = screen_.summary.week(index_ - 1);
            auto const lane = lane_ != 0 ? lane_ : before.lane();
            auto const whose = lane == lane_ ? std::string{} : "in lane " + std::to_string(lane);
            row({{week_label(screen_.plan().weeks[index_ - 1]), {}}, {whose, {}}}, before.swum(lane));
        }
    }

    Screen const& screen_;
    plan::Index index_;
    plan::Week const& week_;
    Tally whole_;
    int lane_;
    Shown shown_;
    Table table_;
    std::size_t widest_label_ = 9; ///< "in lane 9"; names are cut, these are not
};

} // namespace

std::string week_screen(Screen const& screen, plan::Index index) {
    WeekTable table{screen, index};
    auto const text = table.text();
    auto const& whole = table.whole();
    auto sentences = pool_remarks(screen, whole.lane());
    auto const times = time_remarks(whole, screen.summary.unit());
    sentences.insert(sentences.end(), times.begin(), times.end());
    sentences.push_back(whose_time(screen, whole));
    auto const& week = screen.plan().weeks[index];
    return week_title(screen, week) + text + remarks(screen, sentences) +
           unknown_time(screen, week.sessions, whole);
}

} // namespace lengthwise::report
