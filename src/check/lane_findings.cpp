#include "check/lane_findings.hpp"

#include "check/inquiry.hpp"

#include <fmt/core.h>
#include <fmt/format.h>

#include <algorithm>
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
    if (by.sharers != nullptr && said_of_lane(by.lane, entry.span)) {
        return;
    }
    auto found = std::ranges::find_if(entries_, [&](Entry const& other) {
        return other.span == entry.span && other.message == entry.message;
    });
    if (found == entries_.end()) {
        found = entries_.insert(found, std::move(entry));
    }
    if (by.sharers != nullptr) {
        found->swimmers.push_back(names(*by.sharers));
    } else {
        found->lanes.push_back(by.lane);
    }
}

bool LaneFindings::said_of_lane(int lane, Span span) const {
    return std::ranges::any_of(entries_, [&](Entry const& entry) {
        return entry.span == span && std::ranges::find(entry.lanes, lane) != entry.lanes.end();
    });
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
