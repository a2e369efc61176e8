#include "parse.hpp"

#include "document.hpp"
#include "productions.hpp"
#include "tokens.hpp"

#include <boost/spirit/home/x3.hpp>

#include <type_traits>
#include <utility>

/// The grammar. Rule names are those of notation.ebnf; words are classes of one
/// look-up (Reading::word), so an alternative that begins with a word costs one
/// comparison. Leaves append themselves to the flat tree; nothing here has an
/// attribute, allocates a string or calls itself: `(` and `)` are pieces of a line
/// that keep a stack in the Reading.
namespace lengthwise::grammar {

namespace {

namespace x3 = boost::spirit::x3;

struct reading_tag;

/// What a token is, to say so where it is missing.
struct Sort {
    Word low = Word::none;
    Word high = Word::none;
    Thing thing = Thing::none;
};

/// A reader of tokens.hpp as a parser.
template <typename Read>
struct Token : x3::parser<Token<Read>> {
    using attribute_type = x3::unused_type;
    static bool const has_attribute = false;

    constexpr Token(Read reader, Sort what) : read(reader), sort(what) {}

    template <typename Iterator, typename Context, typename RuleContext, typename Attribute>
    bool parse(Iterator& first, Iterator const&, Context const& context, RuleContext&, Attribute&) const {
        Reading& r = x3::get<reading_tag>(context);
        if (read(first, r)) {
            return true;
        }
        if (r.trace != nullptr) {
            r.trace->miss(skip_blanks(first), sort.low, sort.high, sort.thing);
        }
        return false;
    }

    Read read;
    Sort sort;
};

/// A container and its children: `head` reads its first word, `body` the rest.
template <typename Head, typename Body>
struct Container : x3::parser<Container<Head, Body>> {
    using attribute_type = x3::unused_type;
    static bool const has_attribute = false;

    constexpr Container(Kind what, Head start, Body rest) : kind(what), head(start), body(rest) {}

    template <typename Iterator, typename Context, typename RuleContext, typename Attribute>
    bool parse(Iterator& first, Iterator const& last, Context const& context, RuleContext& rule,
               Attribute&) const {
        Reading& r = x3::get<reading_tag>(context);
        auto const start = first;
        if (!head.parse(first, last, context, rule, x3::unused)) {
            return false;
        }
        auto const node = r.push(kind, r.opened, r.opened_end, 0, static_cast<std::uint8_t>(r.opened_word));
        if (!body.parse(first, last, context, rule, x3::unused)) {
            r.drop_from(node);
            first = start;
            return false;
        }
        r.close(node);
        return true;
    }

    Kind kind;
    Head head;
    Body body;
};

template <typename Read>
constexpr auto token(Thing thing, Read read) {
    return Token<Read>{read, {Word::none, Word::none, thing}};
}

/// A keyword; the leaf that follows begins with it.
constexpr auto key(Word low, Word high) {
    auto const read = [low, high](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word < low || ahead.word > high) {
            return false;
        }
        r.opened = ahead.begin;
        r.opened_end = ahead.end;
        r.opened_word = ahead.word;
        at = ahead.end;
        return true;
    };
    return Token<decltype(read)>{read, {low, high, Thing::none}};
}
constexpr auto key(Word word) {
    return key(word, word);
}
/// A keyword inside of a leaf.
constexpr auto then(Word word) {
    auto const read = [word](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word != word) {
            return false;
        }
        at = ahead.end;
        return true;
    };
    return Token<decltype(read)>{read, {word, word, Thing::none}};
}
/// A word that is a leaf.
constexpr auto leaf(Kind kind, Word low, Word high) {
    auto const read = [kind, low, high](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word < low || ahead.word > high) {
            return false;
        }
        at = ahead.end;
        r.push(kind, ahead);
        return true;
    };
    return Token<decltype(read)>{read, {low, high, Thing::none}};
}
constexpr auto leaf(Kind kind, Word word) {
    return leaf(kind, word, word);
}
/// The second word of a leaf that began with a keyword: `open water`, `front crawl`.
constexpr auto leaf_end(Kind kind, Word word, Word meaning = Word::none) {
    auto const read = [kind, word, meaning](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word != word) {
            return false;
        }
        at = ahead.end;
        r.push(kind, r.opened, at, 0, static_cast<std::uint8_t>(meaning));
        return true;
    };
    return Token<decltype(read)>{read, {word, word, Thing::none}};
}
/// A leaf that its first word made already.
constexpr auto made(Kind kind) {
    auto const read = [kind](char const*&, Reading& r) {
        r.push(kind, r.opened, r.opened_end, 0, static_cast<std::uint8_t>(r.opened_word));
        return true;
    };
    return token(Thing::none, read);
}
constexpr auto string(Kind kind, Thing thing) {
    return token(thing, [kind](char const*& at, Reading& r) {
        auto const* const begin = skip_blanks(at);
        if (*begin != '"') {
            return false;
        }
        auto const* const end = scan_string(begin);
        if (end == nullptr) {
            return r.refuse(begin, begin + 1, Fault::string);
        }
        r.push(kind, begin, begin, static_cast<std::uint32_t>(end - begin));
        at = end;
        return true;
    });
}

