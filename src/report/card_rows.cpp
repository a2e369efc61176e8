#include "report/card_rows.hpp"

#include "calc/tight_start.hpp"
#include "report/card_words.hpp"
#include "report/deck_hand.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <algorithm>

namespace lengthwise::report {
namespace {

using plan::Item;
using plan::Recovery;

/// From so many rows on, sets keep their names.
constexpr std::uint64_t most_items = 500;

std::string times_of(int count) {
    return count > 1 ? std::to_string(count) : std::string{};
}

/// What all parts share is said once, and not by each.
plan::Manner shared_by(plan::Plan const& plan, plan::Terms const& terms) {
    auto shared = plan.parts[terms.parts.first].manner;
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        auto const& manner = plan.parts[i].manner;
        shared.effort = manner.effort == shared.effort ? shared.effort : plan::Effort{};
        shared.gear = manner.gear == shared.gear ? shared.gear : plan::GearSet{};
    }
    shared.stroke = Stroke::unsaid;
    shared.mode = Mode::unsaid;
    shared.drill = {};
    return shared;
}

} // namespace

void CardRows::enter(plan::Section const& section) {
    auto const& heading = plan_.heading_of(section);
    held_ = heading.said;
    rest_ = heading.said_rest;
    rest_taken_ = heading.said_rest.has_value();
    for (auto const settings :
         {session_.settings, plan_.weeks[session_.week].settings, plan_.file_settings}) {
        rest_ = rest_ ? rest_ : plan_.settings[settings].rest;
    }
}

std::vector<std::string> CardRows::holds() const {
    auto words = manner_words(held_, {}, pool_);
    if (rest_ && rest_taken_ && !rest_->high.zero()) {
        words.push_back(rest_words(*rest_));
    }
    return words;
}

CardRow CardRows::row(Item const& item, bool last) {
    CardRow row;
    switch (item.kind) {
    case Item::Kind::pause:
        row.kind = CardRow::Kind::pause;
        row.recovery = "pause " + spell::duration(item.duration());
        if (item.body != plan::no_index) {
            row.notes = note_words(plan_, {item.body, 1});
        }
        return row;
    case Item::Kind::note:
        row.kind = CardRow::Kind::note;
        row.notes = note_words(plan_, {item.body, 1});
        return row;
    default:
        return swum(item, !last);
    }
}

/// `gap`: what follows its last rep is its own recovery, not that of a group around it.
CardRow CardRows::swum(Item const& item, bool gap) {
    auto const& terms = plan_.terms[item.terms];
    bool const bare = item.count == 1 && terms.said == plan::Manner{} && terms.notes.empty() &&
                      terms.said_recovery.kind == Recovery::Kind::none && terms.selections.empty();
    if (item.kind == Item::Kind::use && bare && fits(item)) {
        auto held = swum(plan_.items[item.body], gap);
        held.optional = item.optional;
        held.lengths = item.optional && !held.lengths.empty() ? "+" + held.lengths : held.lengths;
        return held;
    }
    ++written_;
    CardRow row;
    row.optional = item.optional;
    row.longest = longest_ != plan::no_index && &item == &plan_.items[longest_];
    row.count = times_of(item.is_ladder() ? 1 : item.count);
    if (auto const lengths = reckoner_.of_item(session_, item).lengths; lengths > 0) {
        row.lengths = (item.optional ? "+" : "") + std::to_string(lengths);
    }
    row.notes = note_words(plan_, terms.notes);
    if (item.is_leaf()) {
        leaf(row, item, gap);
    } else {
        group(row, item, gap);
        unwrap(row);
    }
    auto const& recovery = item.is_leaf() ? terms.recovery : terms.said_recovery;
    if (recovery.kind == Recovery::Kind::on) {
        row.hand = hand(item);
    }
    if (auto words = selector_words(plan_, terms, pool_); !words.empty()) {
        row.how.push_back(std::move(words));
    }
    return row;
}

/// Only where everybody leaves by the send-offs.
std::string CardRows::hand(Item const& item) {
    calc::SendOffs const set{static_cast<plan::Index>(&item - plan_.items.data()), item.terms, item.count};
    return calc::starts_are_made(plan_, clock_, index_, {timed_as_}, set) ? hand_text(plan_, set) : "";
}

void CardRows::leaf(CardRow& row, Item const& item, bool gap) {
    auto const& terms = plan_.terms[item.terms];
    if (item.is_ladder()) {
        for (plan::Index k = item.body; k < item.body + item.count; ++k) {
            auto const amount = plan_.rungs[k];
            row.amount.push_back(item.is_timed()
                                     ? spell::duration(Duration::ms(amount))
                                     : amount_words(Distance::units(amount), plan_.rung_units[k], pool_));
        }
    } else {
        row.amount = {item.is_timed() ? spell::duration(item.duration())
                                      : amount_words(item.distance(), item.unit, pool_)};
    }
    if (terms.parts.empty()) {
        row.what = manner_words(terms.manner, held_, pool_);
    } else {
        split(row, item);
    }
    if (terms.shape.kind == plan::Shape::Kind::build) {
        row.what.emplace_back("build");
    }
    if (terms.stops) {
        row.what.emplace_back("with stops");
    }
    recovery(row, terms.recovery, gap || item.count > 1);
    for (auto text : {broken_words(terms.broken, pool_), shape_words(terms.shape)}) {
        if (!text.empty()) {
            row.how.push_back(std::move(text));
        }
    }
}

