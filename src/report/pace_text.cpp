#include "report/pace_text.hpp"

#include "plan/spell.hpp"
#include "report/findings_text.hpp"
#include "report/pace_words.hpp"
#include "report/table.hpp"
#include "report/width.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace lengthwise::report {
namespace {

constexpr std::size_t sentence_width = 60;

Duration to_second(double seconds) {
    return Duration::seconds(static_cast<std::int64_t>(std::floor(seconds + 0.5)));
}

/// Tenths, half up, as a figure whose fraction hangs outside its column: "-1" and ".0".
Cell tenths(calc::Exact const& number) {
    auto const tenths = (number * 10).rounded();
    auto const size = std::abs(tenths);
    return {fmt::format("{}{}", tenths < 0 ? "-" : "", size / 10), fmt::format(".{}", size % 10)};
}

class PaceText {
  public:
    PaceText(calc::Trials const& trials, calc::Verdict const& verdict, Paint const& paint, PaceStyle style)
        : trials_(trials), verdict_(verdict), found_(*verdict.threshold), paint_(paint), style_(style) {}

    [[nodiscard]] std::string text() const {
        auto text = answer();
        if (found_.errors) {
            text += '\n' + swims();
        }
        text += '\n' + (found_.bound ? sentence(next_test()) : consequences());
        // Never folded: it is to be copied.
        text += "in your file: " + plan::spell_line(calc::as_setting(trials_, verdict_)) + '\n';
        text += '\n' + (found_.bound ? "" : sentence(trust())) + sentence(all_out_caution);
        return style_.ascii ? in_ascii(std::move(text)) : text;
    }

  private:
    [[nodiscard]] std::string answer() const {
        auto const pace = pace_per_100(found_.to_the_second(), trials_.unit);
        auto text = "threshold  " + paint_(Ink::bold, found_.bound ? pace + " or faster" : pace);
        if (found_.bound) {
            text += fmt::format("   a bound: one swim{}", trials_.stops ? ", with stops" : "");
        } else if (found_.errors) {
            text += fmt::format("   best line through {} swims", used());
        }
        return text + '\n';
    }

    [[nodiscard]] std::ptrdiff_t used() const {
        return std::ranges::count_if(verdict_.swims, &calc::Judged::used);
    }

    /// How far each swim is off the line.
    [[nodiscard]] std::string swims() const {
        Table table{{{.head = "swim"},
                     {.head = "in", .figures = false},
                     {.head = "time"},
                     {.head = "off the line, m"}}};
        auto const one_course = std::ranges::all_of(trials_.swims, [this](calc::Swim const& swim) {
            return swim.course == trials_.swims.front().course;
        });
        for (std::size_t i = 0; i < trials_.swims.size(); ++i) {
            auto const& swim = trials_.swims[i];
            auto const& residual = verdict_.swims[i].residual;
            table.row({{.text = spell::distance(swim.distance, swim.unit)},
                       {.text = one_course ? "" : course(swim.course)},
                       {.text = spell::clock(swim.time)},
                       residual ? tenths(*residual) : Cell{.text = "-"}});
        }
        return table.text(paint_);
    }

    [[nodiscard]] static std::string course(Pool const& pool) {
        switch (pool.kind) {
        case Pool::Kind::pool:
            return spell::distance(pool.length, pool.unit);
        case Pool::Kind::open_water:
            return "open water";
        case Pool::Kind::unsaid:
            break;
        }
        return "?";
    }

    /// What follows from the line, a row each.
    [[nodiscard]] std::string consequences() const {
        Table table{{{.figures = false}, {.figures = false}}};
        if (auto const error = found_.pace_error()) {
            table.row({{.text = "standard error"},
                       {.text = fmt::format("{:.1f} s per 100 {}", std::floor(*error * 10 + 0.5) / 10,
                                            spell::symbol(trials_.unit))}});
        }
        table.row({{.text = "reserve"}, {.text = reserve()}});
        auto const [low, high] = found_.over_half_an_hour();
        table.row({{.text = "over 30 min"},
                   {.text = fmt::format("about {}–{}", spell::clock(report::to_second(low)),
                                        pace_per_100(report::to_second(high), trials_.unit))}});
        for (auto const& [distance, seconds] : verdict_.predictions) {
            table.row({{.text = amount(distance) + " all out"},
                       {.text = fmt::format("about {}, {}–{}", spell::clock(to_second(seconds.expected)),
                                            spell::clock(to_second(seconds.low)),
                                            spell::clock(to_second(seconds.high)))}});
        }
        return table.text(paint_) + '\n';
    }

    [[nodiscard]] std::string reserve() const {
        auto const metres = fmt::format("{} m", found_.reserve.rounded());
        return found_.errors ? fmt::format("{}, give or take {:.0f} m", metres,
                                           std::floor(found_.errors->intercept + 0.5))
                             : metres + ", no more than a hint from two swims";
    }

    [[nodiscard]] std::string amount(Distance distance) const {
        auto const unit = Distance::divides(one(trials_.unit), distance) ? trials_.unit : Unit::metre;
        return spell::distance(distance, unit);
    }

    [[nodiscard]] std::string next_test() const {
        return fmt::format("swim a second distance all out, 200 {0} or 400 {0}, for a figure",
                           spell::symbol(trials_.unit));
    }

    /// Scott 2023: repeated tests of one swimmer differ by up to 4 % in speed, by 13 to 45 % in D'.
    [[nodiscard]] static std::string_view trust() { return "good to about 4 % at best, over 30 min less so"; }

    [[nodiscard]] std::string sentence(std::string_view text) const {
        return fold(text, std::min(style_.width, sentence_width), 0) + '\n';
    }

    calc::Trials const& trials_;
    calc::Verdict const& verdict_;
    calc::Threshold const& found_;
    Paint const& paint_;
    PaceStyle style_;
};

} // namespace

std::string pace_text(calc::Trials const& trials, calc::Verdict const& verdict, Paint const& paint,
                      PaceStyle style) {
    return PaceText{trials, verdict, paint, style}.text();
}

} // namespace lengthwise::report