enum class From : std::uint8_t { number, keyword };
char const* begin_of(From from, Reading const& r) {
    return from == From::keyword ? r.opened : nullptr;
}
constexpr auto time(Kind kind, TimeRule rule, From from = From::keyword) {
    return token(Thing::time, [kind, rule, from](char const*& at, Reading& r) {
        return read_time(at, r, kind, rule, begin_of(from, r));
    });
}
constexpr auto length(Kind kind, From from = From::keyword) {
    return token(Thing::distance, [kind, from](char const*& at, Reading& r) {
        return read_distance(at, r, kind, begin_of(from, r));
    });
}
constexpr auto either(Kind distance, Kind time, From from = From::number) {
    return token(Thing::amount, [distance, time, from](char const*& at, Reading& r) {
        return read_amount(at, r, distance, time, begin_of(from, r));
    });
}
constexpr auto number(Kind kind, std::uint32_t low, std::uint32_t high, Fault fault,
                      From from = From::keyword) {
    return token(Thing::number, [=](char const*& at, Reading& r) {
        return read_number(at, r, kind, low, high, fault, begin_of(from, r));
    });
}
constexpr auto percent(Kind kind, From from = From::keyword) {
    return token(Thing::percent, [kind, from](char const*& at, Reading& r) {
        return read_percent(at, r, kind, begin_of(from, r));
    });
}
constexpr auto day_of_year(Kind kind, From from = From::keyword) {
    return token(Thing::date, [kind, from](char const*& at, Reading& r) {
        return read_date(at, r, kind, begin_of(from, r));
    });
}
constexpr auto sign(char c, Thing thing) {
    return token(thing, [c](char const*& at, Reading&) {
        auto const* const p = skip_blanks(at);
        if (*p != c) {
            return false;
        }
        at = p + 1;
        return true;
    });
}
template <typename Head, typename Body>
constexpr auto container(Kind kind, Head head, Body body) {
    auto const subject = x3::as_parser(body);
    return Container<Head, std::remove_cv_t<decltype(subject)>>{kind, head, subject};
}

auto const name = string(Kind::name, Thing::name);
auto const note = string(Kind::note, Thing::note);
auto const comma = token(Thing::comma, read_comma);
auto const slash = token(Thing::slash, read_slash);
auto const equals = sign('=', Thing::equals);
auto const nl = token(Thing::line_end, read_line_end);

// --- amounts and rests ---

auto const rest_value = [](Kind kind) {
    return token(Thing::rest,
                 [kind](char const*& at, Reading& r) { return read_rest(at, r, kind, r.opened); });
};
auto const amount = either(Kind::distance, Kind::time);

// --- modifiers ---

auto const stroke = leaf(Kind::stroke, Word::crawl, Word::choice) |
                    (key(Word::front) >> leaf_end(Kind::stroke, Word::crawl, Word::crawl));

auto const mode = leaf(Kind::mode, Word::swim, Word::tread) | (leaf(Kind::mode, Word::drill) >> -name);

auto const shift = leaf(Kind::effort_shift, Word::plus, Word::minus) >>
                   time(Kind::shift_time, TimeRule::may_be_zero, From::number);
auto const effort =
    (leaf(Kind::effort, Word::threshold) >> -shift) | leaf(Kind::effort, Word::easy, Word::sprint) |
    (key(Word::at) >> (percent(Kind::at_percent) | (time(Kind::at_pace, TimeRule::above_zero) >>
                                                    key(Word::per) >> length(Kind::at_per)))) |
    (key(Word::hold) >> time(Kind::hold, TimeRule::above_zero)) |
    (key(Word::rpe) >> number(Kind::rpe, 1, 10, Fault::rpe_range));

