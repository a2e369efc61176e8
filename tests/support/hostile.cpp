#include "support/hostile.hpp"

#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

namespace hostile {
namespace {

using lengthwise::support::Ending;
using lengthwise::support::unsafe_in;

// Instrumented builds need several times the time and memory.
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__) || !defined(NDEBUG)
constexpr double most_seconds = 15;
constexpr long most_kib = 1'500'000;
#else
constexpr double most_seconds = 1;
constexpr long most_kib = 200'000;
#endif

void within_limits(Ending const& ending) {
    CHECK(ending.seconds < most_seconds);
    CHECK(ending.kib < most_kib);
    CHECK(ending.code >= 0); // no signal ended it
    CHECK(ending.code <= 2);
}

/// What everybody can read: one sentence about the text, not about the program.
void readable(std::string const& text) {
    for (auto const* const slip :
         {"terminate called", "what()", "std::", "N5boost", "bad_alloc", "Assertion"}) {
        CHECK(text.find(slip) == std::string::npos);
    }
}

void has_place(Ending const& ending) {
    CHECK(ending.all().find("input.swim:") != std::string::npos);
    CHECK(ending.all().find(": error: ") != std::string::npos);
}

void judge(Input const& input, std::string const& command, Ending const& ending) {
    CAPTURE(input.name, command, ending.code, ending.out.substr(0, 500), ending.err.substr(0, 500));
    within_limits(ending);
    readable(ending.all());
    if (command != "tidy") { // which writes the plan's own text, as `cat` would
        CHECK(unsafe_in(ending.all()).empty());
    }
    bool const chooses = command == "deck"; // ends with 2 when there is not one session to show
    if (input.fit == Fit::fine && !chooses) {
        CHECK(ending.code == 0);
    }
    if (input.fit == Fit::finding) {
        CHECK(ending.code == 1);
    }
    if (input.fit == Fit::unread) {
        CHECK(ending.code == 2);
        CHECK(ending.err.starts_with("lengthwise: cannot read input.swim: "));
    }
    if (ending.code == 1) {
        has_place(ending);
    }
    bool const figures = command != "tidy" && command != "export"; // as `tally` words them
    if (!input.says.empty() && !chooses && (figures || input.fit != Fit::fine)) {
        CHECK(ending.all().find(input.says) != std::string::npos);
    }
}

} // namespace

std::string times(std::size_t n, std::string_view text) {
    std::string result;
    result.reserve(n * text.size());
    for (std::size_t i = 0; i < n; ++i) {
        result += text;
    }
    return result;
}

std::string main_set(std::string_view line) {
    return "pool 25m\nsession\n  main\n    " + std::string{line} + "\n";
}

void survive(Input const& input) {
    lengthwise::support::TempFolder const folder;
    folder.file("input.swim", input.bytes);
    auto const run = [&](std::vector<std::string> arguments) {
        auto const command = arguments.front();
        arguments.emplace_back("input.swim");
        judge(input, command, lengthwise::support::run({.arguments = arguments, .folder = folder.path()}));
    };
    run({"tally"});
    run({"check"});
    run({"deck"});
    run({"tidy", "--stdout"});
    run({"export", "--as", "json"});
    run({"export", "--as", "html"});
}

void survive(std::vector<Input> const& inputs) {
    for (auto const& input : inputs) {
        survive(input);
    }
}

void survive_path(std::string const& folder, std::string const& path, std::vector<int> const& codes,
                  std::string const& says) {
    for (auto const* const command : {"tally", "check", "deck", "tidy"}) {
        auto const ending = lengthwise::support::run({.arguments = {command, "--", path}, .folder = folder});
        CAPTURE(command, unsafe_in(path).empty() ? path : "(a name not fit for a terminal)", ending.code,
                ending.all().substr(0, 500));
        within_limits(ending);
        readable(ending.all());
        CHECK(std::ranges::count(codes, ending.code) == 1);
        CHECK(unsafe_in(ending.all()).empty());
        CHECK(ending.all().find(says) != std::string::npos);
    }
}

} // namespace hostile
