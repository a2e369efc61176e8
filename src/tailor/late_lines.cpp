#include "tailor/late_lines.hpp"

#include "calc/totals.hpp"
#include "plan/pace_of.hpp"

#include <algorithm>
#include <iterator>

namespace lengthwise::tailor {
namespace {

using plan::Index;
using plan::Item;
using plan::Plan;

/// Calls `f(item, index, section)` for every line of a session, in order.
template <typename F>
void each_line(Plan const& plan, Index session, F f) {
    auto const sections = plan.sessions[session].sections;
    for (auto section = sections.first; section < sections.end(); ++section) {
        auto const items = plan::items_from(plan, plan.sections[section].body);
        for (auto item = items.begin(); item != items.end(); ++item) {
            f(*item, item.index(), section);
        }
    }
}

/// A session without lane lines is swum by every lane, where lanes differ in pace.
calc::LaneSet lanes_that_differ(Plan const& plan) {
    plan::LanePaces const paces{plan};
    if (paces.lanes().empty()) {
        return {};
    }
    auto lanes = calc::lanes_of(plan);
    for (int const lane : paces.lanes()) {
        lanes.set(static_cast<std::size_t>(lane));
    }
    return lanes;
}

std::vector<LateLane> lanes_of(Plan const& plan, LateWish const& wish) {
    auto numbers = calc::numbers(calc::lanes_of(plan, plan.sessions[wish.session]));
    if (wish.lane) {
        numbers = {*wish.lane};
    } else if (numbers.empty()) {
        numbers = calc::numbers(lanes_that_differ(plan));
    }
    if (numbers.empty()) {
        numbers = {0};
    }
    std::vector<LateLane> lanes;
    for (int const lane : numbers) {
        lanes.push_back({lane, {}, {}});
    }
    return lanes;
}

bool swims_any(Plan const& plan, std::vector<LateLine> const& lines, int lane) {
    return std::any_of(lines.begin(), lines.end(), [&](LateLine const& line) {
        auto const& item = plan.items[line.item];
        return item.is_swum() && item.swum_by(lane);
    });
}

} // namespace

Late late_lines(Plan const& plan, LateWish const& wish) {
    Late late;
    each_line(plan, wish.session, [&](Item const& item, Index index, Index section) {
        bool const row = item.is_swum() && !item.optional;
        bool const behind = late.rows >= wish.after;
        late.rows += row ? 1 : 0;
        if (behind && item.kind != Item::Kind::note) {
            late.lines.push_back({index, section, row ? late.rows : 0, false, {}});
        }
    });
    if (late.rows < wish.after) {
        late.problem = Late::Problem::no_such_row;
        return late;
    }
    for (auto const& lane : lanes_of(plan, wish)) {
        if (swims_any(plan, late.lines, lane.lane)) {
            late.lanes.push_back(lane);
        }
    }
    std::erase_if(late.lines, [&](LateLine const& line) {
        return std::none_of(late.lanes.begin(), late.lanes.end(),
                            [&](LateLane const& lane) { return plan.items[line.item].swum_by(lane.lane); });
    });
    for (auto& line : late.lines) {
        line.lanes.resize(late.lanes.size());
    }
    late.problem = late.lanes.empty() ? Late::Problem::nothing_left : Late::Problem::none;
    return late;
}

std::vector<Index> long_rows(Plan const& plan, LateWish const& wish, Late const& late) {
    struct Best {
        Distance rep;
        bool in_main = false;
        Index row = plan::no_index;
    };
    std::vector<Best> best(late.lanes.size());
    calc::Reckoner reckoner{plan};
    auto const& session = plan.sessions[wish.session];
    each_line(plan, wish.session, [&](Item const& item, Index index, Index section) {
        bool const in_main = plan.sections[section].kind == SectionKind::main;
        auto const rep = item.optional ? Distance{} : reckoner.of_item(session, item).longest;
        for (std::size_t i = 0; i < best.size(); ++i) {
            bool const better =
                rep > best[i].rep || (rep == best[i].rep && in_main && !best[i].in_main && !rep.zero());
            if (better && item.swum_by(late.lanes[i].lane)) {
                best[i] = {rep, in_main, index};
            }
        }
    });
    std::vector<Index> rows;
    std::transform(best.begin(), best.end(), std::back_inserter(rows), [](Best const& b) { return b.row; });
    return rows;
}

std::vector<std::size_t> dropping_order(Plan const& plan, std::vector<Index> const& long_rows,
                                        Late const& late) {
    std::vector<std::size_t> order;
    auto const add = [&](auto goes) {
        for (auto place = late.lines.size(); place-- > 0;) {
            auto const& line = late.lines[place];
            bool const kept = std::find(long_rows.begin(), long_rows.end(), line.item) != long_rows.end();
            if (plan.items[line.item].is_swum() && !kept && goes(line)) {
                order.push_back(place);
            }
        }
    };
    add([](LateLine const& line) { return line.number == 0; });
    for (auto const kind : {SectionKind::main, SectionKind::drill, SectionKind::warm_up}) {
        add([&](LateLine const& line) {
            return line.number > 0 && plan.sections[line.section].kind == kind;
        });
    }
    return order;
}

/// What is not swum any more becomes a note that says nothing; its place stays, so that all others keep
/// theirs.
void silence(Plan& plan, Index line) {
    auto& item = plan.items[line];
    item.kind = plan::Item::Kind::note;
    item.body = static_cast<Index>(plan.texts.size());
    plan.texts.emplace_back();
}

plan::Plan left_to_swim(Plan plan, LateWish const& wish) {
    auto const late = late_lines(plan, wish);
    auto const sections = plan.sessions[wish.session].sections;
    auto line = late.lines.begin();
    for (auto section = sections.first; section < sections.end(); ++section) {
        for (auto at = plan.sections[section].body; at != plan::no_index;) {
            auto const next = plan.items[at].last ? plan::no_index : plan.after(at);
            if (line != late.lines.end() && line->item == at) {
                ++line;
            } else {
                silence(plan, at);
            }
            at = next;
        }
    }
    return plan;
}

} // namespace lengthwise::tailor
