#include "recogniser/recogniser.hpp"

#include "recogniser/scopes.hpp"
#include "recogniser/words.hpp"

namespace lengthwise::recogniser {

namespace {

/// The parentheses of a text, line by line.
struct Parentheses {
    std::optional<std::size_t>
        unclosed; ///< where the first one is that a statement or the text's end finds open
    std::vector<std::size_t> outermost; ///< by line: where the outermost one is that is open there, or 0
};

bool begins_statement(std::vector<Token> const& tokens, std::size_t i) {
    bool const first = i == 0 || tokens[i - 1].line != tokens[i].line;
    auto const next = i + 1 < tokens.size() ? std::string_view{tokens[i + 1].text} : std::string_view{};
    return first && tokens[i].sort == Sort::word && statement(tokens[i].text, next);
}

Parentheses parentheses(std::vector<Token> const& tokens) {
    Parentheses result;
    std::vector<std::size_t> open;
    auto const all_closed = [&] {
        if (!open.empty() && !result.unclosed) {
            result.unclosed = open.front();
        }
        open.clear();
    };
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (begins_statement(tokens, i)) {
            all_closed();
        }
        if (result.outermost.size() <= tokens[i].line) {
            result.outermost.resize(tokens[i].line + 1, open.empty() ? 0 : open.front());
        }
        bool const sign = tokens[i].sort == Sort::sign;
        if (sign && tokens[i].text == "(") {
            open.push_back(tokens[i].line);
        } else if (sign && tokens[i].text == ")" && !open.empty()) {
            open.pop_back();
        }
    }
    all_closed();
    return result;
}

bool begins_with_letters(std::string_view line) {
    auto const at = line.find_first_not_of(" \t");
    return at != std::string_view::npos && ((line[at] | 0x20) >= 'a' && (line[at] | 0x20) <= 'z');
}

/// Where the outermost parenthesis is that is open on a line, if from there on a line in it begins with
/// letters; else 0.
std::size_t ended_by_slip(Parentheses const& groups, std::string_view text, std::size_t line) {
    auto const all = lines(text);
    auto const at = line < groups.outermost.size() ? groups.outermost[line] : 0;
    for (; at != 0 && line < groups.outermost.size() && groups.outermost[line] == at; ++line) {
        if (begins_with_letters(all[line - 1])) {
            return at;
        }
    }
    return 0;
}

std::optional<std::size_t> unreadable(std::string_view text) {
    std::size_t number = 0;
    for (std::string_view const line : lines(text)) {
        ++number;
        if (!readable(line)) {
            return number;
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> earlier(std::optional<std::size_t> a, std::optional<std::size_t> b) {
    return a && b ? std::min(*a, *b) : a ? a : b;
}

} // namespace

std::optional<BadLine> first_bad_line(std::string_view text) {
    auto const all = tokens(text);
    auto const groups = parentheses(all);
    Stream in{all};
    bool const fits = file(in);
    auto const misfit = fits ? std::nullopt : std::optional{in.peek().line};
    auto const first = earlier(misfit, earlier(groups.unclosed, unreadable(text)));
    if (!first) {
        return std::nullopt;
    }
    auto const slip = ended_by_slip(groups, text, *first);
    return BadLine{*first, slip != 0 ? slip : *first};
}

} // namespace lengthwise::recogniser
