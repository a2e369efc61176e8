#include "recogniser/statements.hpp"

#include "recogniser/items.hpp"
#include "recogniser/modifiers.hpp"
#include "recogniser/words.hpp"

namespace lengthwise::recogniser {

namespace {

bool two_digits_below(std::string_view text, int limit) {
    return (text[0] - '0') * 10 + (text[1] - '0') < limit;
}

bool course(Stream& in) {
    return in.is_word("open") ? in.take_words("open", "water") : distance(in);
}

/// threshold, behind its word.
bool pace(Stream& in) {
    in.take_word("about");
    return duration(in) && (!in.take_word("per") || distance(in)) && (!in.take_word("in") || course(in)) &&
           (!in.take_word("reserve") || distance(in));
}

bool race(Stream& in) {
    in.take(Sort::string);
    if (kind_word(in.word())) {
        in.skip();
    } else if (!distance(in)) {
        return false;
    }
    return in.take_word("on") && date(in);
}

bool swimmer(Stream& in) {
    bool fits = in.take(Sort::string);
    while (fits && in.is(Sort::word)) {
        if (in.take_word("threshold")) {
            fits = pace(in);
        } else if (in.take_word("lane")) {
            fits = number(in, 1, most_lanes);
        } else {
            fits = in.take_word("distance") && percent(in);
        }
    }
    return fits;
}

bool before(Stream& in) {
    return in.take_word("longest") && distance(in) && (!in.take_word("week") || distance(in));
}

bool factor(Stream& in) {
    bool const gear_alone = gear_word(in.word());
    if (gear_alone || mode_word(in.word()) || effort_word(in.word())) {
        in.skip();
    } else if (!starts_stroke(in) || !stroke(in)) {
        return false;
    }
    return percent(in);
}

bool value(Stream& in) {
    if (in.is(Sort::percent)) {
        return percent(in);
    }
    bool const time =
        in.is(Sort::clock) || (in.is(Sort::number) && (unit_of_time(in.word(1)) || in.is_sign('-', 1)));
    return time ? rest(in) : distance(in, Least::none);
}

} // namespace

/// A day that exists.
bool date(Stream& in) {
    if (!in.is(Sort::date)) {
        return false;
    }
    std::string const text = in.peek().text;
    int const year = std::stoi(text.substr(0, 4));
    int const month = std::stoi(text.substr(5, 2));
    int const day = std::stoi(text.substr(8, 2));
    bool const leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    bool const short_month = month == 4 || month == 6 || month == 9 || month == 11;
    int const days = month == 2 ? (leap ? 29 : 28) : short_month ? 30 : 31;
    bool const exists = year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= days;
    in.skip(exists ? 1 : 0);
    return exists;
}

/// h:mm or hh:mm below 24:00.
bool time_of_day(Stream& in) {
    auto const& written = in.peek().text;
    std::string const text = written.size() == 4 ? "0" + written : written;
    bool const shape = text.size() == 5 && text[2] == ':';
    bool const fits = shape && two_digits_below(text, 24) && two_digits_below(text.substr(3), 60);
    in.skip(fits ? 1 : 0);
    return fits;
}

/// A head that is no setting; `known` becomes false where none begins.
bool head(Stream& in, bool& known) {
    if (in.take_word("race")) {
        return race(in);
    }
    if (in.take_word("swimmer")) {
        return swimmer(in);
    }
    if (in.take_word("before")) {
        return before(in);
    }
    if (in.take_word("set")) {
        return in.take(Sort::string) && in.take_sign('=') && item(in);
    }
    known = in.take_word("include");
    return known && in.take(Sort::string);
}

bool starts_setting(Stream const& in) {
    auto const word = in.word();
    return in.is(Sort::string) || word == "pool" || word == "threshold" || word == "rest" ||
           word == "factor" || word == "limit" || word == "allow";
}

bool setting(Stream& in) {
    if (in.take_word("pool")) {
        return course(in);
    }
    if (in.take_word("threshold")) {
        return pace(in);
    }
    if (in.take_word("rest")) {
        return rest(in);
    }
    if (in.take_word("factor")) {
        return factor(in);
    }
    if (in.take_word("limit")) {
        return in.take(Sort::word) && value(in);
    }
    if (in.take_word("allow")) {
        bool const rule = in.take(Sort::word);
        in.take(Sort::string);
        return rule;
    }
    return in.take(Sort::string);
}

bool settings(Stream& in) {
    bool fits = true;
    while (fits && starts_setting(in)) {
        fits = setting(in) && in.take(Sort::line_end);
    }
    return fits;
}

} // namespace lengthwise::recogniser
