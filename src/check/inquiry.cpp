#include "check/inquiry.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace lengthwise::check {

namespace {

/// The scopes around a session, the nearest first.
std::array<plan::Index, 3> scopes(plan::Plan const& plan, plan::Session const& session) {
    return {session.settings, plan.weeks[session.week].settings, plan.file_settings};
}

bool allows(plan::Settings const& settings, plan::RuleId rule) {
    return std::ranges::any_of(settings.allows,
                               [rule](plan::Allow const& allow) { return allow.rule == rule; });
}

std::optional<plan::Limit> limit_in(plan::Settings const& settings, plan::RuleId rule) {
    auto const found = std::ranges::find(settings.limits, rule, &plan::Limit::rule);
    return found == settings.limits.end() ? std::nullopt : std::optional{*found};
}

} // namespace

bool Inquiry::waived() const {
    return allows(plan.settings[plan.file_settings], rule_);
}

bool Inquiry::waived(plan::Session const& session) const {
    return std::ranges::any_of(scopes(plan, session),
                               [this](plan::Index scope) { return allows(plan.settings[scope], rule_); });
}

std::optional<plan::Limit> Inquiry::limit() const {
    return limit_in(plan.settings[plan.file_settings], rule_);
}

std::optional<plan::Limit> Inquiry::limit(plan::Session const& session) const {
    for (auto const scope : scopes(plan, session)) {
        if (auto const found = limit_in(plan.settings[scope], rule_)) {
            return found;
        }
    }
    return std::nullopt;
}

std::int64_t Inquiry::limit_or(std::int64_t usual) const {
    auto const said = limit();
    return said ? said->low : usual;
}

void Inquiry::add(Severity severity, Span span, std::string message, std::string hint,
                  std::vector<Related> related) {
    findings_.add({.severity = severity,
                   .rule = plan::rules[rule_].name,
                   .span = span,
                   .message = std::move(message),
                   .hint = std::move(hint),
                   .related = std::move(related)});
}

void Inquiry::error(Span span, std::string message, std::string hint, std::vector<Related> related) {
    add(Severity::error, span, std::move(message), std::move(hint), std::move(related));
}

void Inquiry::warn(Span span, std::string message, std::string hint, std::vector<Related> related) {
    add(Severity::warning, span, std::move(message), std::move(hint), std::move(related));
}

void Inquiry::note(Span span, std::string message, std::string hint, std::vector<Related> related) {
    add(Severity::note, span, std::move(message), std::move(hint), std::move(related));
}

} // namespace lengthwise::check
