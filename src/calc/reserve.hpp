#pragma once

#include "calc/bouts.hpp"
#include "calc/drain.hpp"
#include "calc/rep_drain.hpp"
#include "calc/stretch.hpp"
#include "calc/timeline.hpp"
#include "plan/plan.hpp"
#include "units/distance.hpp"

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

/// Where a session would use up the reserve, D': an estimate by expected times, never a safety limit
/// (docs/time.md, "The reserve over a set"). Nothing is unrolled: what several reps do is composed by
/// doubling, and only the round that runs out is looked into.
namespace lengthwise::calc {

/// A rep or a round, counted from 1, of how many.
struct Nth {
    std::uint32_t number = 1;
    std::uint32_t of = 1;

    friend bool operator==(Nth const&, Nth const&) = default;
};

/// The first rep of a line in which the reserve runs out.
struct RunsOut {
    plan::Index line = 0;             ///< of Plan::items
    plan::Index item = 0;             ///< the reps inside it
    Nth rep;                          ///< of `item`
    std::vector<Nth> rounds;          ///< of the groups and sets around it, the outermost first
    plan::Index use = plan::no_index; ///< the outermost `use` it stands in
};

struct ReserveOver {
    std::vector<RunsOut> runs_out; ///< one a line at most, in their order
    double used = 0;               ///< metres of D' at the end of the last swim
};

/// One for each plan: it remembers what several places share.
class Reserve {
  public:
    /// The clock is of the same plan.
    Reserve(plan::Plan const& plan, Clock& clock) : plan_(plan), clock_(clock) {}

    /// Of one lane's plain lines, from a full reserve on; nothing where no pace is known.
    [[nodiscard]] std::optional<ReserveOver> over(plan::Index session, int lane);

  private:
    /// Something swum: its times, and what it does to the reserve until its last swim ends.
    struct Row {
        Stretch stretch;
        Drain drain;
    };
    /// Of one item, those that are swum alike.
    using Alikes = std::unordered_map<plan::Selection const*, Row>;

    /// A rep's drain by what makes it: most lines of a file repeat what another has said.
    struct Remembered {
        std::uint64_t place = ~std::uint64_t{0}; ///< pacing and terms
        std::int64_t amount = 0;                 ///< below 0 where timed
        Drain drain;
    };
    static constexpr std::size_t room = 1024; ///< a newer rep takes an older one's place

    void turn_to(plan::Index session, int lane);
    [[nodiscard]] Row const& line(plan::Index index);

    [[nodiscard]] Duration waiting(Row const& row) const;
    void put_behind(Row& row, Row const& next) const;
    [[nodiscard]] Row times(Row const& row, std::int64_t n) const;

    [[nodiscard]] Drain rep(plan::Index terms, std::int64_t amount, bool timed);
    [[nodiscard]] Row of(plan::Index index);
    [[nodiscard]] Row of(plan::Index index, std::vector<Bout> const& bouts, Alikes& alikes);
    [[nodiscard]] Row of(plan::Index index, Bout const& bout, Alikes& alikes);
    [[nodiscard]] Row one(plan::Index index, Bout const& bout, Alikes& alikes);
    [[nodiscard]] Row inside(plan::Index index, plan::Selection const* selection);
    [[nodiscard]] Row siblings(plan::Index index, plan::Index first);

    void find(plan::Index index, double x, RunsOut& found);
    void find(plan::Index index, std::vector<Bout> const& bouts, std::uint32_t skipped, double x,
              Alikes& alikes, RunsOut& found);
    void find_inside(plan::Index index, plan::Selection const* selection, double x, RunsOut& found);

    plan::Plan const& plan_;
    Clock& clock_;
    plan::Index session_ = plan::no_index;
    int lane_ = 0;
    Pacing const* pacing_ = nullptr; ///< of the lane in hand
    Tank tank_;
    std::vector<Remembered> remembered_ = std::vector<Remembered>(room); ///< by hash
    std::unordered_map<plan::Index, Row> lines_;    ///< of the session and pacing in hand
    std::unordered_map<std::uint64_t, Row> shared_; ///< by pacing and body
    std::unordered_map<Pacing const*, std::uint32_t> pacings_;
    std::uint64_t pacing_number_ = 0;
};

} // namespace lengthwise::calc
