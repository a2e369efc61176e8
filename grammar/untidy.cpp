#include "write.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::grammar {
namespace {

/// Takes a text apart line by line, without their ends (LF or CR LF).
class Lines {
  public:
    explicit Lines(std::string_view text) : text_(text) {}

    [[nodiscard]] bool done() const { return at_ >= text_.size(); }
    [[nodiscard]] std::size_t at() const { return at_; } ///< where the next one begins

    /// Nothing behind the last.
    std::string_view next() {
        at_ = std::min(at_, text_.size());
        auto const end = std::min(text_.find('\n', at_), text_.size());
        auto const line = text_.substr(at_, end - at_);
        at_ = end + 1;
        return line.ends_with('\r') ? line.substr(0, line.size() - 1) : line;
    }

  private:
    std::string_view text_;
    std::size_t at_ = 0;
};

bool is_blank(std::string_view line) {
    return line.find_first_not_of(" \t") == std::string_view::npos;
}

/// Written lines, handed out to the source lines that they came from.
class Tidied {
  public:
    explicit Tidied(Traced const& written) : origins_(written.origins), lines_(written.text) {}

    /// What the source line before offset `end` becomes.
    std::optional<std::string> come_from_before(std::uint32_t end) {
        std::optional<std::string> result;
        while (next_ < origins_.size() && origins_[next_] < end && !blank_is_next()) {
            result = result ? *result + "\n" : std::string{};
            result->append(lines_.next());
            ++next_;
        }
        return result;
    }

    /// The blank line that one of the source's stays as, if the writer kept one here.
    std::optional<std::string> kept_blank() {
        if (next_ == origins_.size() || !blank_is_next()) {
            return std::nullopt;
        }
        ++next_;
        return std::string{lines_.next()};
    }

  private:
    /// A kept blank line has the origin of the line behind it.
    [[nodiscard]] bool blank_is_next() const {
        return next_ + 1 < origins_.size() && origins_[next_] == origins_[next_ + 1];
    }

    std::vector<std::uint32_t> const& origins_;
    Lines lines_;
    std::size_t next_ = 0;
};

} // namespace

std::vector<UntidyLine> untidy_lines(Tree const& tree) {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    auto const written = write_traced(tree);
    std::vector<UntidyLine> result;
    Tidied tidied{written};
    Lines source{tree.text};
    for (std::uint32_t number = 1; !source.done(); ++number) {
        auto is = source.next();
        if (number == 1 && is.starts_with(byte_order_mark)) {
            is.remove_prefix(byte_order_mark.size());
        }
        auto would_be = is_blank(is)
                            ? tidied.kept_blank()
                            : tidied.come_from_before(tree.base + static_cast<std::uint32_t>(source.at()));
        if (would_be != is) {
            result.push_back({number, is, std::move(would_be)});
        }
    }
    return result;
}

} // namespace lengthwise::grammar
