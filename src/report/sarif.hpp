#pragma once

#include "check/register.hpp"
#include "grammar/diagnostic.hpp"
#include "plan/plan.hpp"
#include "report/findings_text.hpp"
#include "report/json.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lengthwise::report {

/// Findings as other programs collect them: one log of SARIF 2.1.0 (Static Analysis Results Interchange
/// Format, OASIS Standard, 27 March 2020), one run, the results of any number of files. Columns count
/// code points, offsets bytes of the file. What the file allows is a result that is suppressed, with its
/// reason. No time, machine or folder is in it: same input, same bytes.
class Sarif {
  public:
    /// A rule that is none of `check::rules`: a code of errors in a text, and what it means.
    using Code = std::pair<std::string_view, std::string_view>;

    /// Writes the head of the log.
    Sarif(TextSink sink, std::string_view version, std::vector<Code> const& codes);

    /// The results of one file.
    void file(Diagnostics const& findings, Sources const& sources, check::Waived const& waived);
    /// Ends the log. `whole`: every file that was asked for could be read.
    void finish(bool whole);

  private:
    void rule(check::Rule const& rule);
    void result(Diagnostic const& finding, Sources const& sources, plan::Allow const* allow);
    void location(Sources const& sources, Span span, std::string_view message);
    void fingerprint(Diagnostic const& finding, Sources const& sources);
    void more(Diagnostics const& findings, std::string_view file);

    Json json_;
    std::map<std::uint64_t, std::uint32_t> prints_; ///< how often a rule spoke of such a line
    std::vector<std::string> notices_;              ///< what is not listed
};

} // namespace lengthwise::report
