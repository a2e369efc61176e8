#include "plan/sets.hpp"

#include "plan/amounts.hpp"
#include "plan/modifiers.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <string>
#include <string_view>

namespace lengthwise::plan {

using grammar::Kind;
using grammar::Tree;

Sets::Sets(Work& work) : work_(work) {
    for (auto const& file : work.bundle.files) {
        collect(file.tree);
    }
    check_names();
    cut_cycles();
}

void Sets::collect(Tree const& tree) {
    for (std::uint32_t i = 0; i < tree.size(); i = tree.next(i)) {
        auto const kind = tree.nodes[i].kind;
        if (kind == Kind::week || kind == Kind::session) {
            return; // sets stand before the first of them
        }
        if (kind != Kind::set || tree.next(i) < i + 3 || tree.nodes[i + 1].kind != Kind::name) {
            continue;
        }
        auto const [known, added] =
            by_name_.emplace(tree.raw_string(i + 1), static_cast<std::uint32_t>(entries_.size()));
        if (added) {
            entries_.push_back({.tree = &tree, .name = i + 1, .end = tree.next(i)});
            continue;
        }
        auto const& first = entries_[known->second];
        work_.report.error(code::twice, tree.span(i + 1),
                           fmt::format("two sets are named \"{}\"", tree.raw_string(i + 1)), "rename one",
                           {{first.tree->span(first.name), "the first stands here"}});
    }
}

/// The name leaves of all uses inside a set.
std::vector<std::uint32_t> Sets::uses_in(Entry const& entry) const {
    std::vector<std::uint32_t> uses;
    for (auto i = entry.item(); i + 1 < entry.end; ++i) {
        if (entry.tree->nodes[i].kind == Kind::use && entry.tree->nodes[i + 1].kind == Kind::name) {
            uses.push_back(i + 1);
        }
    }
    return uses;
}

void Sets::check_names() {
    for (auto const& entry : entries_) {
        for (auto const name : uses_in(entry)) {
            if (!by_name_.contains(entry.tree->raw_string(name))) {
                report_missing(*entry.tree, name);
            }
        }
    }
}

/// Is there a set of that name where none may stand? That has been said, and is what to mend.
bool Sets::stands_elsewhere(std::string_view name) const {
    return std::ranges::any_of(work_.bundle.findings.kept(), [&](Diagnostic const& finding) {
        auto const& tree = work_.bundle.file_of(finding.span.begin).tree;
        auto const word = tree.slice(finding.span);
        auto const behind = tree.text.substr(finding.span.end - tree.base);
        auto const quote = behind.find_first_not_of(" \t");
        return finding.rule == code::place && word == "set" && quote != std::string_view::npos &&
               behind.substr(quote).starts_with(fmt::format("\"{}\"", name));
    });
}

void Sets::report_missing(Tree const& tree, std::uint32_t name) {
    auto const wanted = tree.raw_string(name);
    if (stands_elsewhere(wanted)) {
        return;
    }
    std::string hint = "define it: set \"" + std::string{wanted} + "\" = …";
    auto nearest = 3;
    for (auto const& entry : entries_) {
        if (!work_.report.keeps()) {
            break;
        }
        auto const known = entry.tree->raw_string(entry.name);
        if (auto const steps = edit_distance(wanted, known, 2); steps < nearest) {
            nearest = steps;
            hint = fmt::format("did you mean \"{}\"?", known);
        }
    }
    work_.report.error(code::name, tree.span(name), fmt::format("no set is named \"{}\"", wanted),
                       std::move(hint));
}

/// Depth first over the sets in text order, with a stack of our own: chains may be long.
void Sets::cut_cycles() {
    enum class Mark : std::uint8_t { fresh, open, done };
    struct Visit {
        std::uint32_t set;
        std::vector<std::uint32_t> uses;
        std::size_t next = 0;
    };
    std::vector<Mark> marks(entries_.size(), Mark::fresh);
    std::vector<Visit> path;
    auto const open = [&](std::uint32_t set) {
        marks[set] = Mark::open;
        path.push_back({set, uses_in(entries_[set])});
    };
    for (std::uint32_t root = 0; root < entries_.size(); ++root) {
        if (marks[root] == Mark::fresh) {
            open(root);
        }
        while (!path.empty()) {
            auto& visit = path.back();
            if (visit.next == visit.uses.size()) {
                marks[visit.set] = Mark::done;
                path.pop_back();
                continue;
            }
            auto const& entry = entries_[visit.set];
            auto const name = visit.uses[visit.next++];
            auto const target = by_name_.find(entry.tree->raw_string(name));
            if (target == by_name_.end() || marks[target->second] == Mark::done) {
                continue;
            }
            if (marks[target->second] == Mark::fresh) {
                open(target->second);
                continue;
            }
            auto const& closed = entries_[target->second];
            cut_.insert(entry.tree->nodes[name].begin);
            work_.report.error(
                code::name, entry.tree->span(name),
                fmt::format("the set \"{}\" would hold itself", closed.tree->raw_string(closed.name)),
                "take this use out", {{closed.tree->span(closed.name), "it starts here"}});
        }
    }
}

std::optional<std::uint32_t> Sets::find(Tree const& tree, std::uint32_t name) const {
    auto const known = by_name_.find(tree.raw_string(name));
    if (known == by_name_.end() || cut_.contains(tree.nodes[name].begin)) {
        return std::nullopt;
    }
    return known->second;
}

void Sets::check_unused() {
    for (auto const& entry : entries_) {
        if (entry.in_plan) {
            continue;
        }
        auto const& tree = *entry.tree;
        for (auto i = entry.item(); i < entry.end; ++i) {
            auto const kind = tree.nodes[i].kind;
            if (kind == Kind::item || kind == Kind::selector) {
                check_once(work_.report, tree, i + 1, tree.next(i));
            } else if (kind == Kind::split) {
                auto const end = tree.next(i);
                for (auto part = i + 1; part < end; part = part_end(tree, part, end)) {
                    check_once(work_.report, tree, part + 1, part_end(tree, part, end));
                }
            }
        }
    }
}

} // namespace lengthwise::plan
