#pragma once

#include "units/distance.hpp"
#include "units/pool.hpp"

#include <array>
#include <string_view>

/// Pools and race distances with the place each figure comes from. Exact values of
/// the thirds are spelled as a numerator over 3, so that no figure here is rounded.
namespace published {

struct PoolRow {
    std::string_view name;
    std::string_view in_units; ///< for the program `units`
    lengthwise::Unit unit;
    int thirds; ///< the length in thirds of its unit
    std::string_view source;

    [[nodiscard]] constexpr lengthwise::Distance length() const {
        return lengthwise::Distance::units(thirds * lengthwise::one(unit).units() / 3);
    }
};

inline constexpr std::string_view practice = "common practice, no published source";
/// FINA Facilities Rules 2009-2013, FR 3: 50.0 metres, 25.0 metres between the touch panels.
inline constexpr std::string_view facilities_rules = "FINA Facilities Rules 2009-2013, FR 3";
/// USA Swimming, list of certified pools: with touchpads at least 25.00 yards, 25.00 or 50.00 metres.
inline constexpr std::string_view certified_pools = "USA Swimming, list of certified pools";

inline constexpr std::array pools{
    PoolRow{"20 yd", "20 yd", lengthwise::Unit::yard, 60, practice},
    PoolRow{"25 yd", "25 yd", lengthwise::Unit::yard, 75, certified_pools},
    PoolRow{"33 1/3 yd", "(33 + 1|3) yd", lengthwise::Unit::yard, 100, practice},
    PoolRow{"36 2/3 yd", "(36 + 2|3) yd", lengthwise::Unit::yard, 110, practice},
    PoolRow{"50 yd", "50 yd", lengthwise::Unit::yard, 150, practice},
    PoolRow{"16 2/3 m", "(16 + 2|3) m", lengthwise::Unit::metre, 50, practice},
    PoolRow{"20 m", "20 m", lengthwise::Unit::metre, 60, practice},
    PoolRow{"25 m", "25 m", lengthwise::Unit::metre, 75, facilities_rules},
    PoolRow{"33 1/3 m", "(33 + 1|3) m", lengthwise::Unit::metre, 100, practice},
    PoolRow{"50 m", "50 m", lengthwise::Unit::metre, 150, facilities_rules},
    PoolRow{"66 2/3 m", "(66 + 2|3) m", lengthwise::Unit::metre, 200, practice},
    PoolRow{"100 m", "100 m", lengthwise::Unit::metre, 300, practice},
};

struct RaceRow {
    std::string_view word; ///< as a plan says it
    int metres;
    std::string_view source;
};

/// British Triathlon's table of distances, quoted by the Triathlon Industry Association
/// ("About triathlon"): 400, 750 and 1500 m; 1.9 km and 3.8 km are its two longest named races.
/// Sprint and standard also in the World Triathlon Competition Rules, appendix of distances.
inline constexpr std::string_view british_table = "British Triathlon, standard distances";
inline constexpr std::string_view world_rules = "World Triathlon Competition Rules, distances";

inline constexpr std::array races{
    RaceRow{"super-sprint", 400, british_table}, RaceRow{"sprint", 750, world_rules},
    RaceRow{"standard", 1500, world_rules},      RaceRow{"middle", 1900, british_table},
    RaceRow{"long", 3800, british_table},
};

} // namespace published
