#include "cases/case_file.hpp"

#include <catch2/catch.hpp>

using namespace lengthwise::cases;

TEST_CASE("a case is taken apart and put together again") {
    std::string const text =
        "# shows\n\n--- file a.swim\nplan \"A\"\n--- run tally a.swim\n--- out\n--- err\n"
        "one\ntwo\n\\\n--- exit 1\n";
    auto const file = parse_case(text);
    CHECK(file.title == "# shows\n\n");
    CHECK(file.sections.size() == 5);
    CHECK(file.find("file")->argument() == "a.swim");
    CHECK(file.text_of("file") == "plan \"A\"\n");
    CHECK(file.text_of("out").empty());
    CHECK(file.text_of("err") == "one\ntwo");
    CHECK(file.find("exit")->argument() == "1");
    CHECK(write_case(file) == text);
}

TEST_CASE("a case's command is words") {
    CHECK(words_of("deck plan.swim --session \"Long hall\"  -o \"\"") ==
          std::vector<std::string>{"deck", "plan.swim", "--session", "Long hall", "-o", ""});
    CHECK(words_of("").empty());
}
