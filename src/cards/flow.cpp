#include "cards/flow.hpp"

#include <algorithm>
#include <limits>

namespace lengthwise::cards {
namespace {

constexpr double card_price = 1e4;
constexpr double torn_price = 1e8;
constexpr double item_price = 1;
constexpr double uneven_price = 3;
constexpr double hair = 1e-6; // what sums of millimetres may be off

double price_of(Cut cut) {
    return cut == Cut::torn ? torn_price : cut == Cut::item ? item_price : 0;
}

double room_of(std::size_t first, std::size_t end, std::size_t count, Rooms const& rooms) {
    if (first == 0) {
        return end == count ? rooms.alone : rooms.first;
    }
    return end == count ? rooms.last : rooms.middle;
}

} // namespace

bool goes_on(std::vector<BodyLine> const& lines, std::size_t first) {
    return first > 0 && lines[first].cut != Cut::section;
}

double height_of(std::vector<BodyLine> const& lines, std::size_t first, std::size_t end, Rooms const& rooms) {
    if (first == end) {
        return 0;
    }
    auto height =
        rooms.top + (goes_on(lines, first) ? rooms.heading + lines[first].advance : lines[first].rise);
    bool strip = lines[first].strip;
    for (auto i = first + 1; i < end; ++i) {
        height += lines[i].advance;
        strip = strip || lines[i].strip;
    }
    return height + lines[end - 1].fall + (strip ? rooms.strip : 0);
}

std::vector<std::size_t> flow(std::vector<BodyLine> const& lines, Rooms const& rooms) {
    auto const count = lines.size();
    if (height_of(lines, 0, count, rooms) <= rooms.alone + hair) {
        return {0};
    }
    // From the last line back: the best way to place all lines from here on, beginning a card here.
    std::vector<double> best(count + 1, std::numeric_limits<double>::infinity());
    std::vector<std::size_t> next(count + 1, count);
    best[count] = 0;
    for (auto first = count; first-- > 0;) {
        auto height =
            rooms.top + (goes_on(lines, first) ? rooms.heading + lines[first].advance : lines[first].rise);
        bool strip = false;
        for (auto end = first + 1; end <= count; ++end) {
            height += end > first + 1 ? lines[end - 1].advance : 0;
            strip = strip || lines[end - 1].strip;
            auto const room = room_of(first, end, count, rooms);
            auto const free = room - height - lines[end - 1].fall - (strip ? rooms.strip : 0);
            if (height > std::max(rooms.middle, rooms.first)) {
                break;
            }
            if (free < -hair) {
                continue; // the last card may have less room than others
            }
            auto const part = free / room;
            auto const cut = end == count ? 0 : price_of(lines[end].cut);
            auto const price = best[end] + card_price + cut + uneven_price * part * part;
            if (price < best[first]) {
                best[first] = price;
                next[first] = end;
            }
        }
    }
    std::vector<std::size_t> starts;
    if (best[0] == std::numeric_limits<double>::infinity()) {
        return starts;
    }
    for (std::size_t at = 0; at < count; at = next[at]) {
        starts.push_back(at);
    }
    return starts;
}

} // namespace lengthwise::cards
