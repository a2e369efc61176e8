#include "report/compose_text.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include "calc/growth.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace lengthwise::report {

namespace {

using compose::Choice;
using compose::Ramp;
using compose::RampWeek;
using compose::WeekKind;

constexpr std::size_t screen = 60;

/// Behind a label that takes `indent`. A `~` stands for a blank that no line breaks at.
std::string folded(std::string_view words, std::size_t width, std::size_t indent) {
    std::string text;
    for (auto const c : fold(words, width - indent, 0)) {
        text += c == '~' ? ' ' : c;
        text.append(c == '\n' ? indent : 0, ' ');
    }
    return text + '\n';
}

class Reasons {
  public:
    Reasons(Ramp const& ramp, bool ascii)
        : ramp_(ramp), ascii_(ascii), longest_(ramp.today_longest * ramp.pool.length),
          highest_(ramp.today_week * ramp.pool.length) {}

    std::string text(Paint const& paint) {
        for (auto const& week : ramp_.weeks) {
            week.choice ? build(week) : easy(week);
        }
        std::size_t width = 0;
        for (auto const& [label, words] : lines_) {
            width = std::max(width, cells(label));
        }
        auto text = folded(head(), screen, 0) + "\n";
        for (auto const& [label, words] : lines_) {
            text += paint(Ink::dim, pad_right(label, width)) + "  " + folded(words, screen, width + 2);
        }
        return text;
    }

  private:
    [[nodiscard]] std::string figure(Distance distance) const {
        return spell::number(distance, ramp_.pool.unit, ascii_);
    }
    [[nodiscard]] std::string figure(int laps) const { return figure(laps * ramp_.lap); }
    [[nodiscard]] std::string said(Distance distance) const {
        return spell::distance(distance, ramp_.pool.unit, ascii_);
    }
    [[nodiscard]] std::string race() const { return said(ramp_.race_rep * ramp_.lap); }
    [[nodiscard]] std::string rep_share() const {
        return ramp_.rep_by_third ? "a third" : fmt::format("{}~%", ramp_.rep_percent);
    }

    [[nodiscard]] std::string head() const {
        return fmt::format(
            "gentlest steps that reach {}: the week grows by at most {}~%, or a lap a session; the "
            "rep by {}, or a lap",
            race(), ramp_.week_percent, rep_share());
    }

    void add(std::string label, std::string words) {
        lines_.emplace_back(std::move(label), std::move(words));
    }

    void build(RampWeek const& week) {
        add(fmt::format("week {}, rep {}", week.number, figure(week.rep)), rep_words(week, *week.choice));
        add(fmt::format("week {}, {}", week.number, said(week.laps * ramp_.lap)),
            week_words(week, *week.choice));
        longest_ = std::max(longest_, week.rep * ramp_.lap);
        highest_ = std::max(highest_, week.laps * ramp_.lap);
    }

    [[nodiscard]] std::string rep_words(RampWeek const& week, Choice const& choice) const {
        auto const rep = week.rep * ramp_.lap;
        if (rep == longest_) {
            return week.rep == ramp_.race_rep ? "held: it is the race rep"
                                              : "held, nearest to a straight climb";
        }
        auto const least = week.rep == choice.least_rep;
        auto const most = week.rep == std::min(choice.gentle_rep, ramp_.race_rep);
        if (week.rep == ramp_.race_rep) {
            return fmt::format("the race rep, {} more", percent(rep));
        }
        if (least && most) {
            return fmt::format("{}, {}", too_little(week.rep - 1), too_much(week.rep + 1));
        }
        auto const nearest = "nearest to a straight climb";
        return least  ? fmt::format("{}; {}", too_little(week.rep - 1), nearest)
               : most ? fmt::format("{}; {}", too_much(week.rep + 1), nearest)
                      : fmt::format("{}; {} to {} could be had", nearest, figure(choice.least_rep),
                                    figure(std::min(choice.gentle_rep, ramp_.race_rep)));
    }

    [[nodiscard]] std::string too_little(int laps) const {
        return laps == 0 ? "the least" : fmt::format("{} comes short of {}", figure(laps), race());
    }
    [[nodiscard]] std::string too_much(int laps) const {
        return fmt::format("{} would be {} more", figure(laps), percent(laps * ramp_.lap));
    }
    /// How much more than the longest so far, rounded up.
    [[nodiscard]] std::string percent(Distance rep) const {
        auto const more = (rep - longest_).units() * 100;
        return fmt::format("{}~%", more > 0 ? (more + longest_.units() - 1) / longest_.units() : 0);
    }

    [[nodiscard]] std::string week_words(RampWeek const& week, Choice const& choice) const {
        if (week.laps == choice.least_week) {
            return fmt::format("the least that holds a rep of {}", figure(week.rep));
        }
        if (choice.slot_week && week.laps == *choice.slot_week) {
            return "the most that the slot holds";
        }
        auto const laps = week.laps * ramp_.lap;
        if (laps > highest_ && week.laps == choice.gentle_week) {
            return growth_words(laps);
        }
        return fmt::format("{}nearest to an even climb to {}", laps == highest_ ? "held, " : "",
                           figure(ramp_.goal_week * ramp_.pool.length));
    }

    /// Why no more: a lap a session, or the share.
    [[nodiscard]] std::string growth_words(Distance laps) const {
        auto const each = ramp_.sessions * ramp_.lap;
        if (laps <= highest_ + each) {
            return fmt::format("a lap of {} more a session", figure(ramp_.lap));
        }
        auto const share = Distance::units(highest_.units() * ramp_.week_percent / 100);
        auto const in_lengths = Distance::whole(share, ramp_.pool.length) * ramp_.pool.length;
        return fmt::format("{}~% of {} is {}, {} in whole laps", ramp_.week_percent, figure(highest_),
                           figure(in_lengths), figure(laps - highest_));
    }

    void easy(RampWeek const& week) {
        if (week.kind == WeekKind::empty) {
            add(fmt::format("week {}", week.number), "closed on all its days");
            return;
        }
        add(fmt::format("week {}, {}", week.number, said(week.laps * ramp_.lap)), easy_words(week));
    }

    [[nodiscard]] std::string easy_words(RampWeek const& week) const {
        auto const sessions = static_cast<int>(week.days.size());
        if (week.laps == calc::fewest_laps * sessions) {
            return "four laps a session, the least";
        }
        auto words = fmt::format("{}~% of {}", week.percent, figure(highest_));
        if (sessions < ramp_.sessions) {
            words += fmt::format(", for {} of {} sessions", sessions, ramp_.sessions);
        }
        switch (week.kind) {
        case WeekKind::taper:
            return words + ": easy before the race";
        case WeekKind::recovery:
            return words + ": recovery";
        case WeekKind::build:
        case WeekKind::eased:
        case WeekKind::empty:
            break;
        }
        return words + ": closed days";
    }

    Ramp const& ramp_;
    bool ascii_;
    Distance longest_; ///< before the week at hand
    Distance highest_;
    std::vector<std::pair<std::string, std::string>> lines_;
};

} // namespace

std::string ramp_reasons(Ramp const& ramp, Paint const& paint, bool ascii) {
    return Reasons{ramp, ascii}.text(paint);
}

} // namespace lengthwise::report
