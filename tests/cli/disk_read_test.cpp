#include "cli/files.hpp"
#include "cli/process.hpp"
#include "grammar/limits.hpp"
#include "support/child.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <filesystem>
#include <string>

#include <fcntl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

using namespace lengthwise;
using cli::Disk;
using support::TempFolder;

namespace {

constexpr std::uint64_t ample = limits::file_bytes;

/// The text, or the refusal's reason in brackets.
std::string shown(std::variant<cli::Files::Text, cli::Files::Refusal> const& result) {
    auto const* const text = std::get_if<cli::Files::Text>(&result);
    return text != nullptr ? text->bytes : "[" + std::get<cli::Files::Refusal>(result).reason + "]";
}

std::string read(std::string const& path, std::uint64_t limit = ample) {
    return shown(Disk{}.read(path, limit));
}

std::vector<std::string> expand(std::string const& path) {
    auto const result = Disk{}.expand(path);
    auto const* const names = std::get_if<std::vector<std::string>>(&result);
    return names != nullptr ? *names : std::vector{"[" + std::get<cli::Files::Refusal>(result).reason + "]"};
}

} // namespace

TEST_CASE("a regular file is read byte by byte as it is", "[cli][disk]") {
    TempFolder const folder;
    std::string const bytes{"\xEF\xBB\xBFpool 25m\r\n\0\x1B[31m\xFF\n", 22};
    CHECK(read(folder.file("a.swim", bytes)) == bytes);
    CHECK(read(folder.file("empty.swim", "")).empty());
}

TEST_CASE("what is no regular file is refused at once in its own words", "[cli][disk]") {
    TempFolder const folder;
    auto const pipe = folder.path("pipe.swim");
    REQUIRE(mkfifo(pipe.c_str(), 0666) == 0);
    CHECK(read(pipe) == "[is a pipe, not a file]");
    CHECK(read(folder.path()) == "[is a directory]");
    CHECK(read("/dev/zero") == "[is a device, not a file]");
    CHECK(read("/dev/null") == "[is a device, not a file]");

    auto const socket_path = folder.path("s");
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    REQUIRE(socket_path.size() < sizeof address.sun_path);
    socket_path.copy(address.sun_path, socket_path.size());
    auto const listener = socket(AF_UNIX, SOCK_STREAM, 0);
    REQUIRE(bind(listener, reinterpret_cast<sockaddr const*>(&address), sizeof address) == 0);
    CHECK(read(socket_path) == "[is a socket, not a file]");
    close(listener);
}

TEST_CASE("what cannot be opened says why", "[cli][disk]") {
    TempFolder const folder;
    CHECK(read(folder.path("gone.swim")) == "[no such file]");
    CHECK(read("") == "[no such file]");
    CHECK(read(folder.file("a.swim", "") + "/b.swim") == "[a part of its path is a file, not a folder]");
    CHECK(read(folder.path(std::string(300, 'a'))) == "[the name is too long]");
    std::filesystem::create_symlink("loop", folder.path("loop"));
    CHECK(read(folder.path("loop")) == "[its links lead in a circle]");
    CHECK(read(folder.path("a.swim") + std::string{"\0.swim", 6}) == "[no such file]");
}

TEST_CASE("an unreadable file says that permission is missing", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("secret.swim", "pool 25m\n");
    chmod(path.c_str(), 0);
    CHECK(support::in_child(
              [&] { return support::become_nobody() && read(path) == "[no permission]" ? 0 : 1; }) == 0);
}

TEST_CASE("a file is read up to the limit, and one byte more is refused with both figures",
          "[cli][disk][limits]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", "pool 25m\n");
    CHECK(read(path, 9) == "pool 25m\n");
    CHECK(read(path, 8) == "[has 9 bytes, at most 8 may be]");
}

