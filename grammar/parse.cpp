#include "parse.hpp"

#include "document.hpp"
#include "pieces.hpp"
#include "productions.hpp"
#include "terminals.hpp"

#include <boost/spirit/home/x3.hpp>

#include <type_traits>

/// The grammar. Its names are those of notation.ebnf, but for file, week and session
/// as a whole, which document.cpp reads line by line. Words are classes of one look-up
/// (Reading::word), so an alternative that begins with a word costs one comparison.
/// Leaves append themselves to the flat tree; nothing here has an attribute, allocates
/// or calls itself: `(` and `)` are pieces of a line that keep a stack in the Reading.
namespace lengthwise::grammar {

namespace {

namespace x3 = boost::spirit::x3;

struct reading_tag;
struct traced_tag;

/// A terminal as a parser.
template <typename T>
struct Terminal : x3::parser<Terminal<T>> {
    using attribute_type = x3::unused_type;
    static bool const has_attribute = false;

    template <typename Iterator, typename Context, typename RuleContext, typename Attribute>
    bool parse(Iterator& first, Iterator const&, Context const& context, RuleContext&, Attribute&) const {
        Reading& r = x3::get<reading_tag>(context);
        if (T::read(first, r)) {
            return true;
        }
        if constexpr (std::remove_cvref_t<decltype(x3::get<traced_tag>(context))>::value) {
            r.trace->miss(skip_blanks(first), T::sort.low, T::sort.high, T::sort.thing);
        }
        return false;
    }
};

/// A container and its children: `head` reads its first word, `body` the rest.
template <Kind kind, typename Head, typename Body>
struct Container : x3::parser<Container<kind, Head, Body>> {
    using attribute_type = x3::unused_type;
    static bool const has_attribute = false;

    constexpr Container(Head start, Body rest) : head(start), body(rest) {}

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
            r.nodes.drop_from(node);
            first = start;
            return false;
        }
        r.close(node);
        return true;
    }

    Head head;
    Body body;
};

template <Kind kind, typename Head, typename Body>
constexpr auto container(Head head, Body body) {
    return Container<kind, Head, Body>{head, body};
}

// Terminals by their names in the grammar, with what they append.
template <Word low, Word high = low>
constexpr auto key() {
    return Terminal<Key<low, high>>{};
}
template <Word word>
constexpr auto single_key() {
    return Terminal<SingleKey<word>>{};
}
template <Word word>
constexpr auto then() {
    return Terminal<Then<word>>{};
}
template <Kind kind, Word low, Word high = low>
constexpr auto leaf() {
    return Terminal<Leaf<kind, low, high>>{};
}
template <Kind kind, Word low, Word high = low>
constexpr auto leaf_end() {
    return Terminal<LeafEnd<kind, low, high, Word::none>>{};
}
template <Kind kind, Word last, Word meaning>
constexpr auto meant() {
    return Terminal<LeafEnd<kind, last, last, meaning>>{};
}
template <Kind kind>
constexpr auto made() {
    return Terminal<Made<kind>>{};
}
template <Kind kind, TimeRule rule, From from = From::keyword>
constexpr auto duration() {
    return Terminal<Duration<kind, rule, from>>{};
}
template <Kind kind, From from = From::keyword>
constexpr auto distance() {
    return Terminal<Distance<kind, from>>{};
}
template <Kind metres, Kind time, From from = From::figure>
constexpr auto amount_as() {
    return Terminal<Amount<metres, time, from>>{};
}
template <Kind kind>
constexpr auto rest() {
    return Terminal<Rest<kind>>{};
}
template <Kind kind, std::uint32_t low, std::uint32_t high, Fault fault, From from = From::keyword>
constexpr auto number() {
    return Terminal<Number<kind, low, high, fault, from>>{};
}
template <Kind kind, From from = From::keyword>
constexpr auto percent() {
    return Terminal<Percent<kind, from>>{};
}
template <Kind kind, From from = From::keyword>
constexpr auto date() {
    return Terminal<Date<kind, from>>{};
}
constexpr Terminal<String<Kind::name, Thing::name>> name;
constexpr Terminal<String<Kind::note, Thing::note>> note;
constexpr Terminal<String<Kind::note_line, Thing::note>> own_line_note;
constexpr Terminal<Comma> comma;
constexpr Terminal<Slash> slash;
constexpr Terminal<LineEnd> nl;

// --- modifiers ---

constexpr auto amount = amount_as<Kind::distance, Kind::time>();

constexpr auto stroke = leaf<Kind::stroke, Word::crawl, Word::choice>() |
                        key<Word::front>() >> meant<Kind::stroke, Word::crawl, Word::crawl>();

constexpr auto mode = leaf<Kind::mode, Word::swim, Word::tread>() | leaf<Kind::mode, Word::drill>() >> -name;

constexpr auto shift = leaf<Kind::effort_shift, Word::plus, Word::minus>() >>
                       duration<Kind::shift_time, TimeRule::may_be_zero, From::figure>();
constexpr auto pace_of_rep = duration<Kind::at_pace, TimeRule::above_zero>() >>
                             key<Word::per>() >> distance<Kind::at_per>();
