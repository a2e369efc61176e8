#pragma once

#include "calc/breakdown.hpp"
#include "calc/totals.hpp"
#include "plan/plan.hpp"

#include <cstdint>
#include <functional>
#include <map>
#include <string>

/// A plan unrolled rep by rep: slow, simple, and written without a look at src/calc, to
/// hold the closed forms against.
namespace lengthwise::support {

/// One rep as it is swum.
struct ExpandedRep {
    bool timed = false;
    std::int64_t amount = 0; ///< Distance units or milliseconds
    plan::Terms const* terms = nullptr;
    plan::Session const* session = nullptr;
    plan::Section const* section = nullptr;
    Pool pool;
};

/// Which reps: of which swimmer, of which lines, of which sections (all where `section` is null).
struct Swimmer {
    int lane = 0;
    bool optional = false;
};

using Visit = std::function<void(ExpandedRep const&)>;
void expand(plan::Plan const& plan, plan::Session const& session, Swimmer swimmer, Visit const& visit);

/// Sums of expanded reps, one after the other.
class Adder {
  public:
    explicit Adder(plan::Plan const& plan) : plan_(plan) {}
    void add(ExpandedRep const& rep);
    [[nodiscard]] calc::Totals const& totals() const { return totals_; }

  private:
    plan::Plan const& plan_;
    calc::Totals totals_;
};

/// The same by word: every part of every rep is looked at.
class WordAdder {
  public:
    WordAdder(plan::Plan const& plan, calc::By by) : plan_(plan), by_(by) {}
    void add(ExpandedRep const& rep);
    [[nodiscard]] std::map<std::string, calc::Totals> const& words() const { return words_; }

  private:
    plan::Plan const& plan_;
    calc::By by_;
    std::map<std::string, calc::Totals> words_;
};

} // namespace lengthwise::support