TEST_CASE("a file of 2 GB is refused without reading it", "[cli][disk][limits]") {
    TempFolder const folder;
    auto const path = folder.file("big.swim", "");
    std::filesystem::resize_file(path, 2'000'000'000); // a hole: takes no room
    CHECK(read(path) == "[has 2000000000 bytes, at most 268435456 may be]");
}

TEST_CASE("a line is read up to the limit, whatever its end", "[cli][disk][limits]") {
    TempFolder const folder;
    std::string const longest(limits::line_bytes, 'a');
    auto const* const end = GENERATE("", "\n", "\r\n", "\nrest 20s\n", "\r\nrest 20s\r\n");
    // Line ends at every place of a block.
    auto const before = GENERATE(0U, 1U, 2U, 40'000U, 65'535U, 65'536U, 65'537U, 200'000U);
    CAPTURE(before, end);
    auto const text = std::string(before, '\n') + longest + end;
    CHECK(read(folder.file("a.swim", text)) == text);

    auto const refusal =
        "[line " + std::to_string(before + 1) + " has more than 65536 bytes, the most there may be]";
    CHECK(read(folder.file("a.swim", std::string(before, '\n') + longest + "a" + end)) == refusal);
    CHECK(read(folder.file("a.swim", std::string(before, '\n') + longest + "\ra" + end)) == refusal);
    CHECK(read(folder.file("a.swim", std::string(before, '\n') + longest + longest + end)) == refusal);
}

TEST_CASE("a CR without a line end counts", "[cli][disk][limits]") {
    TempFolder const folder;
    auto const path = folder.file("a.swim", std::string(limits::line_bytes, 'a') + "\r");
    CHECK(read(path) == "[line 1 has more than 65536 bytes, the most there may be]");
}

TEST_CASE("a huge file without line ends is left at once", "[cli][disk][limits]") {
    TempFolder const folder;
    auto const path = folder.file("zeros.swim", "pool 25m\n");
    std::filesystem::resize_file(path, limits::file_bytes);
    CHECK(read(path) == "[line 2 has more than 65536 bytes, the most there may be]");
}

TEST_CASE("standard input may be a pipe, within the same limits", "[cli][disk]") {
    auto const through_pipe = [](std::string const& bytes, std::uint64_t limit, std::string const& expected) {
        return support::in_child([&] {
            int ends[2];
            if (pipe(ends) != 0) {
                return 2;
            }
            auto const writer = support::start_child([&] {
                close(ends[0]);
                return write(ends[1], bytes.data(), bytes.size()) >= 0 ? 0 : 1;
            });
            close(ends[1]);
            dup2(ends[0], STDIN_FILENO);
            auto const got = shown(Disk{}.read_standard_input(limit));
            support::wait_for(writer);
            return got == expected ? 0 : 1;
        });
    };
    CHECK(through_pipe("pool 25m\n", 9, "pool 25m\n") == 0);
    CHECK(through_pipe("", 9, "") == 0);
    CHECK(through_pipe("pool 25m\n", 8, "[has more than 8 bytes, the most there may be]") == 0);
}

TEST_CASE("standard input that does not wait is waited for", "[cli][disk]") {
    CHECK(support::in_child([] {
              int ends[2];
              if (pipe2(ends, O_NONBLOCK) != 0) {
                  return 2;
              }
              auto const writer = support::start_child([&] {
                  usleep(50'000);
                  return write(ends[1], "pool", 4) == 4 ? 0 : 1;
              });
              close(ends[1]);
              dup2(ends[0], STDIN_FILENO);
              auto const got = shown(Disk{}.read_standard_input(ample));
              return support::wait_for(writer) == 0 && got == "pool" ? 0 : 1;
          }) == 0);
}

TEST_CASE("closed standard input is no input", "[cli][disk]") {
    CHECK(support::in_child([] {
              close(STDIN_FILENO);
              cli::prepare_process();
              return shown(Disk{}.read_standard_input(ample)) == "[it is closed]" ? 0 : 1;
          }) == 0);
}

TEST_CASE("links and dots are resolved to where a file really lies", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("sub/a.swim", "");
    std::filesystem::create_symlink("sub/a.swim", folder.path("link.swim"));
    auto const resolve = [](std::string const& name) {
        auto const result = Disk{}.resolve_links(name);
        auto const* const real = std::get_if<cli::Files::Path>(&result);
        return real != nullptr ? real->absolute : "[" + std::get<cli::Files::Refusal>(result).reason + "]";
    };
    CHECK(resolve(folder.path("link.swim")) == path);
    CHECK(resolve(folder.path("sub/../sub/./a.swim")) == path);
    CHECK(resolve(folder.path("gone.swim")) == "[no such file]");
    std::filesystem::create_symlink("loop", folder.path("loop"));
    CHECK(resolve(folder.path("loop")) == "[its links lead in a circle]");
}

TEST_CASE("a folder stands for its plans in the order of their names", "[cli][disk]") {
    TempFolder const folder;
    for (auto const* const name :
         {"b.swim", "a.swim", "c.txt", ".hidden.swim", "lib/drills.swim", "x.swim/a"}) {
        folder.file(name, "");
    }
    std::filesystem::create_symlink("gone", folder.path("dangling.swim"));
    CHECK(expand(folder.path()) ==
          std::vector{folder.path("a.swim"), folder.path("b.swim"), folder.path("dangling.swim")});
    CHECK(expand(folder.path() + "/") ==
          std::vector{folder.path("a.swim"), folder.path("b.swim"), folder.path("dangling.swim")});
    CHECK(expand(folder.path("x.swim")) == std::vector<std::string>{"[holds no .swim file]"});
}

TEST_CASE("what is no folder stands for itself", "[cli][disk]") {
    TempFolder const folder;
    auto const path = folder.file("a.txt", "");
    CHECK(expand(path) == std::vector{path});
    CHECK(expand(folder.path("gone.swim")) == std::vector{folder.path("gone.swim")});
}