constexpr auto effort = leaf<Kind::effort, Word::threshold>() >> -shift |
                        leaf<Kind::effort, Word::easy, Word::sprint>() |
                        key<Word::at>() >> (percent<Kind::at_percent>() | pace_of_rep) |
                        key<Word::hold>() >> duration<Kind::hold, TimeRule::above_zero>() |
                        key<Word::rpe>() >> number<Kind::rpe, 1, 10, Fault::rpe_range>();

constexpr auto build = leaf<Kind::build, Word::build>();
constexpr auto descend = leaf<Kind::descend, Word::descend>() >> -Terminal<Cycle>{};
constexpr auto negative_split = key<Word::negative>() >> leaf_end<Kind::negative_split, Word::split>();
constexpr auto shape = build | descend | negative_split;

constexpr auto pull_buoy = then<Word::pull>() >> meant<Kind::with, Word::buoy, Word::buoy>();
constexpr auto more_gear = leaf<Kind::with_more, Word::fins, Word::wetsuit>() |
                           key<Word::pull>() >> meant<Kind::with_more, Word::buoy, Word::buoy>();
constexpr auto gear_list = (leaf_end<Kind::with, Word::fins, Word::wetsuit>() | pull_buoy) >>
                           *(comma >> more_gear);
constexpr auto gear = key<Word::with>() >> (gear_list | leaf_end<Kind::with, Word::nothing, Word::stops>());

constexpr auto part = amount_as<Kind::part, Kind::part_time>() >> *(stroke | mode | effort | build | note);
constexpr auto split = container<Kind::split>(single_key<Word::as>(), part % slash);

constexpr auto broken = single_key<Word::broken>() >>
                        then<Word::at>() >> amount_as<Kind::broken, Kind::broken_time, From::keyword>() >>
                        key<Word::for_>() >> duration<Kind::broken_for, TimeRule::with_unit>();

constexpr auto as_needed = then<Word::as>() >> leaf_end<Kind::rest_as_needed, Word::needed>();
constexpr auto send_off = key<Word::on, Word::off>() >> duration<Kind::on, TimeRule::above_zero>() >>
                          *(comma >> duration<Kind::on_more, TimeRule::above_zero, From::figure>());
constexpr auto time_at_wall = Terminal<Breaths>{} | rest<Kind::rest>() | as_needed;
constexpr auto recovery = key<Word::rest>() >> time_at_wall | send_off;

constexpr Terminal<Begun> begun;
// The most frequent first; no two of them begin alike.
constexpr auto modifier = begun >> (stroke | effort | recovery | mode | gear | note | shape | broken);
constexpr auto after_split = begun >> (gear | recovery | note | descend | negative_split);

constexpr auto change = stroke | mode | effort | build | gear | note;
constexpr auto how_many =
    number<Kind::selector_number, 1, limits::repeat, Fault::selector_number, From::figure>();
constexpr auto selector = -comma >>
                          (container<Kind::selector>(key<Word::odds, Word::evens>(), +change) |
                           container<Kind::selector>(key<Word::every>(), Terminal<Ordinal>{} >> +change) |
                           container<Kind::selector>(key<Word::first, Word::last>(), -how_many >> +change));

// --- items ---

constexpr auto modifiers = *modifier >> -(split >> *after_split) >> *selector;
constexpr auto use = leaf<Kind::use, Word::use>() >> name;
constexpr auto body = amount >> *(Terminal<LadderComma>{} >> Terminal<Step>{}) | use;

// Pieces of a line. An item that is a group ends at the group's `)`, many pieces and
// perhaps many lines later.
constexpr Terminal<ItemBegin> item_begin;
constexpr Terminal<ItemEnd> item_end;
constexpr auto item = item_begin >> (Terminal<GroupBegin>{} | body >> modifiers >> item_end);
constexpr auto group = Terminal<GroupEnd>{} >> modifiers >> item_end;
constexpr auto pieces = +(item | group | Terminal<Plus>{}) >> Terminal<ItemsEnd>{};

constexpr Terminal<LabelBegin> label_begin;
constexpr auto label = key<Word::lane>() >> label_begin >> Terminal<LaneLabel>{} |
                       key<Word::if_>() >> label_begin >> then<Word::time>() >> Terminal<IfTimeLabel>{};

constexpr auto pause = key<Word::pause>() >> duration<Kind::pause, TimeRule::may_be_zero>() >> -note >> nl;
constexpr auto line = *label >> pieces;

// --- statements ---

constexpr auto about = leaf<Kind::about, Word::about>();
constexpr auto open_water = then<Word::open>();
constexpr auto course = key<Word::in>() >> (open_water >> leaf_end<Kind::pace_open_water, Word::water>() |
                                            distance<Kind::pace_in>());
constexpr auto pace = -about >> duration<Kind::pace_time, TimeRule::above_zero, From::figure>() >>
                      -(key<Word::per>() >> distance<Kind::pace_per>()) >> -course >>
                      -(key<Word::reserve>() >> distance<Kind::reserve>());
