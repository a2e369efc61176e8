#include "grammar/limits.hpp"
#include "support/child.hpp"
#include "support/hostile.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <filesystem>
#include <string>

#include <sys/stat.h>

using hostile::survive_path;
using lengthwise::support::TempFolder;

namespace {

std::string include(std::string const& path) {
    return "include \"" + path + "\"\n";
}

/// A plan that includes `path`, seen from a folder beside which nothing must be read.
void refuses(TempFolder const& folder, std::string const& path, std::string const& says) {
    folder.file("plans/input.swim", include(path) + hostile::main_set("4 x 50 crawl"));
    survive_path(folder.path("plans"), "input.swim", {1}, "input.swim:1:");
    survive_path(folder.path("plans"), "input.swim", {1}, says);
}

} // namespace

TEST_CASE("hostile: includes of what is no plan", "[hostile]") {
    TempFolder const folder;
    folder.file("plans/lib/a.txt", "");
    refuses(folder, "lib", "is a directory");
    refuses(folder, "gone.swim", "no such file");
    refuses(folder, "", "folder");
    refuses(folder, ".", "is a directory");
    refuses(folder, "/dev/zero", "folder");

    REQUIRE(mkfifo(folder.path("plans/pipe").c_str(), 0666) == 0);
    refuses(folder, "pipe", "is a pipe");
    refuses(folder, hostile::times(1000, "./") + "gone.swim", "no such file");
    refuses(folder, std::string(5000, 'a'), "the name is too long");
}

TEST_CASE("hostile: includes that lead out of the plan's folder", "[hostile]") {
    TempFolder const folder;
    folder.file("secret.swim", "set \"secret\" = 50\n");
    folder.file("plans/in.swim", "set \"in\" = 50\n");
    refuses(folder, "../secret.swim", "outside");
    refuses(folder, "../../../../../../../../etc/passwd", "outside");
    refuses(folder, folder.path("secret.swim"), "folder");

    std::filesystem::create_symlink("../secret.swim", folder.path("plans/link.swim"));
    refuses(folder, "link.swim", "outside");
    std::filesystem::create_symlink("/dev/zero", folder.path("plans/zero.swim"));
    refuses(folder, "zero.swim", "outside");
    std::filesystem::create_symlink("nowhere", folder.path("plans/dangling.swim"));
    refuses(folder, "dangling.swim", "no such file");
    std::filesystem::create_symlink("loop.swim", folder.path("plans/loop.swim"));
    refuses(folder, "loop.swim", "circle");
}

TEST_CASE("hostile: includes in circles", "[hostile]") {
    TempFolder const folder;
    SECTION("a plan of itself") {
        folder.file("input.swim", "pool 25m\n" + include("input.swim"));
        survive_path(folder.path(), "input.swim", {1}, "input.swim:2:");
    }
    SECTION("a file of sets of itself, by three spellings") {
        folder.file("input.swim", include("input.swim") + include("./input.swim") + include("link.swim"));
        std::filesystem::create_symlink("input.swim", folder.path("link.swim"));
        survive_path(folder.path(), "input.swim", {0, 2}, "");
    }
    SECTION("one of the other") {
        folder.file("input.swim", include("a.swim"));
        folder.file("a.swim", include("b.swim"));
        folder.file("b.swim", include("a.swim") + include("input.swim"));
        survive_path(folder.path(), "input.swim", {0, 2}, "");
    }
}

TEST_CASE("hostile: includes without end", "[hostile]") {
    TempFolder const folder;
    folder.file("input.swim", include("1.swim"));
    SECTION("too deep") {
        for (int i = 1; i <= 40; ++i) {
            folder.file(std::to_string(i) + ".swim", include(std::to_string(i + 1) + ".swim"));
        }
        survive_path(folder.path(), "input.swim", {1}, "at most 16");
    }
    SECTION("too many") {
        std::string fan;
        for (int i = 1; i <= 1100; ++i) {
            folder.file(std::to_string(i) + ".swim", "");
            fan += include(std::to_string(i) + ".swim");
        }
        folder.file("input.swim", fan);
        survive_path(folder.path(), "input.swim", {1}, "at most 1000");
    }
}

TEST_CASE("hostile: included files with errors of their own", "[hostile]") {
    TempFolder const folder;
    folder.file("input.swim", include("lib/a.swim"));
    auto const finds = [&](std::string const& bytes, std::string const& says) {
        folder.file("lib/a.swim", bytes);
        survive_path(folder.path(), "input.swim", {1}, says);
    };
    finds("set \"a\" = 4 x\n", "lib/a.swim:1:");
    finds("\nweek 1\n", "lib/a.swim:2:");
    finds(std::string(200'000, 'a'), "lib/a.swim: line 1 has more than 65536 bytes");
    finds(std::string{"\xFF\xFE\0", 3}, "lib/a.swim:1:");
    finds("set \"a\" = 50 \x1B[31m\n", "lib/a.swim:1:");
}

TEST_CASE("hostile: an include that may not be read", "[hostile]") {
    TempFolder const folder;
    folder.file("input.swim", include("secret.swim"));
    chmod(folder.file("secret.swim", "set \"a\" = 50\n").c_str(), 0);
    auto const ending = lengthwise::support::run({
        .arguments = {"tally", "input.swim"},
        .before = [] { lengthwise::support::become_nobody(); },
        .folder = folder.path(),
    });
    CHECK(ending.code == 1);
    CHECK(ending.err.find("input.swim:1:") != std::string::npos);
    CHECK(ending.err.find("no permission") != std::string::npos);
}

TEST_CASE("hostile: includes from standard input", "[hostile]") {
    TempFolder const folder;
    folder.file("a.swim", "set \"a\" = 50\n");
    auto const ending = lengthwise::support::run({
        .arguments = {"tally", "-"},
        .input = include("a.swim"),
        .folder = folder.path(),
    });
    CHECK(ending.code == 1);
    CHECK(ending.err.find(":1:") != std::string::npos);
    CHECK(ending.err.find("standard input") != std::string::npos);
}
