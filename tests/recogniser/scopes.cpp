#include "recogniser/scopes.hpp"

#include "recogniser/figures.hpp"
#include "recogniser/items.hpp"
#include "recogniser/modifiers.hpp"
#include "recogniser/statements.hpp"
#include "recogniser/words.hpp"

namespace lengthwise::recogniser {

namespace {

bool heading(Stream const& in) {
    return heading_words(in.word(), in.word(1)) > 0;
}

bool lane_label(Stream& in) {
    in.skip();
    return range(in, 1, most_lanes) && in.take_sign(':');
}

/// At most one of each sort, in either order.
bool labels(Stream& in) {
    bool lane = false;
    bool option = false;
    for (bool fits = true; fits;) {
        if (in.is_word("lane") && !lane) {
            lane = true;
            fits = lane_label(in);
        } else if (in.is_word("if") && !option) {
            option = true;
            fits = in.take_words("if", "time") && in.take_sign(':');
        } else {
            return true;
        }
        if (!fits) {
            return false;
        }
    }
    return false;
}

bool line(Stream& in) {
    if (in.take(Sort::string)) {
        return true;
    }
    if (in.take_word("pause")) {
        bool const fits = duration(in, Least::none);
        in.take(Sort::string);
        return fits;
    }
    return labels(in) && item(in);
}

bool section(Stream& in) {
    in.skip(heading_words(in.word(), in.word(1)));
    in.take(Sort::string);
    bool fits = section_defaults(in) && in.take(Sort::line_end);
    while (fits && !heading(in) && !in.is_word("session") && !in.is_word("week") && !in.is(Sort::text_end)) {
        fits = line(in) && in.take(Sort::line_end);
    }
    return fits;
}

bool session(Stream& in) {
    in.skip();
    if (day_word(in.word())) {
        in.skip();
    } else if (in.is(Sort::date) && !date(in)) {
        return false;
    }
    if (in.is(Sort::clock) && !time_of_day(in)) {
        return false;
    }
    if (in.take_word("for") && !figure_and_unit(in, 60)) {
        return false;
    }
    in.take(Sort::string);
    bool fits = in.take(Sort::line_end) && settings(in);
    while (fits && heading(in)) {
        fits = section(in);
    }
    return fits;
}

bool week(Stream& in) {
    in.skip();
    if (!number(in, 1, most_weeks) || (in.take_word("from") && !date(in))) {
        return false;
    }
    in.take(Sort::string);
    bool fits = in.take(Sort::line_end) && settings(in);
    while (fits && in.is_word("session")) {
        fits = session(in);
    }
    return fits;
}

} // namespace

bool file(Stream& in) {
    bool fits = !in.take_word("plan") || (in.take(Sort::string) && in.take(Sort::line_end));
    for (bool known = true; fits && known;) {
        fits = starts_setting(in) ? setting(in) : head(in, known);
        fits = known ? fits && in.take(Sort::line_end) : true;
    }
    while (fits && in.is_word("session")) {
        fits = session(in);
    }
    while (fits && in.is_word("week")) {
        fits = week(in);
    }
    return fits && in.is(Sort::text_end);
}

} // namespace lengthwise::recogniser
