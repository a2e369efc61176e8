#include "grammar/bundle.hpp"

#include "grammar/limits.hpp"
#include "support/memory_reader.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace lengthwise;
using grammar::Bundle;
using support::MemoryReader;

namespace {

constexpr char const* root = "/plans/six.swim";

std::string set(std::string const& name) {
    return "set \"" + name + "\" = 4 x 50 crawl\n";
}

std::string include(std::string const& path) {
    return "include \"" + path + "\"\n";
}

/// The bundle of `root`, shown as plans/six.swim.
Bundle read(MemoryReader& reader) {
    return grammar::bundle("plans/six.swim", reader.files.at(root), root, reader);
}

std::vector<std::string> names(Bundle const& bundle) {
    std::vector<std::string> result;
    for (auto const& file : bundle.files) {
        result.push_back(file.source.name());
    }
    return result;
}

/// Findings as `file:line: message`.
std::vector<std::string> findings(Bundle const& bundle) {
    std::vector<std::string> result;
    for (auto const& finding : bundle.findings.kept()) {
        auto const& source = bundle.file_of(finding.span.begin).source;
        auto const line = source.locate(finding.span.begin).line;
        result.push_back(source.name() + ":" + std::to_string(line) + ": " + finding.message);
    }
    return result;
}

using Strings = std::vector<std::string>;

} // namespace

TEST_CASE("a plan without includes is a bundle of one file", "[grammar][bundle]") {
    MemoryReader reader;
    auto const bundle = grammar::bundle("-", "pool 25m\n", std::nullopt, reader);
    CHECK(names(bundle) == Strings{"-"});
    CHECK(findings(bundle).empty());
    CHECK(bundle.root().source.text() == "pool 25m\n");
    CHECK(bundle.root().tree.size() == 1);
    CHECK(reader.reads.empty());
}

TEST_CASE("includes count from the including file and are named from the root", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {
        {root, include("lib/drills.swim") + set("A")},
        {"/plans/lib/drills.swim", include("more/kick.swim") + include("./pull.swim")},
        {"/plans/lib/more/kick.swim", include("../../top.swim") + set("B")},
        {"/plans/lib/pull.swim", set("C")},
        {"/plans/top.swim", set("D")},
    };
    auto const bundle = read(reader);
    CHECK(findings(bundle).empty());
    CHECK(names(bundle) == Strings{"plans/six.swim", "plans/lib/drills.swim", "plans/lib/more/kick.swim",
                                   "plans/lib/./pull.swim", "plans/lib/more/../../top.swim"});
}

TEST_CASE("findings lie in one space of offsets over all files", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {
        {root, include("a.swim") + include("b.swim")},
        {"/plans/a.swim", set("A")},
        {"/plans/b.swim", set("B")},
    };
    auto const bundle = read(reader);
    REQUIRE(bundle.files.size() == 3);
    for (auto const& file : bundle.files) {
        CHECK(&bundle.file_of(file.source.base()) == &file);
        CHECK(&bundle.file_of(file.source.end()) == &file);
    }
    CHECK(bundle.files[1].source.base() > bundle.files[0].source.end());
}

TEST_CASE("a file reached twice is read once, by whatever spelling", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {
        {root, include("a.swim") + include("./a.swim") + include("x/../a.swim") + include("link.swim")},
        {"/plans/a.swim", include("b.swim") + set("A")},
        {"/plans/b.swim", include("a.swim") + include("b.swim") + set("B")},
    };
    reader.links = {{"/plans/link.swim", "/plans/a.swim"}};
    auto const bundle = read(reader);
    CHECK(findings(bundle).empty());
    CHECK(bundle.files.size() == 3);
    CHECK(reader.reads == Strings{"/plans/a.swim", "/plans/b.swim"});
}

