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

/// What a rule works with while it judges a plan: the plan, its sums, what the file
/// says of this rule, and where findings go.
class Inquiry {
  public:
    Inquiry(plan::Plan const& of, calc::Reckoner& reckoner, Diagnostics& findings)
        : plan(of), sums(reckoner), findings_(findings) {}

    plan::Plan const& plan;
    calc::Reckoner& sums;

    /// The plan's times; made when a rule first asks for them.
    [[nodiscard]] calc::Clock& clock() { return clock_ ? *clock_ : clock_.emplace(plan); }

    /// The rule that judges from now on.
    void turn_to(plan::RuleId rule) { rule_ = rule; }

    /// Does the file `allow` what this rule finds: for all of it, or for a session (its own
    /// words, its week's or the file's)?
    [[nodiscard]] bool waived() const;
    [[nodiscard]] bool waived(plan::Session const& session) const;

    /// The nearest `limit` in force, in the rule's own kind; nothing where the file has none.
    [[nodiscard]] std::optional<plan::Limit> limit() const;
    [[nodiscard]] std::optional<plan::Limit> limit(plan::Session const& session) const;
    /// Its one figure, or `usual`.
    [[nodiscard]] std::int64_t limit_or(std::int64_t usual) const;

    void error(Span span, std::string message, std::string hint = {}, std::vector<Related> related = {});
    void warn(Span span, std::string message, std::string hint = {}, std::vector<Related> related = {});
    void note(Span span, std::string message, std::string hint = {}, std::vector<Related> related = {});

  private:
    void add(Severity severity, Span span, std::string message, std::string hint,
             std::vector<Related> related);

    Diagnostics& findings_;
    std::optional<calc::Clock> clock_;
    plan::RuleId rule_ = 0;
};

} // namespace lengthwise::check
