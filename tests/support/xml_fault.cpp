#include "support/xml_fault.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <vector>

namespace lengthwise::support {
namespace {

using Names = std::vector<std::string_view>;

bool is_blank(char c) {
    return c == ' ' || c == '\n' || c == '\r' || c == '\t';
}

/// Char of the standard: no control characters but blanks, no U+FFFE and U+FFFF.
bool may_stand(utf8proc_int32_t c) {
    return (c >= 0x20 || c == '\n' || c == '\r' || c == '\t') && c != 0xFFFE && c != 0xFFFF;
}

std::string character_fault(std::string_view text) {
    auto const* const bytes = reinterpret_cast<utf8proc_uint8_t const*>(text.data());
    for (std::size_t at = 0; at < text.size();) {
        utf8proc_int32_t character = 0;
        auto const size =
            utf8proc_iterate(bytes + at, static_cast<utf8proc_ssize_t>(text.size() - at), &character);
        if (size <= 0 || !may_stand(character)) {
            return "a character that XML has not at byte " + std::to_string(at);
        }
        at += static_cast<std::size_t>(size);
    }
    return {};
}

class XmlReader {
  public:
    explicit XmlReader(std::string_view text) : text_(text) {}

    [[nodiscard]] std::string fault() {
        if (take("<?xml ")) {
            skip_behind("?>");
        }
        blanks();
        take("<!DOCTYPE html>");
        blanks();
        while (fault_.empty() && (!done() || !seen_root_)) {
            step();
        }
        if (!open_.empty()) {
            stop("no end of " + std::string{open_.back()});
        }
        return fault_;
    }

  private:
    [[nodiscard]] bool done() const { return at_ >= text_.size(); }
    [[nodiscard]] char next() const { return done() ? '\0' : text_[at_]; }

    void stop(std::string const& why) {
        if (fault_.empty()) {
            fault_ = why + " at byte " + std::to_string(at_);
        }
    }

    bool take(std::string_view what) {
        bool const there = text_.substr(std::min(at_, text_.size())).starts_with(what);
        at_ += there ? what.size() : 0;
        return there;
    }

    void skip_behind(std::string_view what) {
        auto const end = text_.find(what, at_);
        if (end == std::string_view::npos) {
            return stop("no " + std::string{what});
        }
        at_ = end + what.size();
    }

    void blanks() {
        while (is_blank(next())) {
            ++at_;
        }
    }

    /// A tag, a comment, or one character between them.
    void step() {
        if (done()) {
            return stop("no element");
        }
        if (take("<!--")) {
            skip_behind("-->");
        } else if (take("</")) {
            end_tag();
        } else if (take("<")) {
            start_tag();
        } else if (open_.empty() && !is_blank(next())) {
            stop("text outside of the one element");
        } else if (text_.substr(at_).starts_with("]]>")) {
            stop("]]> in a text");
        } else {
            character();
        }
    }

    std::string_view name() {
        auto const begin = at_;
        auto const is_name = [](char c) {
            return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-' || c == '_' || c == ':' ||
                   c == '.';
        };
        while (is_name(next())) {
            ++at_;
        }
        auto const found = text_.substr(begin, at_ - begin);
        if (found.empty() || std::isdigit(static_cast<unsigned char>(found[0])) != 0) {
            stop("no name");
        }
        return found;
    }

    void start_tag() {
        if (open_.empty() && seen_root_) {
            return stop("a second element");
        }
        seen_root_ = true;
        auto const tag = name();
        Names attributes;
        while (fault_.empty() && next() != '>' && next() != '/') {
            attribute(attributes);
        }
        if (take("/>")) {
            return;
        }
        take(">") ? open_.push_back(tag) : stop("no end of the tag");
    }

    void attribute(Names& known) {
        if (!is_blank(next())) {
            return stop("no blank before an attribute");
        }
        blanks();
        if (next() == '>' || next() == '/') {
            return;
        }
        auto const found = name();
        if (std::ranges::count(known, found) > 0) {
            stop("an attribute twice");
        }
        known.push_back(found);
        if (!take("=\"")) {
            return stop("no value of an attribute");
        }
        while (fault_.empty() && next() != '"') {
            done() || next() == '<' ? stop("no end of a value") : character();
        }
        take("\"");
    }

    void end_tag() {
        auto const tag = name();
        blanks();
        if (open_.empty() || open_.back() != tag || !take(">")) {
            return stop("an end of what was not begun last");
        }
        open_.pop_back();
    }

    void character() {
        if (!take("&")) {
            ++at_;
            return;
        }
        constexpr std::array<std::string_view, 5> entities{"amp;", "lt;", "gt;", "quot;", "apos;"};
        if (std::ranges::any_of(entities, [this](auto entity) { return take(entity); })) {
            return;
        }
        auto const digits = at_ + 1;
        if (!take("#")) {
            return stop("an entity that is not known");
        }
        while (std::isdigit(static_cast<unsigned char>(next())) != 0) {
            ++at_;
        }
        if (at_ == digits || !take(";")) {
            stop("no number of a character");
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
    Names open_;
    bool seen_root_ = false;
    std::string fault_;
};

} // namespace

std::string xml_fault(std::string_view text) {
    auto fault = character_fault(text);
    return fault.empty() ? XmlReader{text}.fault() : fault;
}

} // namespace lengthwise::support
