#include "cases/case_file.hpp"

#include <algorithm>

namespace lengthwise::cases {

namespace {

constexpr std::string_view mark = "--- ";
constexpr std::string_view no_line_end = "\\\n";

/// Appends a line to the section it belongs to, or begins one.
void take(CaseFile& file, std::string_view line) {
    if (line.starts_with(mark)) {
        file.sections.push_back({std::string{line.substr(mark.size())}, {}});
        return;
    }
    auto& body = file.sections.empty() ? file.title : file.sections.back().body;
    body.append(line).append("\n");
}

std::string unfolded(std::string body) {
    if (body.ends_with("\n\\\n") || body == no_line_end) {
        body.resize(body.size() - (body == no_line_end ? 2 : 3));
    }
    return body;
}

std::string folded(std::string const& body) {
    return body.empty() || body.ends_with('\n') ? body : body + "\n\\\n";
}

} // namespace

std::string_view Section::kind() const {
    return std::string_view{head}.substr(0, head.find(' '));
}

std::string_view Section::argument() const {
    auto const blank = head.find(' ');
    return blank == std::string::npos ? std::string_view{} : std::string_view{head}.substr(blank + 1);
}

Section const* CaseFile::find(std::string_view kind) const {
    auto const found = std::ranges::find(sections, kind, &Section::kind);
    return found == sections.end() ? nullptr : &*found;
}

std::string CaseFile::text_of(std::string_view kind) const {
    auto const* const section = find(kind);
    return section == nullptr ? std::string{} : section->body;
}

CaseFile parse_case(std::string_view text) {
    CaseFile file;
    while (!text.empty()) {
        auto const end = std::min(text.find('\n'), text.size());
        take(file, text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    for (auto& section : file.sections) {
        section.body = unfolded(std::move(section.body));
    }
    return file;
}

std::string write_case(CaseFile const& file) {
    auto text = file.title;
    for (auto const& section : file.sections) {
        text.append(mark).append(section.head).append("\n").append(folded(section.body));
    }
    return text;
}

std::vector<std::string> words_of(std::string_view command) {
    std::vector<std::string> words;
    auto quoted = false;
    auto open = false;
    for (auto const c : command) {
        if (c == '"') {
            quoted = !quoted;
            if (quoted && !open) {
                words.emplace_back();
                open = true;
            }
        } else if (c == ' ' && !quoted) {
            open = false;
        } else {
            if (!open) {
                words.emplace_back();
                open = true;
            }
            words.back() += c;
        }
    }
    return words;
}

} // namespace lengthwise::cases
