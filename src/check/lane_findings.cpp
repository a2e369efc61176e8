#include "check/lane_findings.hpp"

#include "check/inquiry.hpp"

#include <fmt/core.h>
#include <fmt/format.h>

#include <utility>

namespace lengthwise::check {

void LaneFindings::warn(Swum const& by, Span span, std::string message, std::string hint,
                        std::vector<Related> related) {
    add(by, {false, span, std::move(message), std::move(hint), std::move(related), {}, {}});
}

void LaneFindings::error(Swum const& by, Span span, std::string message, std::string hint,
                         std::vector<Related> related) {
    add(by, {true, span, std::move(message), std::move(hint), std::move(related), {}, {}});
}

void LaneFindings::error(Span span, std::string message, std::string hint, std::vector<Related> related) {
    entries_.push_back({true, span, std::move(message), std::move(hint), std::move(related), {}, {}});
}

void LaneFindings::add(Swum const& by, Entry entry) {
    auto const begin = entry.span.begin;
    if (by.sharers != nullptr && of_lanes_.contains({begin, by.lane})) {
        return;
    }
    auto const [place, is_new] = places_.try_emplace({begin, entry.message}, entries_.size());
    if (is_new) {
        entries_.push_back(std::move(entry));
    }
    auto& found = entries_[place->second];
    if (by.sharers != nullptr) {
        found.swimmers.push_back(names(*by.sharers));
    } else {
        found.lanes.push_back(by.lane);
        of_lanes_.emplace(begin, by.lane);
    }
}

std::string LaneFindings::whose(Entry const& entry) const {
    bool const named = entry.lanes.empty() && entry.swimmers.empty();
    if (named || entry.lanes.size() == all_) {
        return {};
    }
    auto who = entry.swimmers;
    if (!entry.lanes.empty()) {
        who.insert(who.begin(), fmt::format("{} {}", entry.lanes.size() == 1 ? "lane" : "lanes",
                                            fmt::join(entry.lanes, ", ")));
    }
    return fmt::format(" ({})", fmt::join(who, ", "));
}

void LaneFindings::hand_in(Inquiry& inquiry) {
    for (auto& entry : entries_) {
        entry.message += whose(entry);
        auto const report = entry.error ? &Inquiry::error : &Inquiry::warn;
        (inquiry.*report)(entry.span, std::move(entry.message), std::move(entry.hint),
                          std::move(entry.related));
    }
}

} // namespace lengthwise::check
