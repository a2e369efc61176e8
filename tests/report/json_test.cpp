#include "report/json.hpp"

#include <catch2/catch.hpp>

namespace lengthwise::report {
namespace {

template <typename Write>
std::string written(Write write) {
    std::string text;
    {
        Json json{[&](std::string_view piece) { text += piece; }};
        write(json);
    }
    return text;
}

std::string string(std::string_view text) {
    return written([&](Json& json) { json.string(text); });
}

} // namespace

TEST_CASE("values keep their order and have commas between them") {
    CHECK(written([](Json& json) {
              json.begin_object().key("b").integer(-1).key("a").begin_array().string("x").null().number(
                  "0.5");
              json.begin_object()
                  .end_object()
                  .begin_array()
                  .end_array()
                  .end_array()
                  .key("c")
                  .null()
                  .end_object();
              json.end_line();
          }) == "{\"b\":-1,\"a\":[\"x\",null,0.5,{},[]],\"c\":null}\n");
}

TEST_CASE("documents stand on a line each") {
    CHECK(written([](Json& json) {
              json.begin_array().end_array().end_line();
              json.begin_array().end_array().end_line();
          }) == "[]\n[]\n");
}

TEST_CASE("strings are escaped where JSON or a terminal asks for it") {
    CHECK(string("say \"fist\" \\ 放松") == R"("say \"fist\" \\ 放松")");
    CHECK(string("a\tb") == R"("a\tb")");
    CHECK(string("\n\033\x7F\u009B") == R"("\u000a\u001b\u007f\u009b")");
    CHECK(string(std::string_view{"\0", 1}) == R"("\u0000")");
}

TEST_CASE("bytes that are no UTF-8 become the replacement character") {
    CHECK(string("a\xFF"
                 "b") == "\"a\uFFFDb\"");
    CHECK(string("\xC3") == "\"\uFFFD\"");
}

TEST_CASE("a long document comes in pieces") {
    std::size_t pieces = 0;
    std::size_t bytes = 0;
    Json json{[&](std::string_view piece) {
        ++pieces;
        bytes += piece.size();
    }};
    json.begin_array();
    for (int i = 0; i < 100'000; ++i) {
        json.integer(7);
    }
    json.end_array().end_line();
    CHECK(pieces > 1);
    CHECK(bytes == 200'002);
}

} // namespace lengthwise::report
