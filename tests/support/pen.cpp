#include "support/pen.hpp"

#include <array>
#include <utility>

namespace lengthwise::test {
namespace {

struct Synonyms {
    std::string_view word;
    std::vector<std::string> others;
};

/// Words that mean the same wherever the word may stand. Those of one place alone (`max` for
/// an effort, `off` for a send-off, two words for a heading) are passed as a Spelling.
std::vector<Synonyms> const& synonyms() {
    static std::vector<Synonyms> const table{
        {"crawl", {"front crawl", "freestyle", "free"}},
        {"back", {"backstroke"}},
        {"breast", {"breaststroke"}},
        {"fly", {"butterfly"}},
        {"medley", {"IM"}},
        {"steady", {"moderate"}},
        {"hard", {"fast", "strong"}},
        {"board", {"kickboard"}},
    };
    return table;
}

} // namespace

void Pen::line(int level, bool blank_before) {
    bool const first = text_.empty();
    if (!first) {
        if (oddly(10)) {
            text_ += random_.chance(50) ? "  " : "\t";
            comment();
        }
        text_ += oddly(5) ? " \n" : "\n";
    }
    auto const most = untidy_ ? 3 : 1;
    auto const blanks = first ? (oddly(20) ? most : 0) : blank_before ? random_.between(1, most) : 0;
    bool const comment_above_blanks = random_.chance(50) && !first;
    bool const comment_line = oddly(8);
    auto const put_comment_line = [&] {
        text_.append(static_cast<std::size_t>(random_.below(6)), ' ');
        comment();
        text_ += '\n';
    };
    if (comment_line && comment_above_blanks) {
        put_comment_line();
    }
    for (int i = 0; i < blanks; ++i) {
        text_ += oddly(20) ? " \t\n" : "\n";
    }
    if (comment_line && !comment_above_blanks) {
        put_comment_line();
    }
    auto const indent = untidy_ ? random_.below(8) : 2 * level;
    text_.append(static_cast<std::size_t>(indent), oddly(10) ? '\t' : ' ');
    fresh_ = true;
}

void Pen::word(std::string_view tidy) {
    for (auto const& [word, others] : synonyms()) {
        if (word == tidy) {
            return this->word({std::string{tidy}, others});
        }
    }
    this->word(Spelling{std::string{tidy}});
}

void Pen::word(Spelling const& spelling) {
    blank();
    bool const other = !spelling.others.empty() && oddly(50);
    auto const& chosen = other ? pick(random_, spelling.others) : spelling.tidy;
    text_ += untidy_ ? in_any_case(chosen) : chosen;
}

void Pen::exact(std::string_view text) {
    blank();
    text_ += text;
}

void Pen::sign(std::string_view sign, bool blanks) {
    auto const blank_here = [&] { return untidy_ ? random_.chance(50) : blanks; };
    text_ += blank_here() ? " " : "";
    text_ += sign;
    text_ += blank_here() ? " " : "";
    fresh_ = true;
}

void Pen::times(int count) {
    exact(std::to_string(count));
    if (!untidy_) {
        return sign("x", true);
    }
    // `x` may touch a digit or a parenthesis, never a letter, so a blank stays behind it.
    text_ += random_.chance(50) ? " " : "";
    text_ += pick<std::string>(random_, {"x ", "X ", "× "});
    fresh_ = true;
}

void Pen::free_comma() {
    comma_ = !oddly(40);
}

void Pen::colon() {
    text_ += oddly(30) ? " :" : ":";
}

void Pen::open(bool spread, int level) {
    blank();
    text_ += "(";
    fresh_ = true;
    if (spread) {
        line(level);
    } else {
        text_ += oddly(30) ? " " : "";
    }
}

void Pen::next_item(bool spread, int level, bool blank_before) {
    if (!spread) {
        return sign("+", true);
    }
    bool const plus_above = oddly(20);
    text_ += plus_above ? " +" : "";
    line(level, blank_before);
    if (!plus_above && !blank_before && oddly(20)) {
        text_ += "+ ";
    }
}

void Pen::close(bool spread, int level) {
    if (spread && !oddly(20)) {
        line(level);
    } else {
        text_ += oddly(30) ? " " : "";
    }
    text_ += ")";
    fresh_ = false;
}

std::string Pen::finish() {
    if (!text_.empty()) {
        text_ += oddly(30) ? "  " : "";
        if (oddly(30)) {
            comment();
        }
        text_ += !untidy_ ? "\n" : pick<std::string>(random_, {"", "\n", "\n\n \n"});
    }
    if (oddly(20)) {
        std::string crlf;
        for (char const c : text_) {
            crlf += c == '\n' ? "\r\n" : std::string(1, c);
        }
        text_ = std::move(crlf);
    }
    return oddly(20) ? "\xEF\xBB\xBF" + text_ : std::move(text_);
}

void Pen::blank() {
    if (std::exchange(comma_, false)) {
        text_ += oddly(20) ? " ," : ",";
        fresh_ = false;
    }
    if (!std::exchange(fresh_, false)) {
        text_ += untidy_ ? pick<std::string>(random_, {" ", " ", " ", "  ", "\t"}) : " ";
    }
}

void Pen::comment() {
    text_ += "#: " + std::to_string(++comments_);
}

std::string Pen::in_any_case(std::string_view word) {
    std::string result{word};
    auto const upper = [](char& c) { c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; };
    switch (random_.below(6)) {
    case 0:
        upper(result.front());
        break;
    case 1:
        for (char& c : result) {
            upper(c);
        }
        break;
    default:
        break;
    }
    return result;
}

} // namespace lengthwise::test
