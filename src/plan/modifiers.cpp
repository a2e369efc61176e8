#include "plan/modifiers.hpp"

#include "plan/amounts.hpp"

#include <fmt/core.h>

#include <array>
#include <string>
#include <string_view>

namespace lengthwise::plan {
namespace {

using grammar::Kind;
using grammar::Node;
using grammar::Tree;

/// One reading of a run of modifiers.
class Reading {
  public:
    Reading(Work& work, Tree const& tree, Pool const& pool, Owner owner)
        : work_(work), tree_(tree), pool_(pool), owner_(owner) {}

    Said read(std::uint32_t first, std::uint32_t end) {
        check_once(work_.report, tree_, first, end);
        said_.notes.first = static_cast<Index>(work_.plan.texts.size());
        for (auto i = first; i < end && tree_.nodes[i].kind != Kind::selector; i = tree_.next(i)) {
            take(i);
        }
        return said_;
    }

  private:
    Node const& node(std::uint32_t i) const { return tree_.nodes[i]; }

    void take(std::uint32_t i) {
        switch (node(i).kind) {
        case Kind::stroke:
            said_.manner.stroke = stroke_of(node(i).as_word());
            break;
        case Kind::mode:
            take_mode(i);
            break;
        case Kind::effort:
        case Kind::at_percent:
        case Kind::at_pace:
        case Kind::hold:
        case Kind::rpe:
            take_effort(i);
            break;
        case Kind::build:
        case Kind::descend:
        case Kind::negative_split:
            take_shape(i);
            break;
        case Kind::with:
        case Kind::with_more:
            take_gear(i);
            break;
        case Kind::split:
            said_.split = i;
            break;
        case Kind::broken:
        case Kind::broken_time:
            take_broken(i);
            break;
        case Kind::rest:
        case Kind::rest_as_needed:
        case Kind::rest_breaths:
        case Kind::on:
            take_recovery(i);
            break;
        case Kind::note:
            work_.plan.texts.push_back(work_.text_of(tree_, i));
            ++said_.notes.count;
            break;
        default: // leaves that a modifier before them has read
            break;
        }
    }

    void take_mode(std::uint32_t i) {
        said_.manner.mode = mode_of(node(i).as_word());
        if (i + 1 < tree_.size() && node(i + 1).kind == Kind::name) {
            said_.manner.drill = work_.text_of(tree_, i + 1);
        }
    }

    void take_effort(std::uint32_t i) {
        auto& effort = said_.manner.effort;
        auto const& n = node(i);
        switch (n.kind) {
        case Kind::effort:
            effort.kind = Effort::Kind::word;
            effort.word = effort_of(n.as_word());
            take_shift(i + 1);
            break;
        case Kind::at_percent:
            effort.kind = Effort::Kind::percent;
            effort.number = n.value;
            within(n, 30, 150, "percent of threshold speed");
            break;
        case Kind::at_pace:
            effort.kind = Effort::Kind::pace;
            effort.time = duration_of(n);
            effort.per = distance_in(work_.report, pool_, node(i + 1)).value_or(Distance::metres(100));
            above_zero(n);
            break;
        case Kind::hold:
            effort.kind = Effort::Kind::hold;
            effort.time = duration_of(n);
            above_zero(n);
            if (owner_ == Owner::part) {
                work_.report.error(code::pairing, clause_of(tree_, i),
                                   "hold is the time of a whole rep, not of a part", "put it before `as`");
            }
            break;
        default:
            effort.kind = Effort::Kind::rpe;
            effort.number = n.value;
            within(n, 1, 10, "rpe");
            break;
        }
    }

    void take_shift(std::uint32_t i) {
        if (i + 1 < tree_.size() && node(i).kind == Kind::effort_shift) {
            auto const by = duration_of(node(i + 1));
            said_.manner.effort.shift = node(i).as_word() == Word::minus ? Duration{} - by : by;
        }
    }

