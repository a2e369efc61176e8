#include "lint/source_files.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>

using namespace lengthwise::lint;

namespace lengthwise::lint {

std::string File::folder() const {
    return path.substr(0, path.rfind('/'));
}

std::vector<Include> includes_of(File const& file) {
    constexpr std::string_view directive = "#include ";
    std::vector<Include> includes;
    for (auto at = file.text.find(directive); at != std::string::npos;
         at = file.text.find(directive, at + 1)) {
        if (at != 0 && file.text[at - 1] != '\n') {
            continue;
        }
        auto const open = at + directive.size();
        auto const close = file.text.find_first_of("\">", open + 1);
        includes.push_back({file.text.substr(open + 1, close - open - 1), file.text[open] == '<'});
    }
    return includes;
}

std::vector<File> source_files() {
    std::filesystem::path const root{LENGTHWISE_ROOT};
    std::vector<File> files;
    for (auto const* top : {"grammar", "src"}) {
        for (auto const& entry : std::filesystem::recursive_directory_iterator{root / top}) {
            auto const extension = entry.path().extension();
            if (extension == ".hpp" || extension == ".cpp") {
                std::ifstream stream{entry.path(), std::ios::binary};
                files.push_back({entry.path().lexically_relative(root).generic_string(),
                                 {std::istreambuf_iterator<char>{stream}, {}}});
            }
        }
    }
    return files;
}

} // namespace lengthwise::lint

namespace {

using Words = std::set<std::string, std::less<>>;

/// Which of the project's headers a folder may include: folders, or single files of grammar/.
std::map<std::string, Words, std::less<>> const may_include{
    {"grammar", {}},
    {"src/units", {"units"}},
    {"src/plan",
     {"units", "plan", "grammar/tree.hpp", "grammar/span.hpp", "grammar/diagnostic.hpp", "grammar/words.hpp",
      "grammar/bundle.hpp", "grammar/write.hpp", "grammar/limits.hpp", "grammar/codes.hpp"}},
    {"src/calc", {"units", "plan", "calc"}},
    {"src/tailor", {"units", "plan", "calc", "tailor"}},
    {"src/check",
     {"units", "plan", "calc", "tailor", "check", "grammar/diagnostic.hpp", "grammar/codes.hpp",
      "grammar/limits.hpp"}},
    {"src/compose", {"units", "plan", "calc", "check", "compose"}},
    {"src/report",
     {"units", "plan", "calc", "check", "tailor", "compose", "report", "grammar/source.hpp",
      "grammar/diagnostic.hpp", "grammar/words.hpp", "grammar/strings.hpp"}},
    {"src/cards", {"units", "report", "cards"}},
    {"src/paint", {"cards", "paint"}},
    {"src/cli", {"units", "plan", "calc", "check", "tailor", "compose", "report", "cards", "cli", "grammar"}},
    {"src/cards_program",
     {"units", "plan", "calc", "check", "tailor", "compose", "report", "cards", "paint", "cli",
      "cards_program", "grammar"}},
};

bool allowed(File const& file, std::string const& name) {
    if (file.folder() == "grammar") {
        return name.find('/') == std::string::npos; // its own neighbours alone
    }
    auto const found = may_include.find(file.folder());
    return found != may_include.end() &&
           (found->second.contains(name) || found->second.contains(name.substr(0, name.find('/'))));
}

/// Where a library may be used: its headers' beginning, and the paths it may stand in.
struct Library {
    std::string_view headers;
    Words places;
};
std::vector<Library> const libraries{
    {"boost/spirit", {"grammar/parse.cpp"}},
    {"boost/", {"grammar/parse.cpp", "src/calc/exact.cpp"}},
    {"CLI/", {"src/cli/option_reader.hpp", "src/cli/option_reader.cpp"}},
    {"utf8proc", {"src/report"}},
    {"fmt/",
     {"grammar", "src/plan", "src/check", "src/compose", "src/report", "src/cards", "src/paint", "src/cli",
      "src/cards_program"}},
    {"pango/", {"src/paint"}},
    {"cairo", {"src/paint"}},
    {"fontconfig/", {"src/paint"}},
};

/// What reads, writes, waits or looks around: src/cli alone may.
Words const outside{"iostream", "fstream", "ostream",    "istream",    "cstdio",     "filesystem", "thread",
                    "mutex",    "ctime",   "locale",     "clocale",    "unistd.h",   "fcntl.h",    "csignal",
                    "future",   "print",   "syncstream", "sys/stat.h", "sys/wait.h", "random",     "sstream",
                    "iomanip",  "stdio.h", "stdlib.h",   "regex"};

/// The same, by what is called. Comments are not looked into, so these are spelled as code has them.
std::vector<std::string_view> const calls{"system_clock", "steady_clock", "std::getenv",
                                          "std::exit(",   "std::abort(",  "setlocale(",
                                          "printf(",      "std::time(",   "std::rand("};

/// What the compilers for browsers do not have (or only some of them).
std::vector<std::string_view> const too_new{"std::format(",       "std::source_location", "views::filter",
                                            "std::expected",      "chrono::parse",        "zoned_time",
                                            "std::from_chars(do", "std::stringstream"};

std::string without_comments(std::string const& text) {
    std::string code;
    for (std::size_t at = 0; at < text.size();) {
        auto const end = std::min(text.find('\n', at), text.size());
        auto const line = text.substr(at, end - at);
        code += line.substr(0, line.find("//")) + '\n';
        at = end + 1;
    }
    return code;
}

} // namespace

