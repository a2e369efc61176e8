#pragma once

#include "calc/timeline.hpp"
#include "calc/totals.hpp"
#include "grammar/diagnostic.hpp"
#include "plan/plan.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lengthwise::check {

/// The `allow` by which each of some findings is waived.
using Waivers = std::vector<plan::Allow const*>;

/// What a rule works with while it judges a plan: the plan, its sums, what the file
/// says of this rule, and where findings go.
class Inquiry {
  public:
    /// With `waivers`, only what the file allows is judged, and for each finding kept its `allow` is
    /// added there.
    Inquiry(plan::Plan const& of, calc::Reckoner& reckoner, Diagnostics& findings, Waivers* waivers = nullptr)
        : plan(of), sums(reckoner), findings_(findings), waivers_(waivers) {}

    plan::Plan const& plan;
    calc::Reckoner& sums;

    /// The plan's times; made when a rule first asks for them.
    [[nodiscard]] calc::Clock& clock() { return clock_ ? *clock_ : clock_.emplace(plan); }

    /// The rule that judges from now on.
    void turn_to(plan::RuleId rule) { rule_ = rule; }

    /// Does the file `allow` what this rule finds: for all of it, or for a session (its own
    /// words, its week's or the file's)? Asked before the file or a session is judged, and then it is
    /// passed over. (While waived findings are looked for, what is not allowed is.)
    [[nodiscard]] bool waived();
    [[nodiscard]] bool waived(plan::Session const& session);

    /// The nearest `limit` in force, in the rule's own kind; nothing where the file has none.
    [[nodiscard]] std::optional<plan::Limit> limit() const;
    [[nodiscard]] std::optional<plan::Limit> limit(plan::Session const& session) const;
    /// Its one figure, or `usual`.
    [[nodiscard]] std::int64_t limit_or(std::int64_t usual) const;

    void error(Span span, std::string message, std::string hint = {}, std::vector<Related> related = {});
    void warn(Span span, std::string message, std::string hint = {}, std::vector<Related> related = {});
    void note(Span span, std::string message, std::string hint = {}, std::vector<Related> related = {});

  private:
    bool passes(plan::Allow const* allow);
    void add(Severity severity, Span span, std::string message, std::string hint,
             std::vector<Related> related);

    Diagnostics& findings_;
    std::optional<calc::Clock> clock_;
    plan::RuleId rule_ = 0;
    Waivers* waivers_;
    plan::Allow const* by_ = nullptr; ///< of what is judged just now
};

} // namespace lengthwise::check
