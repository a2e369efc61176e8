#include "plan/settings.hpp"

#include "plan/amounts.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string_view>
#include <vector>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::Node;
using grammar::Tree;

bool is_child_scope(Kind kind) {
    return kind == Kind::week || kind == Kind::session || kind == Kind::section;
}

class Reading {
  public:
    Reading(Work& work, Tree const& tree, Scope const& outer, bool file_level)
        : work_(work), tree_(tree), scope_(outer), file_level_(file_level) {
        scope_.settings = 0;
    }

    Scope read(std::uint32_t first, std::uint32_t end) {
        // The pool first: whatever stands before it, it tells what bare numbers mean.
        each(first, end, [&](std::uint32_t i) { read_pool(i); });
        each(first, end, [&](std::uint32_t i) { read_other(i); });
        if (any_) {
            scope_.settings = static_cast<Index>(work_.plan.settings.size());
            scope_.factors = own_.factors.empty() ? scope_.factors : scope_.settings;
            work_.plan.settings.push_back(std::move(own_));
        }
        return scope_;
    }

  private:
    template <typename Read>
    void each(std::uint32_t first, std::uint32_t end, Read const& read) {
        for (auto i = first; i < end && !is_child_scope(tree_.nodes[i].kind); i = tree_.next(i)) {
            read(i);
        }
    }

    Pool const& pool() const { return work_.plan.pools[scope_.pool]; }

    void read_pool(std::uint32_t i) {
        auto const& node = tree_.nodes[i];
        if (node.kind != Kind::pool && node.kind != Kind::pool_open_water) {
            return;
        }
        once(pool_at_, span_of(node), "pool");
        own_.pool = node.kind == Kind::pool ? pool_of(work_.report, node) : Pool::open_water();
        if (own_.pool) {
            scope_.pool = work_.pool_index(*own_.pool);
        }
        any_ = true;
    }

    void read_other(std::uint32_t i) {
        auto const& node = tree_.nodes[i];
        switch (node.kind) {
        case Kind::threshold:
            read_threshold_line(i);
            break;
        case Kind::default_rest:
            once(rest_at_, span_of(node), "rest");
            own_.rest = range_of(node, i + 1 < tree_.size() && tree_.nodes[i + 1].kind == Kind::rest_to
                                           ? &tree_.nodes[i + 1]
                                           : nullptr);
            scope_.rest = own_.rest ? own_.rest : scope_.rest;
            break;
        case Kind::factor:
            read_factor(node);
            break;
        case Kind::limit:
            read_limit(i);
            break;
        case Kind::allow:
            read_allow(i);
            break;
        case Kind::note_line:
            own_.notes.push_back(work_.text_of(tree_, i));
            break;
        default:
            return;
        }
        any_ = true;
    }

    void read_threshold_line(std::uint32_t i) {
        once(threshold_at_, tree_.span(i), "threshold");
        own_.threshold = read_threshold(work_, tree_, i, pool());
        if (own_.threshold) {
            scope_.threshold = static_cast<Index>(work_.plan.thresholds.size());
            work_.plan.thresholds.push_back(*own_.threshold);
        }
    }

    void read_factor(Node const& node) {
        auto const word = node.as_word();
        if (std::ranges::any_of(own_.factors, [&](Factor const& f) { return f.word == word; })) {
            work_.report.error(code::twice, span_of(node),
                               fmt::format("two factors for {} here", spelling(word)), "keep one");
            return;
        }
        if (!is_stroke(word) && !is_mode(word) && !is_gear(word) && !is_effort(word)) {
            work_.report.error(code::name, span_of(node),
                               "a factor takes a stroke, a mode, gear or an effort word", "factor back 115%");
            return;
        }
        if (node.value < 1 || node.value > 1000) {
            work_.report.error(code::amount, span_of(node),
                               fmt::format("a factor of {}%: from 1% to 1000% are read", node.value));
            return;
        }
        own_.factors.push_back({word, node.value});
    }

    /// The rule that a name leaf means, where it may be tuned.
    std::optional<RuleId> rule_at(std::uint32_t name) {
        auto const text = tree_.slice(span_of(tree_.nodes[name]));
        auto const rule = find_rule(text);
        if (!rule) {
            work_.report.error(code::name, span_of(tree_.nodes[name]),
                               fmt::format("no rule is named {}", text), nearest_rule(text));
        } else if (rules[*rule].file_level && !file_level_) {
            work_.report.error(code::pairing, span_of(tree_.nodes[name]),
                               fmt::format("{} judges the whole plan", text),
                               "write it at the head of the file");
            return std::nullopt;
        }
        return rule;
    }

