#include "calc/timeline.hpp"
#include "check/register.hpp"
#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/text.hpp"
#include "grammar/write.hpp"
#include "support/plain_ramp.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <algorithm>

using namespace lengthwise;
using namespace lengthwise::compose;

namespace {

/// What `check` finds in a plan, line by line; nothing to mend gives nothing.
std::string findings(support::ReadPlan const& read) {
    std::string text = read.error();
    auto const found = check::check(read.plan());
    for (auto const& finding : found.kept()) {
        text += fmt::format("{} [{}]\n", finding.message, finding.rule);
    }
    return text;
}

/// Wishes, of which those that can be met are composed. Says how many there were.
int compose_all(std::uint32_t seed, int wishes) {
    std::mt19937 random{seed};
    auto met = 0;
    for (auto i = 0; i < wishes; ++i) {
        auto const request = support::random_request(random);
        if (!refusals(request).empty()) {
            continue;
        }
        auto const ramp = ramp_of(request);
        if (!ramp) {
            continue;
        }
        ++met;
        auto const text = plan_text(request, *ramp, sessions_of(request, *ramp));
        auto const read = support::read_plan(text);
        INFO(i << '\n' << text.substr(0, 600));
        REQUIRE(findings(read) == "");
        REQUIRE(grammar::write(read.bundle->root().tree) == text);
    }
    return met;
}

} // namespace

TEST_CASE("nothing is to mend in a composed plan, and it is tidy", "[compose]") {
    CHECK(compose_all(2028, 400) > 50);
}

TEST_CASE("nothing is to mend in ten thousand composed plans", "[long][compose]") {
    CHECK(compose_all(2029, 30'000) > 10'000);
}
