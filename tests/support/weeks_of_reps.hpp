#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace lengthwise::support {

/// Weeks of one session, its longest rep as given; the first is the week of Mon 3 May 2027.
[[nodiscard]] inline std::string weeks_of_reps(std::string const& head,
                                               std::vector<std::string> const& reps) {
    auto text = head + "pool 25m\n";
    for (std::size_t i = 0; i < reps.size(); ++i) {
        text += "week " + std::to_string(i + 1) + (i == 0 ? " from 2027-05-03\n" : "\n");
        text += "session Tue\nmain\n" + reps[i] + "\n";
    }
    return text;
}

} // namespace lengthwise::support
