#include "grammar/parse.hpp"
#include "grammar/source.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

// Holds grammar/notation.ebnf, grammar/parse.cpp and the examples in productions.txt
// together.
namespace {

using namespace lengthwise;

std::string read_file(std::string const& path) {
    std::ifstream file{std::string{LENGTHWISE_ROOT} + "/" + path};
    REQUIRE(file);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

/// The names before the "=" of the grammar's productions.
std::set<std::string> productions() {
    std::set<std::string> names;
    std::istringstream text{read_file("grammar/notation.ebnf")};
    for (std::string line; std::getline(text, line);) {
        std::istringstream words{line};
        std::string name;
        std::string equals;
        if (words >> name >> equals && equals == "=" && line.front() != ' ') {
            names.insert(name);
        }
    }
    return names;
}

struct Example {
    std::string production;
    bool good = false;
    bool whole_file = false;
    std::string text;
};

std::string with_line_ends(std::string const& text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '\\' && i + 1 < text.size()) {
            ++i;
            result += text[i] == 'n' ? '\n' : text[i] == 'r' ? '\r' : text[i];
        } else {
            result += text[i];
        }
    }
    return result;
}

std::vector<Example> examples() {
    std::vector<Example> result;
    std::istringstream text{read_file("tests/grammar/productions.txt")};
    for (std::string line; std::getline(text, line);) {
        if (line.empty() || line.front() == '#') {
            continue;
        }
        auto const colon = line.find(": ");
        std::istringstream words{line.substr(0, colon)};
        Example example;
        std::string verdict;
        std::string where;
        words >> example.production >> verdict >> where;
        CAPTURE(line);
        REQUIRE((verdict == "good" || verdict == "bad"));
        REQUIRE((where == "file" || where == "line"));
        example.good = verdict == "good";
        example.whole_file = where == "file";
        example.text = with_line_ends(line.substr(colon + 2));
        result.push_back(example);
    }
    return result;
}

std::string in_place(Example const& example) {
    return example.whole_file ? example.text : "session\n  main\n    " + example.text + "\n";
}

} // namespace

TEST_CASE("every production has a good and a bad example", "[grammar]") {
    std::set<std::string> good;
    std::set<std::string> bad;
    for (auto const& example : examples()) {
        (example.good ? good : bad).insert(example.production);
    }
    CHECK(good == productions());
    CHECK(bad == productions());
}

TEST_CASE("good examples of productions are read, bad ones are errors", "[grammar]") {
    for (auto const& example : examples()) {
        Source const source{"example", in_place(example)};
        auto const result = grammar::parse(source);
        CAPTURE(example.production, example.text);
        if (example.good && result.findings.has_errors()) {
            UNSCOPED_INFO(result.findings.kept().front().message);
        }
        CHECK(result.findings.has_errors() != example.good);
    }
}

TEST_CASE("productions are named the same in the grammar and in the parser", "[grammar]") {
    auto const parser = read_file("grammar/parse.cpp");
    for (auto const& name : productions()) {
        auto const is_terminal = name.front() >= 'A' && name.front() <= 'Z';
        if (is_terminal || name == "file") { // `file` is read line by line, in document.cpp
            continue;
        }
        CAPTURE(name);
        auto const is_rule = parser.find("constexpr auto " + name + " =") != std::string::npos ||
                             parser.find("constexpr auto " + name + "()") != std::string::npos ||
                             parser.find("> " + name + ";") != std::string::npos;
        CHECK(is_rule);
    }
}
