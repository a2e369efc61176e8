#include "cards/layout.hpp"

namespace lengthwise::cards {

void frame(Picture& picture, bool hole, bool behind) {
    auto const& size = picture.size;
    picture.marks.emplace_back(Frame{{frame_edge, frame_edge},
                                     {size.width - 2 * frame_edge, size.height - 2 * frame_edge},
                                     frame_radius,
                                     frame_line});
    if (hole) {
        picture.marks.emplace_back(
            Ring{{behind ? hole_centre : size.width - hole_centre, hole_centre}, hole_radius});
    }
}

} // namespace lengthwise::cards
