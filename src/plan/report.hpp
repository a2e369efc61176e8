#pragma once

#include "grammar/codes.hpp"
#include "grammar/diagnostic.hpp"
#include "grammar/span.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_set>
#include <utility>
#include <vector>

namespace lengthwise::plan {

namespace code = grammar::code;

/// The resolver's findings, errors all of them. Keeps two promises: a place that
/// could not even be read is not judged again, and what is wrong inside a named
/// set is said once, at the set's own text, with the `use` that led there beside it.
class Report {
  public:
    explicit Report(Diagnostics const& earlier);

    void error(std::string_view code, Span at, std::string message, std::string hint = {},
               std::vector<Related> related = {});

    /// Number of errors so far: unchanged means that what was just read is sound.
    [[nodiscard]] std::uint64_t errors() const { return found_.count(Severity::error); }

    /// False when a further finding would only be counted.
    [[nodiscard]] bool keeps() const { return found_.keeps(Severity::error); }

    /// While one lives, findings stand inside the set that `use` names.
    class Inside {
      public:
        Inside(Report& report, Span use) : report_(report) { report_.uses_.push_back(use); }
        Inside(Inside const&) = delete;
        Inside& operator=(Inside const&) = delete;
        ~Inside() { report_.uses_.pop_back(); }

      private:
        Report& report_;
    };

    [[nodiscard]] Diagnostics take() { return std::move(found_); }

  private:
    Diagnostics found_;
    std::unordered_set<std::uint32_t> unreadable_; ///< where parsing already found an error
    std::unordered_set<std::uint64_t> said_;       ///< places inside sets, with their code
    std::vector<Span> uses_;
};

} // namespace lengthwise::plan
