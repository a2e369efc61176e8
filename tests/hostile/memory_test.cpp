#include "support/faults.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include <sys/resource.h>

// Memory that runs out, at every place where it is asked for.
namespace {

using lengthwise::support::bytes_of;
using lengthwise::support::Ending;
using lengthwise::support::Fault;
using lengthwise::support::faults_can_be_made;
using lengthwise::support::making;
using lengthwise::support::run;
using lengthwise::support::TempFolder;

using Words = std::vector<std::string>;
using Disk = std::map<std::string, std::string>; ///< every file in the folder, by its name

constexpr char const* untidy = R"(plan   "Gull Lido on Saturdays"
pool   25m
threshold   1:58
swimmer "Ada" lane 2 distance 80%
set "six of them"=6x50 free hard rest 20s, odds with fins
week 1 from 2027-05-03
session Tue "a session whose name is longer than a few words"
warm-up
200 easy
main
lane 1: use "six of them"
lane 2: 3 x 50
3 x (100 pull + 2x25 kick) on 3:00
400 as 100 easy / 300 steady
cool-down
100 choice "slowly"
)";

/// A command in a folder that holds a few plans.
class Scene {
  public:
    explicit Scene(Words arguments, std::string program) : program_(std::move(program)) {
        arguments_ = std::move(arguments);
        for (char name = 'a'; name <= 'f'; ++name) {
            files_[std::string{name} + ".swim"] = untidy;
        }
        auto const composed =
            run({.arguments = {"compose", "--race", "sprint", "--on", "2027-06-06", "--from", "2027-04-26",
                               "--days", "Tue,Fri", "--slot", "45min", "--pool", "25m", "--threshold", "2:05",
                               "--longest", "300m", "--session", "1000m"}});
        files_["six.swim"] = composed.out;
        put_back();
        usual_ = run({.arguments = arguments_, .folder = folder_.path()});
        after_ = disk();
    }

    [[nodiscard]] Ending const& usual() const { return usual_; }

    /// True if it came through as always, so that there was no such call.
    bool survives(long call, std::string const& what) {
        put_back();
        auto const ending =
            run({.arguments = arguments_,
                 .before = making({.call = "malloc", .at = call, .what = what, .program = program_}),
                 .folder = folder_.path()});
        auto const left = disk();
        CAPTURE(arguments_, call, what, ending.code, ending.err);
        if (ending.code == usual_.code && ending.err == usual_.err) {
            CHECK(ending.out == usual_.out);
            CHECK(left == after_);
            return true;
        }
        CHECK(ending.code == 2);
        CHECK(ending.err.find("out of memory\n") != std::string::npos);
        CHECK((left == files_ || left == after_));
        return false;
    }

  private:
    void put_back() const {
        for (auto const& name : folder_.names()) {
            if (!files_.contains(name)) {
                std::filesystem::remove(folder_.path(name));
            }
        }
        for (auto const& [name, bytes] : files_) {
            folder_.file(name, bytes);
        }
    }

    [[nodiscard]] Disk disk() const { return folder_.files(); }

    Words arguments_;
    std::string program_;
    TempFolder folder_;
    Disk files_;
    Disk after_;
    Ending usual_;
};

/// Every call up to the first that is not made, or further and further apart.
void run_out(Words const& words, long stride, std::string const& program = "lengthwise") {
    if (!faults_can_be_made()) {
        WARN("skipped: this build brings its own malloc");
        return;
    }
    Scene scene{words, program};
    CAPTURE(words, scene.usual().err);
    REQUIRE(scene.usual().code == 0);
    for (auto const* const what : {"12", "12+"}) {
        long call = 1;
        while (!scene.survives(call, what)) {
            call += 1 + call / stride;
        }
        CHECK(call > 50); // else nothing has been tried
    }
}

std::vector<Words> commands() {
    return {
        {"tally", "a.swim"},
        {"tally", "."},
        {"check", "six.swim"},
        {"check", "--format", "sarif", "."},
        {"deck", "a.swim"},
        {"chart", "six.swim"},
        {"chart", "six.swim", "-o", "x.svg"},
        {"export", "six.swim", "--as", "json"},
        {"export", "a.swim", "--as", "csv", "-o", "x.csv"},
        {"export", "six.swim", "--as", "ics", "-o", "x.ics"},
        {"export", "a.swim", "--as", "html", "-o", "x.html"},
        {"export", "a.swim", "--as", "md"},
        {"tidy", "a.swim"},
        {"new", "-o", "x.swim"},
        {"pace", "400m 8:20", "200m 3:55", "--into", "a.swim"},
        {"explain", "rest"},
        {"compose", "--resume", "six.swim", "--after", "week 4", "--longest", "600m", "--from", "2027-05-24",
         "-o", "six.swim", "--force"},
    };
}

} // namespace

TEST_CASE("hostile: memory that runs out is said, ends with 2 and harms no file", "[hostile][memory]") {
    for (auto const& command : commands()) {
        run_out(command, 1);
    }
}

TEST_CASE("hostile: memory that runs out anywhere at all", "[hostile][memory][long]") {
    for (auto const& command : commands()) {
        run_out(command, 1'000'000);
    }
}

TEST_CASE("hostile: memory that runs out while cards are painted", "[hostile][memory]") {
    TempFolder const folder;
    if (run({.arguments = {"cards", "--test-sheet", "-o", folder.path("t.pdf")}}).code != 0) {
        WARN("skipped: no cards here, or no font of theirs");
        return;
    }
    run_out({"cards", "a.swim", "-o", "x.pdf"}, 1);
    run_out({"cards", "a.swim", "-o", "x.pdf"}, 1, "lengthwise-cards");
}

TEST_CASE("hostile: a big plan where memory is short", "[hostile][memory]") {
    if (!faults_can_be_made()) {
        WARN("skipped: a sanitizer needs all addresses");
        return;
    }
    TempFolder const folder;
    std::string bytes = "pool 25m\n";
    for (int i = 0; i < 600'000; ++i) {
        bytes += i % 10 == 0 ? "session\n  main\n" : "    4 x 50 crawl rest 20s # as always\n";
    }
    folder.file("a.swim", bytes);
    for (auto const& words : std::vector<Words>{{"tally"},
                                                {"check"},
                                                {"deck"},
                                                {"tidy"},
                                                {"chart"},
                                                {"export", "--as", "json"},
                                                {"export", "--as", "html", "-o", "x.html"}}) {
        auto arguments = words;
        arguments.insert(arguments.begin() + 1, "a.swim");
        auto const ending = run({.arguments = arguments,
                                 .before =
                                     [] {
                                         rlimit const some{64U << 20U, 64U << 20U};
                                         setrlimit(RLIMIT_AS, &some);
                                     },
                                 .folder = folder.path()});
        CAPTURE(arguments, ending.err.substr(0, 200));
        CHECK(ending.code == 2);
        CHECK(ending.err.find("lengthwise: out of memory\n") != std::string::npos);
        bool const whole = bytes_of(folder.path("a.swim")) == bytes;
        CHECK(whole);
        CHECK(folder.names() == Words{"a.swim"});
    }
}
