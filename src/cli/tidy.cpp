#include "cli/commands.hpp"
#include "cli/each_file.hpp"
#include "cli/plans.hpp"
#include "grammar/limits.hpp"
#include "grammar/write.hpp"
#include "report/table.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace lengthwise::cli {

namespace {

/// Never changes what a file means: read again, the tidy text has to say the same.
bool means_the_same(Loaded const& loaded, std::string const& text, Files& files) {
    auto const path = loaded.name == "-" ? std::nullopt : std::optional{loaded.name};
    auto const bundle = grammar::bundle(loaded.name, text, path, files);
    auto const resolved = plan::resolve(bundle);
    return !bundle.findings.has_errors() && !resolved.findings.has_errors() &&
           bundle.root().tree.comments.size() == loaded.bundle.root().tree.comments.size() &&
           plan::same_meaning(resolved.plan, loaded.plan());
}

std::string without_indent(std::string_view line) {
    auto const begin = line.find_first_not_of(" \t");
    return report::visible(begin == std::string_view::npos ? std::string_view{} : line.substr(begin));
}

/// A blank line and one that goes are said, not shown.
std::string would_be(grammar::UntidyLine const& line) {
    if (!line.would_be) {
        return "(goes)";
    }
    auto const first = line.would_be->substr(0, line.would_be->find('\n'));
    auto const shown = without_indent(first);
    if (shown == without_indent(line.is)) {
        return fmt::format("(indented by {})", first.find_first_not_of(' '));
    }
    return line.would_be->find('\n') == std::string::npos ? shown : shown + " (and more lines)";
}

struct Change {
    std::uint32_t line;
    std::string is;
    std::string would_be;
};

/// Both texts share what the line number leaves; one that is short leaves its share to the other.
std::string table_of(std::vector<Change> const& changes, Console const& console) {
    constexpr std::size_t taken = 8; // the number, and two blanks before each text
    auto const room = console.width - taken;
    std::size_t is = 0;
    std::size_t would_be = 0;
    for (auto const& change : changes) {
        is = std::max(is, report::cells(change.is));
        would_be = std::max(would_be, report::cells(change.would_be));
    }
    auto const left = std::max(room / 2, room - std::min(would_be, room));
    auto const right = room - std::min(left, is);
    report::Table table{
        {{.head = "line"}, {.head = "is", .figures = false}, {.head = "would be", .figures = false}}};
    for (auto const& change : changes) {
        table.row({{.text = std::to_string(change.line)},
                   {.text = report::cut(change.is, left, console.ascii)},
                   {.text = report::cut(change.would_be, right, console.ascii)}});
    }
    return table.text(console.out_paint);
}

constexpr std::size_t most_rows = 50;

/// Old and new side by side.
std::string changes_text(Loaded const& loaded, Console const& console) {
    auto const lines = grammar::untidy_lines(loaded.bundle.root().tree);
    if (lines.empty()) {
        return fmt::format("{}: only line ends are not tidy\n", report::visible(loaded.name));
    }
    std::vector<Change> changes;
    for (std::size_t i = 0; i < std::min(lines.size(), most_rows); ++i) {
        changes.push_back({lines[i].line, without_indent(lines[i].is), would_be(lines[i])});
    }
    auto text =
        fmt::format("{}: {} {} not tidy; the sums stay as they are\n\n{}", report::visible(loaded.name),
                    lines.size(), lines.size() == 1 ? "line is" : "lines are", table_of(changes, console));
    if (lines.size() > most_rows) {
        text += fmt::format("and {} more\n", lines.size() - most_rows);
    }
    return text;
}

/// The longest of one or more lines.
std::size_t longest_line(std::string_view text) {
    std::size_t longest = 0;
    for (std::size_t begin = 0; begin <= text.size();) {
        auto const end = std::min(text.find('\n', begin), text.size());
        longest = std::max(longest, end - begin);
        begin = end + 1;
    }
    return longest;
}

/// Tidy is longer where words are spelled out or blanks belong between them: at the limit that cannot be
/// done.
Outcome say_too_long(Loaded const& loaded, Console& console) {
    for (auto const& line : grammar::untidy_lines(loaded.bundle.root().tree)) {
        auto const bytes = line.would_be ? longest_line(*line.would_be) : 0;
        if (bytes > limits::line_bytes) {
            console.say(
                fmt::format("{} stays as it is: tidy, its line {} would have {} bytes, the limit is {}\n"
                            "      = a group can stand on several lines, a note or comment too",
                            report::visible(loaded.name), line.line, bytes, limits::line_bytes));
            break;
        }
    }
    return {has_errors};
}

/// Puts the tidy text in the place of what the file was.
int put(std::string const& name, std::string const& text, std::string const& was, Files& files,
        Console& console) {
    if (auto const refusal = files.replace(name, text, was)) {
        console.say(fmt::format("cannot write {}: {}", report::visible(name), refusal->reason));
        return misused;
    }
    console.err.write(fmt::format("wrote {}\n", report::visible(name)));
    return fine;
}

Outcome tidy_file(Loaded const& loaded, Tidy const& options, Files& files, Console& console) {
    if (loaded.errors.has_errors()) {
        say_errors(loaded, console);
        return {has_errors};
    }
    auto const& root = loaded.bundle.root();
    auto text = grammar::write(root.tree);
    auto const tidy_already = text == root.source.text();
    if (longest_line(text) > limits::line_bytes) {
        return say_too_long(loaded, console);
    }
    if (!tidy_already && !means_the_same(loaded, text, files)) {
        console.say(
            fmt::format("{} stays as it is: its tidy spelling would not mean the same, a fault of this "
                        "program",
                        report::visible(loaded.name)));
        return {misused};
    }
    if (options.check) {
        console.out.write(tidy_already ? "" : changes_text(loaded, console));
        return {tidy_already ? fine : has_errors};
    }
    if (options.to_out || loaded.name == "-") {
        console.out.write(text);
        return {};
    }
    if (tidy_already) {
        return {};
    }
    return {fine, [name = loaded.name, text = std::move(text), was = std::string{root.source.text()},
                   &files](Console& own) { return put(name, text, was, files, own); }};
}

} // namespace

int tidy(Tidy const& options, Files& files, Console& console) {
    auto const named = cli::named(options.files, files, console);
    auto const one = [&](std::string const& name, Console& own) -> Outcome {
        auto const loaded = load(name, files, own);
        return loaded ? tidy_file(*loaded, options, files, own) : Outcome{misused};
    };
    return each_file("tidy", named, console, one);
}

} // namespace lengthwise::cli
