#include "page.hpp"

#include <algorithm>

namespace lengthwise::grammar {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

std::string_view trim_end(std::string_view text) {
    return text.substr(0, text.find_last_not_of(" \t\r\n") + 1);
}

} // namespace

void Page::start_line(std::uint32_t begin, int level) {
    comments_before(begin, level);
    break_line(begin, level);
}

void Page::start_closing_line(std::uint32_t begin, int level) {
    comments_before(begin, level + 1);
    break_line(begin, level);
}

void Page::say(std::string_view word) {
    if (!fresh_) {
        out_ += ' ';
    }
    out_ += word;
    fresh_ = false;
}

void Page::append(std::string_view text) {
    out_ += text;
    fresh_ = false;
}

void Page::join(std::string_view text) {
    out_ += text;
    fresh_ = true;
}

void Page::finish() {
    auto const last_level = level_;
    while (next_comment_ < tree_.comments.size()) {
        auto const comment = tree_.comments[next_comment_];
        bool const at_margin =
            comment.begin == tree_.base || tree_.text[comment.begin - tree_.base - 1] == '\n';
        comments_before(comment.begin + 1, at_margin ? 0 : last_level);
    }
    if (!out_.empty()) {
        out_ += '\n';
    }
}

void Page::comments_before(std::uint32_t begin, int level) {
    for (; next_comment_ < tree_.comments.size(); ++next_comment_) {
        auto const comment = tree_.comments[next_comment_];
        if (comment.begin >= begin) {
            return;
        }
        put_comment(comment, level);
    }
}

/// Behind the line in hand when it stood behind something; a line holds one comment,
/// so of two that come together the second gets its own.
void Page::put_comment(Comment comment, int level) {
    if (!out_.empty() && !commented_ && shares_line(comment.begin)) {
        out_ += "  ";
    } else {
        break_line(comment.begin, level);
    }
    out_ += trim_end(tree_.slice({comment.begin, comment.end}));
    commented_ = true;
}

void Page::break_line(std::uint32_t begin, int level) {
    if (!out_.empty()) {
        out_ += '\n';
        if (follows_blank_line(begin)) {
            out_ += '\n';
            origins_.push_back(begin);
        }
    }
    origins_.push_back(begin);
    out_.append(2 * static_cast<std::size_t>(level), ' ');
    level_ = level;
    fresh_ = true;
    commented_ = false;
}

/// Where the run of `blanks` that ends before `begin` starts in the tree's text.
std::size_t Page::blanks_start(std::uint32_t begin, std::string_view blanks) const {
    auto const before = tree_.text.substr(0, begin - tree_.base);
    return before.find_last_not_of(blanks) + 1; // npos + 1 is 0
}

bool Page::follows_blank_line(std::uint32_t begin) const {
    auto const start = blanks_start(begin, " \t\r\n");
    auto const run = tree_.text.substr(start, begin - tree_.base - start);
    return std::ranges::count(run, '\n') >= 2;
}

bool Page::shares_line(std::uint32_t begin) const {
    auto const start = blanks_start(begin, " \t");
    bool const opens_text =
        start == 0 || (start == byte_order_mark.size() && tree_.text.starts_with(byte_order_mark));
    return !opens_text && tree_.text[start - 1] != '\n';
}

} // namespace lengthwise::grammar
