#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <cstdio>
#include <filesystem>
#include <string>

#include <sys/wait.h>

using lengthwise::support::TempFolder;

namespace {

struct Heard {
    int code = 0;
    std::string text;
};

Heard ask(std::string const& command) {
    auto* const pipe = popen((command + " 2>&1").c_str(), "r");
    REQUIRE(pipe != nullptr);
    Heard heard;
    std::array<char, 4096> buffer{};
    for (std::size_t got = 0; (got = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;) {
        heard.text.append(buffer.data(), got);
    }
    auto const status = pclose(pipe);
    heard.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return heard;
}

} // namespace

TEST_CASE("without the program that paints them, cards say how to get it") {
    TempFolder const folder;
    auto const alone = folder.path("lengthwise");
    std::filesystem::copy_file(LENGTHWISE_BINARY, alone);
    auto const plan = folder.file("plan.swim", "pool 25m\nsession \"One\"\n  main\n    100 crawl\n");
    auto const heard = ask("PATH=/nowhere " + alone + " cards " + plan + " -o " + folder.path("cards.pdf"));
    CHECK(heard.code == 2);
    CHECK(heard.text.find("cards are not installed") != std::string::npos);
    CHECK(heard.text.find("libpango1.0-dev") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder.path("cards.pdf")));
    // What is wrong with the call itself is said all the same, and so is the help.
    CHECK(ask("PATH=/nowhere " + alone + " cards --size b5").text.find("--size takes") != std::string::npos);
    CHECK(ask("PATH=/nowhere " + alone + " cards --help").code == 0);
}

TEST_CASE("a program beside lengthwise is started, and else the one on the path") {
    TempFolder const folder;
    auto const alone = folder.path("lengthwise");
    std::filesystem::copy_file(LENGTHWISE_BINARY, alone);
    auto const stand_in = [&](std::string const& name, std::string const& says) {
        auto const path = folder.file(name, "#!/bin/sh\necho " + says + " \"$@\"\n");
        std::filesystem::permissions(path, std::filesystem::perms::owner_all);
    };
    stand_in("elsewhere/lengthwise-cards", "path");
    auto const command =
        "PATH=" + folder.path("elsewhere") + ":/bin:/usr/bin " + alone + " cards 'my plan.swim' -o x.pdf";
    CHECK(ask(command).text == "path cards my plan.swim -o x.pdf\n");
    stand_in("lengthwise-cards", "beside");
    CHECK(ask(command).text == "beside cards my plan.swim -o x.pdf\n");
}
