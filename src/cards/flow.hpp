#pragma once

#include "cards/body.hpp"

#include <cstddef>
#include <vector>

namespace lengthwise::cards {

/// How much room the cards of a session have for lines: from the bottom of the head's rule to the top
/// of what stands below.
struct Rooms {
    double alone = 0; ///< the only card
    double first = 0;
    double middle = 0;
    double last = 0;
    double heading = 0; ///< what a heading with "continued" adds
    double strip = 0;   ///< taken where the longest rep stands
    double top = 0;     ///< between a head's rule and what its first line takes
};

/// Where cards begin: indexes of lines, the first 0. As few cards as can be; of those the ones that end
/// between sections, else between rows, and are about equally full. A row or group is torn only if no
/// card could hold it. Nothing where not even a line fits.
[[nodiscard]] std::vector<std::size_t> flow(std::vector<BodyLine> const& lines, Rooms const& rooms);

/// What lines from `first` up to `end` take, with all that stands above them.
[[nodiscard]] double height_of(std::vector<BodyLine> const& lines, std::size_t first, std::size_t end,
                               Rooms const& rooms);

/// True if a card that begins with this line has to say the section's name again.
[[nodiscard]] bool goes_on(std::vector<BodyLine> const& lines, std::size_t first);

} // namespace lengthwise::cards
