#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"

#include <catch2/catch.hpp>

#include <fstream>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

// Runs what docs/notation.md and README.md show of the notation. A fenced block tagged
//   swim             is a whole file,
//   swim-line        lines of a main part in a 25 m pool,
//   swim-wrong       such lines that have an error, swim-wrong-file a whole file that has one;
//   text             right behind a wrong one: its first finding, word for word.
namespace {

using lengthwise::Diagnostic;

class NoFiles : public lengthwise::grammar::Reader {
  public:
    std::variant<Text, Refusal> read(std::string const&, std::uint64_t) override {
        return Refusal{"no such file"};
    }
    std::variant<Path, Refusal> resolve_links(std::string const&) override { return Refusal{"no such file"}; }
};

struct Example {
    std::string place; ///< "docs/notation.md:96", of the opening fence
    std::string tag;
    std::string text;
    std::optional<std::string> finding; ///< of the `text` block behind it
};

std::vector<Example> blocks_of(std::string const& name) {
    std::ifstream page{LENGTHWISE_ROOT "/" + name};
    REQUIRE(page);
    std::vector<Example> blocks;
    bool inside = false;
    int number = 0;
    for (std::string line; std::getline(page, line);) {
        ++number;
        if (line.rfind("```", 0) == 0) {
            inside = !inside;
            if (inside) {
                blocks.push_back({name + ':' + std::to_string(number), line.substr(3), {}, {}});
            }
        } else if (inside) {
            blocks.back().text += line + '\n';
        }
    }
    return blocks;
}

bool is_file(Example const& example) {
    return example.tag == "swim" || example.tag == "swim-wrong-file";
}

bool is_wrong(Example const& example) {
    return example.tag.rfind("swim-wrong", 0) == 0;
}

/// Moves the `text` block behind a wrong example into it.
std::vector<Example> with_findings(std::vector<Example> const& blocks) {
    std::vector<Example> examples;
    for (auto const& block : blocks) {
        if (block.tag == "text" && !examples.empty() && is_wrong(examples.back())) {
            examples.back().finding = block.text;
        } else {
            examples.push_back(block);
        }
    }
    return examples;
}

std::vector<Example> all_examples() {
    auto examples = with_findings(blocks_of("docs/notation.md"));
    for (auto& example : with_findings(blocks_of("README.md"))) {
        examples.push_back(std::move(example));
    }
    return examples;
}

std::string file_text(Example const& example) {
    return is_file(example) ? example.text : "pool 25m\nrest 20s\nsession\nmain\n" + example.text;
}

std::vector<Diagnostic> errors_in(std::string text) {
    NoFiles files;
    auto const bundle = lengthwise::grammar::bundle("example.swim", std::move(text), std::nullopt, files);
    auto findings = bundle.findings;
    findings.append(lengthwise::plan::resolve(bundle).findings);
    findings.sort_by_place();
    return findings.kept();
}

std::string as_text(Diagnostic const& finding) {
    auto text = "error: " + finding.message + " [" + std::string{finding.rule} + "]\n";
    if (!finding.hint.empty()) {
        text += "= " + finding.hint + '\n';
    }
    return text;
}

} // namespace

TEST_CASE("the pages have examples of every kind") {
    std::vector<std::string> missing{"swim", "swim-line", "swim-wrong", "swim-wrong-file"};
    for (auto const& example : all_examples()) {
        std::erase(missing, example.tag);
    }
    CHECK(missing.empty());
}

TEST_CASE("every example on the pages that should be read is read") {
    for (auto const& example : all_examples()) {
        if (example.tag.rfind("swim", 0) != 0 || is_wrong(example)) {
            continue;
        }
        INFO(example.place);
        for (auto const& error : errors_in(file_text(example))) {
            FAIL_CHECK(as_text(error));
        }
    }
}

TEST_CASE("every wrong example on the pages gets the finding that is printed there") {
    for (auto const& example : all_examples()) {
        if (!is_wrong(example)) {
            continue;
        }
        INFO(example.place << '\n' << example.text);
        auto const errors = errors_in(file_text(example));
        CHECK(errors.size() == 1);
        if (!errors.empty()) {
            CHECK(as_text(errors.front()) == example.finding.value_or(""));
        }
    }
}
