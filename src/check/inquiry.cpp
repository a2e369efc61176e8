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

plan::Allow const* allow_in(plan::Settings const& settings, plan::RuleId rule) {
    auto const found = std::ranges::find(settings.allows, rule, &plan::Allow::rule);
    return found == settings.allows.end() ? nullptr : &*found;
}

std::optional<plan::Limit> limit_in(plan::Settings const& settings, plan::RuleId rule) {
    auto const found = std::ranges::find(settings.limits, rule, &plan::Limit::rule);
    return found == settings.limits.end() ? std::nullopt : std::optional{*found};
}

} // namespace

bool Inquiry::passes(plan::Allow const* allow) {
    by_ = allow;
    return (allow != nullptr) != (waivers_ != nullptr);
}

bool Inquiry::waived() {
    return passes(allow_in(plan.settings[plan.file_settings], rule_));
}

bool Inquiry::waived(plan::Session const& session) {
    for (auto const scope : scopes(plan, session)) {
        if (auto const* allow = allow_in(plan.settings[scope], rule_)) {
            return passes(allow);
        }
    }
    return passes(nullptr);
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
    if (waivers_ != nullptr && findings_.keeps(severity)) {
        waivers_->push_back(by_);
    }
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
