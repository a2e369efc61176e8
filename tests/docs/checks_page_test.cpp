#include "check/register.hpp"
#include "plan/rules.hpp"
#include "report/findings_text.hpp"
#include "support/temp_folder.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <fstream>
#include <string>

/// The second half of docs/checks.md is what the register of rules knows; its head is written by hand. With
/// LENGTHWISE_UPDATE set the second half is written anew.
namespace lengthwise {
namespace {

constexpr auto page_file = LENGTHWISE_ROOT "/docs/checks.md";
std::string const border = "<!-- All below is made by the program's tests from the rules themselves. -->\n";

/// A bar would end the cell.
std::string cell(std::string_view text) {
    std::string safe;
    for (char const c : text) {
        safe += c == '|' ? std::string{"\\|"} : std::string{c};
    }
    return safe;
}

std::string table() {
    std::string text =
        "## The rules\n\n| rule | judges | usual limit | severity |\n| --- | --- | --- | --- |\n";
    for (auto const* rule : check::rules()) {
        text += "| [`" + std::string{rule->name} + "`](#" + std::string{rule->name} + ") | " +
                cell(rule->measures) + " | " + (rule->limit.empty() ? "-" : cell(rule->limit)) + " | " +
                std::string{report::spelling(rule->severity)} + " |\n";
    }
    return text;
}

std::string example(std::string_view lines, std::string const& verdict) {
    return lines.empty() ? "" : verdict + "\n\n```\n" + std::string{lines} + "\n```\n\n";
}

std::string entry(check::Rule const& rule) {
    auto const at_head = plan::rules[*plan::find_rule(rule.name)].file_level;
    return "\n### " + std::string{rule.name} + "\n\n" + std::string{rule.meaning} +
           "\n\nWhy: " + std::string{rule.why} + "\n\nSource: " + std::string{rule.source} + ".\n\n" +
           example(rule.good, "Meets it:") + example(rule.bad, "Does not:") +
           "Way out: " + std::string{rule.mend} + ". " +
           (at_head ? "`allow` stands at the head of the file.\n"
                    : "`allow` stands at the head of the file, in a week or in a session.\n");
}

std::string rules_part() {
    auto text = '\n' + table();
    for (auto const* rule : check::rules()) {
        text += entry(*rule);
    }
    return text;
}

} // namespace

TEST_CASE("docs/checks.md is what the program knows of its rules", "[checks-page]") {
    auto page = support::bytes_of(page_file);
    auto const at = page.find(border);
    REQUIRE(at != std::string::npos);
    auto const head = page.substr(0, at + border.size());
    if (std::getenv("LENGTHWISE_UPDATE") != nullptr) {
        page = head + rules_part();
        std::ofstream{page_file} << page;
    }
    CHECK(page == head + rules_part());
}

TEST_CASE("docs/checks.md begins with what no check can know", "[checks-page]") {
    auto const page = support::bytes_of(page_file);
    auto const first = page.find("\n## ");
    CHECK(page.substr(first, 27) == "\n## What no check can know\n");
    for (auto const* word : {"**Health.**", "**Open water.**", "**Supervision.**"}) {
        CHECK(page.find(word) < page.find("\n## ", first + 1));
    }
}

} // namespace lengthwise
