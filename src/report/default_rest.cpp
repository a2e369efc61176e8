#include "report/default_rest.hpp"

namespace lengthwise::report {

std::optional<Range<Duration>> default_rest(plan::Plan const& plan, plan::Session const& session) {
    std::optional<Range<Duration>> rest;
    for (auto const settings : {session.settings, plan.weeks[session.week].settings, plan.file_settings}) {
        rest = rest ? rest : plan.settings[settings].rest;
    }
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        auto const& section = plan.sections[i];
        if (!plan.heading_of(section).said_rest && section.body != plan::no_index) {
            return rest && !rest->high.zero() ? rest : std::nullopt;
        }
    }
    return std::nullopt;
}

} // namespace lengthwise::report
