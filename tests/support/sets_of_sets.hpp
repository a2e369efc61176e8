#pragma once

#include <string>

namespace lengthwise::support {

/// Sets "0" to "highest", each but the first four times the one before. "14" holds half a
/// billion reps of a millisecond, which is within all limits and too much to walk one by one.
[[nodiscard]] inline std::string sets_of_sets(int highest) {
    std::string text = "set \"0\" = (0:00.001 + 0:00.001)\n";
    for (int i = 1; i <= highest; ++i) {
        auto const use = "use \"" + std::to_string(i - 1) + "\"";
        text +=
            "set \"" + std::to_string(i) + "\" = (" + use + " + " + use + " + " + use + " + " + use + ")\n";
    }
    return text;
}

} // namespace lengthwise::support
