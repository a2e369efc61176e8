#include "support/expand.hpp"

#include "grammar/words.hpp"

#include <algorithm>
#include <set>

namespace lengthwise::support {
namespace {

/// The selection that chooses rep or round `number` (from 1), if one does.
plan::Selection const* chosen_by(plan::Plan const& plan, plan::Terms const& terms, std::uint32_t number) {
    for (std::uint32_t i = 0; i < terms.selections.count; ++i) {
        auto const& selection = plan.selections[terms.selections.first + i];
        auto candidate = selection.first;
        for (std::uint32_t k = 0; k < selection.count; ++k, candidate += selection.step) {
            if (candidate == number) {
                return &selection;
            }
        }
    }
    return nullptr;
}

class Expander {
  public:
    Expander(plan::Plan const& plan, ExpandedRep rep, Visit const& visit)
        : plan_(plan), rep_(rep), visit_(visit) {}

    void item(plan::Item const& item) {
        using Kind = plan::Item::Kind;
        for (std::uint32_t number = 1; number <= item.count; ++number) {
            auto const& own = plan_.terms[item.terms];
            auto const* chosen = chosen_by(plan_, own, number);
            switch (item.kind) {
            case Kind::pause:
            case Kind::note:
                return;
            case Kind::reps:
            case Kind::timed_reps:
                rep(item.kind == Kind::timed_reps, item.amount, chosen ? plan_.terms[chosen->terms] : own);
                break;
            case Kind::ladder:
            case Kind::timed_ladder:
                rep(item.kind == Kind::timed_ladder, plan_.rungs[item.body + number - 1],
                    chosen ? plan_.terms[chosen->terms] : own);
                break;
            case Kind::group:
                siblings(chosen ? chosen->body : item.body);
                break;
            case Kind::use:
                this->item(plan_.items[chosen ? chosen->body : item.body]);
                break;
            }
        }
    }

  private:
    void siblings(plan::Index at) {
        while (at != plan::no_index) {
            item(plan_.items[at]);
            at = plan_.items[at].last ? plan::no_index : plan_.after(at);
        }
    }

    void rep(bool timed, std::int64_t amount, plan::Terms const& terms) {
        rep_.timed = timed;
        rep_.amount = amount;
        rep_.terms = &terms;
        visit_(rep_);
    }

