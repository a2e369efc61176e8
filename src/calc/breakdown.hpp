#pragma once

#include "calc/totals.hpp"
#include "plan/plan.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Totals by word: how much of a plan is kick, how much is easy.
///
/// A split is counted by its parts. A rep counts among the reps of each word that it
/// has, a word's lengths are rounded up once a rep, and only a rep that is of one word
/// throughout can be that word's longest. Distances and times add up to the plain
/// totals; reps and lengths of splits may come to more.
namespace lengthwise::calc {

enum class By : std::uint8_t { stroke, mode, effort, gear, section };

[[nodiscard]] std::optional<By> find_by(std::string_view word);
[[nodiscard]] std::string_view spelling(By by);

/// One word's share. An unsaid stroke or effort is "unsaid", an unsaid mode "swim".
/// Gear goes by the whole list, "fins, paddles"; without any it is "nothing".
struct WordTotals {
    std::uint32_t key = 0; ///< orders words as the notation lists them
    Totals totals;
};

/// Words with reps, by key.
struct Breakdown {
    std::vector<WordTotals> words;

    Totals& of(std::uint32_t key);
    void add(Breakdown const& more, std::int64_t rounds = 1);
};

/// The word of this manner; sections are no property of one.
[[nodiscard]] std::uint32_t key_of(By by, plan::Manner const& manner);

/// "crawl", "kick", "at 95%", "fins, paddles", "warm-up".
[[nodiscard]] std::string word_of(By by, std::uint32_t key);

/// Breaks a plan down for one lane (0: unlabelled lines only), `if time` lines left out.
class BreakdownReader {
  public:
    BreakdownReader(plan::Plan const& plan, By by, int lane);
    void add_session(plan::Session const& session, Breakdown& breakdown);

  private:
    struct Measure {
        using Sum = Breakdown;
        By by;
        void add(plan::Plan const& plan, plan::Item const& item, Pool const& pool, std::int64_t rounds,
                 Breakdown& sum) const;
    };
    plan::Plan const& plan_;
    By by_;
    int lane_;
    Walk<Measure> walk_;
    Reckoner sections_; ///< a section's word is no property of its reps
};

} // namespace lengthwise::calc
