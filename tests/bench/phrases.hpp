#pragma once

#include <array>
#include <string_view>

/// The words that the generated sessions are made of; all invented.
namespace lengthwise::bench::phrases {

using namespace std::string_view_literals;

inline constexpr std::array days{"Mon"sv, "Tue"sv, "Wed"sv, "Thu"sv, "Fri"sv, "Sat"sv, "Sun"sv};

inline constexpr std::array session_names{"One more length"sv,
                                          "Steady water"sv,
                                          "Two by two"sv,
                                          "Out and home"sv,
                                          "Patient start"sv,
                                          "Quiet arms"sv,
                                          "Harbour pace"sv,
                                          "Bridges"sv,
                                          "Pull and glide"sv,
                                          "Late lanes"sv,
                                          "Élan"sv,
                                          "Turns and timing"sv,
                                          "First five hundred"sv,
                                          "Even halves"sv,
                                          "Rainy Tuesday"sv,
                                          "Breathing to three"sv,
                                          "Lower the knees"sv,
                                          "Race rehearsal"sv,
                                          "Easy after illness"sv,
                                          "Big kick"sv};

inline constexpr std::array section_names{"Pyramid"sv, "As a group"sv, "Own clock"sv, "Threes"sv,
                                          "Broken long one"sv};

inline constexpr std::array strokes{"crawl"sv, "crawl"sv,  "crawl"sv,  "crawl"sv,
                                    "back"sv,  "breast"sv, "choice"sv, "medley"sv};
inline constexpr std::array efforts{"easy"sv, "steady"sv, "steady"sv, "threshold"sv, "hard"sv, "sprint"sv};

inline constexpr std::array drills{
    "fist"sv,         "catch-up"sv,       "zip"sv,    "six kicks, switch"sv, "single arm"sv,
    "doggy paddle"sv, "fingertip drag"sv, "torpedo"sv};

inline constexpr std::array notes{"count strokes on the first length"sv, "long arms"sv,
                                  "breathe out under water"sv,           "look at the bottom"sv,
                                  "leave five seconds apart"sv,          "tête basse"sv};

inline constexpr std::array comments{"ask who has fins"sv, "clock on the far wall"sv,
                                     "shorten if the hall is cold"sv};

} // namespace lengthwise::bench::phrases
