#include "cases/case_file.hpp"
#include "fuzz/reading.hpp"
#include "grammar/synonyms.hpp"
#include "grammar/words.hpp"
#include "plan/rules.hpp"

#include <fmt/core.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <set>
#include <string>
#include <string_view>

/// Makes what the fuzz targets begin with: seeds of the project's own texts, and a dictionary of its grammar.
///
///     lengthwise_fuzz_seeds PROJECT FOLDER       FOLDER/inputs/*, FOLDER/dictionary
namespace {

namespace fs = std::filesystem;
using namespace lengthwise;

std::string content(fs::path const& file) {
    std::ifstream stream{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, {}};
}

/// Each text once, under a name that says where it comes from.
class Seeds {
  public:
    explicit Seeds(fs::path folder) : folder_(std::move(folder)) {
        fs::remove_all(folder_);
        fs::create_directories(folder_);
    }

    void add(std::string const& name, std::string const& bytes) {
        if (!bytes.empty() && known_.insert(bytes).second) {
            std::ofstream{folder_ / name, std::ios::binary} << bytes;
        }
    }
    [[nodiscard]] std::size_t count() const { return known_.size(); }

  private:
    fs::path folder_;
    std::set<std::string> known_;
};

void add_samples(fs::path const& project, Seeds& seeds) {
    for (auto const& entry : fs::directory_iterator{project / "sets"}) {
        if (entry.path().extension() == ".swim") {
            seeds.add(entry.path().stem().string(), content(entry.path()));
        }
    }
}

std::string with_line_ends(std::string_view text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        bool const escaped = text[i] == '\\' && i + 1 < text.size();
        i += escaped ? 1 : 0;
        result += !escaped ? text[i] : text[i] == 'n' ? '\n' : text[i] == 'r' ? '\r' : text[i];
    }
    return result;
}

/// The grammar's examples: `production good line: text`.
void add_productions(fs::path const& project, Seeds& seeds) {
    std::ifstream lines{project / "tests/grammar/productions.txt"};
    int number = 0;
    for (std::string line; std::getline(lines, line);) {
        auto const colon = line.find(": ");
        if (line.starts_with('#') || colon == std::string::npos) {
            continue;
        }
        auto const text = with_line_ends(line.substr(colon + 2));
        bool const whole_file = line.substr(0, colon).ends_with("file");
        seeds.add(fmt::format("{:03}-{}", ++number, line.substr(0, line.find(' '))),
                  whole_file ? text : "pool 25m\nthreshold 1:50\nsession\n  main\n    " + text + "\n");
    }
}

/// The files of golden cases: the first, and what it includes behind the divider.
void add_cases(fs::path const& project, Seeds& seeds) {
    for (auto const& entry : fs::directory_iterator{project / "tests/cases"}) {
        if (entry.path().extension() != ".case") {
            continue;
        }
        auto const file = cases::parse_case(content(entry.path()));
        std::string text;
        for (auto const& section : file.sections) {
            if (section.kind() == "file" || section.kind() == "input") {
                text += (text.empty() ? "" : std::string{fuzz::divider}) + section.body;
            }
        }
        seeds.add(entry.path().stem().string(), text);
    }
}

/// Bytes that other things are made of: plans by the generator, wishes of a coach.
void add_bytes(Seeds& seeds) {
    std::mt19937 random{1};
    for (int i = 0; i < 48; ++i) {
        std::string bytes(1, fuzz::generator_mark);
        for (int size = 20 + 10 * i; size > 0; --size) {
            bytes += static_cast<char>(random() & 0xFF);
        }
        seeds.add(fmt::format("bytes-{}", i), bytes);
    }
}

/// The quoted terminals of the grammar.
void add_terminals(fs::path const& project, std::set<std::string>& words) {
    auto const grammar = content(project / "grammar/notation.ebnf");
    for (auto at = grammar.find('"'); at != std::string::npos; at = grammar.find('"', at + 1)) {
        auto const end = grammar.find('"', at + 1);
        if (end == std::string::npos) {
            return;
        }
        if (grammar.substr(at, end - at).find('\n') == std::string::npos) {
            words.insert(grammar.substr(at + 1, end - at - 1));
        }
        at = end;
    }
}

void add_words(std::set<std::string>& words) {
    for (int i = 1; i < static_cast<int>(Word::count_); ++i) {
        auto const word = static_cast<Word>(i);
        words.emplace(spelling(word));
        for (auto const synonym : synonyms(word)) {
            words.emplace(synonym);
        }
    }
    for (auto const& rule : plan::rules) {
        words.emplace(rule.name);
    }
}

/// As libFuzzer reads it: a quoted word a line.
void write_dictionary(fs::path const& project, fs::path const& file) {
    std::set<std::string> words{"#", "\"", "\n", "\r\n", "    ", "\n" + std::string{fuzz::divider}};
    add_terminals(project, words);
    add_words(words);
    words.erase("");
    std::ofstream stream{file};
    for (auto const& word : words) {
        stream << '"';
        for (char const c : word) {
            if (c < ' ' || c > '~' || c == '"' || c == '\\') {
                stream << fmt::format("\\x{:02X}", static_cast<unsigned char>(c));
            } else {
                stream << c;
            }
        }
        stream << "\"\n";
    }
}

} // namespace

int main(int count, char** arguments) {
    if (count != 3) {
        std::fprintf(stderr, "usage: lengthwise_fuzz_seeds PROJECT FOLDER\n");
        return 2;
    }
    fs::path const project{arguments[1]};
    fs::path const folder{arguments[2]};
    Seeds seeds{folder / "inputs"};
    add_samples(project, seeds);
    add_productions(project, seeds);
    add_cases(project, seeds);
    add_bytes(seeds);
    write_dictionary(project, folder / "dictionary");
    std::printf("%zu seeds\n", seeds.count());
    return seeds.count() > 100 ? 0 : 1;
}