TEST_CASE("folders include only what lies before them on the road") {
    for (auto const& file : source_files()) {
        for (auto const& include : includes_of(file)) {
            INFO(file.path << " includes " << include.name);
            if (!include.system) {
                CHECK(allowed(file, include.name));
            }
        }
    }
}

TEST_CASE("each library has its places") {
    for (auto const& file : source_files()) {
        for (auto const& include : includes_of(file)) {
            for (auto const& library : libraries) {
                if (include.system && include.name.starts_with(library.headers)) {
                    INFO(file.path << " includes " << include.name);
                    CHECK((library.places.contains(file.path) || library.places.contains(file.folder())));
                }
            }
        }
    }
}

TEST_CASE("the core reads, writes and asks nothing outside") {
    for (auto const& file : source_files()) {
        if (file.folder() == "src/cli" || file.folder() == "src/cards_program") {
            continue;
        }
        for (auto const& include : includes_of(file)) {
            INFO(file.path << " includes " << include.name);
            CHECK_FALSE(outside.contains(include.name));
        }
        auto const code = without_comments(file.text);
        for (auto const call : calls) {
            INFO(file.path << " calls " << call);
            CHECK(code.find(call) == std::string::npos);
        }
    }
}

TEST_CASE("the core stays in the part of C++20 that all its compilers have") {
    for (auto const& file : source_files()) {
        auto const code = without_comments(file.text);
        for (auto const word : too_new) {
            INFO(file.path << " says " << word);
            CHECK(code.find(word) == std::string::npos);
        }
    }
}

TEST_CASE("nobody is told that something is invalid, illegal or failed") {
    for (auto const& file : source_files()) {
        auto const code = without_comments(file.text);
        for (auto const word : {"invalid", "illegal", "failed"}) {
            INFO(file.path << " says " << word);
            CHECK(code.find(word) == std::string::npos);
        }
    }
}

TEST_CASE("every folder of the house is in the table") {
    std::set<std::string> folders;
    for (auto const& file : source_files()) {
        folders.insert(file.folder());
    }
    CHECK(folders.size() > 5); // the sources were found at all
    for (auto const& folder : folders) {
        INFO(folder);
        CHECK(may_include.contains(folder));
    }
}

TEST_CASE("headers say once only, and files stay small") {
    for (auto const& file : source_files()) {
        INFO(file.path);
        if (file.path.ends_with(".hpp")) {
            CHECK(file.text.starts_with("#pragma once\n"));
        }
        CHECK(std::ranges::count(file.text, '\n') <= 500);
    }
}
