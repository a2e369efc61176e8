#pragma once

#include "complaint.hpp"
#include "parse.hpp"
#include "productions.hpp"
#include "reading.hpp"

#include <array>
#include <cstdint>
#include <limits>
#include <string>
#include <string_view>

/// Reads a file line by line: which form a line has by its first word, whether that
/// form may stand there, and where reading goes on behind a line that cannot be read.
namespace lengthwise::grammar {

class Document {
  public:
    explicit Document(Source const& source);
    [[nodiscard]] ParseResult read();

  private:
    static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

    /// Where a line begins, in the text and in the tree.
    struct Mark {
        char const* begin = nullptr;
        std::uint32_t size = 0;
        std::uint32_t depth = 0;
        Awaits awaits = Awaits::item;
    };

    // document.cpp: lines that can be read
    void read_lines();
    void read_statement();
    void read_group_line();
    void read_opener_like(Word word);
    void read_as(Form form, Mark const& mark);
    [[nodiscard]] Form form_here();
    [[nodiscard]] Word meant_here();
    void begin_line(Form form, Mark const& mark);
    void end_line(Form form);
    void finish_item();

    // document_recover.cpp: lines that cannot
    [[nodiscard]] bool in_order(char const* line);
    void diagnose(Form form, Mark const& mark, Trace& trace);
    void give_up(Form form, Mark const& mark);
    void keep_scope(Form form, Mark const& mark);
    void spoil_item(Form form, Mark const& mark);
    void follow_brackets(char const* begin, char const* end);
    void close_groups(char const* at);
    void refuse_in_group(Form form, Mark const& mark);
    void back_to(Mark const& mark);
    [[nodiscard]] bool enough_said() const;
    [[nodiscard]] char const* line_end() const;
    void report(Complaint complaint);

    // document_place.cpp: where lines belong
    [[nodiscard]] bool place(Form form);
    [[nodiscard]] bool place_head();
    [[nodiscard]] bool place_setting();
    void place_section();
    void count_section();
    void place_line();
    void suppose_session();
    void leave_supposed();
    void close_section();
    void close_session();
    void close_week();
    bool misplaced(std::string message, std::string hint, char const* other = nullptr,
                   std::string other_message = {});

    Source const& source_;
    ParseResult result_;
    Reading reading_;
    char const* at_;       ///< the line being read: its first word
    bool clean_ = true;    ///< the text's bytes are all in order and no line is very long
    bool muted_ = false;   ///< the line's bytes have been complained of; that is enough for it
    bool foreign_ = false; ///< bytes that are not UTF-8 have been reported
    int complaints_ = 0;   ///< errors that words were found for

    std::uint32_t week_ = none;
    std::uint32_t session_ = none;
    std::uint32_t section_ = none;
    std::uint32_t sections_ = 0;        ///< of the session so far
    bool supposed_ = false;             ///< nobody wrote that session, and no week
    std::uint32_t last_week_ = 0;       ///< its number
    char const* first_scope_ = nullptr; ///< the first `week` or `session`
    char const* first_ = nullptr;       ///< the first statement
    char const* child_ = nullptr;       ///< the innermost scope's first child: settings stand before it

    bool astray_ = false;             ///< the line being read does not belong where it stands
    std::uint32_t set_ = none;        ///< a `set` whose item is being read
    std::uint32_t top_ = 0;           ///< the tree's size before the item being read
    char const* top_begin_ = nullptr; ///< where that item begins
    bool spoiled_ = false;            ///< a line of it could not be read
    std::uint32_t beyond_ = 0;        ///< parentheses of such lines that are deeper than the limit
    bool stray_ = false;              ///< a stray `)` of this section has been reported
    std::array<Open, limits::nesting> open_before_{}; ///< the parentheses open before a group's line
};

} // namespace lengthwise::grammar
