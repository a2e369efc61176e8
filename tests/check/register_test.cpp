#include "check/register.hpp"

#include "plan/rules.hpp"

#include <catch2/catch.hpp>

#include <set>
#include <string>

using namespace lengthwise;

TEST_CASE("each rule has its words, and a name that files may use") {
    std::set<std::string_view> names;
    for (auto const* rule : check::rules()) {
        INFO(rule->name);
        CHECK(plan::find_rule(rule->name).has_value());
        CHECK(names.insert(rule->name).second);
        CHECK(check::find_rule(rule->name) == rule);
        CHECK(rule->judge != nullptr);
        for (auto const text : {rule->measures, rule->meaning, rule->why, rule->source, rule->mend}) {
            CHECK_FALSE(text.empty());
        }
        auto const kind = plan::rules[*plan::find_rule(rule->name)].kind;
        CHECK((kind == plan::LimitKind::none) == rule->limit.empty());
    }
    CHECK(check::find_rule("race") == nullptr);
}

TEST_CASE("every rule that files may name judges") {
    for (auto const& rule : plan::rules) {
        CHECK(check::find_rule(rule.name) != nullptr);
    }
}
