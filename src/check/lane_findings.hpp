#pragma once

#include "check/swum.hpp"
#include "grammar/diagnostic.hpp"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace lengthwise::check {

class Inquiry;

/// Findings that several lanes share are said once, with the lanes where it is not all of them. A
/// swimmer's is said, with the name, where his lane has none at that place.
class LaneFindings {
  public:
    explicit LaneFindings(std::size_t lanes) : all_(lanes) {}

    void warn(Swum const& by, Span span, std::string message, std::string hint,
              std::vector<Related> related = {});
    void error(Swum const& by, Span span, std::string message, std::string hint,
               std::vector<Related> related = {});
    /// Whose message says whom it is about.
    void error(Span span, std::string message, std::string hint, std::vector<Related> related);
    void hand_in(Inquiry& inquiry);

  private:
    struct Entry {
        bool error;
        Span span;
        std::string message;
        std::string hint;
        std::vector<Related> related;
        std::vector<int> lanes;
        std::vector<std::string> swimmers;
    };
    void add(Swum const& by, Entry entry);
    [[nodiscard]] std::string whose(Entry const& entry) const;

    std::size_t all_; ///< how many lanes are judged
    std::vector<Entry> entries_;
    std::map<std::pair<std::uint32_t, std::string>, std::size_t> places_; ///< by begin and message
    std::set<std::pair<std::uint32_t, int>> of_lanes_;                    ///< begin and lane
};

} // namespace lengthwise::check
