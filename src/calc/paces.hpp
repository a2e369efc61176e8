#pragma once

#include "calc/alike.hpp"
#include "calc/swim_time.hpp"
#include "plan/pace_of.hpp"
#include "plan/plan.hpp"

#include <cstdint>
#include <deque>
#include <map>
#include <unordered_map>
#include <vector>

namespace lengthwise::calc {

/// A Pacing of one plan, by number: equal places have equal numbers.
using PacingId = std::uint32_t;

/// Every pace, pool and factors that the sessions of a plan are timed with, and the reps
/// timed last. A rep is reckoned once for its terms, amount and pacing: most lines of a file
/// repeat what another has said.
class Paces {
  public:
    /// `assumed` stands in where no threshold is in force; it outlives this.
    explicit Paces(plan::Plan const& plan, plan::Threshold const* assumed = nullptr);

    /// Of a lane in a session; lane 0 is nobody's and takes the threshold in force.
    [[nodiscard]] PacingId of(plan::Session const& session, int lane);
    [[nodiscard]] Pacing const& at(PacingId pacing) const { return pacings_[pacing]; }
    [[nodiscard]] plan::LanePaces const& lanes() const { return lanes_; }

    /// A rep swum with Plan::terms[terms]; the answer holds until the next call.
    [[nodiscard]] RepTime const& rep(PacingId pacing, plan::Index terms, std::int64_t amount, bool timed);

    /// Of Plan::terms: the first that is timed as this one.
    [[nodiscard]] plan::Index alike(plan::Index terms) const { return alike_.first(terms); }

  private:
    struct Place {
        plan::Threshold const* threshold = nullptr;
        plan::Index pool = 0;
        Factors const* factors = nullptr;
        friend bool operator==(Place const&, Place const&) = default;
    };
    struct PlaceHash {
        std::size_t operator()(Place const& place) const;
    };
    struct Remembered {
        std::uint64_t place = ~std::uint64_t{0}; ///< pacing and terms
        std::int64_t amount = 0;                 ///< below 0 where timed
        RepTime time;
    };

    [[nodiscard]] Factors const& factors(plan::Session const& session);

    plan::Plan const& plan_;
    plan::Threshold const* assumed_;
    plan::LanePaces lanes_;
    bool any_factors_ = false;
    Factors const table_;
    std::map<std::vector<plan::Factor>, Factors>
        changed_; ///< by what `factor` lines say, in the order of words
    std::deque<Pacing> pacings_;
    std::unordered_map<Place, PacingId, PlaceHash> known_;
    Alike alike_;
    std::vector<Remembered> remembered_; ///< by hash; a newer rep takes an older one's place
};

} // namespace lengthwise::calc
