#include "cards/type.hpp"

#include <cmath>
#include <numbers>

namespace lengthwise::cards {

double height_of_arc(double distance_mm, double minutes) {
    return 2 * distance_mm * std::tan(minutes / 60 / 180 * std::numbers::pi / 2);
}

} // namespace lengthwise::cards