TEST_CASE("a file of sets may include itself, a plan may not", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {{root, include("six.swim") + set("A")}};
    CHECK(findings(read(reader)).empty());

    reader.files = {
        {root, "pool 25m\n" + include("a.swim") + include("six.swim")},
        {"/plans/a.swim", include("six.swim")},
    };
    auto const message = "six.swim is this plan itself; an included file holds only set and include";
    CHECK(findings(read(reader)) ==
          Strings{std::string{"plans/six.swim:3: "} + message, std::string{"plans/a.swim:1: "} + message});
}

TEST_CASE("an included file holds only set and include", "[grammar][bundle]") {
    auto const* const statement =
        GENERATE("plan \"Quay\"", "race sprint on 2027-06-13", "swimmer \"Tove\" lane 2",
                 "before longest 200m", "pool 25m", "pool open water", "threshold 2:05", "rest 20-40s",
                 "factor kick 150%", "limit slot 5min", "allow slot", "\"a note\"", "week 1", "session");
    MemoryReader reader;
    reader.files = {
        {root, include("a.swim")},
        {"/plans/a.swim", std::string{statement} + "\n"},
    };
    CAPTURE(statement);
    auto const bundle = read(reader);
    CHECK(findings(bundle) == Strings{"plans/a.swim:1: an included file holds only set and include"});
    REQUIRE(bundle.findings.kept().size() == 1);
    auto const& finding = bundle.findings.kept().front();
    CHECK(finding.hint == "write it in plans/six.swim");
    REQUIRE(finding.related.size() == 1);
    CHECK(bundle.root().source.slice(finding.related.front().span) == "include \"a.swim\"");
}

TEST_CASE("every statement out of place in an included file is found", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {
        {root, include("a.swim")},
        {"/plans/a.swim", set("A") + "pool 25m\nrest 20-40s\n" + set("B") + "week 1\nweek 2\n"},
    };
    CHECK(findings(read(reader)).size() == 4);
}

TEST_CASE("an include lies in or below the plan's folder", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {
        {root, include("../other.swim") + include("../plans2/a.swim") + include("link.swim")},
        {"/other.swim", set("A")},
        {"/plans2/a.swim", set("B")},
        {"/elsewhere.swim", set("C")},
    };
    reader.links = {{"/plans/link.swim", "/elsewhere.swim"}};
    auto const bundle = read(reader);
    CHECK(findings(bundle) == Strings{"plans/six.swim:1: ../other.swim lies outside the plan's folder",
                                      "plans/six.swim:2: ../plans2/a.swim lies outside the plan's folder",
                                      "plans/six.swim:3: link.swim lies outside the plan's folder"});
    CHECK(reader.reads.empty());
}

TEST_CASE("a linked plan includes from the folder where it really lies", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {{root, include("a.swim")}, {"/plans/a.swim", set("A")}};
    reader.links = {{"/home/today.swim", root}};
    auto const bundle = grammar::bundle("today.swim", reader.files.at(root), "/home/today.swim", reader);
    CHECK(findings(bundle).empty());
    CHECK(reader.reads == Strings{"/plans/a.swim"});
}

TEST_CASE("an absolute or empty path is no include", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {{root, include("/plans/a.swim") + include("")}, {"/plans/a.swim", set("A")}};
    auto const bundle = read(reader);
    CHECK(findings(bundle) == Strings{"plans/six.swim:1: an include's path starts at its own file's folder",
                                      "plans/six.swim:2: an include's path starts at its own file's folder"});
}

TEST_CASE("standard input includes nothing", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {{"/a.swim", set("A")}};
    auto const bundle = grammar::bundle("-", include("a.swim"), std::nullopt, reader);
    CHECK(findings(bundle) == Strings{"-:1: standard input has no folder to include from"});
    CHECK(reader.reads.empty());
}

TEST_CASE("a plan that is gone says so at its include", "[grammar][bundle]") {
    MemoryReader reader;
    auto const bundle = grammar::bundle("six.swim", include("a.swim"), root, reader);
    CHECK(findings(bundle) == Strings{"six.swim:1: cannot find this plan's folder: no such file"});
}

