#include "report/paint.hpp"

#include <catch2/catch.hpp>

namespace lengthwise::report {

TEST_CASE("without colour text stays as it is") {
    Paint const paint{false};
    for (auto const ink : {Ink::plain, Ink::bold, Ink::dim, Ink::red, Ink::yellow, Ink::blue}) {
        CHECK(paint(ink, "total") == "total");
    }
}

TEST_CASE("with colour each ink has its code, and plain has none") {
    Paint const paint{true};
    CHECK(paint(Ink::plain, "total") == "total");
    CHECK(paint(Ink::bold, "total") == "\033[1mtotal\033[0m");
    CHECK(paint(Ink::dim, "m") == "\033[2mm\033[0m");
    CHECK(paint(Ink::red, "error") == "\033[31merror\033[0m");
    CHECK(paint(Ink::yellow, "warning") == "\033[33mwarning\033[0m");
    CHECK(paint(Ink::blue, "note") == "\033[34mnote\033[0m");
    CHECK(paint(Ink::bold, "").empty());
}

} // namespace lengthwise::report
