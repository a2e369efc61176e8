#include "calc/bouts.hpp"

#include "support/plan_text.hpp"
#include "support/read_plan.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

namespace lengthwise {
namespace {

/// The chooser of each rep, by unrolling bouts.
void unroll(std::vector<calc::Bout> const& bouts, std::vector<plan::Selection const*>& all) {
    for (auto const& bout : bouts) {
        for (std::uint32_t i = 0; i < bout.times; ++i) {
            if (bout.inside.empty()) {
                all.push_back(bout.selection);
            } else {
                unroll(bout.inside, all);
            }
        }
    }
}

std::size_t written(std::vector<calc::Bout> const& bouts) {
    auto size = bouts.size();
    for (auto const& bout : bouts) {
        size += written(bout.inside);
    }
    return size;
}

/// Checks an item against its selections, rep by rep; how many bouts it took.
std::size_t check(std::string const& line) {
    INFO(line);
    auto const read = support::read_plan(support::session_with(line));
    REQUIRE(read.error() == "");
    auto const& plan = read.plan();
    auto const& item = plan.items[plan.sections.front().body];
    std::vector<plan::Selection const*> expected(item.count, nullptr);
    auto const& selections = plan.terms[item.terms].selections;
    for (auto i = selections.first; i < selections.end(); ++i) {
        auto const& selection = plan.selections[i];
        for (std::uint32_t k = 0; k < selection.count; ++k) {
            expected[selection.first - 1 + k * selection.step] = &selection;
        }
    }
    auto const bouts = calc::bouts_of(plan, item);
    std::vector<plan::Selection const*> unrolled;
    unroll(bouts, unrolled);
    CHECK(unrolled == expected);
    std::uint32_t count = 0;
    for (auto const& bout : bouts) {
        CHECK(bout.number == count);
        count += bout.count();
    }
    CHECK(count == item.count);
    return written(bouts);
}

} // namespace

TEST_CASE("bouts are an item's reps in their order") {
    CHECK(check("9999 x 25") == 1);
    CHECK(check("9999 x 25, odds hard") <= 5);
    CHECK(check("9999 x 25, evens hard") <= 6);
    CHECK(check("9998 x 25, odds easy, evens hard") <= 6);
    CHECK(check("9999 x 25, every 4th hard, odds easy") <= 12);
    CHECK(check("9999 x 25, first 10 easy, next 5 hard, last 3 easy") <= 4);
    CHECK(check("4 x 25, first easy, last hard") <= 3);
    CHECK(check("2 x 25, odds hard") <= 3);
    CHECK(check("1 x 25, odds hard") == 1);
    CHECK(check("9999 x 25, every 100th hard, every 101st easy") <= 800);
    CHECK(check("9999 x (25 + 50), every 3rd hard") <= 5);
    CHECK(check("25, 50, 75, 100, evens hard") == 4);
    CHECK(check("4 x 25 on 0:40, 0:45, 0:50, 0:55, last hard") == 4);
}

TEST_CASE("bouts of all small counts and patterns") {
    for (int n = 1; n <= 30; ++n) {
        auto const count = std::to_string(n) + " x 25, ";
        for (int every = 2; every <= n; ++every) {
            auto const each = "every " + std::to_string(every) + "th hard";
            check(count + each);
            if (every % 2 == 0) {
                check(count + "odds easy, " + each);
            }
            for (int other = every + 1; other <= n; ++other) {
                bool meet = false;
                for (int k = other; k <= n; k += other) {
                    meet = meet || k % every == 0;
                }
                if (!meet) {
                    check(count + each + ", every " + std::to_string(other) + "th easy");
                }
            }
        }
        if (n > 3) {
            check(count + "first 1 easy, evens hard");
        }
    }
}

} // namespace lengthwise