std::string CardRows::part_words(plan::Part const& part, plan::Manner const& shared) const {
    auto held = held_;
    held.effort = shared.effort.said() ? shared.effort : held.effort;
    held.gear = shared.gear.said ? shared.gear : held.gear;
    auto words = manner_words(part.manner, held, pool_);
    if (words.empty() && part.manner.mode == Mode::unsaid && part.manner.stroke != Stroke::unsaid) {
        words = manner_words(part.manner, {}, pool_);
    }
    if (part.build) {
        words.emplace_back("build");
    }
    auto text = joined(words, " ");
    return text.empty() ? "swim" : text;
}

void CardRows::split(CardRow& row, Item const& item) {
    auto const& terms = plan_.terms[item.terms];
    auto const shared = shared_by(plan_, terms);
    std::vector<std::string> words;
    std::vector<std::string> amounts;
    std::vector<std::string> both;
    std::vector<std::string> plain;
    bool equal = true;
    std::int64_t sum = 0;
    for (auto i = terms.parts.first; i < terms.parts.end(); ++i) {
        auto const& part = plan_.parts[i];
        words.push_back(part_words(part, shared));
        amounts.push_back(part.timed ? spell::duration(Duration::ms(part.amount))
                                     : amount_words(Distance::units(part.amount), part.unit, pool_));
        both.push_back(amounts.back() + " " + words.back());
        for (auto& note : note_words(plan_, part.notes)) {
            row.notes.push_back(std::move(note));
        }
        auto kind = part.manner;
        kind.drill = {};
        kind.effort = {};
        kind.gear = {};
        auto const name = manner_words(kind, {}, pool_);
        auto const& last = name.empty() ? std::string{"swim"} : name.back();
        if (std::find(plain.begin(), plain.end(), last) == plain.end()) {
            plain.push_back(last);
        }
        equal = equal && part.amount == plan_.parts[terms.parts.first].amount;
        sum += part.amount;
    }
    row.what = {joined(words, " / ")};
    for (auto& more : manner_words(shared, held_, pool_)) {
        row.how.push_back(std::move(more));
    }
    row.plain_what = joined(plain, " / ");
    row.parts = joined(both, " / ");
    auto const all = joined(amounts, " / ");
    if (equal && sum == item.amount) {
        row.halves = all;
    } else {
        row.split = "as " + all;
    }
}

void CardRows::group(CardRow& row, Item const& item, bool gap) {
    row.kind = CardRow::Kind::group;
    auto const& terms = plan_.terms[item.terms];
    row.recovery = recovery_words(plan_, terms.said_recovery);
    // Between rounds it is the group's recovery that counts, where it has one.
    bool const between = row.recovery.empty() && (gap || item.count > 1);
    if (item.kind == Item::Kind::group) {
        for (Item const& inner : plan::items_from(plan_, item.body)) {
            row.rows.push_back(swum(inner, between || !inner.last));
        }
        return;
    }
    if (!fits(item)) {
        row.kind = CardRow::Kind::set;
        row.what = {"\"" + visible(plan_.set_of(item).name) + "\""};
        return;
    }
    auto held = swum(plan_.items[item.body], between);
    bool const doubled = held.kind == CardRow::Kind::group && held.count.empty() && held.recovery.empty() &&
                         held.how.empty() && held.notes.empty();
    row.rows = doubled ? std::move(held.rows) : std::vector{std::move(held)};
}

/// "2 × (50)" is "2 × 50".
void CardRows::unwrap(CardRow& row) {
    if (row.rows.size() != 1 || row.rows.front().kind != CardRow::Kind::set) {
        return;
    }
    auto& inner = row.rows.front();
    bool const plain = inner.count.empty() && inner.amount.size() == 1 && row.recovery.empty() &&
                       row.notes.empty() && row.how.empty();
    if (plain) {
        inner.count = row.count;
        inner.lengths = row.lengths;
        inner.optional = row.optional;
        row = CardRow{std::move(inner)};
    }
}

/// What the section says already is left out; the section says it if a row takes it.
void CardRows::recovery(CardRow& row, Recovery const& recovery, bool takes) {
    if (recovery.kind == Recovery::Kind::rest && rest_ && recovery.rest == *rest_) {
        rest_taken_ = rest_taken_ || takes;
        return;
    }
    row.recovery = recovery_words(plan_, recovery);
}

bool CardRows::fits(Item const& item) {
    std::uint64_t items = 0;
    count(item, items);
    return written_ + items <= most_items;
}

/// Counts no further than it matters: sets in sets can hold millions.
void CardRows::count(Item const& item, std::uint64_t& items) const {
    if (++items > most_items || item.is_leaf() || !item.is_swum()) {
        return;
    }
    if (item.kind == Item::Kind::use) {
        count(plan_.items[item.body], items);
        return;
    }
    for (Item const& inner : plan::items_from(plan_, item.body)) {
        if (items > most_items) {
            return;
        }
        count(inner, items);
    }
}

} // namespace lengthwise::report
