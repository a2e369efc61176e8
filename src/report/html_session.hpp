#pragma once

#include "plan/plan.hpp"
#include "report/json.hpp"
#include "report/session_view.hpp"

#include <string>

namespace lengthwise::report {

/// A session as part of a page: an article with the id "s1", "s2", …, its heading, what there is to know, and
/// a table for each lane, so that each can be read, printed and handed out alone.
void html_session(plan::Plan const& plan, SessionView const& view, bool ascii, TextSink const& sink);

/// "s1": where a session stands on the page.
[[nodiscard]] std::string html_anchor(plan::Index session);

} // namespace lengthwise::report