    static std::string nearest_rule(std::string_view text) {
        auto best = 3;
        std::string_view nearest;
        for (auto const& rule : rules) {
            if (auto const steps = edit_distance(text, rule.name, 2); steps < best) {
                best = steps;
                nearest = rule.name;
            }
        }
        return nearest.empty() ? "the rules are listed in docs/checks.md"
                               : fmt::format("did you mean {}?", nearest);
    }

    void read_limit(std::uint32_t i) {
        auto const rule = rule_at(i + 1);
        if (!rule || i + 2 >= tree_.next(i)) {
            return;
        }
        for (auto const& limit : own_.limits) {
            if (limit.rule == *rule) {
                work_.report.error(code::twice, tree_.span(i),
                                   fmt::format("two limits of {} here", rules[*rule].name), "keep one",
                                   {{limit.span, "the first stands here"}});
                return;
            }
        }
        Limit limit{*rule, 0, 0, tree_.span(i)};
        if (read_value(i + 2, rules[*rule], limit)) {
            own_.limits.push_back(limit);
        }
    }

    bool read_value(std::uint32_t i, Rule const& rule, Limit& limit) {
        auto const& node = tree_.nodes[i];
        auto const timed = node.kind == Kind::limit_time;
        auto const* const to = timed && i + 1 < tree_.size() && tree_.nodes[i + 1].kind == Kind::limit_time_to
                                   ? &tree_.nodes[i + 1]
                                   : nullptr;
        switch (rule.kind) {
        case LimitKind::percent:
            return node.kind == Kind::limit_percent ? set(limit, node.value)
                                                    : wrong_kind(node, rule, "a percentage, 100%");
        case LimitKind::number:
            return node.kind == Kind::limit_number ? set(limit, node.value)
                                                   : wrong_kind(node, rule, "a number, 2");
        case LimitKind::distance:
            return read_distance(node, rule, limit);
        case LimitKind::duration:
            return timed && to == nullptr ? set(limit, node.value) : wrong_kind(node, rule, "a time, 5s");
        case LimitKind::range:
            if (!timed) {
                return wrong_kind(node, rule, "a range of times, 20-40s");
            }
            if (auto const range = range_of(node, to)) {
                limit.low = range->low.ms();
                limit.high = range->high.ms();
                return true;
            }
            return false;
        case LimitKind::none:
            break;
        }
        work_.report.error(code::pairing, limit.span, fmt::format("{} has no limit to set", rule.name),
                           fmt::format("waive it: allow {} \"why\"", rule.name));
        return false;
    }

    bool read_distance(Node const& node, Rule const& rule, Limit& limit) {
        if (node.kind == Kind::limit_number) { // a bare number: the pool's unit
            return set(limit, one(pool().unit).units() * node.value);
        }
        if (node.kind != Kind::limit_distance) {
            return wrong_kind(node, rule, "a distance, 1000m");
        }
        auto const distance = distance_in(work_.report, pool(), node);
        return distance && set(limit, distance->units());
    }

    bool wrong_kind(Node const& node, Rule const& rule, std::string_view wanted) {
        work_.report.error(code::pairing, span_of(node),
                           fmt::format("the limit of {} is {}", rule.name, wanted),
                           fmt::format("limit {} …", rule.name));
        return false;
    }

    static bool set(Limit& limit, std::int64_t value) {
        limit.low = value;
        limit.high = value;
        return true;
    }

    void read_allow(std::uint32_t i) {
        auto const rule = rule_at(i + 1);
        if (!rule) {
            return;
        }
        for (auto const& allow : own_.allows) {
            if (allow.rule == *rule) {
                work_.report.error(code::twice, tree_.span(i),
                                   fmt::format("{} is waived twice here", rules[*rule].name), "keep one",
                                   {{allow.span, "the first stands here"}});
                return;
            }
        }
        auto const reasoned = i + 2 < tree_.next(i) && tree_.nodes[i + 2].is_string();
        own_.allows.push_back({*rule, reasoned ? work_.text_of(tree_, i + 2) : Text{}, tree_.span(i)});
    }

    void once(Span& first, Span at, std::string_view what) {
        if (!first.empty()) {
            work_.report.error(code::twice, at, fmt::format("{} is set twice here", what), "keep one",
                               {{first, "the first stands here"}});
            return;
        }
        first = at;
    }

    Work& work_;
    Tree const& tree_;
    Scope scope_;
    Settings own_;
    bool file_level_;
    bool any_ = false;
    Span pool_at_;
    Span rest_at_;
    Span threshold_at_;
};

} // namespace

Scope read_settings(Work& work, Tree const& tree, std::uint32_t first, std::uint32_t end, Scope const& outer,
                    bool file_level) {
    return Reading{work, tree, outer, file_level}.read(first, end);
}

} // namespace lengthwise::plan
