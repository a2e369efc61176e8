#include "report/pace_json.hpp"

#include "plan/spell.hpp"
#include "report/findings_text.hpp"
#include "report/json.hpp"
#include "report/pace_words.hpp"
#include "units/spell.hpp"

#include <fmt/core.h>

#include <cmath>

namespace lengthwise::report {
namespace {

constexpr std::int64_t millionths = 1'000'000;

/// A number of millionths, whole numbers without a point.
std::string decimal(std::int64_t number) {
    auto const size = std::abs(number);
    auto text = fmt::format("{}{}", number < 0 ? "-" : "", size / millionths);
    if (size % millionths != 0) {
        text += fmt::format(".{:06}", size % millionths);
        text.erase(text.find_last_not_of('0') + 1);
    }
    return text;
}

std::string decimal(calc::Exact const& number) {
    return decimal((number * millionths).rounded());
}

std::string decimal(double number) {
    return decimal(static_cast<std::int64_t>(std::floor(number * millionths + 0.5)));
}

calc::Exact metres(Distance distance) {
    return {distance.units(), Distance::per_metre};
}

class Writer {
  public:
    Writer(calc::Trials const& trials, calc::Verdict const& verdict, TextSink const& sink)
        : trials_(trials), verdict_(verdict), json_(sink) {}

    void document() {
        json_.begin_object().key("schema").string("lengthwise.pace/1");
        swims();
        threshold();
        line();
        predictions();
        findings();
        json_.key("line");
        verdict_.threshold ? json_.string(plan::spell_line(calc::as_setting(trials_, verdict_)))
                           : json_.null();
        json_.key("caution").string(all_out_caution);
        json_.end_object().end_line();
    }

  private:
    void swims() {
        json_.key("swims").begin_array();
        for (std::size_t i = 0; i < trials_.swims.size(); ++i) {
            auto const& swim = trials_.swims[i];
            auto const& judged = verdict_.swims[i];
            json_.begin_object();
            json_.key("metres").number(decimal(metres(swim.distance)));
            json_.key("seconds").number(spell::json_seconds(swim.time));
            course(swim.course);
            json_.key("used").boolean(judged.used).key("residual_metres");
            judged.residual ? json_.number(decimal(*judged.residual)) : json_.null();
            json_.end_object();
        }
        json_.end_array();
    }

    void threshold() {
        json_.key("threshold");
        if (!verdict_.threshold) {
            json_.null();
            return;
        }
        json_.begin_object();
        json_.key("seconds_per_100").number(decimal(verdict_.threshold->pace));
        json_.key("unit").string(spell::symbol(trials_.unit));
        course(trials_.course);
        json_.key("bound").boolean(verdict_.threshold->bound);
        json_.end_object();
    }

    /// What only a line has.
    void line() {
        auto const has_line = verdict_.threshold && !verdict_.threshold->bound;
        json_.key("metres_per_second");
        has_line ? json_.number(decimal(verdict_.threshold->speed)) : json_.null();
        json_.key("reserve_metres");
        has_line ? json_.number(decimal(verdict_.threshold->reserve)) : json_.null();
        json_.key("standard_error");
        if (!has_line || !verdict_.threshold->errors) {
            json_.null();
            return;
        }
        json_.begin_object();
        json_.key("seconds_per_100").number(decimal(*verdict_.threshold->pace_error()));
        json_.key("metres_per_second").number(decimal(verdict_.threshold->errors->slope));
        json_.key("reserve_metres").number(decimal(verdict_.threshold->errors->intercept));
        json_.end_object();
    }

    void predictions() {
        json_.key("predictions").begin_array();
        for (auto const& [distance, seconds] : verdict_.predictions) {
            json_.begin_object().key("metres").number(decimal(metres(distance)));
            json_.key("seconds").begin_object();
            json_.key("low").number(decimal(seconds.low));
            json_.key("expected").number(decimal(seconds.expected));
            json_.key("high").number(decimal(seconds.high));
            json_.end_object().end_object();
        }
        json_.end_array();
    }

    void findings() {
        json_.key("findings").begin_array();
        for (auto const& saying : sayings(trials_, verdict_)) {
            json_.begin_object();
            json_.key("kind").string(saying.kind);
            json_.key("severity").string(spelling(saying.severity));
            json_.key("message").string(saying.message);
            json_.key("hint");
            saying.hint.empty() ? json_.null() : json_.string(saying.hint);
            json_.end_object();
        }
        json_.end_array();
    }

    /// In metres; 0 is open water.
    void course(Pool const& pool) {
        json_.key("course_metres");
        pool.kind == Pool::Kind::unsaid ? json_.null() : json_.number(decimal(metres(pool.length)));
    }

    calc::Trials const& trials_;
    calc::Verdict const& verdict_;
    Json json_;
};

} // namespace

std::string pace_json(calc::Trials const& trials, calc::Verdict const& verdict) {
    std::string text;
    Writer{trials, verdict, [&text](std::string_view piece) { text += piece; }}.document();
    return text;
}

} // namespace lengthwise::report
