#pragma once

#include "plan/plan.hpp"

#include <cstdint>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace lengthwise::check {

/// An item on the way through a session, however deep it lies.
struct Met {
    plan::Session const& session;
    plan::Section const& section;
    plan::Item const& item;
    plan::Item const& line;      ///< the section's own item that holds it, or `item` itself
    std::optional<Span> used_at; ///< the outermost `use` it came by
};

/// Goes through a session's items, groups, sets and rounds in the order they are
/// written. What several places share is met once a session, so a walk costs no more
/// than the plan's size. A rule that would find the same in every session goes through
/// what sessions share only once: a long set that is used in each of them is not read anew.
class Walk {
  public:
    explicit Walk(plan::Plan const& plan) : plan_(plan) {}

    template <typename Visit>
    void through(plan::Session const& session, Visit&& visit) {
        through(
            session, [](plan::Item const&) { return true; }, visit);
    }

    /// Only what stands in lines that `takes` takes.
    template <typename Takes, typename Visit>
    void through(plan::Session const& session, Takes takes, Visit&& visit) {
        ++turn_;
        view_.reset();
        go(session, takes, visit);
    }

    /// All that a rule's finding depends on beside the item itself, as figures of its own choice.
    using View = std::pair<std::int64_t, std::int64_t>;

    /// Sets are gone into once for all sessions that are seen in the same view.
    template <typename Visit>
    void once(plan::Session const& session, View view, Visit&& visit) {
        once(
            session, view, [](plan::Item const&) { return true; }, visit);
    }

    template <typename Takes, typename Visit>
    void once(plan::Session const& session, View view, Takes takes, Visit&& visit) {
        view_ = view;
        go(session, takes, visit);
    }

  private:
    template <typename Takes, typename Visit>
    void go(plan::Session const& session, Takes& takes, Visit& visit) {
        for (auto i = session.sections.first; i < session.sections.end(); ++i) {
            auto const& section = plan_.sections[i];
            for (auto const& line : plan::items_from(plan_, section.body)) {
                if (takes(line)) {
                    meet({session, section, line, line, std::nullopt}, visit);
                }
            }
        }
    }

    template <typename Visit>
    void meet(Met const& met, Visit& visit) {
        visit(met);
        if (!met.item.is_swum() || met.item.is_leaf()) {
            return;
        }
        auto const used = met.item.kind == plan::Item::Kind::use && !met.used_at
                              ? std::optional{met.item.span}
                              : met.used_at;
        if (met.item.kind == plan::Item::Kind::group || first_time(met.item.body)) {
            go_in(met, met.item.body, used, visit);
        }
        auto const selections = plan_.terms[met.item.terms].selections;
        for (auto i = selections.first; i < selections.end(); ++i) {
            auto const body = plan_.selections[i].body;
            if (body != plan::no_index && first_time(body)) {
                go_in(met, body, used, visit);
            }
        }
    }

    /// A `use` holds one item, a group all that follow each other.
    template <typename Visit>
    void go_in(Met const& met, plan::Index body, std::optional<Span> used, Visit& visit) {
        if (met.item.kind == plan::Item::Kind::use) {
            meet({met.session, met.section, plan_.items[body], met.line, used}, visit);
            return;
        }
        for (auto const& item : plan::items_from(plan_, body)) {
            meet({met.session, met.section, item, met.line, used}, visit);
        }
    }

    bool first_time(plan::Index body) {
        if (view_) {
            return seen_.emplace(*view_, body).second;
        }
        if (turns_.empty()) {
            turns_.resize(plan_.items.size());
        }
        auto const again = turns_[body] == turn_;
        turns_[body] = turn_;
        return !again;
    }

    plan::Plan const& plan_;
    std::vector<std::uint32_t> turns_; ///< by body: the turn that met it last
    std::uint32_t turn_ = 0;
    std::optional<View> view_;                    ///< nothing: once a session
    std::set<std::pair<View, plan::Index>> seen_; ///< bodies gone into, by view
};

} // namespace lengthwise::check
