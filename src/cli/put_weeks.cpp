#include "cli/put_weeks.hpp"

#include "grammar/edit.hpp"

#include <algorithm>
#include <optional>

namespace lengthwise::cli {
namespace {

using grammar::Kind;

/// The top node behind the week, or the end of the tree.
std::uint32_t behind(grammar::Tree const& tree, std::uint32_t number) {
    auto found = false;
    for (std::uint32_t i = 0; i < tree.size(); i = tree.next(i)) {
        if (found) {
            return i;
        }
        found = tree.nodes[i].kind == Kind::week && tree.nodes[i + 1].value == number;
    }
    return tree.size();
}

std::size_t indent(std::string_view line) {
    return std::min(line.find_first_not_of(" \t"), line.size());
}

bool is_comment(std::string_view line) {
    return line.substr(indent(line)).starts_with('#');
}

/// The line that begins at `at`, without its end.
std::string_view line_at(std::string_view text, std::size_t at) {
    return text.substr(at, text.find('\n', at) - at);
}

/// Where the line before the one at `at` begins; nothing on the first.
std::optional<std::size_t> line_before(std::string_view text, std::size_t at) {
    if (at == 0) {
        return std::nullopt;
    }
    return at < 2 ? 0 : text.rfind('\n', at - 2) + 1;
}

/// The beginning of a statement's line, or of the comments that belong to it.
std::size_t first_line_of(std::string_view text, std::size_t statement) {
    auto begin = statement == 0 ? 0 : text.rfind('\n', statement - 1) + 1;
    auto const depth = indent(line_at(text, begin));
    for (auto above = line_before(text, begin); above; above = line_before(text, begin)) {
        auto const line = line_at(text, *above);
        if (!is_comment(line) || indent(line) > depth) {
            break;
        }
        begin = *above;
    }
    return begin;
}

bool ends_in_blank_line(std::string_view text) {
    return text.ends_with("\n\n") || text.ends_with("\n\r\n");
}

} // namespace

Rest behind_week(grammar::File const& file, std::uint32_t number) {
    auto const& tree = file.tree;
    auto const base = file.source.base();
    auto const next = behind(tree, number);
    Rest rest{.span = {file.source.end(), file.source.end()}};
    if (next < tree.size()) {
        auto const begin = first_line_of(file.source.text(), tree.nodes[next].begin - base);
        rest.span.begin = base + static_cast<std::uint32_t>(begin);
    }
    for (auto i = next; i < tree.size(); ++i) {
        auto const kind = tree.nodes[i].kind;
        rest.sessions += kind == Kind::session ? 1 : 0;
        rest.remarks += kind == Kind::note || kind == Kind::note_line ? 1 : 0;
    }
    rest.remarks += static_cast<std::size_t>(std::ranges::count_if(
        tree.comments, [&](grammar::Comment const& comment) { return comment.begin >= rest.span.begin; }));
    return rest;
}

std::string with_weeks(grammar::File const& file, Rest const& rest, std::string_view weeks) {
    auto const before = file.source.slice({file.source.base(), rest.span.begin});
    auto const end = before.find('\n');
    auto const crlf = end != std::string_view::npos && end > 0 && before[end - 1] == '\r';
    std::string text;
    if (!before.empty() && !before.ends_with('\n')) {
        text += '\n';
    }
    text += ends_in_blank_line(before) ? weeks.substr(1) : weeks;
    std::string in_place;
    for (auto const c : text) {
        in_place += c == '\n' && crlf ? "\r\n" : std::string{c};
    }
    return grammar::apply(file.source, {{rest.span, std::move(in_place)}});
}

} // namespace lengthwise::cli
