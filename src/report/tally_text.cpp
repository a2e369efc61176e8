#include "report/tally_text.hpp"

#include "report/tally_parts.hpp"
#include "report/width.hpp"

namespace lengthwise::report {
namespace {

/// The plan's only session or week stands for the plan.
Scope narrowed(plan::Plan const& plan, Scope scope) {
    if (scope.kind == Scope::Kind::plan && plan.sessions.size() == 1) {
        return {Scope::Kind::session, 0};
    }
    if (scope.kind == Scope::Kind::plan && plan.weeks.size() == 1 && !plan.sessions.empty()) {
        return {Scope::Kind::week, 0};
    }
    return scope;
}

/// What `--by` breaks down.
std::string name_of(plan::Plan const& plan, Scope scope) {
    switch (scope.kind) {
    case Scope::Kind::session:
        return session_label(plan, scope.index);
    case Scope::Kind::week:
        return week_label(plan.weeks[scope.index]);
    case Scope::Kind::plan:
        break;
    }
    return plan_label(plan);
}

std::string screen_of(Screen const& screen, Scope scope) {
    switch (scope.kind) {
    case Scope::Kind::session:
        return session_screen(screen, scope.index);
    case Scope::Kind::week:
        return week_screen(screen, scope.index);
    case Scope::Kind::plan:
        break;
    }
    return plan_screen(screen);
}

} // namespace

std::string tally_text(plan::Plan const& plan, TallyOptions const& options, Paint const& paint) {
    auto const scope = options.by ? options.scope : narrowed(plan, options.scope);
    Summary summary{plan, scope, options.lane};
    Screen const screen{summary, options, paint};
    auto const head = options.file.empty() ? std::string{} : paint(Ink::dim, visible(options.file)) + "\n";
    if (options.by_swimmer) {
        return head + swimmers_screen(screen, name_of(plan, options.scope));
    }
    return head + (options.by ? by_screen(screen, name_of(plan, scope),
                                          narrowed(plan, scope).kind == Scope::Kind::session)
                              : screen_of(screen, scope));
}

} // namespace lengthwise::report
