#pragma once

#include "complaint.hpp"
#include "lexeme.hpp"
#include "trace.hpp"

#include <cstdint>
#include <string>
#include <string_view>

/// A refused value between its neighbours. Private to complaint_value.cpp and
/// complaint_time.cpp.
namespace lengthwise::grammar {

struct Value {
    Fault fault = Fault::none;
    std::uint64_t figure = 0; ///< the trace's: what the value came to
    std::string_view text;    ///< as written
    std::string_view rest;    ///< the line from the value on
    Lexeme before;            ///< what stands before it; an `end` where nothing does
    Form form = Form::item;

    [[nodiscard]] Word keyword() const { return before.word; }
};

/// Message and hint of a time, a range of times, a date or a time of day.
void describe_time(Complaint& complaint, Value const& value);

/// `90` as a clock: 1:30. From three digits on, the last two are taken for seconds
/// where they can be: `130` is 1:30, too.
[[nodiscard]] std::string as_clock(std::uint64_t number);

} // namespace lengthwise::grammar
