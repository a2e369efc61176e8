#include "paint/shaper.hpp"
#include "support/card_checks.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise;

namespace {

paint::Shaper shaper() {
    auto fonts = paint::own_fonts(paint::font_folders(nullptr));
    REQUIRE(fonts.has_value()); // the package fonts-inter
    return paint::Shaper{std::move(*fonts)};
}

} // namespace

TEST_CASE("with real letters too, texts stand inside, apart and large enough, and nothing is lost") {
    auto measure = shaper();
    auto const count = support::check_cards(100, 500'000, measure);
    CHECK(count.fault == "");
    CHECK(count.laid > 500);
}

TEST_CASE("the same of 20 000 sessions with real letters", "[long]") {
    auto measure = shaper();
    auto const count = support::check_cards(20'000, 600'000, measure);
    CHECK(count.fault == "");
    CHECK(count.refusals * 100 < count.laid);
}

TEST_CASE("figures are all as wide as each other, and letters are not") {
    auto measure = shaper();
    for (auto const weight : {cards::Weight::medium, cards::Weight::semibold}) {
        for (auto const* digit : {"0", "1", "5", "8", "9"}) {
            CHECK(measure.width(digit, weight) == Approx(measure.width("4", weight)).epsilon(0.002));
        }
        CHECK(measure.width("12", weight) == Approx(2 * measure.width("4", weight)).epsilon(0.002));
        CHECK(measure.width("i", weight) < measure.width("m", weight));
    }
    CHECK(measure.width("crawl", cards::Weight::semibold) > measure.width("crawl", cards::Weight::medium));
    CHECK(measure.width("", cards::Weight::medium) == 0);
}

TEST_CASE("plain text is shaped as any other") {
    auto measure = shaper();
    // The same letters, once alone and once beside one that is not plain.
    auto const both = measure.width("crawl é", cards::Weight::medium);
    auto const parts =
        measure.width("crawl ", cards::Weight::medium) + measure.width("é", cards::Weight::medium);
    CHECK(both == Approx(parts).epsilon(0.01));
}

TEST_CASE("letters that Inter lacks come from the system; what nobody has is known") {
    auto measure = shaper();
    CHECK(measure.width("長い", cards::Weight::medium) == Approx(2).epsilon(0.1)); // square letters
    CHECK(measure.width("سباحة", cards::Weight::medium) > 1);
    CHECK(measure.missing().empty());
    (void)measure.width("\u0378", cards::Weight::medium); // not assigned
    CHECK(measure.missing() == std::set<char32_t>{0x378});
}
