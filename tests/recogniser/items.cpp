#include "recogniser/items.hpp"

#include "recogniser/modifiers.hpp"

namespace lengthwise::recogniser {

namespace {

constexpr int deepest = 32;

/// The joint between two items of a group: `+`, a line end, or both.
bool joint(Stream& in) {
    bool const line_end = in.take(Sort::line_end);
    bool const plus = in.take_sign('+');
    if (plus) {
        in.take(Sort::line_end);
    }
    return line_end || plus;
}

bool group(Stream& in) {
    if (in.depth == deepest) {
        return false;
    }
    ++in.depth;
    in.skip();
    in.take(Sort::line_end);
    bool fits = item(in);
    while (fits && !in.is_sign(')') && !(in.is(Sort::line_end) && in.is_sign(')', 1))) {
        fits = joint(in) && item(in);
    }
    if (fits) {
        in.take(Sort::line_end);
    }
    --in.depth;
    return fits && in.take_sign(')');
}

bool ladder(Stream& in, bool& single) {
    bool fits = amount(in);
    while (fits && in.is_sign(',') && starts_amount(in, 1)) {
        single = false;
        in.skip();
        fits = amount(in);
    }
    return fits;
}

} // namespace

bool item(Stream& in) {
    bool const times = in.is_word("x", 1) || (in.is(Sort::sign, 1) && in.peek(1).text == "\xC3\x97");
    bool const counted = in.is(Sort::number) && times;
    if (counted && !number(in, 1, most_reps)) {
        return false;
    }
    in.skip(counted ? 1 : 0);
    if (in.is_sign('(')) {
        return group(in) && modifiers(in, false);
    }
    if (in.take_word("use")) {
        return in.take(Sort::string) && modifiers(in, false);
    }
    bool single = true;
    bool const body = counted ? amount(in) : ladder(in, single);
    return body && modifiers(in, single);
}

} // namespace lengthwise::recogniser
