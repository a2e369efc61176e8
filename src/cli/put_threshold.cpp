#include "cli/put_threshold.hpp"

#include "grammar/edit.hpp"

#include <optional>

namespace lengthwise::cli {
namespace {

using grammar::Kind;

constexpr std::string_view keyword = "threshold ";
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// What the file says before its first week or session.
struct Head {
    std::optional<std::uint32_t> threshold;
    std::optional<std::uint32_t> pool;
    std::optional<std::uint32_t> last;
};

Head head_of(grammar::Tree const& tree) {
    Head head;
    for (std::uint32_t i = 0; i < tree.size(); i = tree.next(i)) {
        auto const kind = tree.nodes[i].kind;
        if (kind == Kind::week || kind == Kind::session) {
            break;
        }
        head.last = i;
        if (kind == Kind::threshold) {
            head.threshold = i;
        } else if (kind == Kind::pool || kind == Kind::pool_open_water) {
            head.pool = i;
        }
    }
    return head;
}

/// Only what stands behind the keyword, so that a head set in columns stays in them.
grammar::Edit in_place(grammar::Tree const& tree, std::uint32_t threshold, std::string_view line) {
    auto const first = tree.nodes[threshold + 1].begin;
    return {{first, tree.span(threshold).end}, std::string{line.substr(keyword.size())}};
}

grammar::Edit behind(grammar::File const& file, std::uint32_t statement, std::string_view line) {
    auto const text = file.source.text();
    auto const base = file.source.base();
    auto const span = file.tree.span(statement);
    auto const begin = text.rfind('\n', span.begin - base) + 1; // 0 on the first line
    auto const end = text.find('\n', span.end - base);
    auto const blanks = text.substr(begin, text.find_first_not_of(" \t", begin) - begin);
    auto added = std::string{blanks}.append(line);
    auto at = text.size();
    if (end == std::string_view::npos) { // the last line, without an end of its own
        added.insert(0, "\n");
    } else {
        added += text.substr(end - 1, 1) == "\r" ? "\r\n" : "\n";
        at = end + 1;
    }
    auto const place = base + static_cast<std::uint32_t>(at);
    return {{place, place}, std::move(added)};
}

grammar::Edit at_beginning(Source const& source, std::string_view line) {
    auto const text = source.text();
    auto const at = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
    auto const end = text.find('\n');
    auto const crlf = end != std::string_view::npos && end > 0 && text[end - 1] == '\r';
    auto const place = source.base() + static_cast<std::uint32_t>(at);
    return {{place, place}, std::string{line} + (crlf ? "\r\n" : "\n")};
}

} // namespace

std::string with_threshold(grammar::File const& file, std::string_view line) {
    auto const head = head_of(file.tree);
    auto const edit = head.threshold ? in_place(file.tree, *head.threshold, line)
                      : head.pool    ? behind(file, *head.pool, line)
                      : head.last    ? behind(file, *head.last, line)
                                     : at_beginning(file.source, line);
    return grammar::apply(file.source, {edit});
}

} // namespace lengthwise::cli
