#include "cards/svg.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise::cards;

TEST_CASE("a picture as SVG: sizes in millimetres, texts as texts") {
    Picture picture{{20, 30}, {}};
    picture.marks.emplace_back(Text{{5, 9.5}, "4 < 5 & \"six\"", 6, Weight::semibold, Anchor::right, 12.345});
    picture.marks.emplace_back(Line{{5, 10}, {15, 10}, 0.7});
    picture.marks.emplace_back(Frame{{2, 2}, {16, 26}, 3.5, 0.3});
    picture.marks.emplace_back(Ring{{10.5, 9.5}, 3});
    auto const text = svg({picture}, "A <card>");
    CHECK(text.find("width=\"20mm\" height=\"30mm\" viewBox=\"0 0 20 30\"") != std::string::npos);
    CHECK(text.find("<title>A &lt;card&gt;</title>") != std::string::npos);
    CHECK(text.find(
              "<text class=\"b\" text-anchor=\"end\" x=\"5\" y=\"9.5\" font-size=\"6\" textLength=\"12.35\">"
              "4 &lt; 5 &amp; &quot;six&quot;</text>") != std::string::npos);
    CHECK(text.find("<path d=\"M5 10L15 10\" stroke-width=\"0.7\"/>") != std::string::npos);
    CHECK(text.find("<circle cx=\"10.5\" cy=\"9.5\" r=\"3\"") != std::string::npos);
    CHECK(text.find("<rect x=\"2\" y=\"2\" width=\"16\" height=\"26\" rx=\"3.5\"") != std::string::npos);
}

TEST_CASE("several pictures stand side by side") {
    auto const text = svg({{{20, 30}, {}}, {{20, 40}, {}}}, "");
    CHECK(text.find("viewBox=\"0 0 44 40\"") != std::string::npos);
    CHECK(text.find("translate(24)") != std::string::npos);
}
