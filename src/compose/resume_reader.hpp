#pragma once

#include "compose/resume.hpp"

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace lengthwise::compose {

/// The plan cut in two: what stays, and whose sessions show how it goes on.
struct Cut {
    plan::Week const* last = nullptr; ///< that stays
    std::vector<plan::Week const*> pattern;
};

/// Reads what a plan asks for from the sessions of its pattern, or takes what is said instead; the first
/// obstacle is kept.
class ResumeReader {
  public:
    /// The plan has a race. All outlive the reader.
    ResumeReader(plan::Plan const& plan, Cut const& cut, Instead const& instead)
        : plan_(plan), cut_(cut), instead_(instead) {}

    [[nodiscard]] std::variant<Request, Obstacle> read();

  private:
    using Days = std::set<std::uint8_t>;

    void read_race();
    void read_weeks();
    void read_first_day();
    [[nodiscard]] std::optional<Days> days_of(plan::Week const& week);
    void read_days();
    void read_times();
    void read_slot();
    void read_pool();
    void read_threshold();
    [[nodiscard]] plan::Threshold in_pool(plan::Threshold threshold) const;
    void take(plan::Threshold const& threshold);
    void read_session();

    void stop(std::string message, std::string hint);
    [[nodiscard]] bool before_race(plan::Session const& session) const {
        return !session.date || *session.date < plan_.race->on;
    }

    template <typename Visit>
    void each_session(Visit visit) const {
        for (auto const* week : cut_.pattern) {
            for (auto i = week->sessions.first; i < week->sessions.end(); ++i) {
                if (before_race(plan_.sessions[i])) {
                    visit(plan_.sessions[i]);
                }
            }
        }
    }

    plan::Plan const& plan_;
    Cut const& cut_;
    Instead const& instead_;
    Request request_;
    std::optional<Obstacle> obstacle_;
};

/// For 100 of the pool's unit in this pool; nothing where it is for something else. One that is only about
/// right may be a tenth slower, as the times of the plan have it.
[[nodiscard]] std::optional<Duration> time_of(plan::Threshold const& threshold, Pool const& pool);

} // namespace lengthwise::compose
