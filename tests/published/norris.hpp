#pragma once

#include <array>
#include <cstdint>
#include <utility>

/// NIST Statistical Reference Datasets, linear regression, "Norris" (ozone monitors, J. Norris,
/// NIST), with the figures that NIST certifies to 15 digits. The points were typed from memory;
/// that every certified digit comes out of them is the proof of the typing.
namespace published::norris {

/// y and x in tenths.
inline constexpr std::array<std::pair<std::int64_t, std::int64_t>, 36> tenths{{
    {1, 2},       {3388, 3374}, {1181, 1182}, {8880, 8846}, {92, 101},    {2281, 2265},
    {6685, 6663}, {9985, 9963}, {4491, 4486}, {7789, 7770}, {5592, 5582}, {3, 4},
    {1, 6},       {7781, 7755}, {6688, 6669}, {3393, 3380}, {4489, 4475}, {108, 116},
    {5577, 5560}, {2283, 2281}, {9980, 9958}, {8888, 8876}, {1196, 1202}, {3, 3},
    {6, 3},       {5576, 5568}, {3393, 3391}, {8880, 8872}, {9985, 9990}, {7789, 7790},
    {102, 111},   {1176, 1183}, {2289, 2292}, {6684, 6691}, {4492, 4489}, {2, 5},
}};

inline constexpr double intercept = -0.262323073774029;
inline constexpr double slope = 1.00211681802045;
inline constexpr double intercept_error = 0.232818234301152;
inline constexpr double slope_error = 0.429796848199937e-3;
inline constexpr double residual_deviation = 0.884796396144373;

} // namespace published::norris
