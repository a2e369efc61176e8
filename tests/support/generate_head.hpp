#pragma once

#include "plan/rules.hpp"
#include "support/draft.hpp"
#include "support/generate_items.hpp"

#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace lengthwise::test {

/// Writes what stands before the first week or session, and settings anywhere.
class HeadGenerator {
  public:
    /// The names of its sets begin with `prefix`.
    HeadGenerator(Draft& draft, std::string prefix)
        : draft_(draft), pen_(draft.pen), items_(draft), prefix_(std::move(prefix)) {}

    /// [ "plan" STRING NL ] { ( head | setting ) NL }
    void file_head();

    /// The settings of a week or session, which may put another course in force.
    void settings(int level);

    /// A file of named sets alone.
    void library();

  private:
    using Statements = std::vector<std::function<void()>>;

    void add_settings(Statements& statements, int level);
    void write(Statements statements);
    void line(int level);

    void race();
    void swimmer();
    void before();
    void set();
    void include();

    void pool(int level);
    void threshold(int level);
    void pace();
    void rest(int level);
    void factor(int level, std::string const& word);
    void limit(int level, plan::Rule const& rule);
    void allow(int level, plan::Rule const& rule);
    void note(int level);

    Draft& draft_;
    Pen& pen_;
    ItemGenerator items_;
    std::string prefix_; ///< of the names of sets
    int named_ = 0;      ///< sets and swimmers
};

/// Day `day` of a week: weeks are seven days apart, so that no session lies outside its own.
[[nodiscard]] std::string date(int week, int day);

} // namespace lengthwise::test
