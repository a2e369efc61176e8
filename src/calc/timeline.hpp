#pragma once

#include "calc/paces.hpp"
#include "calc/stretches.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"
#include "units/duration.hpp"
#include "units/range.hpp"

#include <functional>
#include <optional>
#include <vector>

/// When everything happens, in closed form over the tree (docs/notation.md, "Time"): a repeat costs
/// what one round costs, a ladder of send-offs its steps.
namespace lengthwise::calc {

/// What a scope takes one swimmer.
struct Times {
    Band<Duration> time;     ///< rests, waits and pauses included; of use where `untimed` says nothing
    Band<Duration> swimming; ///< of it: swims without breaks
    Distance estimated;      ///< what timed reps go; of use where `unmeasured` says nothing
    plan::Index untimed = plan::no_index;    ///< the first item with a rep of unknown time
    plan::Index unmeasured = plan::no_index; ///< the first item with a timed rep of unknown distance
    plan::Index assumed = plan::no_index;    ///< the first item with a rep that an assumed reserve decides

    [[nodiscard]] bool known() const { return untimed == plan::no_index; }
    [[nodiscard]] std::optional<Band<Duration>> total() const;
    [[nodiscard]] std::optional<Band<Duration>> swum() const;
    /// All that is not swimming, figure by figure.
    [[nodiscard]] std::optional<Band<Duration>> resting() const;
    [[nodiscard]] std::optional<Distance> distance() const; ///< `estimated` where it is known

    void add(Times const& more);

    friend bool operator==(Times const&, Times const&) = default;
};

/// A section in one lane. Its `if time` lines are timed as if the lane's were the whole session,
/// pauses left out.
struct SectionTimes {
    Times swum;
    Times if_time;

    void add(SectionTimes const& more);
};

/// A line that a lane swims, counted from the session's first start. Low, expected and high are
/// three ways the session may go: figures of one kind belong together.
struct LineTimes {
    plan::Index item = 0;                ///< of Plan::items
    plan::Index section = 0;             ///< of Plan::sections
    std::optional<Band<Duration>> start; ///< its first rep leaves
    std::optional<Band<Duration>> end;   ///< its last slot is over; of the last line, its last swim
    std::optional<Band<Duration>> leave; ///< the next line leaves; of the last line, `end`
};

/// The doorway to all times of a plan, one for each plan: it remembers reps and shared sets.
/// Lane 0 swims the unlabelled lines at the threshold in force; so does a lane that a session
/// does not name, at its own pace if a swimmer names it.
class Clock {
  public:
    /// `assumed` is the pace of sessions that have none; it outlives this.
    explicit Clock(plan::Plan const& plan, plan::Threshold const* assumed = nullptr)
        : plan_(plan), paces_(plan, assumed), stretches_(plan, paces_) {}
    Clock(Clock const&) = delete;
    Clock& operator=(Clock const&) = delete;

    /// The sections of a session in one lane, in their order.
    [[nodiscard]] std::vector<SectionTimes> sections(plan::Index session, int lane);
    /// The same into `sections`, whose room is used again.
    void sections(plan::Index session, int lane, std::vector<SectionTimes>& sections);

    [[nodiscard]] Times session(plan::Index session, int lane);
    [[nodiscard]] Times week(plan::Week const& week, int lane);
    [[nodiscard]] Times whole_plan(int lane);

    /// The lines that a lane swims, in their order; `if time` lines are not among them.
    [[nodiscard]] std::vector<LineTimes> lines(plan::Index session, int lane);

    /// The same where the session holds no lines and pauses but those for which `stays`, asked with their
    /// index of Plan::items, is true. `if time` lines that stay are swum like any other.
    [[nodiscard]] std::vector<LineTimes> lines(plan::Index session, int lane,
                                               std::function<bool(plan::Index)> const& stays);

    /// One rep of the session in a lane: `amount` in Distance units, or milliseconds if `timed`, swum
    /// with Plan::terms[terms].
    [[nodiscard]] RepTime rep(plan::Index session, int lane, plan::Index terms, std::int64_t amount,
                              bool timed);
    [[nodiscard]] Pacing const& pacing(plan::Index session, int lane);
    /// The lanes with a pace of their own, ascending.
    [[nodiscard]] std::vector<int> const& paced_lanes() const { return paces_.lanes().lanes(); }
    /// Of Plan::terms: the first that is timed as this one.
    [[nodiscard]] plan::Index alike(plan::Index terms) const { return paces_.alike(terms); }

    /// One round of a group or `use`, of those that `selection` chooses (null: that none does), without
    /// what follows it.
    [[nodiscard]] Stretch round(plan::Index session, int lane, plan::Index item,
                                plan::Selection const* selection);

    /// The item at which a session, over all its lines, comes to more than limits::session_hours (high
    /// estimate, whatever lane) or timed reps to more than limits::session_km; nothing for all
    /// sessions that a person could swim. Times beyond are not to be shown.
    [[nodiscard]] std::optional<plan::Index> passes_limit(plan::Index session);

  private:
    struct Line {
        plan::Index item = 0;
        plan::Index section = 0;
        Stretch stretch; ///< of nothing for a pause
    };
    struct Lines {
        plan::Index session = plan::no_index;
        PacingId pacing = 0;
        std::vector<Line> lines; ///< swum lines and pauses of all lanes
        bool optional = false;   ///< some of them are `if time`
    };

    [[nodiscard]] std::vector<Line> const& lines_of(plan::Index session, PacingId pacing);
    template <typename Chosen, typename Take>
    void in_order(std::vector<Line> const& lines, Chosen chosen, Take take);
    template <typename Chosen>
    [[nodiscard]] std::vector<LineTimes> lines_chosen(plan::Index session, int lane, Chosen chosen);

    plan::Plan const& plan_;
    Paces paces_;
    Stretches stretches_;
    Lines lines_; ///< read last
};

} // namespace lengthwise::calc
