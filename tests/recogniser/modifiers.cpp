#include "recogniser/modifiers.hpp"

#include "recogniser/words.hpp"

namespace lengthwise::recogniser {

namespace {

// Each of these is asked only when its first word is there.

bool mode(Stream& in) {
    if (in.take_word("drill")) {
        in.take(Sort::string);
        return true;
    }
    in.skip();
    return true;
}

bool at_pace(Stream& in) {
    in.skip();
    return percent(in) || (duration(in) && in.take_word("per") && distance(in));
}

bool effort(Stream& in) {
    if (in.is_word("at")) {
        return at_pace(in);
    }
    if (in.take_word("hold")) {
        return duration(in);
    }
    if (in.take_word("rpe")) {
        return number(in, 1, 10);
    }
    bool const shifts = in.is_word("threshold") && (in.is_word("plus", 1) || in.is_word("minus", 1));
    in.skip(shifts ? 2 : 1);
    return !shifts || duration(in, Least::none);
}

bool starts_effort(Stream const& in) {
    auto const word = in.word();
    return effort_word(word) || word == "at" || word == "hold" || word == "rpe";
}

/// stroke | mode | effort: the three classes that stand everywhere.
bool starts_manner(Stream const& in) {
    return starts_stroke(in) || mode_word(in.word()) || starts_effort(in);
}

bool manner(Stream& in) {
    if (starts_stroke(in)) {
        return stroke(in);
    }
    return mode_word(in.word()) ? mode(in) : effort(in);
}

bool piece_of_gear(Stream& in) {
    if (in.is_word("pull") && in.is_word("buoy", 1)) {
        in.skip(2);
        return true;
    }
    bool const known = gear_word(in.word());
    in.skip(known ? 1 : 0);
    return known;
}

bool starts_piece_of_gear(Stream const& in, std::size_t ahead) {
    return gear_word(in.word(ahead)) || (in.is_word("pull", ahead) && in.is_word("buoy", ahead + 1));
}

bool gear(Stream& in) {
    in.skip();
    if (in.take_word("nothing") || in.take_word("stops")) {
        return true;
    }
    bool fits = piece_of_gear(in);
    while (fits && in.is_sign(',') && starts_piece_of_gear(in, 1)) {
        in.skip();
        fits = piece_of_gear(in);
    }
    return fits;
}

bool send_off(Stream& in) {
    in.skip();
    bool fits = duration(in);
    while (fits && in.is_sign(',') && (in.is(Sort::clock, 1) || in.is(Sort::number, 1))) {
        in.skip();
        fits = duration(in);
    }
    return fits;
}

bool starts_recovery(Stream const& in) {
    return in.is_word("rest") || in.is_word("on") || in.is_word("off");
}

bool recovery(Stream& in) {
    if (!in.take_word("rest")) {
        return send_off(in);
    }
    if (in.is_word("as")) {
        return in.take_words("as", "needed");
    }
    if (in.is(Sort::number) && (in.is_word("breaths", 1) || in.is_word("breath", 1))) {
        bool const fits = number(in, 1, most_reps);
        in.skip();
        return fits;
    }
    return rest(in);
}

bool descend(Stream& in) {
    in.skip();
    return !in.is(Sort::number) || (number(in, 1, 1) && in.take_sign('-') && number(in, 2, most_reps));
}

bool broken(Stream& in) {
    in.skip();
    return in.take_word("at") && amount(in) && in.take_word("for") && figure_and_unit(in);
}

bool part(Stream& in) {
    bool fits = amount(in);
    while (fits && (starts_manner(in) || in.is_word("build") || in.is(Sort::string))) {
        fits = in.take(Sort::string) || in.take_word("build") || manner(in);
    }
    return fits;
}

bool split(Stream& in) {
    in.skip();
    bool fits = part(in);
    while (fits && in.take_sign('/')) {
        fits = part(in);
    }
    return fits;
}

/// What may stand before and behind a split alike.
bool starts_common(Stream const& in) {
    return in.is(Sort::string) || in.is_word("with") || starts_recovery(in) || in.is_word("descend") ||
           in.is_word("negative");
}

bool common(Stream& in) {
    if (in.take(Sort::string)) {
        return true;
    }
    if (in.is_word("with")) {
        return gear(in);
    }
    if (in.is_word("negative")) {
        return in.take_words("negative", "split");
    }
    return in.is_word("descend") ? descend(in) : recovery(in);
}

bool modifier(Stream& in, bool single) {
    if (in.is_word("broken")) {
        return single && broken(in);
    }
    if (in.take_word("build")) {
        return true;
    }
    return starts_common(in) ? common(in) : manner(in);
}

bool starts_modifier(Stream const& in) {
    return starts_common(in) || starts_manner(in) || in.is_word("build") || in.is_word("broken");
}

bool starts_change(Stream const& in) {
    return starts_manner(in) || in.is_word("build") || in.is_word("with") || in.is(Sort::string);
}

bool change(Stream& in) {
    if (in.take_word("build") || in.take(Sort::string)) {
        return true;
    }
    return in.is_word("with") ? gear(in) : manner(in);
}

bool choice_of_reps(Stream& in) {
    if (in.take_word("odds") || in.take_word("evens")) {
        return true;
    }
    if (in.take_word("every")) {
        return ordinal(in);
    }
    bool const run = in.take_word("first") || in.take_word("next") || in.take_word("last");
    return run && (!in.is(Sort::number) || number(in, 1, most_reps));
}

bool starts_selector(Stream const& in) {
    auto const word = in.word();
    return in.is_sign(',') || word == "odds" || word == "evens" || word == "every" || word == "first" ||
           word == "next" || word == "last";
}

bool selector(Stream& in) {
    in.take_sign(',');
    bool fits = choice_of_reps(in) && starts_change(in) && change(in);
    while (fits && starts_change(in)) {
        fits = change(in);
    }
    return fits;
}

} // namespace

bool starts_stroke(Stream const& in) {
    return stroke_word(in.word()) || (in.is_word("front") && in.is_word("crawl", 1));
}

bool stroke(Stream& in) {
    in.skip(in.is_word("front") ? 2 : 1);
    return true;
}

bool section_defaults(Stream& in) {
    bool fits = true;
    while (fits && (starts_manner(in) || in.is_word("with") || in.is_word("rest"))) {
        if (in.take_word("rest")) {
            fits = rest(in);
        } else {
            fits = in.is_word("with") ? gear(in) : manner(in);
        }
    }
    return fits;
}

bool modifiers(Stream& in, bool single) {
    bool fits = true;
    while (fits && starts_modifier(in)) {
        fits = modifier(in, single);
    }
    if (fits && in.is_word("as")) {
        fits = single && split(in);
        while (fits && starts_common(in)) {
            fits = common(in);
        }
    }
    while (fits && starts_selector(in)) {
        fits = selector(in);
    }
    return fits;
}

} // namespace lengthwise::recogniser