    void take_shape(std::uint32_t i) {
        auto const& n = node(i);
        if (n.kind == Kind::build) {
            said_.shape.kind = Shape::Kind::build;
        } else if (n.kind == Kind::negative_split) {
            said_.shape.kind = Shape::Kind::negative_split;
        } else {
            said_.shape = {Shape::Kind::descend, static_cast<std::uint16_t>(n.value & 0xFFFFU),
                           static_cast<std::uint16_t>(n.value >> 16)};
        }
    }

    void take_gear(std::uint32_t i) {
        auto const& n = node(i);
        auto const word = n.as_word();
        if (word == Word::stops) {
            said_.stops = true;
            if (owner_ == Owner::group || owner_ == Owner::heading || owner_ == Owner::part) {
                work_.report.error(code::pairing, span_of(n),
                                   "with stops stands behind reps, not behind a group or heading",
                                   "write it on the lines that are swum with stops");
            }
        } else if (word == Word::nothing) {
            said_.nothing = true;
            said_.manner.gear.said = true;
        } else if (said_.manner.gear.has(gear_of(word))) {
            work_.report.error(code::twice, span_of(n), fmt::format("{} is named twice", spelling(word)));
        } else {
            said_.manner.gear.add(gear_of(word));
        }
        if (said_.nothing && said_.stops) {
            work_.report.error(code::pairing, span_of(n),
                               "with nothing takes stops away; with stops asks for them", "keep one");
        }
    }

    void take_broken(std::uint32_t i) {
        auto const& n = node(i);
        said_.broken.pause = duration_of(node(i + 1));
        said_.broken.unit = n.kind == Kind::broken ? n.unit() : grammar::WrittenUnit::bare;
        said_.broken.timed = n.kind == Kind::broken_time;
        if (said_.broken.timed) {
            above_zero(n);
            said_.broken.piece = duration_of(n).ms();
        } else if (auto const piece = distance_in(work_.report, pool_, n)) {
            said_.broken.piece = piece->units();
        }
    }

    void take_recovery(std::uint32_t i) {
        auto& recovery = said_.recovery;
        auto const& n = node(i);
        switch (n.kind) {
        case Kind::rest: {
            auto const ranged = i + 1 < tree_.size() && node(i + 1).kind == Kind::rest_to;
            recovery.kind = Recovery::Kind::rest;
            recovery.rest = range_of(n, ranged ? &node(i + 1) : nullptr).value_or(Range<Duration>{});
            break;
        }
        case Kind::rest_as_needed:
            recovery.kind = Recovery::Kind::as_needed;
            break;
        case Kind::rest_breaths:
            recovery.kind = Recovery::Kind::breaths;
            recovery.number = n.value;
            if (n.value == 0) {
                work_.report.error(code::amount, span_of(n), "rest 0 breaths: at least one",
                                   "rest 3 breaths");
            }
            break;
        default:
            take_send_offs(i);
            break;
        }
    }

    void take_send_offs(std::uint32_t i) {
        auto& recovery = said_.recovery;
        recovery.kind = Recovery::Kind::on;
        recovery.first_step = static_cast<Index>(work_.plan.send_offs.size());
        recovery.steps = 0;
        do {
            above_zero(node(i));
            work_.plan.send_offs.push_back(duration_of(node(i)));
            ++recovery.steps;
            ++i;
        } while (i < tree_.size() && node(i).kind == Kind::on_more);
    }

    void above_zero(Node const& time) {
        if (time.value == 0) {
            work_.report.error(code::amount, span_of(time), "a time of 0 is not swum",
                               "write minutes and seconds: 1:30");
        }
    }

    void within(Node const& n, std::uint32_t low, std::uint32_t high, std::string_view of) {
        if (n.value < low || n.value > high) {
            work_.report.error(code::amount, span_of(n),
                               fmt::format("{}: {} goes from {} to {}", n.value, of, low, high));
        }
    }

    Work& work_;
    Tree const& tree_;
    Pool const& pool_;
    Owner owner_;
    Said said_;
};

} // namespace

Said read_modifiers(Work& work, Tree const& tree, std::uint32_t first, std::uint32_t end, Pool const& pool,
                    Owner owner) {
    return Reading{work, tree, pool, owner}.read(first, end);
}

} // namespace lengthwise::plan
