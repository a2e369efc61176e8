#include "support/run_in_memory.hpp"
#include <catch2/catch.hpp>

#include <algorithm>
#include <initializer_list>
#include <utility>

using namespace lengthwise;
using lengthwise::support::MemoryFiles;
using lengthwise::support::run_in_memory;

namespace {

struct Shelf {
    MemoryFiles files;

    Shelf(std::initializer_list<std::pair<std::string const, std::string>> texts) {
        files.disk.files = texts;
    }
};

std::string const session = "pool 25m\nsession Tue\n  main\n    4 x 50 crawl\n";
std::string const untidy = "pool 25m\nsession Tue\n main\n  4x50 free\n";

} // namespace

TEST_CASE("nobody waits for a person who has not been asked") {
    Shelf shelf{};
    auto& files = shelf.files;
    for (auto const* command : {"tally", "deck", "check", "tidy"}) {
        INFO(command);
        auto const answer = run_in_memory({command}, files, {.in_is_terminal = true});
        CHECK(answer.code == 2);
        CHECK(answer.err == "lengthwise: which file? or - to type it here\n");
    }
    files.standard_input = session;
    auto const typed = run_in_memory({"tally", "-"}, files, {.in_is_terminal = true});
    CHECK(typed.code == 0);
    CHECK(typed.err == "lengthwise: reading what you type, end it with Ctrl-D\n");
    CHECK(run_in_memory({"tally"}, files).code == 0);
}

TEST_CASE("colour goes where a terminal is, unless it is told otherwise") {
    Shelf shelf{{"/plan.swim", session}};
    auto& files = shelf.files;
    auto const coloured = [&](std::vector<std::string> arguments, cli::Surroundings around) {
        arguments.insert(arguments.begin(), {"tally", "/plan.swim"});
        return run_in_memory(arguments, files, around).out.find('\033') != std::string::npos;
    };
    cli::Surroundings const terminal{.out_is_terminal = true};
    CHECK(coloured({}, terminal));
    CHECK_FALSE(coloured({}, {}));
    CHECK_FALSE(coloured({}, {.out_is_terminal = true, .no_colour = true}));
    CHECK_FALSE(coloured({"--color", "never"}, terminal));
    CHECK(coloured({"--color", "always"}, {}));
    CHECK(coloured({"--color", "always"}, {.no_colour = true}));
}

TEST_CASE("errors are coloured by where errors go") {
    Shelf shelf{{"/bad.swim", "crwal\n"}};
    auto& files = shelf.files;
    CHECK(run_in_memory({"tally", "/bad.swim"}, files, {.err_is_terminal = true}).err.find('\033') !=
          std::string::npos);
    CHECK(run_in_memory({"tally", "/bad.swim"}, files, {.out_is_terminal = true}).err.find('\033') ==
          std::string::npos);
}

