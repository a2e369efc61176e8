#pragma once

#include "grammar/tree.hpp"
#include "plan/plan.hpp"

#include <string>

namespace lengthwise::plan {

/// The plan as a syntax tree again; written out (grammar/write.hpp) and resolved
/// it means the same. Names and notes are kept, comments are gone, included
/// sets stand in the file itself.
[[nodiscard]] grammar::Tree spell(Plan const& plan);

/// How a line is spelled for people.
struct LineStyle {
    bool labels = true;       ///< `lane 1:` and `if time:` in front
    bool expand_sets = false; ///< what a set holds instead of `use "NAME"`
};

/// One item, pause or note as text on one line: "3 x (200 crawl steady + 50 back easy) rest 1min".
/// Amounts are spelled as they were written; where that no longer fits the session's pool, exactly otherwise.
[[nodiscard]] std::string spell_line(Plan const& plan, Session const& session, Item const& item,
                                     LineStyle style = {});

/// "threshold 1:55 per 100m in 25m reserve 20m": the setting alone.
[[nodiscard]] std::string spell_line(Threshold const& threshold);

/// What stands behind a heading: `easy rest 20s`; empty when nothing.
[[nodiscard]] std::string spell_defaults(Heading const& heading);

} // namespace lengthwise::plan
