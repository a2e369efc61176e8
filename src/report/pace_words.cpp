#include "report/pace_words.hpp"

#include "report/findings_text.hpp"
#include "units/pace.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

namespace lengthwise::report {
namespace {

using calc::Remark;
using Kind = Remark::Kind;

class Words {
  public:
    Words(calc::Trials const& trials, calc::Verdict const& verdict, bool ascii)
        : trials_(trials), verdict_(verdict), ascii_(ascii) {}

    [[nodiscard]] Saying of(Remark const& remark) const {
        switch (remark.kind) {
        case Kind::not_slower:
            return {"not-slower", Severity::error,
                    fmt::format("{} is not slower than {}", swim(remark.swim), swim(remark.other)),
                    "a longer swim takes longer: check both" + courses()};
        case Kind::faster:
            return {"faster", Severity::error,
                    fmt::format("{} is faster than {}", swim(remark.swim), swim(remark.other)),
                    fmt::format("{} against {}: swim both all out, rested{}", pace_of(remark.swim),
                                pace_per_100(remark.other), courses())};
        case Kind::no_bound:
            return {"no-bound", Severity::error, swim(remark.swim) + " alone tells no threshold",
                    fmt::format("one swim takes at least 2 min and {}; two give a figure, {} and {}",
                                amount(Distance::metres(100)), round_distance(200), round_distance(400))};
        case Kind::stops:
            return {"stops", Severity::error, "swims with stops give no figure, one swim alone a bound",
                    "swim each without a stop, or give the longest alone"};
        case Kind::no_pace:
            return {"no-pace", Severity::error,
                    fmt::format("these swims come to {:.3g} s per 100 {}, which is no pace",
                                remark.pace->approximate(), spell::symbol(trials_.unit)),
                    "check distances and times"};
        default:
            return remark.kind < Kind::unused ? warning(remark) : note(remark);
        }
    }

  private:
    [[nodiscard]] Saying warning(Remark const& remark) const {
        auto const said = [](std::string_view kind, std::string message, std::string hint) {
            return Saying{kind, Severity::warning, std::move(message), std::move(hint)};
        };
        switch (remark.kind) {
        case Kind::short_swim:
            return said("short-swim", swim(remark.swim) + " is under 2 min", without(remark));
        case Kind::long_swim:
            return said("long-swim", swim(remark.swim) + " is over 20 min", without(remark));
        case Kind::close:
            return said("close",
                        fmt::format("{} is under 1.5 times {}", time(remark.swim), time(remark.other)),
                        "a much longer swim gives a surer line");
        case Kind::odd_reserve:
            return said("odd-reserve", fmt::format("a reserve of {} m is outside 6{}44 m", reserve(), dash()),
                        "a swim was not all out, or a time or distance is not right");
        case Kind::one_decides:
            return said("one-decides", swim(remark.swim) + " alone moves the threshold by over 2 %",
                        without(remark));
        default:
            return said("odd-pace",
                        fmt::format("{} is outside 0:50{}5:00 per 100 m", pace_per_100(*remark.pace), dash()),
                        "check distances and times");
        }
    }

    [[nodiscard]] Saying note(Remark const& remark) const {
        auto const said = [](std::string_view kind, std::string message, std::string hint) {
            return Saying{kind, Severity::note, std::move(message), std::move(hint)};
        };
        switch (remark.kind) {
        case Kind::unused:
            return said("unused", swim(remark.swim) + " does not count",
                        fmt::format("{} is the fastest", swim(remark.other)));
        case Kind::rather_long:
            return said("rather-long", swim(remark.swim) + " is 15 min or longer",
                        "swims of 2 to 15 min are surest");
        case Kind::little_apart:
            return said("little-apart",
                        fmt::format("{} and {} are {} apart", time(remark.other), time(remark.swim),
                                    spell::clock(timed(remark.swim).time - timed(remark.other).time)),
                        "5 min or more give a surer line");
        case Kind::no_course:
            return said("no-course", swim(remark.swim) + " has no pool; its time is taken as it is",
                        "say it behind the time: in 25m");
        case Kind::too_near:
            return said("too-near", fmt::format("no time for {}", amount(remark.distance)),
                        fmt::format("the shortest swim is {}", amount(timed(remark.swim).distance)));
        case Kind::too_far:
            return said("too-far", fmt::format("no time for {}", amount(remark.distance)),
                        fmt::format("over 30 min a swim of 3:30 or more is needed, the longest took {}",
                                    time(remark.swim)));
        default:
            return said("not-from-one", "one swim predicts no times", "swim a second distance all out");
        }
    }

