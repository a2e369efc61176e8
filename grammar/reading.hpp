#pragma once

#include "limits.hpp"
#include "node_stack.hpp"
#include "scan.hpp"
#include "trace.hpp"
#include "tree.hpp"
#include "word_key.hpp"

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

/// What the productions of parse.cpp share while they read: the tree under
/// construction, one word and one number of look-ahead, the open parentheses, and,
/// when a line is read again to say what is wrong with it, a trace.
namespace lengthwise::grammar {

/// A word behind blanks. `end` is `begin` where no letter stands there.
struct Ahead {
    char const* begin = nullptr;
    char const* end = nullptr;
    Word word = Word::none;
};

/// Digits behind blanks; `end` is `begin` where none stand there.
struct Figure {
    char const* begin = nullptr;
    char const* end = nullptr;
    std::uint64_t value = 0;
};

/// A parenthesis that waits for its partner.
struct Open {
    std::uint32_t item = 0;      ///< the item that the group belongs to
    std::uint32_t group = 0;     ///< the group's node
    char const* begin = nullptr; ///< the parenthesis
};

/// Where the reading of an item stands between two of its pieces.
enum class Awaits : std::uint8_t {
    item,   ///< at the start, after `(` and `+`
    joint,  ///< after an item: `+`, `)` or the line's end
    either, ///< at a line's start in a group, an item above: all of these
};

class Reading {
  public:
    Reading(Tree& result, std::string_view text, std::uint32_t base)
        : nodes(result.nodes, text.size(), base), comments(result.comments), begin(text.data()),
          end(text.data() + text.size()), base_(base) {}

    [[nodiscard]] std::uint32_t offset(char const* at) const {
        return base_ + static_cast<std::uint32_t>(at - begin);
    }

    [[nodiscard]] char const* place(std::uint32_t offset) const { return begin + (offset - base_); }

    // --- look-ahead: a word and a number are read once, however often they are asked for ---
    [[nodiscard]] Ahead const& word(char const* at) {
        if (at != word_asked_at_) {
            look_for_word(at);
        }
        return word_;
    }
    [[nodiscard]] Figure const& figure(char const* at) {
        if (at != figure_asked_at_) {
            figure_asked_at_ = at;
            auto const* const from = skip_blanks(at);
            auto const [value, to] = scan_digits(from);
            figure_ = {from, to, value};
        }
        return figure_;
    }
    /// Forgets a look-ahead whose meaning has changed.
    void forget() { word_asked_at_ = nullptr; }

    // --- nodes ---
    std::uint32_t push(Kind kind, char const* from, char const* to, std::uint32_t value = 0,
                       std::uint8_t detail = 0) {
        return nodes.push({offset(from), value, static_cast<std::uint16_t>(to - from), kind, detail});
    }
    std::uint32_t push(Kind kind, Ahead const& at) {
        return push(kind, at.begin, at.end, 0, static_cast<std::uint8_t>(at.word));
    }
    /// Ends a container: all nodes behind it are its own.
    void close(std::uint32_t container) { nodes[container].value = nodes.size(); }

    /// A comment; one that was read before, on a way that led nowhere, is known.
    void add_comment(char const* from, char const* to) {
        if (comments.empty() || comments.back().begin < offset(from)) {
            comments.push_back({offset(from), offset(to)});
        }
    }

    // --- what is wrong ---
    /// Whether a value that the notation does not have may pass: never at first; once
    /// it has been reported, so that the rest of the line can be read.
    [[nodiscard]] bool pass(char const* from, char const* to, Fault fault, std::uint64_t figure = 0) {
        return trace != nullptr && trace->pass(from, to, fault, figure);
    }
    /// The same for what cannot be read past.
    bool refuse(char const* from, char const* to, Fault fault, std::uint64_t figure = 0) {
        if (trace != nullptr) {
            trace->refuse({from, to, fault, figure, false});
        }
        return false;
    }
    /// Something else stands at `at`, inside of a token.
    void miss(char const* at, Thing thing) {
        if (trace != nullptr) {
            trace->miss(skip_blanks(at), Word::none, Word::none, thing);
        }
    }

    NodeStack nodes;
    std::vector<Comment>& comments;
    char const* const begin;
    char const* const end;
    Trace* trace = nullptr;

    Ahead opened;           ///< the keyword that the leaf being read begins with
    std::uint32_t item = 0; ///< the item being read
    bool labelled = false;  ///< it has begun with a label
    bool counted = false;   ///< it has a count
    bool single = false;    ///< its body is one amount
    Awaits awaits = Awaits::item;
    std::uint32_t depth = 0;
    std::array<Open, limits::nesting> open{};

  private:
    void look_for_word(char const* at) {
        word_asked_at_ = at;
        auto const* const from = skip_blanks(at);
        word_ = {from, from, Word::none};
        if (!is_letter(*from)) {
            return;
        }
        auto const letters = scan_letters(from, end);
        word_.end = letters.end;
        if (!letters.is_long && !clings_to_word(*letters.end)) [[likely]] {
            word_.word = lengthwise::detail::find_key(letters.key);
        }
        if (trace != nullptr) {
            word_.word = trace->meant(from, word_.word);
        }
    }

    std::uint32_t base_;
    char const* word_asked_at_ = nullptr;
    char const* figure_asked_at_ = nullptr;
    Ahead word_;
    Figure figure_;
};

} // namespace lengthwise::grammar
