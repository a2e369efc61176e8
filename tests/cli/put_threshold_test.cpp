#include "cli/put_threshold.hpp"

#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>

/// The threshold's place in a plan.
namespace lengthwise::cli {
namespace {

std::string put(std::string const& text, std::string const& line = "threshold 1:55 per 100m in 25m") {
    auto const read = support::read_plan(text);
    REQUIRE(read.error() == "");
    auto const result = with_threshold(read.bundle->root(), line);
    REQUIRE(support::read_plan(result).error() == "");
    return result;
}

TEST_CASE("it takes the place of the one that is there") {
    CHECK(put("pool 25m\nthreshold 2:05\nsession\n") ==
          "pool 25m\nthreshold 1:55 per 100m in 25m\nsession\n");
    CHECK(put("threshold about 2:05 per 100yd in open water reserve 20yd\npool 25m\n") ==
          "threshold 1:55 per 100m in 25m\npool 25m\n");
}

TEST_CASE("its comment and columns stay") {
    CHECK(put("pool        25m   # big hall\r\n\tthreshold   2:05  # in May\r\nrest 20s\r\n") ==
          "pool        25m   # big hall\r\n\tthreshold   1:55 per 100m in 25m  # in May\r\nrest 20s\r\n");
}

TEST_CASE("only the file's own is replaced") {
    auto const rest = "swimmer \"Una\" threshold 1:45\n"
                      "week 1\n  threshold 2:00\n  session\n    threshold 2:10\n    main\n      100\n";
    CHECK(put(std::string{"pool 25m\n"} + rest) ==
          std::string{"pool 25m\nthreshold 1:55 per 100m in 25m\n"} + rest);
}

TEST_CASE("without one it stands behind the pool") {
    CHECK(put("plan \"Weir\"\npool 25m # hall\nrest 20s\n") ==
          "plan \"Weir\"\npool 25m # hall\nthreshold 1:55 per 100m in 25m\nrest 20s\n");
    CHECK(put("pool open water\r\nrest 20s\r\n") ==
          "pool open water\r\nthreshold 1:55 per 100m in 25m\r\nrest 20s\r\n");
    CHECK(put("  pool 25m\n  rest 20s\n") == "  pool 25m\n  threshold 1:55 per 100m in 25m\n  rest 20s\n");
    CHECK(put("pool 25m") == "pool 25m\nthreshold 1:55 per 100m in 25m");
    CHECK(put("pool 25m # hall") == "pool 25m # hall\nthreshold 1:55 per 100m in 25m");
}

TEST_CASE("without a pool it stands at the end of the head") {
    CHECK(put("plan \"Weir\"\nset \"a\" = (100\n  50)\n\n# week one\nweek 1\n") ==
          "plan \"Weir\"\nset \"a\" = (100\n  50)\nthreshold 1:55 per 100m in 25m\n\n# week one\nweek 1\n");
    CHECK(put("plan \"Weir\"\n") == "plan \"Weir\"\nthreshold 1:55 per 100m in 25m\n");
    CHECK(put("\"a note\"\nsession\n") == "\"a note\"\nthreshold 1:55 per 100m in 25m\nsession\n");
}

TEST_CASE("without a head it stands at the beginning") {
    CHECK(put("") == "threshold 1:55 per 100m in 25m\n");
    CHECK(put("# mine\nsession\n  main\n    100\n") ==
          "threshold 1:55 per 100m in 25m\n# mine\nsession\n  main\n    100\n");
    CHECK(put("\xEF\xBB\xBFsession\r\n") == "\xEF\xBB\xBFthreshold 1:55 per 100m in 25m\r\nsession\r\n");
}

} // namespace
} // namespace lengthwise::cli