TEST_CASE("screens are as wide as the terminal, 40 to 80") {
    std::string const wide = session + "    4 x 100 crawl steady rest 20s \"long and easy, count the strokes "
                                       "of each length, and tell each other how many they were\"\n";
    Shelf shelf{{"/plan.swim", wide}};
    auto& files = shelf.files;
    auto const widest = [&](std::size_t columns, std::vector<std::string> const& more = {}) {
        std::vector<std::string> arguments{"deck", "/plan.swim"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        auto const out =
            run_in_memory(arguments, files,
                          {.out_is_terminal = columns > 0, .no_colour = true, .columns = columns})
                .out;
        std::size_t most = 0;
        for (std::size_t at = 0; at < out.size();) {
            auto const end = std::min(out.find('\n', at), out.size());
            most = std::max(most, end - at);
            at = end + 1;
        }
        return most;
    };
    CHECK(widest(0) <= 82); // bytes: a mark of two or three stands in a line
    CHECK(widest(0) > 60);
    CHECK(widest(300) == widest(0));
    CHECK(widest(50) <= 52);
    CHECK(widest(3) <= 42);
    CHECK(widest(0, {"--width", "50"}) <= 52);
    CHECK(widest(50, {"--width", "80"}) == widest(0));
}

TEST_CASE("tidy writes where it has to, and says so") {
    Shelf shelf{{"/a.swim", untidy}, {"/b.swim", session}, {"/c.swim", "crwal\n"}};
    auto& files = shelf.files;
    auto const answer = run_in_memory({"tidy", "/a.swim", "/b.swim", "/c.swim"}, files);
    CHECK(answer.code == 1);
    CHECK(answer.out.empty());
    CHECK(answer.err.starts_with("wrote /a.swim\n/c.swim:1:1: error: "));
    CHECK(files.disk.files["/a.swim"] == session);
    CHECK(files.disk.files["/b.swim"] == session);
    CHECK(files.disk.files["/c.swim"] == "crwal\n");
}

TEST_CASE("tidy on a disk that is full keeps the old file") {
    Shelf shelf{{"/a.swim", untidy}};
    auto& files = shelf.files;
    files.full = "disk full";
    auto const answer = run_in_memory({"tidy", "/a.swim"}, files);
    CHECK(answer.code == 2);
    CHECK(answer.err == "lengthwise: cannot write /a.swim: disk full; old one kept\n");
    CHECK(files.disk.files["/a.swim"] == untidy);
}

TEST_CASE("tidy leaves a line alone that would be too long for anybody to read") {
    std::string long_line = "pool 25m\nsession\n  main\n    (25";
    for (int i = 0; i < 21'000; ++i) {
        long_line += "+25";
    }
    long_line += ")\n";
    Shelf shelf{{"/a.swim", long_line}};
    auto const said =
        "lengthwise: /a.swim stays as it is: tidy, its line 4 would have 105008 bytes, the limit is 65536\n"
        "      = a group can stand on several lines, a note or comment too\n";
    for (auto const& words : std::vector<std::vector<std::string>>{
             {"tidy", "/a.swim"}, {"tidy", "--check", "/a.swim"}, {"tidy", "--stdout", "/a.swim"}}) {
        auto const answer = run_in_memory(words, shelf.files);
        CHECK(answer.code == 1);
        CHECK(answer.err == said);
        CHECK(answer.out.empty());
    }
    CHECK(shelf.files.disk.files["/a.swim"] == long_line);
}

TEST_CASE("tidy --check and --stdout leave files alone") {
    Shelf shelf{{"/a.swim", untidy}};
    auto& files = shelf.files;
    auto const check = run_in_memory({"tidy", "--check", "/a.swim"}, files);
    CHECK(check.code == 1);
    CHECK(check.out.starts_with("/a.swim: 2 lines are not tidy; the sums stay as they are\n"));
    auto const out = run_in_memory({"tidy", "--stdout", "/a.swim"}, files);
    CHECK(out.code == 0);
    CHECK(out.out == session);
    CHECK(files.disk.files["/a.swim"] == untidy);
    CHECK(run_in_memory({"tidy", "--check", "--stdout", "/a.swim"}, files).code == 1);
}

TEST_CASE("a folder is its plans, and what cannot be read hides nothing else") {
    Shelf shelf{{"/plans/a.swim", session}, {"/plans/b.swim", "crwal\n"}, {"/plans/c.txt", "no"}};
    auto& files = shelf.files;
    auto const answer = run_in_memory({"tally", "/nowhere.swim", "/plans"}, files);
    CHECK(answer.code == 2);
    CHECK(answer.out.starts_with("/plans/a.swim\n"));
    CHECK(answer.err.find("no file /nowhere.swim") != std::string::npos);
    CHECK(answer.err.find("1 error in /plans/b.swim") != std::string::npos);
    CHECK(answer.err.find("c.txt") == std::string::npos);
}

TEST_CASE("with -o nothing goes to standard output, and nothing is put over a file unasked") {
    Shelf shelf{{"/plan.swim", session}, {"/old.txt", "mine"}};
    auto& files = shelf.files;
    auto const fresh = run_in_memory({"tally", "/plan.swim", "-o", "/new.txt"}, files);
    CHECK(fresh.code == 0);
    CHECK(fresh.out.empty());
    CHECK(fresh.err == "wrote /new.txt\n");
    CHECK(files.disk.files["/new.txt"].starts_with("Tue"));

    CHECK(run_in_memory({"tally", "/plan.swim", "-o", "/old.txt"}, files).code == 2);
    CHECK(files.disk.files["/old.txt"] == "mine");
    CHECK(run_in_memory({"tally", "/plan.swim", "-o", "/old.txt", "--force"}, files).code == 0);
    CHECK(files.disk.files["/old.txt"] != "mine");
    CHECK(run_in_memory({"tally", "/plan.swim", "-o", "/plan.swim", "--force"}, files).code == 2);
    CHECK(files.disk.files["/plan.swim"] == session);
    CHECK(run_in_memory({"tally", "/plan.swim", "-o", "-"}, files).out.starts_with("Tue"));
}

TEST_CASE("with -o a plan with errors leaves no file behind") {
    Shelf shelf{{"/bad.swim", "crwal\n"}};
    auto& files = shelf.files;
    CHECK(run_in_memory({"tally", "/bad.swim", "-o", "/new.txt"}, files).code == 1);
    CHECK_FALSE(files.disk.files.contains("/new.txt"));
}

TEST_CASE("check --format sarif is one log, however many files, and says whether all were read") {
    Shelf shelf{{"/bad.swim", "bread"},
                {"/allowed.swim", "allow shape \"a test\"\nallow race-rep\npool 25m\nsession\nmain\n100\n"}};
    auto& files = shelf.files;
    auto const log = run_in_memory({"check", "/bad.swim", "/allowed.swim", "--format", "sarif"}, files);
    CHECK(log.code == 1);
    CHECK(log.err.empty());
    CHECK(std::ranges::count(log.out, '\n') == 1);
    CHECK(log.out.find(R"("ruleId":"syntax-)") < log.out.find(R"("ruleId":"shape")"));
    CHECK(log.out.find(R"("justification":"a test")") != std::string::npos);
    CHECK(log.out.find(R"("executionSuccessful":true)") != std::string::npos);
    auto const missing = run_in_memory({"check", "/none.swim", "/allowed.swim", "--format", "sarif"}, files);
    CHECK(missing.code == 2);
    CHECK(missing.out.ends_with(R"("executionSuccessful":false}]}]})"
                                "\n"));
    CHECK(run_in_memory({"tally", "/allowed.swim", "--format", "sarif"}, files).code == 2);
}

TEST_CASE("findings are check's result, and stand on standard error elsewhere") {
    Shelf shelf{{"/bad.swim", "crwal\n"}};
    auto& files = shelf.files;
    auto const check = run_in_memory({"check", "/bad.swim"}, files);
    CHECK(check.out.starts_with("/bad.swim:1:1: error: "));
    CHECK(check.err.empty());
    auto const deck = run_in_memory({"deck", "/bad.swim"}, files);
    CHECK(deck.out.empty());
    CHECK(deck.err.starts_with("/bad.swim:1:1: error: "));
}

TEST_CASE("names of files are safe to print") {
    Shelf shelf{{"/a\x1b[2J.swim", untidy}};
    auto& files = shelf.files;
    for (auto const& arguments :
         std::vector<std::vector<std::string>>{{"tidy", "--check", "/a\x1b[2J.swim"},
                                               {"tidy", "/a\x1b[2J.swim"},
                                               {"check", "/a\x1b[2J.swim"},
                                               {"tally", "/b\x1b[2J.swim"},
                                               {"tally", "/a\x1b[2J.swim", "/a\x1b[2J.swim"}}) {
        auto const answer = run_in_memory(arguments, files);
        CHECK((answer.out + answer.err).find('\x1b') == std::string::npos);
    }
}

TEST_CASE("without marks beyond ASCII where that is asked for") {
    Shelf shelf{{"/plan.swim", "pool 33 1/3 m\nrest 20-40s\nsession Tue\n  main\n    110m\n    5 lengths\n"}};
    auto& files = shelf.files;
    for (auto const* command : {"tally", "deck", "check"}) {
        INFO(command);
        auto const answer = run_in_memory({command, "/plan.swim", "--ascii"}, files);
        auto const all = answer.out + answer.err;
        CHECK_FALSE(all.empty());
        CHECK(std::ranges::all_of(all, [](char c) { return static_cast<unsigned char>(c) < 0x80; }));
    }
    auto const rules = run_in_memory({"explain", "race-rep", "--ascii"}, files).out;
    CHECK(std::ranges::all_of(rules, [](char c) { return static_cast<unsigned char>(c) < 0x80; }));
}
