#include "support/draft.hpp"

namespace lengthwise::test {

std::string Draft::quoted() {
    static std::vector<std::string> const plain{"long arms",   "eyes down",  "fist",      "glide",
                                                "breathe out", "slow hands", "one hip up"};
    static std::vector<std::string> const odd{
        "",      R"(\"quick\" feet)", R"(left \\ right)", "# 3, then (easy)", "größer", "放松，慢慢游",
        "é + ü", "100 crawl",         "  wide  "};
    return "\"" + one_of(chance(75) ? plain : odd) + "\"";
}

Distance Draft::step() {
    if (course.everywhere != Everywhere::no) {
        return Distance::metres(25); // see Course
    }
    if (!course.pool.has_length() || chance(8)) {
        return one(course.pool.unit) * 25;
    }
    return chance(90) ? course.pool.length : Distance::units(course.pool.length.units() / 2);
}

void Draft::rest() {
    auto const low = seconds(0, 40);
    switch (between(0, 3)) {
    case 0: // 20-40s
        pen.exact(std::to_string(low.ms() / 1000));
        pen.sign("-", false);
        pen.word({"60s", {"60 s", "60 seconds"}});
        break;
    case 1: // 30s-1min
        write(low);
        pen.sign("-", false);
        write(Duration::seconds(between(41, 120)));
        break;
    default:
        write(chance(20) ? Duration::minutes(between(0, 3)) : low);
    }
}

} // namespace lengthwise::test
