#pragma once

#include "terminals.hpp"

#include <cstdint>

/// The pieces of a line of items. A group is no piece: its `(` and `)` are, and they
/// keep the stack of open parentheses in the Reading, so that a group may go on over
/// many lines and nothing calls itself.
namespace lengthwise::grammar {

/// An item's node and its count.
struct ItemBegin {
    static constexpr Sort sort{Word::use, Word::use, Thing::amount};
    static bool read(char const*& at, Reading& r);
};

struct ItemEnd {
    static constexpr Sort sort{};
    static bool read(char const*&, Reading& r) {
        r.close(r.item);
        r.awaits = Awaits::joint;
        return true;
    }
};

struct GroupBegin {
    static constexpr Sort sort{.thing = Thing::open};
    static bool read(char const*& at, Reading& r);
};

struct GroupEnd {
    static constexpr Sort sort{.thing = Thing::close};
    static bool read(char const*& at, Reading& r);
};

struct Plus {
    static constexpr Sort sort{.thing = Thing::plus};
    static bool read(char const*& at, Reading& r);
};

/// The line's end where an item may end, or anywhere between the pieces of a group.
struct ItemsEnd {
    static constexpr Sort sort{.thing = Thing::line_end};
    static bool read(char const*& at, Reading& r);
};

/// The node of the item that the label whose keyword was read belongs to.
struct LabelBegin {
    static constexpr Sort sort{};
    static bool read(char const*& at, Reading& r);
};

struct LaneLabel {
    static constexpr Sort sort{.thing = Thing::number};
    static bool read(char const*& at, Reading& r) { return read_lane_label(at, r); }
};

struct IfTimeLabel {
    static constexpr Sort sort{.thing = Thing::colon};
    static bool read(char const*& at, Reading& r) { return read_if_time_label(at, r); }
};

inline bool ItemBegin::read(char const*& at, Reading& r) {
    if (r.awaits == Awaits::joint) {
        return false;
    }
    auto const& figure = r.figure(at);
    auto const* const begin = figure.begin;
    auto const is_amount = figure.end != begin || *begin == ':';
    if (!is_amount && *begin != '(' && r.word(at).word != Word::use) {
        return false;
    }
    if (r.labelled) {
        r.labelled = false;
        r.nodes[r.item].begin = r.offset(begin);
    } else {
        r.item = r.push(Kind::item, begin, begin);
    }
    r.counted = false;
    r.single = is_amount;
    if (read_count(at, r)) {
        r.single = r.word(at).word != Word::use;
    }
    return true;
}

inline bool GroupBegin::read(char const*& at, Reading& r) {
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
}

inline bool GroupEnd::read(char const*& at, Reading& r) {
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
}

inline bool Plus::read(char const*& at, Reading& r) {
    auto const* const p = skip_blanks(at);
    if (*p != '+' || r.depth == 0 || r.awaits == Awaits::item) {
        return false;
    }
    r.awaits = Awaits::item;
    at = p + 1;
    return true;
}

inline bool ItemsEnd::read(char const*& at, Reading& r) {
    if ((r.depth == 0 && r.awaits == Awaits::item) || !read_line_end(at, r)) {
        return false;
    }
    if (r.awaits != Awaits::item) {
        r.awaits = Awaits::either;
    }
    return true;
}

inline bool LabelBegin::read(char const*&, Reading& r) {
    if (r.depth > 0) {
        return false;
    }
    if (!r.labelled) {
        r.labelled = true;
        r.item = r.push(Kind::item, r.opened.begin, r.opened.begin);
    }
    return true;
}

} // namespace lengthwise::grammar
