#include "units/distance.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;

// The international yard: "Refinement of Values for the Yard and the Pound", US Federal
// Register 24 FR 5348 (1 July 1959). The same words in the addendum of 1960 to National
// Bureau of Standards Circular 572: "1 yard = 0.914 4 meter exactly. From this definition
// it follows that 1 inch equals 25.4 millimeters."

TEST_CASE("a yard is 0.9144 m exactly (24 FR 5348)", "[published][yard]") {
    CHECK(Distance::yards(10'000) == Distance::metres(9'144));
    CHECK(spell::json_metres(Distance::yards(1)) == "0.9144");
}

TEST_CASE("an inch is 25.4 mm exactly (NBS Circular 572, addendum)", "[published][yard]") {
    // 36 inches a yard; 10 000 inches are 254 m.
    CHECK(Distance::yards(10'000) == 36 * Distance::metres(254));
}

TEST_CASE("a statute mile is 1609.344 m (1760 international yards)", "[published][yard]") {
    CHECK(spell::json_metres(Distance::yards(1'760)) == "1609.344");
    CHECK(spell::json_metres(Distance::yards(500)) == "457.2");
    CHECK(spell::json_metres(Distance::yards(1'650)) == "1508.76");
}

TEST_CASE("the old survey yard would not do", "[published][yard]") {
    // Until 1959 the US yard was 3600/3937 m; a mile of them is 3.2 mm longer.
    auto const survey_mile = Distance::units(1'760LL * 3'600 * Distance::per_metre / 3'937);
    CHECK(survey_mile > Distance::yards(1'760));
    CHECK(spell::json_metres(survey_mile - Distance::yards(1'760)) == "0.0032");
}
