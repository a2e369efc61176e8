#include "cli/each_file.hpp"

#include "support/child.hpp"
#include "support/program.hpp"
#include "support/run_in_memory.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <new>
#include <string>
#include <vector>

#include <sys/resource.h>

using namespace lengthwise;
using support::MemoryFiles;
using support::run_in_memory;

namespace {

/// Long ones and short ones by turns, so that the later ones are done first; every seventh cannot be read.
std::string text(std::size_t i) {
    std::string plan = "pool 25m\n";
    for (std::size_t session = 0; session < (i % 5 == 0 ? 200 : 1); ++session) {
        plan += fmt::format("session \"{} {}\"\n  main\n    {}x50 free\n", i, session, i + 1);
    }
    return i % 7 == 3 ? plan + "crwal\n" : plan;
}

constexpr std::size_t how_many = 120;

std::string name(std::size_t i) {
    return fmt::format("/plans/{:03}.swim", i);
}

MemoryFiles& fill(MemoryFiles& files) {
    for (std::size_t i = 0; i < how_many; ++i) {
        files.disk.files[name(i)] = text(i);
    }
    return files;
}

} // namespace

TEST_CASE("many files say what each would say, in their order", "[each-file]") {
    MemoryFiles files;
    fill(files);
    for (auto const& command : std::vector<std::vector<std::string>>{
             {"tally"}, {"check"}, {"tidy", "--check"}, {"tidy", "--stdout"}, {"export", "--as", "csv"}}) {
        INFO(command.front());
        auto many = command;
        many.emplace_back("/plans");
        auto const all = run_in_memory(many, files);
        std::size_t from = 0;
        for (std::size_t i = 0; i < how_many; ++i) {
            auto const shown = command.back() == "--check" ? name(i) : fmt::format("{} 0", i);
            auto const at = all.out.find(i % 7 == 3 ? "" : shown, from);
            REQUIRE(at != std::string::npos);
            from = at;
        }
        std::string errors;
        for (std::size_t i = 0; i < how_many; ++i) {
            auto one = command;
            one.push_back(name(i));
            errors += run_in_memory(one, files).err;
        }
        CHECK(all.err == errors);
        CHECK(all.code == 1);
        CHECK(run_in_memory(many, files).out == all.out);
    }
}

TEST_CASE("tidy puts every file in its place", "[each-file]") {
    MemoryFiles files;
    fill(files);
    auto const answer = run_in_memory({"tidy", "/plans"}, files);
    CHECK(answer.code == 1);
    for (std::size_t i = 0; i < how_many; ++i) {
        INFO(i);
        auto const tidied = files.disk.files[name(i)].find(" x 50 crawl") != std::string::npos;
        CHECK(tidied == (i % 7 != 3));
        CHECK((answer.err.find("wrote " + name(i) + "\n") != std::string::npos) == tidied);
    }
    CHECK(answer.err.find("wrote") < answer.err.find(name(3)));
    CHECK(run_in_memory({"tidy", "/plans"}, files).err.find("wrote") == std::string::npos);
}

TEST_CASE("standard input takes its turn among the files", "[each-file]") {
    MemoryFiles files;
    fill(files);
    files.standard_input = "session \"from a pipe\"\n  main\n    4 x 50 crawl\n";
    auto const answer = run_in_memory({"tally", name(0), "-", name(1)}, files);
    auto const at = answer.out.find("from a pipe");
    CHECK(at < answer.out.find("\n" + name(1)));
    CHECK(at > answer.out.find("0 199"));
    CHECK(answer.out.find(name(1)) != std::string::npos);
}

TEST_CASE("a csv has one head, before the first plan that can be read", "[each-file]") {
    MemoryFiles files;
    files.disk.files = {{"/p/a.swim", "crwal\n"}, {"/p/b.swim", text(1)}, {"/p/c.swim", text(2)}};
    auto const all = run_in_memory({"export", "--as", "csv", "/p"}, files).out;
    CHECK(all.starts_with("file,"));
    CHECK(all.find("\nfile,") == std::string::npos);
    CHECK(std::ranges::count(all, '\n') == 3);
    files.disk.files = {{"/p/a.swim", "pool 25m\n"}};
    CHECK(std::ranges::count(run_in_memory({"export", "--as", "csv", "/p"}, files).out, '\n') == 1);
}

TEST_CASE("what runs out beside the others is known where they are gathered", "[each-file]") {
    cli::TextOutput out;
    cli::TextOutput err;
    cli::Console console{.out = out, .err = err};
    cli::Named named;
    for (std::size_t i = 0; i < how_many; ++i) {
        named.files.push_back(name(i));
    }
    auto const work = [](std::string const& file, cli::Console& own) -> cli::Outcome {
        own.out.write(file + '\n');
        if (file == name(50)) {
            throw std::bad_alloc{};
        }
        return {};
    };
    CHECK_THROWS_AS(cli::each_file("tally", named, console, work), std::bad_alloc);
    // Those before it have been heard, but for the few that shared its thread.
    CHECK(out.text.starts_with(name(0) + "\n" + name(1) + "\n"));
    CHECK(out.text.find(name(50)) == std::string::npos);
}

TEST_CASE("without a further thread to be had the files come one after the other", "[each-file]") {
    support::TempFolder const folder;
    for (std::size_t i = 0; i < 5; ++i) {
        folder.file(fmt::format("{}.swim", i), text(i));
    }
    auto const no_threads = [] {
        rlimit const none{0, 0};
        if (!support::become_nobody() || setrlimit(RLIMIT_NPROC, &none) != 0) {
            std::abort();
        }
    };
    auto const usual = support::run({.arguments = {"tally", "."}, .folder = folder.path()});
    auto const alone =
        support::run({.arguments = {"tally", "."}, .before = no_threads, .folder = folder.path()});
    CHECK(usual.code == 1);
    CHECK(alone.code == usual.code);
    CHECK(alone.out == usual.out);
    CHECK(alone.err == usual.err);
}
