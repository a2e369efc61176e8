#include "recogniser/words.hpp"

#include <algorithm>
#include <array>

namespace lengthwise::recogniser {

namespace {

using Word = std::string_view;

template <std::size_t N>
bool among(std::array<Word, N> const& words, Word word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

constexpr auto strokes =
    std::to_array<Word>({"crawl", "back", "breast", "fly", "medley", "choice", "freestyle", "free",
                         "backstroke", "breaststroke", "butterfly", "im"});
constexpr auto modes = std::to_array<Word>({"swim", "kick", "pull", "tread", "drill"});
constexpr auto efforts = std::to_array<Word>(
    {"easy", "steady", "threshold", "hard", "sprint", "moderate", "fast", "strong", "max"});
constexpr auto gears =
    std::to_array<Word>({"fins", "paddles", "buoy", "board", "snorkel", "band", "wetsuit", "kickboard"});
constexpr auto kinds =
    std::to_array<Word>({"super-sprint", "sprint", "max", "standard", "middle", "long", "olympic"});
constexpr auto days =
    std::to_array<Word>({"mon", "tue", "wed", "thu", "fri", "sat", "sun", "monday", "tuesday", "wednesday",
                         "thursday", "friday", "saturday", "sunday"});
constexpr auto metre_words = std::to_array<Word>({"m", "metre", "metres", "meter", "meters"});
constexpr auto other_lengths = std::to_array<Word>({"yd", "yard", "yards", "length", "lengths"});
constexpr auto second_words = std::to_array<Word>({"s", "sec", "secs", "second", "seconds"});
constexpr auto minute_words = std::to_array<Word>({"min", "mins", "minute", "minutes"});
constexpr auto hour_words = std::to_array<Word>({"h", "hour", "hours"});
constexpr auto headings = std::to_array<Word>({"warm-up", "warmup", "drill", "main", "cool-down"});
constexpr auto statements = std::to_array<Word>({"plan", "race", "swimmer", "before", "set", "include",
                                                 "pool", "factor", "limit", "allow", "week", "session"});

} // namespace

bool stroke_word(Word word) {
    return among(strokes, word);
}
bool mode_word(Word word) {
    return among(modes, word);
}
bool effort_word(Word word) {
    return among(efforts, word);
}
bool gear_word(Word word) {
    return among(gears, word);
}
bool kind_word(Word word) {
    return among(kinds, word);
}
bool day_word(Word word) {
    return among(days, word);
}
bool metres(Word word) {
    return among(metre_words, word);
}
bool unit_of_distance(Word word) {
    return metres(word) || among(other_lengths, word);
}

bool unit_of_time(Word word) {
    return among(second_words, word) || among(minute_words, word) || among(hour_words, word);
}

bool unit_of_number(Word word) {
    return unit_of_distance(word) || unit_of_time(word);
}

int seconds_of(Word unit) {
    return among(second_words, unit) ? 1 : among(minute_words, unit) ? 60 : 3600;
}

bool statement(Word first, Word next) {
    return among(statements, first) || heading_words(first, next) > 0;
}

std::size_t heading_words(Word first, Word next) {
    bool const down = next == "down" && (first == "cool" || first == "swim" || first == "warm");
    bool const two = down || (first == "warm" && next == "up");
    return two ? 2 : among(headings, first) ? 1 : 0;
}

} // namespace lengthwise::recogniser
