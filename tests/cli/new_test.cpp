#include "support/run_in_memory.hpp"
#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace lengthwise;
using support::MemoryFiles;
using support::run_in_memory;

namespace {

std::string week_line(std::string const& today) {
    MemoryFiles files;
    auto const text = run_in_memory({"new", "--today", today, "-o", "-"}, files).out;
    auto const at = text.find("\nweek 1") + 1;
    return text.substr(at, text.find('\n', at) - at);
}

} // namespace

TEST_CASE("a first plan is clean, tidy, and can be swum, with a date and without", "[new]") {
    for (auto const& today : std::vector<std::vector<std::string>>{{}, {"--today", "2027-05-04"}}) {
        MemoryFiles files;
        std::vector<std::string> call{"new"};
        call.insert(call.end(), today.begin(), today.end());
        CHECK(run_in_memory(call, files).code == 0);
        auto const check = run_in_memory({"check", "--strict", "plan.swim"}, files);
        CHECK(check.code == 0);
        CHECK(check.out.starts_with("plan.swim: nothing to mend"));
        CHECK(run_in_memory({"tidy", "--check", "plan.swim"}, files).code == 0);
        CHECK(run_in_memory({"deck", "plan.swim", "--session", "Thu"}, files).code == 0);
        auto const& plan = files.disk.files["/plan.swim"];
        CHECK(plan.find("lifeguard") != std::string::npos);
        CHECK(plan.find("doctor") != std::string::npos);
    }
}

TEST_CASE("a first plan says the same with a date, but for the date", "[new]") {
    MemoryFiles files;
    auto text = run_in_memory({"new", "-o", "-", "--today", "2027-05-03"}, files).out;
    std::string const date = " from 2027-05-03";
    text.erase(text.find(date), date.size());
    CHECK(text == run_in_memory({"new", "-o", "-"}, files).out);
}

TEST_CASE("its week begins on the next Monday", "[new]") {
    CHECK(week_line("2027-05-03") == "week 1 from 2027-05-03"); // a Monday
    CHECK(week_line("2027-05-04") == "week 1 from 2027-05-10");
    CHECK(week_line("2027-05-09") == "week 1 from 2027-05-10");
    CHECK(week_line("2026-12-29") == "week 1 from 2027-01-04");
    CHECK(week_line("9999-12-31") == "week 1"); // no Monday is left
}

TEST_CASE("a first plan replaces none unasked", "[new]") {
    MemoryFiles files;
    files.disk.files["/plan.swim"] = "mine";
    auto const there = run_in_memory({"new"}, files);
    CHECK(there.code == 2);
    CHECK(there.err == "lengthwise: cannot write plan.swim: there already; --force replaces it\n");
    CHECK(files.disk.files["/plan.swim"] == "mine");
    CHECK(run_in_memory({"new", "--force"}, files).code == 0);
    CHECK(files.disk.files["/plan.swim"] != "mine");
}