    plan::Plan const& plan_;
    ExpandedRep rep_;
    Visit const& visit_;
};

struct Piece {
    plan::Manner manner;
    std::int64_t amount = 0;
};

/// A rep as the pieces it is swum in, each part written out as often as it comes.
std::vector<Piece> pieces(plan::Plan const& plan, ExpandedRep const& rep) {
    std::vector<Piece> all;
    auto const& parts = rep.terms->parts;
    if (parts.count == 0) {
        all.push_back({rep.terms->manner, rep.amount});
        return all;
    }
    auto left = rep.amount;
    while (left > 0) {
        for (std::uint32_t i = 0; i < parts.count; ++i) {
            auto const& part = plan.parts[parts.first + i];
            all.push_back({part.manner, part.amount});
            left -= part.amount;
        }
    }
    return all;
}

bool races(plan::Manner const& manner) {
    for (auto const gear : {Gear::fins, Gear::paddles, Gear::buoy, Gear::board, Gear::band}) {
        if (manner.gear.has(gear)) {
            return false;
        }
    }
    std::set<Mode> const other{Mode::kick, Mode::pull, Mode::drill, Mode::tread};
    return other.count(manner.mode) == 0;
}

/// What the rep is worth as the longest.
std::int64_t in_one_go(plan::Plan const& plan, ExpandedRep const& rep) {
    auto const all = pieces(plan, rep);
    bool const counts = !rep.timed && !rep.terms->stops &&
                        std::all_of(all.begin(), all.end(), [](Piece const& p) { return races(p.manner); });
    auto const piece = std::int64_t{rep.terms->broken.piece};
    return !counts ? 0 : piece > 0 ? piece : rep.amount;
}

/// Walls touched, one length after the other.
std::int64_t lengths(std::int64_t amount, Pool const& pool) {
    std::int64_t count = 0;
    if (pool.kind == Pool::Kind::pool) {
        for (; amount > 0; amount -= pool.length.units()) {
            ++count;
        }
    }
    return count;
}

bool treads(Piece const& piece) {
    return piece.manner.mode == Mode::tread;
}

std::string effort(plan::Effort const& effort) {
    using Kind = plan::Effort::Kind;
    switch (effort.kind) {
    case Kind::unsaid:
        break;
    case Kind::word:
        return std::string{spelling(word_of(effort.word))};
    case Kind::percent:
        return "at " + std::to_string(effort.number) + "%";
    case Kind::pace:
        return "at a pace";
    case Kind::hold:
        return "hold";
    case Kind::rpe:
        return "rpe " + std::to_string(effort.number);
    }
    return "unsaid";
}

std::string gear(plan::GearSet const& gear) {
    std::string text;
    for (auto const word :
         {Gear::fins, Gear::paddles, Gear::buoy, Gear::board, Gear::snorkel, Gear::band, Gear::wetsuit}) {
        if (gear.has(word)) {
            text += (text.empty() ? "" : ", ") + std::string{spelling(word_of(word))};
        }
    }
    return text.empty() ? "nothing" : text;
}

std::string word(calc::By by, Piece const& piece, ExpandedRep const& rep) {
    switch (by) {
    case calc::By::stroke:
        return piece.manner.stroke == Stroke::unsaid ? "unsaid"
                                                     : std::string{spelling(word_of(piece.manner.stroke))};
    case calc::By::mode:
        return piece.manner.mode == Mode::unsaid ? "swim" : std::string{spelling(word_of(piece.manner.mode))};
    case calc::By::effort:
        return effort(piece.manner.effort);
    case calc::By::gear:
        return gear(rep.terms->manner.gear);
    case calc::By::section:
        break;
    }
    return std::string{spelling(word_of(rep.section->kind))};
}

} // namespace

void expand(plan::Plan const& plan, plan::Session const& session, Swimmer swimmer, Visit const& visit) {
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        auto const& section = plan.sections[i];
        ExpandedRep const rep{false, 0, nullptr, &session, &section, plan.pools[session.pool]};
        Expander expander{plan, rep, visit};
        for (auto at = section.body; at != plan::no_index;) {
            auto const& item = plan.items[at];
            bool const mine =
                item.first_lane == 0 || (item.first_lane <= swimmer.lane && swimmer.lane <= item.last_lane);
            if (mine && item.optional == swimmer.optional) {
                expander.item(item);
            }
            at = item.last ? plan::no_index : plan.after(at);
        }
    }
}

void Adder::add(ExpandedRep const& rep) {
    totals_.reps += 1;
    if (rep.timed) {
        auto const all = pieces(plan_, rep);
        totals_.timed += Duration::ms(rep.amount);
        totals_.timed_reps += 1;
        totals_.treading_reps += std::all_of(all.begin(), all.end(), treads) ? 1 : 0;
        return;
    }
    totals_.distance += Distance::units(rep.amount);
    totals_.lengths += lengths(rep.amount, rep.pool);
    totals_.longest = std::max(totals_.longest, Distance::units(in_one_go(plan_, rep)));
}

void WordAdder::add(ExpandedRep const& rep) {
    std::map<std::string, std::int64_t> amounts;
    std::map<std::string, bool> only_treads;
    for (auto const& piece : pieces(plan_, rep)) {
        auto const name = word(by_, piece, rep);
        amounts[name] += piece.amount;
        only_treads.emplace(name, true).first->second &= treads(piece);
    }
    for (auto const& [name, amount] : amounts) {
        auto& totals = words_[name];
        totals.reps += 1;
        if (rep.timed) {
            totals.timed += Duration::ms(amount);
            totals.timed_reps += 1;
            totals.treading_reps += only_treads[name] ? 1 : 0;
            continue;
        }
        totals.distance += Distance::units(amount);
        totals.lengths += lengths(amount, rep.pool);
        if (amounts.size() == 1) {
            totals.longest = std::max(totals.longest, Distance::units(in_one_go(plan_, rep)));
        }
    }
}

} // namespace lengthwise::support