constexpr auto threshold = container<Kind::threshold>(key<Word::threshold>(), pace);

constexpr auto plan = leaf<Kind::plan, Word::plan>() >> name >> nl;

constexpr auto race_kind =
    leaf<Kind::race_kind, Word::super_sprint, Word::long_course>() | leaf<Kind::race_kind, Word::sprint>();
constexpr auto race = container<Kind::race>(
    key<Word::race>(), -name >> (race_kind | distance<Kind::race_distance, From::figure>()) >>
                           key<Word::on>() >> date<Kind::date, From::figure>());

constexpr auto swimmer_lane = key<Word::lane>() >>
                              number<Kind::swimmer_lane, 1, limits::lanes, Fault::lane_range>();
constexpr auto swimmer_share = key<Word::distance>() >> percent<Kind::swimmer_share>();
constexpr auto swimmer =
    container<Kind::swimmer>(key<Word::swimmer>(), name >> *(threshold | swimmer_lane | swimmer_share));

constexpr auto before =
    container<Kind::before>(key<Word::before>(), key<Word::longest>() >> distance<Kind::before_longest>() >>
                                                     -(key<Word::week>() >> distance<Kind::before_week>()));
constexpr auto include = leaf<Kind::include, Word::include>() >> name;
// A set's item may go on over lines and closes its own last one.
constexpr auto set = leaf<Kind::set, Word::set>() >> name >> Terminal<Equals>{} >> pieces;
constexpr auto head = (race | swimmer | before | include) >> nl | set;

constexpr auto pool = key<Word::pool>() >>
                      (open_water >> leaf_end<Kind::pool_open_water, Word::water>() | distance<Kind::pool>());
constexpr auto default_rest = key<Word::rest>() >> rest<Kind::default_rest>();
constexpr auto factored = Terminal<Factored<Word::crawl, Word::sprint>>{} |
                          Terminal<Factored<Word::fins, Word::wetsuit>>{} |
                          then<Word::front>() >> Terminal<Factored<Word::crawl, Word::crawl>>{};
constexpr auto factor = key<Word::factor>() >> factored >> Terminal<FactorPercent>{};
constexpr Terminal<RuleName> rule_name;
constexpr Terminal<LimitValue> value;
constexpr auto limit = container<Kind::limit>(key<Word::limit>(), rule_name >> value);
constexpr auto allow = container<Kind::allow>(key<Word::allow>(), rule_name >> -note);
constexpr auto setting = (pool | threshold | default_rest | factor | limit | allow | own_line_note) >> nl;

// Containers whose children are further lines stay open; document.cpp closes them.
constexpr auto week =
    key<Word::week>() >>
    made<Kind::week>() >> number<Kind::week_number, 1, limits::weeks, Fault::week_range, From::figure>() >>
    -(key<Word::from>() >> date<Kind::week_from>()) >> -name >> nl;

constexpr auto day = leaf<Kind::day, Word::mon, Word::sun>();
constexpr auto slot = key<Word::for_>() >> duration<Kind::slot, TimeRule::slot>();
constexpr auto session = key<Word::session>() >> made<Kind::session>() >>
                         -(day | date<Kind::date, From::figure>()) >> -Terminal<TimeOfDay>{} >> -slot >> -name
                         >> nl;

constexpr auto warm_up = key<Word::warm>() >> (meant<Kind::section, Word::up, Word::warm_up>() |
                                               meant<Kind::section, Word::down, Word::cool_down>());
constexpr auto cool_down = (key<Word::cool>() | key<Word::swim>()) >>
                           meant<Kind::section, Word::down, Word::cool_down>();
constexpr auto heading = leaf<Kind::section, Word::warm_up, Word::cool_down>() |
                         leaf<Kind::section, Word::drill>() | warm_up | cool_down;
constexpr auto section_default = stroke | mode | effort | gear | key<Word::rest>() >> rest<Kind::rest>();
constexpr auto section = heading >> -name >> *section_default >> nl;

template <typename Rule>
bool read_as(Rule const& rule, char const*& at, Reading& reading) {
    auto const read = [&](auto traced) { // each way has a grammar of its own
        auto const how = x3::make_context<traced_tag>(traced);
        auto const context = x3::make_context<reading_tag>(reading, how);
        return rule.parse(at, reading.end, context, x3::unused, x3::unused);
    };
    return reading.trace == nullptr ? read(std::false_type{}) : read(std::true_type{});
}

} // namespace

bool read_form(Form form, char const*& at, Reading& reading) {
    switch (form) {
    case Form::plan:
        return read_as(plan, at, reading);
    case Form::head:
        return read_as(head, at, reading);
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
        return read_as(own_line_note >> nl, at, reading);
    case Form::item:
    case Form::unknown:
        if (is_digit(*at) && reading.trace == nullptr) { // most lines; a label begins with a word
            return read_as(pieces, at, reading);
        }
        return read_as(line, at, reading);
    }
    return false;
}

ParseResult parse(Source const& source) {
    return Document{source}.read();
}

} // namespace lengthwise::grammar
