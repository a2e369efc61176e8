#pragma once

#include "recogniser/stream.hpp"

/// The lines above sections: heads and settings, without their line ends.
namespace lengthwise::recogniser {

/// A head that is no setting; `known` becomes false where none begins.
[[nodiscard]] bool head(Stream& in, bool& known);

[[nodiscard]] bool starts_setting(Stream const& in);
[[nodiscard]] bool setting(Stream& in);
/// Any number of settings, with their line ends.
[[nodiscard]] bool settings(Stream& in);

[[nodiscard]] bool date(Stream& in);        ///< a day that exists
[[nodiscard]] bool time_of_day(Stream& in); ///< below 24:00

} // namespace lengthwise::recogniser
