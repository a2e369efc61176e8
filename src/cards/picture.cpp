#include "cards/picture.hpp"

#include <algorithm>

namespace lengthwise::cards {
namespace {

constexpr double gap = 4;

/// Moves a mark down.
struct Shift {
    double y;
    Mark operator()(Text text) const {
        text.at.y += y;
        return text;
    }
    Mark operator()(Line line) const {
        line.from.y += y;
        line.to.y += y;
        return line;
    }
    Mark operator()(Frame frame) const {
        frame.at.y += y;
        return frame;
    }
    Mark operator()(Ring ring) const {
        ring.centre.y += y;
        return ring;
    }
};

} // namespace

void append(Picture& to, Picture const& more) {
    auto const y = to.size.height > 0 ? to.size.height + gap : 0;
    for (auto const& mark : more.marks) {
        to.marks.push_back(std::visit(Shift{y}, mark));
    }
    to.size = {std::max(to.size.width, more.size.width), y + more.size.height};
}

} // namespace lengthwise::cards