auto const build = leaf(Kind::build, Word::build);
auto const descend = leaf(Kind::descend, Word::descend) >> -token(Thing::number, read_descend_range);
auto const negative_split = key(Word::negative) >> leaf_end(Kind::negative_split, Word::split);
auto const shape = build | descend | negative_split;

auto const gear_word = [](Kind kind) {
    return leaf(kind, Word::fins, Word::wetsuit) |
           (key(Word::pull) >> leaf_end(kind, Word::buoy, Word::buoy));
};
auto const gear_first = token(Thing::none, [](char const*& at, Reading& r) {
    auto const& ahead = r.word(at);
    if (ahead.word < Word::fins || ahead.word > Word::stops) {
        return false;
    }
    r.push(Kind::with, r.opened, ahead.end, 0, static_cast<std::uint8_t>(ahead.word));
    at = ahead.end;
    return true;
});
auto const gear = key(Word::with) >>
                  ((gear_first | (then(Word::pull) >> leaf_end(Kind::with, Word::buoy, Word::buoy))) >>
                   *(comma >> gear_word(Kind::with_more)));

auto const part = either(Kind::part, Kind::part_time) >> *(stroke | mode | effort | build | note);
auto const split = container(Kind::split, key(Word::as), part % slash);

auto const broken = key(Word::broken) >> then(Word::at) >>
                    either(Kind::broken, Kind::broken_time, From::keyword) >> key(Word::for_) >>
                    time(Kind::broken_for, TimeRule::with_unit);

auto const breaths = token(Thing::none, [](char const*& at, Reading& r) {
    auto const* p = at;
    auto const size = r.tree.size();
    if (!read_number(p, r, Kind::rest_breaths, 1, 9999, Fault::breaths_zero, r.opened)) {
        return false;
    }
    auto const& ahead = r.word(p);
    if (ahead.word != Word::breaths) {
        r.drop_from(size);
        return false;
    }
    r.tree.nodes.back().length = static_cast<std::uint16_t>(ahead.end - r.opened);
    at = ahead.end;
    return true;
});
auto const recovery =
    (key(Word::rest) >>
     (rest_value(Kind::rest) | breaths | (then(Word::as) >> leaf_end(Kind::rest_as_needed, Word::needed)))) |
    (key(Word::on, Word::off) >> time(Kind::on, TimeRule::above_zero) >>
     *(comma >> time(Kind::on_more, TimeRule::above_zero, From::number)));

auto const modifier = stroke | mode | effort | gear | recovery | note | shape | broken;
auto const after_split = gear | recovery | note | descend | negative_split;

auto const selector_number =
    number(Kind::selector_number, 1, limits::repeat, Fault::selector_number, From::number);
auto const selector_head = key(Word::odds, Word::evens) | key(Word::first, Word::last) | key(Word::every);
auto const ordinal = token(Thing::ordinal, [](char const*& at, Reading& r) {
    return r.opened_word == Word::every && read_ordinal(at, r, Kind::selector_number);
});
auto const chosen = token(Thing::none, [](char const*& at, Reading& r) {
    switch (r.opened_word) {
    case Word::every:
        return read_ordinal(at, r, Kind::selector_number);
    case Word::first:
    case Word::next:
    case Word::last:
        read_number(at, r, Kind::selector_number, 1, limits::repeat, Fault::selector_number);
        return true;
    default:
        return true;
    }
});
auto const selector = -comma >> container(Kind::selector, selector_head,
                                          chosen >> +(stroke | mode | effort | build | gear | note));

// --- items: a line is a chain of pieces ---

