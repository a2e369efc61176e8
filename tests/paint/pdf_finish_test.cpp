#include "paint/pdf_finish.hpp"

#include <catch2/catch.hpp>

#include <cstdio>
#include <string>

using lengthwise::paint::finished;

TEST_CASE("what is not as it was expected stays as it is") {
    for (auto const* text :
         {"", "no PDF", "/Root 1 0 R", "%PDF-1.5\n/Root 1 0 R /Size 3 startxref 5", "startxref"}) {
        CHECK(finished(text) == text);
    }
}

TEST_CASE("an update is added behind what is there") {
    std::string const pdf =
        "%PDF-1.5\n1 0 obj\n<< /Type /Catalog\n>>\nendobj\nxref\n0 1\ntrailer\n<< /Size 2\n"
        "   /Root 1 0 R\n   /Info 9 0 R\n>>\nstartxref\n50\n%%EOF\n";
    auto const more = finished(pdf);
    REQUIRE(more.size() > pdf.size());
    CHECK(more.substr(0, pdf.size()) == pdf);
    CHECK(more.find("/Prev 50\n", pdf.size()) != std::string::npos);
    CHECK(more.find("/Info 9 0 R", pdf.size()) != std::string::npos);
    // The table of places says where the new object stands.
    auto const object = more.find("1 0 obj", pdf.size());
    char place[11];
    std::snprintf(place, sizeof place, "%010zu", object);
    CHECK(more.find(std::string{place} + " 00000 n", object) != std::string::npos);
}
