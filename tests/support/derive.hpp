#pragma once

#include "bench/random.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::test {

/// Makes texts from the productions of grammar/notation.ebnf itself. They keep to the letter of the
/// grammar but not to the comments beside it, and their figures and joints are sometimes wrong, so that
/// some of them are no texts of the notation.
class Derivation {
  public:
    /// `ebnf` is the file's text.
    explicit Derivation(std::string_view ebnf);

    /// A text of a production, such as `item`.
    [[nodiscard]] std::string derive(std::string const& production, bench::Random& random) const;

    [[nodiscard]] std::vector<std::string> productions() const;

  private:
    enum class Sort { quoted, name, sequence, choice, optional, repeated };
    struct Node {
        Sort sort = Sort::sequence;
        std::string text{}; ///< of a quoted word or a name
        std::vector<Node> parts{};
    };
    struct Reader;
    struct Writer;

    std::map<std::string, Node> rules_;
};

} // namespace lengthwise::test