auto const item_begin = token(Thing::count, [](char const*& at, Reading& r) {
    auto const* const begin = skip_blanks(at);
    if (r.awaits == Awaits::joint) {
        return false;
    }
    if (!is_digit(*begin) && *begin != '(' && *begin != ':' && r.word(at).word != Word::use) {
        return false;
    }
    if (r.labelled) {
        r.labelled = false;
        r.tree.nodes[r.item].begin = r.offset(begin);
    } else {
        r.item = r.push(Kind::item, begin, begin);
    }
    r.counted = false;
    at = begin;
    read_count(at, r);
    return true;
});
auto const item_end = token(Thing::none, [](char const*&, Reading& r) {
    r.close(r.item);
    r.awaits = Awaits::joint;
    return true;
});
auto const group_begin = token(Thing::open, [](char const*& at, Reading& r) {
    auto const* const p = skip_blanks(at);
    if (*p != '(') {
        return false;
    }
    if (r.depth == limits::nesting) {
        return r.refuse(p, p + 1, Fault::nesting);
    }
    r.open[r.depth++] = {r.item, r.push(Kind::group, p, p + 1), p};
    r.awaits = Awaits::item;
    at = p + 1;
    return true;
});
auto const group_end = token(Thing::close, [](char const*& at, Reading& r) {
    auto const* const p = skip_blanks(at);
    if (*p != ')' || r.depth == 0 || r.awaits == Awaits::item) {
        return false;
    }
    r.push(Kind::group_end, p, p + 1);
    auto const& open = r.open[--r.depth];
    r.close(open.group);
    r.item = open.item;
    at = p + 1;
    return true;
});
auto const plus = token(Thing::plus, [](char const*& at, Reading& r) {
    auto const* const p = skip_blanks(at);
    if (*p != '+' || r.depth == 0 || r.awaits == Awaits::item) {
        return false;
    }
    r.awaits = Awaits::item;
    at = p + 1;
    return true;
});

auto const modifiers = *modifier >> -(split >> *after_split) >> *selector;
auto const ladder =
    token(Thing::comma, [](char const*& at, Reading& r) { return !r.counted && read_comma(at, r); });
auto const use = leaf(Kind::use, Word::use) >> name;
auto const body = (amount >> *(ladder >> amount)) | use;
auto const item = item_begin >> (group_begin | (body >> modifiers >> item_end));
auto const group = group_end >> modifiers >> item_end;

auto const label_begin = token(Thing::none, [](char const*&, Reading& r) {
    if (r.depth > 0) {
        return false;
    }
    if (!r.labelled) {
        r.labelled = true;
        r.item = r.push(Kind::item, r.opened, r.opened);
    }
    return true;
});
auto const if_time_end = token(Thing::colon, [](char const*& at, Reading& r) {
    if (!read_colon(at, r)) {
        return false;
    }
    r.push(Kind::if_time, r.opened, at);
    return true;
});
auto const label = (key(Word::lane) >> label_begin >> token(Thing::number, read_lane_label)) |
                   (key(Word::if_) >> label_begin >> then(Word::time) >> if_time_end);
auto const line_of_items_end = token(Thing::line_end, [](char const*& at, Reading& r) {
    if (r.depth == 0 && r.awaits == Awaits::item) {
        return false;
    }
    if (!read_line_end(at, r)) {
        return false;
    }
    r.awaits = r.depth == 0 || r.awaits == Awaits::item ? Awaits::item : Awaits::either;
    return true;
});
auto const pieces = +(group | plus | item) >> line_of_items_end;
auto const line = *label >> pieces;

// --- statements ---

auto const pace = -leaf(Kind::about, Word::about) >>
                  time(Kind::pace_time, TimeRule::above_zero, From::number) >>
                  -(key(Word::per) >> length(Kind::pace_per)) >>
                  -(key(Word::in) >> ((then(Word::open) >> leaf_end(Kind::pace_open_water, Word::water)) |
                                      length(Kind::pace_in))) >>
                  -(key(Word::reserve) >> length(Kind::reserve));
auto const threshold = container(Kind::threshold, key(Word::threshold), pace);

auto const plan = leaf(Kind::plan, Word::plan) >> name >> nl;
auto const race_kind =
    leaf(Kind::race_kind, Word::super_sprint, Word::long_course) | leaf(Kind::race_kind, Word::sprint);
auto const race = container(Kind::race, key(Word::race),
                            -name >> (race_kind | length(Kind::race_distance, From::number)) >>
                                key(Word::on) >> day_of_year(Kind::date, From::number)) >>
                  nl;
auto const swimmer =
    container(Kind::swimmer, key(Word::swimmer),
              name >> *(threshold |
                        (key(Word::lane) >> number(Kind::swimmer_lane, 1, limits::lanes, Fault::lane_range)) |
                        (key(Word::distance) >> percent(Kind::swimmer_share)))) >>
    nl;