TEST_CASE("what cannot be read is an error at its line, with the reason", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {
        {root, set("A") + include("gone.swim") + include("lib") + include("ok.swim")},
        {"/plans/ok.swim", include("gone.swim")},
    };
    reader.refusals = {{"/plans/lib", "is a directory"}};
    auto const bundle = read(reader);
    CHECK(findings(bundle) == Strings{"plans/six.swim:2: cannot read gone.swim: no such file",
                                      "plans/six.swim:3: cannot read lib: is a directory",
                                      "plans/ok.swim:1: cannot read gone.swim: no such file"});
}

TEST_CASE("findings inside an included file stand there, behind those of the plan", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {
        {root, include("a.swim") + "pool 25furlongs\n"},
        {"/plans/a.swim", set("A") + "set \"B\" = 4 x\n"},
    };
    auto const places = findings(read(reader));
    REQUIRE(places.size() >= 2);
    CHECK(places.front().starts_with("plans/six.swim:2: "));
    CHECK(places.back().starts_with("plans/a.swim:2: "));
}

TEST_CASE("escapes in a path are undone", "[grammar][bundle]") {
    MemoryReader reader;
    reader.files = {{root, "include \"say \\\"ah\\\".swim\"\n"}, {"/plans/say \"ah\".swim", set("A")}};
    CHECK(findings(read(reader)).empty());
}

TEST_CASE("includes are at most 16 deep", "[grammar][bundle][limits]") {
    auto const chain = [](int length) {
        MemoryReader reader;
        reader.files[root] = include("1.swim");
        for (int i = 1; i <= length; ++i) {
            auto const next = i < length ? include(std::to_string(i + 1) + ".swim") : set("A");
            reader.files["/plans/" + std::to_string(i) + ".swim"] = next;
        }
        return findings(read(reader));
    };
    CHECK(chain(limits::include_depth).empty());
    CHECK(chain(limits::include_depth + 1) ==
          Strings{"plans/16.swim:1: includes are 17 deep here, at most 16 may be"});
}

TEST_CASE("a plan has at most 1000 files", "[grammar][bundle][limits]") {
    auto const fan = [](int included) {
        MemoryReader reader;
        for (int i = 1; i <= included; ++i) {
            auto const name = std::to_string(i) + ".swim";
            reader.files[root] += include(name);
            reader.files["/plans/" + name] = set(name);
        }
        return findings(read(reader));
    };
    CHECK(fan(limits::include_files - 1).empty());
    CHECK(fan(limits::include_files) ==
          Strings{"plans/six.swim:1000: this is file 1001 of the plan, at most 1000 may be"});
}

TEST_CASE("a plan's file has at most 256 MiB", "[grammar][bundle][limits]") {
    MemoryReader reader;
    auto const bundle =
        grammar::bundle("big.swim", std::string(limits::file_bytes + 1, '#'), std::nullopt, reader);
    CHECK(findings(bundle) == Strings{"big.swim:1: the file has 268435457 bytes, at most 268435456 may be"});
    CHECK(bundle.root().tree.size() == 0);
}

TEST_CASE("a plan and all it includes have at most 1 GiB", "[grammar][bundle][limits][long]") {
    // Four files that fill the GiB but for what the root itself takes, and one byte more.
    auto const with_last = [](std::uint64_t bytes_over) {
        MemoryReader reader;
        reader.files[root] = include("1.swim") + include("2.swim") + include("3.swim") + include("4.swim");
        for (int i = 1; i <= 4; ++i) {
            auto const size = limits::file_bytes - (i < 4 ? 0 : reader.files[root].size() - bytes_over);
            reader.files["/plans/" + std::to_string(i) + ".swim"] = std::string(size, '\n');
        }
        return findings(read(reader));
    };
    CHECK(with_last(0).empty());
    CHECK(with_last(1) ==
          Strings{"plans/six.swim:4: with 4.swim the plan has 1073741825 bytes, at most 1073741824 may be"});
}
