#include "calc/reserve.hpp"

#include <algorithm>

namespace lengthwise::calc {

std::optional<ReserveOver> Reserve::over(plan::Index session, int lane) {
    turn_to(session, lane);
    if (!pacing_->known()) {
        return std::nullopt;
    }
    ReserveOver result;
    double x = 0;
    for (auto const& times : clock_.lines(session, lane)) {
        auto const& row = line(times.item);
        if (!times.start || !times.leave) {
            return std::nullopt;
        }
        auto const& drain = row.drain;
        if (drain.runs_out(x)) {
            RunsOut found;
            found.line = times.item;
            find(times.item, x, found);
            result.runs_out.push_back(std::move(found));
            x = std::min(drain.at(x), drain.most);
        } else {
            x = drain.at(x);
        }
        auto const behind = times.leave->expected - times.start->expected - row.stretch.end.expected;
        x = rest(tank_, behind).at(x);
    }
    result.used = x / Distance::per_metre;
    return result;
}

void Reserve::turn_to(plan::Index session, int lane) {
    auto const* const pacing = &clock_.pacing(session, lane);
    if (session == session_ && pacing == pacing_) {
        return;
    }
    session_ = session;
    lane_ = lane;
    pacing_ = pacing;
    lines_.clear();
    pacing_number_ = pacings_.try_emplace(pacing, static_cast<std::uint32_t>(pacings_.size())).first->second;
    if (pacing->known()) {
        tank_ = tank_of(*pacing);
    }
}

/// Lanes of one pace share most lines.
Reserve::Row const& Reserve::line(plan::Index index) {
    auto const known = lines_.find(index);
    return known != lines_.end() ? known->second : lines_.emplace(index, of(index)).first->second;
}

/// From the end of its last swim to what follows.
Duration Reserve::waiting(Row const& row) const {
    return row.stretch.slots.expected - row.stretch.end.expected + row.stretch.gap.expected;
}

void Reserve::put_behind(Row& row, Row const& next) const {
    row.drain = row.drain.then(rest(tank_, waiting(row))).then(next.drain);
    row.stretch.then(next.stretch);
}

/// What follows the last one may differ, so it stands alone.
Reserve::Row Reserve::times(Row const& row, std::int64_t n) const {
    auto const round = row.drain.then(rest(tank_, waiting(row)));
    return {row.stretch.times(n), round.times(n - 1).then(row.drain)};
}

Reserve::Row Reserve::of(plan::Index index) {
    Alikes alikes;
    return of(index, bouts_of(plan_, plan_.items[index]), alikes);
}

Reserve::Row Reserve::of(plan::Index index, std::vector<Bout> const& bouts, Alikes& alikes) {
    auto row = of(index, bouts.front(), alikes);
    for (std::size_t i = 1; i < bouts.size(); ++i) {
        put_behind(row, of(index, bouts[i], alikes));
    }
    return row;
}

Reserve::Row Reserve::of(plan::Index index, Bout const& bout, Alikes& alikes) {
    auto const row = bout.inside.empty() ? one(index, bout, alikes) : of(index, bout.inside, alikes);
    return bout.times == 1 ? row : times(row, bout.times);
}

Drain Reserve::rep(plan::Index terms, std::int64_t amount, bool timed) {
    auto const place = pacing_number_ << 32U | clock_.alike(terms);
    auto const key = timed ? -amount : amount;
    auto const hash =
        (place ^ static_cast<std::uint64_t>(key) * 0x9e3779b97f4a7c15ULL) * 0x9e3779b97f4a7c15ULL;
    auto& slot = remembered_[hash >> 32U & (room - 1)];
    if (slot.place != place || slot.amount != key) {
        slot = {place, key, rep_drain(plan_, *pacing_, plan_.terms[terms], amount, timed)};
    }
    return slot.drain;
}

/// One rep or round, with what follows it.
Reserve::Row Reserve::one(plan::Index index, Bout const& bout, Alikes& alikes) {
    auto const& item = plan_.items[index];
    auto const known = alikes.find(bout.selection);
    Row row;
    if (known != alikes.end() && !item.is_ladder()) {
        row = known->second;
    } else if (item.is_leaf()) {
        auto const terms = bout.selection != nullptr ? bout.selection->terms : item.terms;
        auto const amount = item.is_ladder() ? plan_.rungs[item.body + bout.number] : item.amount;
        row.stretch = stretch_of(clock_.rep(session_, lane_, terms, amount, item.is_timed()), index);
        row.drain = rep(terms, amount, item.is_timed());
    } else {
        row = inside(index, bout.selection);
    }
    if (known == alikes.end() && bout.times < item.count) {
        alikes.emplace(bout.selection, row);
    }
    recover(row.stretch, plan_, item, bout.number);
    return row;
}

/// One round without what follows it. A group's own items are reached from nowhere else; any other body
/// may be reached on many ways and is remembered.
Reserve::Row Reserve::inside(plan::Index index, plan::Selection const* selection) {
    auto const first = selection != nullptr ? selection->body : plan_.items[index].body;
    if (first == index + 1) {
        return siblings(index, first);
    }
    auto const key = pacing_number_ << 32U | first;
    if (auto const known = shared_.find(key); known != shared_.end()) {
        return known->second;
    }
    auto const row = siblings(index, first);
    shared_.emplace(key, row);
    return row;
}

Reserve::Row Reserve::siblings(plan::Index index, plan::Index first) {
    if (plan_.items[index].kind == plan::Item::Kind::use) {
        return of(first);
    }
    auto row = of(first);
    for (auto at = first; !plan_.items[at].last;) {
        at = plan_.after(at);
        put_behind(row, of(at));
    }
    return row;
}

// --- where it runs out: down the one way on which it does ---

void Reserve::find(plan::Index index, double x, RunsOut& found) {
    if (plan_.items[index].kind == plan::Item::Kind::use && found.use == plan::no_index) {
        found.use = index;
    }
    Alikes alikes;
    find(index, bouts_of(plan_, plan_.items[index]), 0, x, alikes, found);
}

/// `skipped` reps or rounds lie between the bouts' own numbers and where they come this time.
void Reserve::find(plan::Index index, std::vector<Bout> const& bouts, std::uint32_t skipped, double x,
                   Alikes& alikes, RunsOut& found) {
    auto at = bouts.begin();
    for (auto row = of(index, *at, alikes); !row.drain.runs_out(x) && at + 1 != bouts.end();
         row = of(index, *at, alikes)) {
        x = rest(tank_, waiting(row)).at(row.drain.at(x));
        ++at;
    }
    auto const row = at->inside.empty() ? one(index, *at, alikes) : of(index, at->inside, alikes);
    auto const round = row.drain.then(rest(tank_, waiting(row)));
    auto const before = static_cast<std::uint32_t>(Repeated{round}.first_to_run_out(x, at->times));
    if (!at->inside.empty()) {
        auto const once = at->count() / at->times;
        find(index, at->inside, skipped + before * once, x, alikes, found);
        return;
    }
    auto const& item = plan_.items[index];
    Nth const nth{at->number + skipped + before + 1, item.count};
    if (item.is_leaf()) {
        found.item = index;
        found.rep = nth;
        return;
    }
    found.rounds.push_back(nth);
    find_inside(index, at->selection, x, found);
}

void Reserve::find_inside(plan::Index index, plan::Selection const* selection, double x, RunsOut& found) {
    auto at = selection != nullptr ? selection->body : plan_.items[index].body;
    if (plan_.items[index].kind == plan::Item::Kind::group) {
        for (auto row = of(at); !row.drain.runs_out(x) && !plan_.items[at].last; row = of(at)) {
            x = rest(tank_, waiting(row)).at(row.drain.at(x));
            at = plan_.after(at);
        }
    }
    find(at, x, found);
}

} // namespace lengthwise::calc
