#include "support/child.hpp"
#include "support/hostile.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <filesystem>
#include <string>

#include <fcntl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

using hostile::survive_path;
using lengthwise::support::run;
using lengthwise::support::TempFolder;
using lengthwise::support::unsafe_in;

TEST_CASE("hostile: paths that cannot be read", "[hostile]") {
    TempFolder const folder;
    auto const refused = [&](std::string const& path, std::string const& says) {
        survive_path(folder.path(), path, {2}, says);
    };
    refused("gone.swim", "gone.swim");
    refused("", "");
    refused("gone/a.swim", "gone/a.swim");
    refused(std::string(300, 'a'), "too long");
    refused(hostile::times(2500, "a/"), "too long");
    refused("/dev/zero", "is a device");
    refused("/dev/null", "is a device");

    folder.file("a.swim", "pool 25m\n");
    refused("a.swim/", "not a folder");
    refused("a.swim/b.swim", "not a folder");
    folder.file("empty/a.txt", "");
    refused("empty", "no .swim file");
    std::filesystem::create_symlink("loop", folder.path("loop"));
    refused("loop", "circle");
    std::filesystem::create_symlink("gone.swim", folder.path("link.swim"));
    refused("link.swim", "link.swim");
    REQUIRE(mkfifo(folder.path("pipe.swim").c_str(), 0666) == 0);
    refused("pipe.swim", "is a pipe");
}

TEST_CASE("hostile: a socket for a plan", "[hostile]") {
    TempFolder const folder;
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    auto const path = folder.path("s");
    REQUIRE(path.size() < sizeof address.sun_path);
    path.copy(address.sun_path, path.size());
    auto const listener = socket(AF_UNIX, SOCK_STREAM, 0);
    REQUIRE(bind(listener, reinterpret_cast<sockaddr const*>(&address), sizeof address) == 0);
    survive_path(folder.path(), "s", {2}, "is a socket");
    close(listener);
}

TEST_CASE("hostile: file names that could steer a terminal", "[hostile]") {
    TempFolder const folder;
    for (std::string const name : {"\x1B[31mred.swim", "a\nb: error: c.swim", "\x1B]0;owned\x07.swim",
                                   "\xC2\x9B"
                                   "2J.swim",
                                   "\xE2\x80\xAEmiws.swim", "Ren\xE9.swim", "tab\there.swim", "\r.swim",
                                   "\x7F.swim", "a b.swim", "%s%n.swim", "游泳.swim"}) {
        survive_path(folder.path(), name, {2}, "");
        folder.file(name, "crwal\n");
        survive_path(folder.path(), name, {1}, ":1:1: error: ");
    }
}

TEST_CASE("hostile: file names that look like something else", "[hostile]") {
    TempFolder const folder;
    for (auto const* const name : {"--help", "-x", "--", "tally", "*.swim", "$(reboot).swim", "a;b.swim"}) {
        folder.file(name, "crwal\n");
        survive_path(folder.path(), name, {1}, ":1:1: error: ");
    }
}

TEST_CASE("hostile: a file that may not be read", "[hostile]") {
    TempFolder const folder;
    chmod(folder.file("secret.swim", "pool 25m\n").c_str(), 0);
    auto const ending = run({
        .arguments = {"tally", "secret.swim"},
        .before = [] { lengthwise::support::become_nobody(); },
        .folder = folder.path(),
    });
    CHECK(ending.code == 2);
    CHECK(ending.err.find("secret.swim: no permission") != std::string::npos);
}

TEST_CASE("hostile: standard input", "[hostile]") {
    auto const tally = [](std::string const& input, std::function<void()> before = {}) {
        auto ending = run({.arguments = {"tally", "-"}, .input = input, .before = std::move(before)});
        CAPTURE(ending.all());
        CHECK(unsafe_in(ending.all()).empty());
        CHECK(ending.seconds < 5);
        return ending.code;
    };
    CHECK(tally("") == 0);
    CHECK(tally("crwal\n") == 1);
    CHECK(tally(std::string(10'000'000, 'a')) == 2);
    CHECK(tally("", [] { close(STDIN_FILENO); }) == 2);
    CHECK(tally("", [] {
              close(STDIN_FILENO);
              (void)open("/", O_RDONLY);
          }) == 2);
    CHECK(tally("", [] {
              close(STDIN_FILENO);
              (void)open("/dev/zero", O_RDONLY);
          }) == 2);
}

TEST_CASE("hostile: command lines", "[hostile]") {
    std::vector<std::vector<std::string>> const lines{
        {"chekc"},
        {""},
        {"tally", "--no-such-option"},
        {"tally", "--format", "nonsense", "a.swim"},
        {"tally", "--week", "-1", "a.swim"},
        {"tally", "--week", "99999999999999999999", "a.swim"},
        {"tally", "--lane", "0x1", "a.swim"},
        {"tally", "--by", "\x1B[31m", "a.swim"},
        {"deck", "--today", "2027-02-30", "a.swim"},
        {"deck", "--pool", "0m", "a.swim"},
        {"deck", "--pool", "33 1/0 m", "a.swim"},
        {"check", "--color", "perhaps", "a.swim"},
        {"\x1B[2J"},
        {"tally", "--\xC2\x9B", "a.swim"},
        {std::string(100'000, 'a')},
    };
    TempFolder const folder;
    folder.file("a.swim", hostile::main_set("4 x 50 crawl"));
    for (auto const& line : lines) {
        auto const ending = run({.arguments = line, .folder = folder.path()});
        CAPTURE(line.size() > 1 ? line[1] : "", ending.err.substr(0, 300));
        CHECK(ending.code == 2);
        CHECK(unsafe_in(ending.all()).empty());
        CHECK(ending.err.starts_with("lengthwise: "));
    }
}