    [[nodiscard]] calc::Swim const& timed(std::size_t swim) const { return trials_.swims[swim]; }
    [[nodiscard]] std::string time(std::size_t swim) const { return spell::clock(timed(swim).time); }

    [[nodiscard]] std::string swim(std::size_t index) const {
        auto const& swim = timed(index);
        return fmt::format("{} in {}", spell::distance(swim.distance, swim.unit, ascii_), time(index));
    }

    /// A distance in the unit of the pace.
    [[nodiscard]] std::string amount(Distance distance) const {
        return spell::distance(
            distance, Distance::divides(one(trials_.unit), distance) ? trials_.unit : Unit::metre, ascii_);
    }
    [[nodiscard]] std::string round_distance(std::int64_t n) const { return amount(one(trials_.unit) * n); }

    /// Of one swim, in the trials' course.
    [[nodiscard]] std::string pace_of(std::size_t swim) const { return spell::clock(mean_pace(swim)); }
    [[nodiscard]] std::string pace_per_100(std::size_t swim) const {
        return report::pace_per_100(mean_pace(swim), trials_.unit);
    }
    [[nodiscard]] std::string pace_per_100(calc::Exact const& pace) const {
        return report::pace_per_100(to_second(pace), trials_.unit);
    }
    [[nodiscard]] Duration mean_pace(std::size_t index) const {
        auto const& swim = timed(index);
        calc::Exact const hundreds{swim.distance.units(), (one(trials_.unit) * 100).units()};
        return to_tenth(calc::Exact{swim.time.ms(), 1000} * course_ratio(trials_.course, swim.course) /
                        hundreds);
    }

    [[nodiscard]] std::string without(Remark const& remark) const {
        return remark.pace
                   ? fmt::format("without it the threshold is {}", spell::clock(to_second(*remark.pace)))
                   : "swims of 2 to 15 min are surest";
    }

    /// Where swims of several pools are held against each other.
    [[nodiscard]] std::string courses() const {
        for (auto const& swim : trials_.swims) {
            if (!(course_ratio(trials_.course, swim.course) == Ratio{})) {
                return ", and the pools";
            }
        }
        return "";
    }

    /// To the tenth, so that 44.2 is seen to be over 44.
    [[nodiscard]] std::string reserve() const {
        auto const tenths = (verdict_.threshold->reserve * 10).rounded();
        return tenths % 10 == 0 ? fmt::format("{}", tenths / 10)
                                : fmt::format("{}.{}", tenths / 10, tenths % 10);
    }

    [[nodiscard]] std::string_view dash() const { return ascii_ ? "-" : "–"; }

    calc::Trials const& trials_;
    calc::Verdict const& verdict_;
    bool ascii_;
};

Ink ink_of(Severity severity) {
    return severity == Severity::error ? Ink::red : severity == Severity::warning ? Ink::yellow : Ink::blue;
}

} // namespace

std::vector<Saying> sayings(calc::Trials const& trials, calc::Verdict const& verdict, bool ascii) {
    std::vector<Saying> said;
    Words const words{trials, verdict, ascii};
    for (auto const& remark : verdict.remarks) {
        said.push_back(words.of(remark));
    }
    return said;
}

std::string saying_text(Saying const& saying, Paint const& paint) {
    auto text = fmt::format("lengthwise: {}: {}\n", paint(ink_of(saying.severity), spelling(saying.severity)),
                            saying.message);
    if (!saying.hint.empty()) {
        text += fmt::format("{}{}\n", paint(Ink::dim, "      = "), saying.hint);
    }
    return text;
}

std::string pace_per_100(Duration pace, Unit unit) {
    return fmt::format("{} per 100 {}", spell::clock(pace), spell::symbol(unit));
}

Duration to_second(calc::Exact const& seconds) {
    return Duration::seconds(seconds.rounded());
}

Duration to_tenth(calc::Exact const& seconds) {
    return Duration::ms((seconds * 10).rounded() * 100);
}

} // namespace lengthwise::report
