#pragma once

#include "calc/exact.hpp"
#include "plan/plan.hpp"
#include "units/range.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

/// How much longer a word makes a swim: the pace model's factors, in percent of time.
/// Where each comes from stands beside the table in factors.cpp and in docs/time.md.
namespace lengthwise::calc {

/// A share of time in quarters of a percent, so that the mean of four strokes is whole.
using Quarters = std::int32_t;
inline constexpr Quarters whole_share = 400;

/// The factors in force somewhere: the table, with what `factor` lines say over it.
class Factors {
  public:
    /// `nearest` holds each word once: what the nearest scope says of it.
    explicit Factors(std::vector<plan::Factor> const& nearest = {});

    /// Of an effort word, of no effort said, of `rpe` and of `at N%` (which has no band).
    /// 1 for exact paces, which take no factor.
    [[nodiscard]] Band<Exact> effort(plan::Effort const& effort) const;

    /// Of stroke, mode and gear, multiplied; what falls away beside another word left out.
    [[nodiscard]] Band<Exact> form(plan::Manner const& manner) const;

    friend bool operator==(Factors const&, Factors const&) = default;

  private:
    static constexpr std::size_t words = 23; ///< strokes, modes, efforts, gear

    [[nodiscard]] static std::size_t place(Word word);
    [[nodiscard]] Band<Quarters>& of(Word word) { return shares_[place(word)]; }
    [[nodiscard]] Band<Quarters> const& of(Word word) const { return shares_[place(word)]; }
    [[nodiscard]] bool said(Word word) const { return said_[place(word)]; }
    void derive_choice_and_medley();

    std::array<Band<Quarters>, words> shares_;
    std::array<bool, words> said_{}; ///< by a `factor` line
    Band<Quarters> fins_on_kick_;
};

/// What the nearest scope around a session says, word by word: session, then week, then file.
[[nodiscard]] std::vector<plan::Factor> factors_of(plan::Plan const& plan, plan::Session const& session);

} // namespace lengthwise::calc
