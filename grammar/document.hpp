#pragma once

#include "parse.hpp"
#include "productions.hpp"
#include "reading.hpp"

#include <cstdint>
#include <limits>

/// Reads a file line by line: which form a line has by its first word, whether that
/// form may stand there, and where reading goes on behind a line that cannot be read.
namespace lengthwise::grammar {

class Document {
  public:
    explicit Document(Source const& source);
    [[nodiscard]] ParseResult read();

  private:
    static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

    void read_statement();
    void read_group_line();
    void read_line(Form form);
    void diagnose(Form form, char const* begin, std::uint32_t size);
    void give_up(char const* begin, std::uint32_t size);
    void follow_brackets(char const* begin, char const* line_end);
    void finish_item();
    void close_groups();

    [[nodiscard]] Form form_at(char const* at);
    void place(Form form, char const* begin);
    void open_section(char const* begin);
    void close_section();
    void close_session();
    void close_week();

    void error(std::string_view code, char const* from, char const* to, std::string message,
               std::string hint = {});

    Source const& source_;
    ParseResult result_;
    Reading reading_;
    char const* at_;
    std::uint32_t week_ = none;
    std::uint32_t session_ = none;
    std::uint32_t section_ = none;
    std::uint32_t set_ = none; ///< a `set` whose item is being read
    std::uint32_t top_ = 0;    ///< the tree's size before the item being read
    bool spoiled_ = false;     ///< a line of that item could not be read
    bool any_ = false;         ///< a statement has been read
    bool settings_ = true;     ///< the innermost scope has no child yet
};

} // namespace lengthwise::grammar