auto const before = container(Kind::before, key(Word::before),
                              key(Word::longest) >> length(Kind::before_longest) >>
                                  -(key(Word::week) >> length(Kind::before_week))) >>
                    nl;
auto const include = leaf(Kind::include, Word::include) >> name >> nl;
auto const set = leaf(Kind::set, Word::set) >> name >> equals >> pieces;

auto const factor_word = token(Thing::none, [](char const*& at, Reading& r) {
    auto const& ahead = r.word(at);
    auto const fits =
        is_stroke(ahead.word) || is_mode(ahead.word) || is_effort(ahead.word) || is_gear(ahead.word);
    if (!fits) {
        return false;
    }
    r.opened_word = ahead.word;
    at = ahead.end;
    return true;
});
auto const factor_percent = token(Thing::percent, [](char const*& at, Reading& r) {
    if (!read_percent(at, r, Kind::factor, r.opened)) {
        return false;
    }
    r.tree.nodes.back().word = static_cast<std::uint8_t>(r.opened_word);
    return true;
});
auto const rule_name = token(Thing::rule, read_rule_name);
auto const scope_note = string(Kind::note_line, Thing::note);
auto const setting =
    ((key(Word::pool) >>
      ((then(Word::open) >> leaf_end(Kind::pool_open_water, Word::water)) | length(Kind::pool))) |
     threshold | (key(Word::rest) >> rest_value(Kind::default_rest)) |
     (key(Word::factor) >> factor_word >> factor_percent) |
     container(Kind::limit, key(Word::limit), rule_name >> token(Thing::value, read_limit_value)) |
     container(Kind::allow, key(Word::allow), rule_name >> -note) | scope_note) >>
    nl;

// Containers whose children are further lines stay open; document.cpp closes them.
auto const week = key(Word::week) >> made(Kind::week) >>
                  number(Kind::week_number, 1, limits::weeks, Fault::week_range, From::number) >>
                  -(key(Word::from) >> day_of_year(Kind::week_from)) >> -name >> nl;
auto const session = key(Word::session) >> made(Kind::session) >>
                     -(leaf(Kind::day, Word::mon, Word::sun) | day_of_year(Kind::date, From::number)) >>
                     -token(Thing::time_of_day, read_time_of_day) >>
                     -(key(Word::for_) >> time(Kind::slot, TimeRule::slot)) >> -name >> nl;
auto const heading = leaf(Kind::section, Word::warm_up, Word::cool_down) | leaf(Kind::section, Word::drill) |
                     (key(Word::warm) >> (leaf_end(Kind::section, Word::up, Word::warm_up) |
                                          leaf_end(Kind::section, Word::down, Word::cool_down))) |
                     (key(Word::cool, Word::cool) >> leaf_end(Kind::section, Word::down, Word::cool_down)) |
                     (key(Word::swim) >> leaf_end(Kind::section, Word::down, Word::cool_down));
auto const section_default = stroke | mode | effort | gear | (key(Word::rest) >> rest_value(Kind::rest));
auto const section = heading >> -name >> *section_default >> nl;

auto const pause = key(Word::pause) >> time(Kind::pause, TimeRule::may_be_zero) >> -note >> nl;
auto const note_line = scope_note >> nl;

template <typename Rule>
bool read_as(Rule const& rule, char const*& at, Reading& reading) {
    auto const context = x3::make_context<reading_tag>(reading);
    return rule.parse(at, reading.end, context, x3::unused, x3::unused);
}

} // namespace

bool read_form(Form form, char const*& at, Reading& reading) {
    switch (form) {
    case Form::plan:
        return read_as(plan, at, reading);
    case Form::race:
        return read_as(race, at, reading);
    case Form::swimmer:
        return read_as(swimmer, at, reading);
    case Form::before:
        return read_as(before, at, reading);
    case Form::set:
        return read_as(set, at, reading);
    case Form::include:
        return read_as(include, at, reading);
    case Form::setting:
        return read_as(setting, at, reading);
    case Form::week:
        return read_as(week, at, reading);
    case Form::session:
        return read_as(session, at, reading);
    case Form::section:
        return read_as(section, at, reading);
    case Form::pause:
        return read_as(pause, at, reading);
    case Form::note:
        return read_as(note_line, at, reading);
    case Form::item:
        return read_as(line, at, reading);
    }
    return false;
}

ParseResult parse(Source const& source) {
    return Document{source}.read();
}

} // namespace lengthwise::grammar
