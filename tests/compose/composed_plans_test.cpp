#include "calc/timeline.hpp"
#include "check/register.hpp"
#include "compose/author.hpp"
#include "compose/ramp.hpp"
#include "compose/random_wish.hpp"
#include "compose/text.hpp"
#include "grammar/write.hpp"
#include "support/plain_ramp.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <ctime>
#include <random>
#include <string>
#include <vector>

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

/// Sessions of a plan with a threshold that may take longer than their slot, less what is kept free.
int over_full(Request const& request, plan::Plan const& plan) {
    calc::Clock clock{plan};
    auto count = 0;
    for (plan::Index i = 0; request.threshold && i < plan.sessions.size(); ++i) {
        auto const time = clock.session(i, 0).total();
        count += !time || time->high > usable_slot(request) ? 1 : 0;
    }
    return count;
}

/// Milliseconds of the processor's time.
class Timings {
  public:
    void start() { start_ = std::clock(); }
    void stop(Request const& request) {
        auto const took = 1000.0 * static_cast<double>(std::clock() - start_) / CLOCKS_PER_SEC;
        if (all_.empty() || took > *std::ranges::max_element(all_)) {
            slowest_ = support::said(request);
        }
        all_.push_back(took);
    }
    [[nodiscard]] std::size_t count() const { return all_.size(); }
    [[nodiscard]] double worst() const { return *std::ranges::max_element(all_); }
    [[nodiscard]] std::string said() const {
        auto sorted = all_;
        std::ranges::sort(sorted);
        auto const at = [&](std::size_t per_mille) { return sorted[(sorted.size() - 1) * per_mille / 1000]; };
        return fmt::format("{} plans, ms: median {:.2f}, 99 % {:.2f}, 99.9 % {:.2f}, worst {:.2f}: {}",
                           count(), at(500), at(990), at(999), at(1000), slowest_);
    }

  private:
    std::clock_t start_ = 0;
    std::vector<double> all_;
    std::string slowest_;
};

/// Of two sources: one knows more pools, limits and short slots, the other more kits, days and weeks.
Request wish_of(std::mt19937& random, int i) {
    return i % 2 == 0 ? support::random_request(random) : support::random_wish(random);
}

/// Wishes, of which those that can be met are composed, as the program does it.
Timings compose_all(std::uint32_t seed, int wishes) {
    std::mt19937 random{seed};
    Timings timings;
    for (auto i = 0; i < wishes; ++i) {
        auto const request = wish_of(random, i);
        if (!refusals(request).empty()) {
            continue;
        }
        timings.start();
        auto const ramp = ramp_of(request);
        if (!ramp || short_at_any_pace(request, *ramp)) {
            continue;
        }
        auto const text = plan_text(request, *ramp, sessions_of(request, *ramp));
        timings.stop(request);
        auto const read = support::read_plan(text);
        INFO(i << ": " << support::said(request) << '\n' << text.substr(0, 600));
        REQUIRE(findings(read) == "");
        REQUIRE(over_full(request, read.plan()) == 0);
        REQUIRE(grammar::write(read.bundle->root().tree) == text);
    }
    return timings;
}

} // namespace

TEST_CASE("nothing is to mend in a composed plan, and it is tidy", "[compose]") {
    CHECK(compose_all(2028, 400).count() > 50);
}

TEST_CASE("nothing is to mend in ten thousand composed plans", "[long][compose]") {
    auto const timings = compose_all(2029, 30'000);
    WARN(timings.said());
    CHECK(timings.count() > 10'000);
    CHECK(timings.worst() < 20 * 10); // 20 ms in an optimised build on a quiet machine
}
