#include "cli/picture_name.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise::cli;

namespace {

std::string problem(std::vector<std::string> const& arguments) {
    auto const options = read_options(arguments);
    auto const* const misuse = std::get_if<Misuse>(&options);
    return misuse == nullptr ? "" : misuse->problem;
}

} // namespace

TEST_CASE("a name that promises another kind of picture is asked about") {
    CHECK(problem({"chart", "a.swim", "-o", "a.png"}) == "a.png would hold an SVG; try: -o a.svg");
    CHECK(problem({"cards", "a.swim", "-o", "a.png"}) ==
          "a.png would hold a PDF; try: --format png, or: -o a.pdf");
    CHECK(problem({"cards", "a.swim", "-o", "a.svg"}) == "a.svg would hold a PDF; try: -o a.pdf");
    CHECK(problem({"cards", "a.swim", "--format", "png", "-o", "a.pdf"}) ==
          "a.pdf would hold a PNG; try: -o a.png");
    CHECK(problem({"cards", "a.swim", "--preview", "a.png"}) ==
          "a.png would hold an SVG; try: --preview a.svg");
}

TEST_CASE("other names of pictures are everybody's own") {
    CHECK(problem({"chart", "a.swim", "-o", "a.svg"}).empty());
    CHECK(problem({"chart", "a.swim", "-o", "-"}).empty());
    CHECK(problem({"cards", "a.swim", "-o", "cards.new"}).empty());
    CHECK(problem({"cards", "a.swim", "-o", "a.png", "--format", "png"}).empty());
    CHECK(problem({"cards", "a.swim", "--preview", "a.svg", "-o", "a.pdf"}).empty());
}
