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

/// A reader of tokens as a parser. What it is made of are types, not values, so
/// that the compiler sees constants.
template <Sort sort, typename Read>
struct Token : x3::parser<Token<sort, Read>> {
    using attribute_type = x3::unused_type;
    static bool const has_attribute = false;

    template <typename Iterator, typename Context, typename RuleContext, typename Attribute>
    bool parse(Iterator& first, Iterator const&, Context const& context, RuleContext&, Attribute&) const {
        Reading& r = x3::get<reading_tag>(context);
        if (Read{}(first, r)) {
            return true;
        }
        if (r.trace != nullptr) [[unlikely]] {
            r.trace->miss(skip_blanks(first), sort.low, sort.high, sort.thing);
        }
        return false;
    }
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
        auto const node = r.push(kind, r.opened);
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

template <Thing thing, typename Read>
constexpr auto token(Read) {
    return Token<Sort{Word::none, Word::none, thing}, Read>{};
}
template <Word low, Word high, typename Read>
constexpr auto word_token(Read) {
    return Token<Sort{low, high, Thing::none}, Read>{};
}

/// A keyword; the leaf that follows begins with it.
template <Word low, Word high = low>
constexpr auto key() {
    return word_token<low, high>([](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (!is_between(ahead.word, low, high)) {
            return false;
        }
        r.opened = ahead;
        at = ahead.end;
        return true;
    });
}
/// A keyword inside of a leaf.
template <Word word>
constexpr auto then() {
    return word_token<word, word>([](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word != word) {
            return false;
        }
        at = ahead.end;
        return true;
    });
}
/// A word that is a leaf.
template <Kind kind, Word low, Word high = low>
constexpr auto leaf() {
    return word_token<low, high>([](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (!is_between(ahead.word, low, high)) {
            return false;
        }
        at = ahead.end;
        r.push(kind, ahead);
        return true;
    });
}
/// The last word of a leaf that began with a keyword: `open water`, `front crawl`.
template <Kind kind, Word word, Word meaning = Word::none>
constexpr auto leaf_end() {
    return word_token<word, word>([](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word != word) {
            return false;
        }
        at = ahead.end;
        r.push(kind, r.opened.begin, at, 0, static_cast<std::uint8_t>(meaning));
        return true;
    });
}
/// A leaf that is its keyword.
template <Kind kind>
constexpr auto made() {
    return token<Thing::none>([](char const*&, Reading& r) {
        r.push(kind, r.opened);
        return true;
    });
}
template <Kind kind, Thing thing>
constexpr auto string() {
    return token<thing>([](char const*& at, Reading& r) {
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

/// Where a leaf with a figure begins: there, or at the keyword before it.
enum class From : std::uint8_t { figure, keyword };
template <From from>
char const* begin_of(Reading const& r) {
    return from == From::keyword ? r.opened.begin : nullptr;
}
template <Kind kind, TimeRule rule, From from = From::keyword>
constexpr auto time() {
    return token<Thing::time>(
        [](char const*& at, Reading& r) { return read_time(at, r, kind, rule, begin_of<from>(r)); });
}
template <Kind kind, From from = From::keyword>
constexpr auto length() {
    return token<Thing::distance>(
        [](char const*& at, Reading& r) { return read_distance(at, r, kind, begin_of<from>(r)); });
}
template <Kind distance, Kind time, From from = From::figure>
constexpr auto either() {
    return token<Thing::amount>(
        [](char const*& at, Reading& r) { return read_amount(at, r, distance, time, begin_of<from>(r)); });
}
template <Kind kind, std::uint32_t low, std::uint32_t high, Fault fault, From from = From::keyword>
constexpr auto number() {
    return token<Thing::number>([](char const*& at, Reading& r) {
        return read_number(at, r, kind, low, high, fault, begin_of<from>(r));
    });
}
template <Kind kind, From from = From::keyword>
constexpr auto percent() {
    return token<Thing::percent>(
        [](char const*& at, Reading& r) { return read_percent(at, r, kind, begin_of<from>(r)); });
}
template <Kind kind, From from = From::keyword>
constexpr auto date() {
    return token<Thing::date>(
        [](char const*& at, Reading& r) { return read_date(at, r, kind, begin_of<from>(r)); });
}
template <Kind kind>
constexpr auto rest_value() {
    return token<Thing::rest>(
        [](char const*& at, Reading& r) { return read_rest(at, r, kind, r.opened.begin); });
}
template <char c, Thing thing>
constexpr auto sign() {
    return token<thing>([](char const*& at, Reading&) {
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

constexpr auto name = string<Kind::name, Thing::name>();
constexpr auto note = string<Kind::note, Thing::note>();
constexpr auto comma = token<Thing::comma>([](char const*& at, Reading& r) { return read_comma(at, r); });
constexpr auto slash = token<Thing::slash>([](char const*& at, Reading& r) { return read_slash(at, r); });
constexpr auto equals = sign<'=', Thing::equals>();
constexpr auto nl = token<Thing::line_end>([](char const*& at, Reading& r) { return read_line_end(at, r); });

// --- amounts and rests ---

constexpr auto amount = either<Kind::distance, Kind::time>();

// --- modifiers ---

constexpr auto stroke = leaf<Kind::stroke, Word::crawl, Word::choice>() |
                        (key<Word::front>() >> leaf_end<Kind::stroke, Word::crawl, Word::crawl>());

constexpr auto mode =
    leaf<Kind::mode, Word::swim, Word::tread>() | (leaf<Kind::mode, Word::drill>() >> -name);

constexpr auto shift = leaf<Kind::effort_shift, Word::plus, Word::minus>() >>
                       time<Kind::shift_time, TimeRule::may_be_zero, From::figure>();
constexpr auto effort =
    (leaf<Kind::effort, Word::threshold>() >> -shift) | leaf<Kind::effort, Word::easy, Word::sprint>() |
    (key<Word::at>() >> (percent<Kind::at_percent>() | (time<Kind::at_pace, TimeRule::above_zero>() >>
                                                        key<Word::per>() >> length<Kind::at_per>()))) |
    (key<Word::hold>() >> time<Kind::hold, TimeRule::above_zero>()) |
    (key<Word::rpe>() >> number<Kind::rpe, 1, 10, Fault::rpe_range>());

constexpr auto build = leaf<Kind::build, Word::build>();
constexpr auto descend = leaf<Kind::descend, Word::descend>() >>
                         -token<Thing::number>([](char const*& at, Reading& r) {
                             return read_descend_range(at, r);
                         });
constexpr auto negative_split = key<Word::negative>() >> leaf_end<Kind::negative_split, Word::split>();
constexpr auto shape = build | descend | negative_split;

template <Kind kind>
constexpr auto gear_word() {
    return leaf<kind, Word::fins, Word::wetsuit>() |
           (key<Word::pull>() >> leaf_end<kind, Word::buoy, Word::buoy>());
}
constexpr auto gear_first = token<Thing::none>([](char const*& at, Reading& r) {
    auto const& ahead = r.word(at);
    if (ahead.word < Word::fins || ahead.word > Word::stops) {
        return false;
    }
    r.push(Kind::with, r.opened.begin, ahead.end, 0, static_cast<std::uint8_t>(ahead.word));
    at = ahead.end;
    return true;
});
constexpr auto gear = key<Word::with>() >> ((gear_first | (then<Word::pull>() >>
                                                           leaf_end<Kind::with, Word::buoy, Word::buoy>())) >>
                                            *(comma >> gear_word<Kind::with_more>()));

constexpr auto part = either<Kind::part, Kind::part_time>() >> *(stroke | mode | effort | build | note);
/// A keyword that stands only behind one amount.
template <Word word>
constexpr auto single_key() {
    return word_token<word, word>([](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (ahead.word != word || (!r.single && !r.pass(ahead.begin, ahead.end, Fault::not_single))) {
            return false;
        }
        r.opened = ahead;
        at = ahead.end;
        return true;
    });
}
constexpr auto split = container(Kind::split, single_key<Word::as>(), part % slash);

constexpr auto broken = single_key<Word::broken>() >>
                        then<Word::at>() >> either<Kind::broken, Kind::broken_time, From::keyword>() >>
                        key<Word::for_>() >> time<Kind::broken_for, TimeRule::with_unit>();

constexpr auto breaths = token<Thing::none>([](char const*& at, Reading& r) {
    auto const* p = at;
    auto const size = r.tree.size();
    if (!read_number(p, r, Kind::rest_breaths, 1, 9999, Fault::breaths_zero, r.opened.begin)) {
        return false;
    }
    auto const& ahead = r.word(p);
    if (ahead.word != Word::breaths) {
        r.drop_from(size);
        return false;
    }
    r.tree.nodes.back().length = static_cast<std::uint16_t>(ahead.end - r.opened.begin);
    at = ahead.end;
    return true;
});
constexpr auto recovery =
    (key<Word::rest>() >> (rest_value<Kind::rest>() | breaths |
                           (then<Word::as>() >> leaf_end<Kind::rest_as_needed, Word::needed>()))) |
    (key<Word::on, Word::off>() >> time<Kind::on, TimeRule::above_zero>() >>
     *(comma >> time<Kind::on_more, TimeRule::above_zero, From::figure>()));

constexpr auto modifier = stroke | mode | effort | gear | recovery | note | shape | broken;
constexpr auto after_split = gear | recovery | note | descend | negative_split;

constexpr auto selector_number =
    number<Kind::selector_number, 1, limits::repeat, Fault::selector_number, From::figure>();
constexpr auto selector_head =
    key<Word::odds, Word::evens>() | key<Word::first, Word::last>() | key<Word::every>();
constexpr auto ordinal = token<Thing::ordinal>([](char const*& at, Reading& r) {
    return r.opened.word == Word::every && read_ordinal(at, r, Kind::selector_number);
});
constexpr auto chosen = token<Thing::none>([](char const*& at, Reading& r) {
    switch (r.opened.word) {
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
constexpr auto selector = -comma >> container(Kind::selector, selector_head,
                                              chosen >> +(stroke | mode | effort | build | gear | note));

// --- items: a line is a chain of pieces ---

constexpr auto begin_item = [](char const*& at, Reading& r) {
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
    r.single = is_digit(*begin) || *begin == ':';
    at = begin;
    read_count(at, r);
    return true;
};
constexpr auto item_begin = Token<Sort{Word::use, Word::use, Thing::amount}, decltype(begin_item)>{};
constexpr auto item_end = token<Thing::none>([](char const*&, Reading& r) {
    r.close(r.item);
    r.awaits = Awaits::joint;
    return true;
});
constexpr auto group_begin = token<Thing::open>([](char const*& at, Reading& r) {
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
constexpr auto group_end = token<Thing::close>([](char const*& at, Reading& r) {
    auto const* const p = skip_blanks(at);
    if (*p != ')' || r.depth == 0 || r.awaits == Awaits::item) {
        return false;
    }
    r.push(Kind::group_end, p, p + 1);
    auto const& open = r.open[--r.depth];
    r.close(open.group);
    r.item = open.item;
    r.single = false;
    at = p + 1;
    return true;
});
constexpr auto plus = token<Thing::plus>([](char const*& at, Reading& r) {
    auto const* const p = skip_blanks(at);
    if (*p != '+' || r.depth == 0 || r.awaits == Awaits::item) {
        return false;
    }
    r.awaits = Awaits::item;
    at = p + 1;
    return true;
});

constexpr auto modifiers = *modifier >> -(split >> *after_split) >> *selector;
constexpr auto ladder =
    token<Thing::comma>([](char const*& at, Reading& r) { return !r.counted && read_comma(at, r); });
constexpr auto step = token<Thing::amount>([](char const*& at, Reading& r) {
    if (!read_amount(at, r, Kind::distance, Kind::time)) {
        return false;
    }
    r.single = false;
    return true;
});
constexpr auto use = leaf<Kind::use, Word::use>() >> name;
constexpr auto body = (amount >> *(ladder >> step)) | use;
constexpr auto item = item_begin >> (group_begin | (body >> modifiers >> item_end));
constexpr auto group = group_end >> modifiers >> item_end;

constexpr auto label_begin = token<Thing::none>([](char const*&, Reading& r) {
    if (r.depth > 0) {
        return false;
    }
    if (!r.labelled) {
        r.labelled = true;
        r.item = r.push(Kind::item, r.opened.begin, r.opened.begin);
    }
    return true;
});
constexpr auto if_time_end = token<Thing::colon>([](char const*& at, Reading& r) {
    if (!read_colon(at, r)) {
        return false;
    }
    r.push(Kind::if_time, r.opened.begin, at);
    return true;
});
constexpr auto label =
    (key<Word::lane>() >> label_begin >>
     token<Thing::number>([](char const*& at, Reading& r) { return read_lane_label(at, r); })) |
    (key<Word::if_>() >> label_begin >> then<Word::time>() >> if_time_end);
constexpr auto line_of_items_end = token<Thing::line_end>([](char const*& at, Reading& r) {
    if (r.depth == 0 && r.awaits == Awaits::item) {
        return false;
    }
    if (!read_line_end(at, r)) {
        return false;
    }
    r.awaits = r.depth == 0 || r.awaits == Awaits::item ? Awaits::item : Awaits::either;
    return true;
});
constexpr auto pieces = +(group | plus | item) >> line_of_items_end;
constexpr auto line = *label >> pieces;

// --- statements ---

constexpr auto pace = -leaf<Kind::about, Word::about>() >>
                      time<Kind::pace_time, TimeRule::above_zero, From::figure>() >>
                      -(key<Word::per>() >> length<Kind::pace_per>()) >>
                      -(key<Word::in>() >>
                        ((then<Word::open>() >> leaf_end<Kind::pace_open_water, Word::water>()) |
                         length<Kind::pace_in>())) >>
                      -(key<Word::reserve>() >> length<Kind::reserve>());
constexpr auto threshold = container(Kind::threshold, key<Word::threshold>(), pace);

constexpr auto plan = leaf<Kind::plan, Word::plan>() >> name >> nl;
constexpr auto race_kind =
    leaf<Kind::race_kind, Word::super_sprint, Word::long_course>() | leaf<Kind::race_kind, Word::sprint>();
constexpr auto race = container(Kind::race, key<Word::race>(),
                                -name >> (race_kind | length<Kind::race_distance, From::figure>()) >>
                                    key<Word::on>() >> date<Kind::date, From::figure>()) >>
                      nl;
constexpr auto swimmer =
    container(Kind::swimmer, key<Word::swimmer>(),
              name >>
                  *(threshold |
                    (key<Word::lane>() >> number<Kind::swimmer_lane, 1, limits::lanes, Fault::lane_range>()) |
                    (key<Word::distance>() >> percent<Kind::swimmer_share>()))) >>
    nl;
constexpr auto before = container(Kind::before, key<Word::before>(),
                                  key<Word::longest>() >> length<Kind::before_longest>() >>
                                      -(key<Word::week>() >> length<Kind::before_week>())) >>
                        nl;
constexpr auto include = leaf<Kind::include, Word::include>() >> name >> nl;
constexpr auto set = leaf<Kind::set, Word::set>() >> name >> equals >> pieces;

/// The word of a factor; its leaf still begins with the keyword before it.
template <Word low, Word high>
constexpr auto factored() {
    return word_token<low, high>([](char const*& at, Reading& r) {
        auto const& ahead = r.word(at);
        if (!is_between(ahead.word, low, high)) {
            return false;
        }
        r.opened.word = ahead.word;
        at = ahead.end;
        return true;
    });
}
constexpr auto factor_word = factored<Word::crawl, Word::sprint>() | factored<Word::fins, Word::wetsuit>();
constexpr auto factor_percent = token<Thing::percent>([](char const*& at, Reading& r) {
    if (!read_percent(at, r, Kind::factor, r.opened.begin)) {
        return false;
    }
    r.tree.nodes.back().word = static_cast<std::uint8_t>(r.opened.word);
    return true;
});
constexpr auto rule_name =
    token<Thing::rule>([](char const*& at, Reading& r) { return read_rule_name(at, r); });
constexpr auto scope_note = string<Kind::note_line, Thing::note>();
constexpr auto setting =
    ((key<Word::pool>() >>
      ((then<Word::open>() >> leaf_end<Kind::pool_open_water, Word::water>()) | length<Kind::pool>())) |
     threshold | (key<Word::rest>() >> rest_value<Kind::default_rest>()) |
     (key<Word::factor>() >> factor_word >> factor_percent) |
     container(Kind::limit, key<Word::limit>(),
               rule_name >>
                   token<Thing::value>([](char const*& at, Reading& r) { return read_limit_value(at, r); })) |
     container(Kind::allow, key<Word::allow>(), rule_name >> -note) | scope_note) >>
    nl;

// Containers whose children are further lines stay open; document.cpp closes them.
constexpr auto week =
    key<Word::week>() >>
    made<Kind::week>() >> number<Kind::week_number, 1, limits::weeks, Fault::week_range, From::figure>() >>
    -(key<Word::from>() >> date<Kind::week_from>()) >> -name >> nl;
constexpr auto session = key<Word::session>() >> made<Kind::session>() >>
                         -(leaf<Kind::day, Word::mon, Word::sun>() | date<Kind::date, From::figure>()) >>
                         -token<Thing::time_of_day>([](char const*& at, Reading& r) {
                             return read_time_of_day(at, r);
                         }) >>
                         -(key<Word::for_>() >> time<Kind::slot, TimeRule::slot>()) >> -name >> nl;
constexpr auto heading =
    leaf<Kind::section, Word::warm_up, Word::cool_down>() | leaf<Kind::section, Word::drill>() |
    (key<Word::warm>() >> (leaf_end<Kind::section, Word::up, Word::warm_up>() |
                           leaf_end<Kind::section, Word::down, Word::cool_down>())) |
    (key<Word::cool, Word::cool>() >> leaf_end<Kind::section, Word::down, Word::cool_down>()) |
    (key<Word::swim>() >> leaf_end<Kind::section, Word::down, Word::cool_down>());
constexpr auto section_default =
    stroke | mode | effort | gear | (key<Word::rest>() >> rest_value<Kind::rest>());
constexpr auto section = heading >> -name >> *section_default >> nl;

constexpr auto pause = key<Word::pause>() >> time<Kind::pause, TimeRule::may_be_zero>() >> -note >> nl;
constexpr auto note_line = scope_note >> nl;

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
    case Form::unknown:
        return read_as(line, at, reading);
    }
    return false;
}

ParseResult parse(Source const& source) {
    return Document{source}.read();
}

} // namespace lengthwise::grammar
