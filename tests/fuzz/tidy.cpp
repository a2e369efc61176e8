#include "fuzz/promise.hpp"
#include "fuzz/reading.hpp"
#include "fuzz/target.hpp"
#include "grammar/parse.hpp"
#include "grammar/write.hpp"
#include "plan/spell.hpp"
#include "support/well_formed.hpp"

#include <set>

/// What `tidy` promises: it never changes what a text means, and loses no word of it.
namespace lengthwise::fuzz {
namespace {

using Words = std::multiset<std::string_view>;

std::string_view without_blanks_behind(std::string_view text) {
    return text.substr(0, text.find_last_not_of(" \t\r") + 1);
}

Words comments_of(grammar::Tree const& tree) {
    Words words;
    for (auto const& comment : tree.comments) {
        words.insert(without_blanks_behind(tree.slice({comment.begin, comment.end})));
    }
    return words;
}

/// Names and notes, wherever they stand.
Words strings_of(grammar::Tree const& tree) {
    Words words;
    for (std::uint32_t i = 0; i < tree.size(); ++i) {
        if (tree.nodes[i].is_string()) {
            words.insert(tree.raw_string(i));
        }
    }
    return words;
}

void keeps_all(grammar::Tree const& before, grammar::Tree const& after) {
    promise(comments_of(before) == comments_of(after), "tidy loses no comment and makes none");
    promise(strings_of(before) == strings_of(after), "tidy loses no name and no note and makes none");
}

void means_the_same(Texts texts, std::string const& tidy) {
    auto const before = read(texts);
    texts.plan = tidy;
    auto const after = read(texts);
    promise(before.clean() == after.clean(), "a tidy text has an error where the text had one",
            before.first_error() + after.first_error());
    if (!before.clean()) {
        return;
    }
    promise(plan::same_meaning(before.plan(), after.plan()), "a tidy text means what the text meant");
    texts.plan = grammar::write(plan::spell(before.plan()));
    auto const spelled = read(texts);
    promise(spelled.clean(), "a plan that is spelled again can be read", spelled.first_error());
    promise(plan::same_meaning(before.plan(), spelled.plan()), "a plan that is spelled again means the same");
}

} // namespace

void run(std::string_view bytes) {
    auto const texts = texts_of(bytes);
    Source const source{"plan.swim", texts.plan};
    auto const parsed = grammar::parse(source);
    no_fault(test::shape_fault(parsed.tree), "a tree has its shape, whatever the text");
    (void)grammar::untidy_lines(parsed.tree); // comes back, even where lines could not be read
    if (parsed.findings.has_errors()) {
        return;
    }
    auto const tidy = grammar::write(parsed.tree);
    Source const again{"tidy.swim", tidy};
    auto const reparsed = grammar::parse(again);
    promise(!reparsed.findings.has_errors(), "a tidy text can be read",
            reparsed.findings.has_errors() ? reparsed.findings.kept().front().message : "");
    promise(grammar::write(reparsed.tree) == tidy, "a tidy text stays as it is");
    promise(grammar::untidy_lines(reparsed.tree).empty(), "a tidy text has no untidy line");
    keeps_all(parsed.tree, reparsed.tree);
    means_the_same(texts, tidy);
}

} // namespace lengthwise::fuzz
