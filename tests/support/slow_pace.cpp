#include "support/slow_pace.hpp"

#include "grammar/words.hpp"

#include <boost/multiprecision/cpp_int.hpp>

#include <algorithm>
#include <map>
#include <string>

namespace lengthwise::support {
namespace {

using Q = boost::multiprecision::cpp_rational;
using Z = boost::multiprecision::cpp_int;
using Percent = std::array<Q, 3>;

Percent of(double low, double expected, double high) {
    auto const q = [](double percent) { return Q{Z{static_cast<std::int64_t>(percent * 10)}, 10}; };
    return {q(low), q(expected), q(high)};
}

std::map<std::string, Percent> const& table() {
    static std::map<std::string, Percent> const percents{
        {"easy", of(110, 115, 120)},     {"steady", of(104, 107, 110)},  {"threshold", of(98, 100, 103)},
        {"hard", of(91, 95, 98)},        {"sprint", of(78, 85, 92)},     {"rpe 1", of(120, 125, 130)},
        {"rpe 2", of(115, 120, 125)},    {"rpe 4", of(107, 111, 115)},   {"rpe 6", of(101, 103, 106)},
        {"rpe 9", of(85, 90, 95)},       {"crawl", of(100, 100, 100)},   {"back", of(105, 110, 120)},
        {"breast", of(110, 123, 135)},   {"fly", of(107, 115, 125)},     {"medley", of(105.5, 112, 120)},
        {"choice", of(100, 111.5, 123)}, {"swim", of(100, 100, 100)},    {"kick", of(143, 161, 182)},
        {"pull", of(99, 105, 111)},      {"drill", of(120, 135, 150)},   {"fins", of(83, 87, 91)},
        {"paddles", of(95, 97, 98)},     {"buoy", of(97, 100, 102)},     {"band", of(105, 110, 118)},
        {"board", of(100, 100, 100)},    {"snorkel", of(100, 100, 100)}, {"wetsuit", of(89, 94, 97)},
        {"tread", of(100, 100, 100)},
    };
    return percents;
}

Z floor(Q const& q) {
    Z const down = numerator(q) / denominator(q);
    return q < 0 && Q{down} != q ? Z{down - 1} : down;
}

std::int64_t half_up(Q const& q) {
    return static_cast<std::int64_t>(floor(q + Q{1, 2}));
}

Q share_of_length(Pool const& pool) {
    if (pool.kind == Pool::Kind::open_water) {
        return 1;
    }
    return 1 - Q{30'000, std::max<std::int64_t>(pool.length.units(), 300'000)};
}

class Reckoning {
  public:
    Reckoning(plan::Plan const& plan, plan::Session const& session, int lane, plan::Terms const& terms,
              std::int64_t amount, bool timed)
        : plan_(plan), session_(session), pool_(plan.pools[session.pool]), terms_(terms), amount_(amount),
          timed_(timed) {
        if (session.threshold != plan::no_index) {
            pace_ = &plan.thresholds[session.threshold];
        }
        Q slowest = 0;
        for (auto const& swimmer : plan.swimmers) {
            if (lane > 0 && swimmer.lane == lane && swimmer.threshold) {
                auto const& own = *swimmer.threshold;
                auto q = Q{own.time.ms()} / own.per.units();
                if (own.course.kind != Pool::Kind::unsaid) {
                    q /= share_of_length(own.course);
                }
                if (q > slowest) {
                    slowest = q;
                    pace_ = &own;
                }
            }
        }
    }

    SlowRep run() {
        SlowRep rep;
        split();
        for (auto left = amount_ - terms_.broken.piece; terms_.broken.piece > 0 && left > 0;
             left -= terms_.broken.piece) {
            rep.breaks += terms_.broken.pause.ms();
        }
        rep.swim = Three{rep.breaks, rep.breaks, rep.breaks};
        std::size_t at = 0;
        for (auto const& [manner, length, repeats] : parts_) {
            auto const all = all_of(at++);
            rep.parts.push_back({manner, all});
            if (pace_ != nullptr) {
                expect(rep.parts.back(), at - 1);
            }
            if (!all || !rep.swim) {
                rep.swim.reset();
                continue;
            }
            for (std::size_t x = 0; x < 3; ++x) {
                (*rep.swim)[x] += (*all)[x];
            }
        }
        if (timed_) {
            rep.covered = covered();
        }
        if (pace_ != nullptr) {
            rep.rate = static_cast<double>(rate());
            rep.reserve = static_cast<double>(reserve({}, 1));
            hold_one_speed(rep);
        }
        return rep;
    }

  private:
    struct Part {
        plan::Manner manner;
        std::int64_t length = 0;
        std::int64_t repeats = 1;
    };

    void split() {
        std::int64_t sum = 0;
        for (auto i = terms_.parts.first; i < terms_.parts.first + terms_.parts.count; ++i) {
            sum += plan_.parts[i].amount;
        }
        for (auto i = terms_.parts.first; i < terms_.parts.first + terms_.parts.count; ++i) {
            parts_.push_back({plan_.parts[i].manner, plan_.parts[i].amount, amount_ / sum});
        }
        if (parts_.empty()) {
            parts_.push_back({terms_.manner, amount_, 1});
        }
    }

    std::optional<Three> all_of(std::size_t at) const {
        auto const& part = parts_[at];
        Three sum{};
        if (timed_) {
            sum.fill(part.length * part.repeats);
            return sum;
        }
        auto const one = once(at);
        if (!one) {
            return std::nullopt;
        }
        for (std::size_t x = 0; x < 3; ++x) {
            sum[x] = (*one)[x] * part.repeats;
        }
        if (held()) { // parts make up the time held, whatever rounding does to each
            for (std::size_t x = 0; x < 3; ++x) {
                sum[x] = half_up(stops(x) * part.length) * part.repeats + held_by(at + 1) - held_by(at);
            }
        }
        return sum;
    }

    /// What the reserve sees of a part.
    void expect(SlowPart& part, std::size_t at) const {
        auto const& [manner, length, repeats] = parts_[at];
        auto const& effort = manner.effort;
        bool const exact = held() || effort.kind == plan::Effort::Kind::pace;
        Q const f = form(manner, 1);
        Q const q = in_one_go(length);
        part.length = length;
        part.repeats = repeats;
        part.form = static_cast<double>(f);
        bool const half = reserve(effort, 1) < reserve({}, 1);
        if (!timed_) {
            part.goes = static_cast<double>(length);
            part.ms = static_cast<double>((*once(at))[1]);
            part.emptied = !exact && !half &&
                           shifted(effort) * effort_share(effort)[1] * q < rate() * (q - reserve(effort, 1));
            return;
        }
        part.ms = static_cast<double>(length);
        if (manner.mode == Mode::tread) {
            return;
        }
        if (exact) {
            part.goes =
                part.ms * static_cast<double>(effort.per.units()) / static_cast<double>(effort.time.ms());
            return;
        }
        Q const asked = q / (shifted(effort) * effort_share(effort)[1] * f);
        Q const bound = q / (rate() * f) + reserve(effort, 1);
        part.goes = static_cast<double>(std::min(asked, bound) * length / q);
        part.emptied = !half && bound < asked;
    }

    /// What is held is swum at one speed, in crawl's worth.
    void hold_one_speed(SlowRep& rep) const {
        double worth = 0;
        for (auto const& part : rep.parts) {
            worth += part.goes * part.form * static_cast<double>(part.repeats);
        }
        for (auto& part : rep.parts) {
            if (held()) {
                part.ms = static_cast<double>(terms_.manner.effort.time.ms()) * part.goes * part.form / worth;
            }
        }
    }

    std::int64_t held_by(std::size_t parts) const {
        std::int64_t length = 0;
        for (std::size_t i = 0; i < parts; ++i) {
            length += parts_[i].length * parts_[i].repeats;
        }
        return half_up(Q{terms_.manner.effort.time.ms()} * length / amount_);
    }

    bool held() const { return terms_.manner.effort.kind == plan::Effort::Kind::hold; }

    /// max(d R' E, d R (1 - B/q)) S M gear A + stops d, rounded half up
    std::optional<Three> once(std::size_t at) const {
        auto const& [manner, length, repeats] = parts_[at];
        auto const& effort = manner.effort;
        Three times{};
        for (std::size_t x = 0; x < 3; ++x) {
            Q time;
            if (held()) {
                time = 0;
            } else if (effort.kind == plan::Effort::Kind::pace) {
                time = Q{length} * effort.time.ms() / effort.per.units();
            } else if (pace_ == nullptr) {
                return std::nullopt;
            } else {
                Q const asked = length * shifted(effort) * effort_share(effort)[x];
                Q const bound = length * rate() * (1 - reserve(effort, x) / in_one_go(length));
                time = std::max(asked, bound) * form(manner, x) * about(x);
            }
            times[x] = half_up(time + stops(x) * length);
        }
        return times;
    }

    std::int64_t in_one_go(std::int64_t length) const {
        return terms_.broken.piece > 0 ? std::min(length, terms_.broken.piece) : length;
    }

    Q rate() const {
        auto const q = Q{pace_->time.ms()} / pace_->per.units();
        bool const known = pool_.kind != Pool::Kind::unsaid && pace_->course.kind != Pool::Kind::unsaid;
        return known ? Q{q * share_of_length(pool_) / share_of_length(pace_->course)} : q;
    }

    Q hundred() const { return pool_.unit == Unit::yard ? 100 * 27'432 : 100 * 30'000; }

    Q shifted(plan::Effort const& effort) const {
        return effort.kind == plan::Effort::Kind::word ? Q{rate() + Q{effort.shift.ms()} / hundred()}
                                                       : rate();
    }

    Q stops(std::size_t x) const { return terms_.stops && x == 2 ? Q{15'000 / hundred()} : Q{0}; }

    Q about(std::size_t x) const { return pace_->about ? Q{9 + static_cast<int>(x), 10} : Q{1}; }

    Q reserve(plan::Effort const& effort, std::size_t x) const {
        using Kind = plan::Effort::Kind;
        std::array<Q, 3> b{35, 20, 10};
        if (pace_->reserve) {
            auto const metres = Q{pace_->reserve->units(), 30'000};
            b = {metres + 6, metres, std::max(Q{0}, Q{metres - 6})};
        }
        bool const repeated = (effort.kind == Kind::word && effort.word == EffortWord::hard) ||
                              (effort.kind == Kind::rpe && effort.number == 8);
        return b[x] * 30'000 / (repeated && x > 0 ? 2 : 1);
    }

    // --- factors ---

    std::optional<Q> said(std::string const& word) const {
        for (auto const settings :
             {session_.settings, plan_.weeks[session_.week].settings, plan_.file_settings}) {
            for (auto const& factor : plan_.settings[settings].factors) {
                if (spelling(factor.word) == word) {
                    return Q{factor.percent};
                }
            }
        }
        return std::nullopt;
    }

    Percent percent(std::string const& word) const {
        if (auto const own = said(word)) {
            return {*own, *own, *own};
        }
        if (word == "choice") {
            auto const a = percent("crawl")[1];
            auto const b = percent("breast")[1];
            return {std::min(a, b), (a + b) / 2, std::max(a, b)};
        }
        auto percents = table().at(word);
        if (word == "medley") {
            for (std::size_t x = 0; x < 3; ++x) {
                percents[x] =
                    (percent("fly")[x] + percent("back")[x] + percent("breast")[x] + percent("crawl")[x]) / 4;
            }
        }
        return percents;
    }

    Percent shares(std::string const& word) const {
        auto percents = percent(word);
        for (auto& p : percents) {
            p /= 100;
        }
        return percents;
    }

    Percent effort_share(plan::Effort const& effort) const {
        static std::map<std::uint32_t, std::string> const words{
            {3, "easy"}, {5, "steady"}, {7, "threshold"}, {8, "hard"}, {10, "sprint"}};
        switch (effort.kind) {
        case plan::Effort::Kind::word:
            return shares(std::string{spelling(word_of(effort.word))});
        case plan::Effort::Kind::percent: {
            Q const share{100, effort.number};
            return {share, share, share};
        }
        case plan::Effort::Kind::rpe:
            return shares(words.count(effort.number) > 0 ? words.at(effort.number)
                                                         : "rpe " + std::to_string(effort.number));
        default:
            return shares("steady");
        }
    }

    Q form(plan::Manner const& manner, std::size_t x) const {
        bool const kick = manner.mode == Mode::kick;
        bool const buoy = manner.gear.has(Gear::buoy);
        bool const band = manner.gear.has(Gear::band);
        Q product = 1;
        if (!kick) {
            product *= shares(
                manner.stroke == Stroke::unsaid ? "crawl" : std::string{spelling(word_of(manner.stroke))})[x];
        }
        if (manner.mode != Mode::pull || said("pull") || (!buoy && !band)) {
            product *=
                shares(manner.mode == Mode::unsaid ? "swim" : std::string{spelling(word_of(manner.mode))})[x];
        }
        if (manner.gear.has(Gear::fins)) {
            product *=
                !kick || said("fins") ? shares("fins")[x] : Percent{Q{65, 100}, Q{70, 100}, Q{78, 100}}[x];
        }
        product *= manner.gear.has(Gear::paddles) && !kick ? shares("paddles")[x] : Q{1};
        product *= buoy && !kick ? shares("buoy")[x] : Q{1};
        product *= band && !kick && !buoy ? shares("band")[x] : Q{1};
        product *= manner.gear.has(Gear::board) ? shares("board")[x] : Q{1};
        product *= manner.gear.has(Gear::snorkel) ? shares("snorkel")[x] : Q{1};
        product *= manner.gear.has(Gear::wetsuit) ? shares("wetsuit")[x] : Q{1};
        return product;
    }

    // --- timed reps ---

    std::optional<std::int64_t> covered() const {
        Q sum = 0;
        for (auto const& [manner, length, repeats] : parts_) {
            auto const& effort = manner.effort;
            if (manner.mode == Mode::tread) {
                continue;
            }
            if (effort.kind == plan::Effort::Kind::pace) {
                sum += Q{length} * effort.per.units() / effort.time.ms() * repeats;
                continue;
            }
            if (pace_ == nullptr) {
                return std::nullopt;
            }
            Q const q = in_one_go(length);
            Q const asked = q / (shifted(effort) * effort_share(effort)[1] * form(manner, 1));
            Q const bound = q / (rate() * form(manner, 1)) + reserve(effort, 1);
            sum += std::min(asked, bound) * length / q * repeats;
        }
        auto const wall = pool_.kind == Pool::Kind::pool ? pool_.length.units() : 30'000;
        return static_cast<std::int64_t>(floor(sum / wall)) * wall;
    }

    plan::Plan const& plan_;
    plan::Session const& session_;
    Pool pool_;
    plan::Terms const& terms_;
    std::int64_t amount_;
    bool timed_;
    plan::Threshold const* pace_ = nullptr;
    std::vector<Part> parts_;
};

} // namespace

SlowRep slow_rep(plan::Plan const& plan, plan::Session const& session, int lane, plan::Terms const& terms,
                 std::int64_t amount, bool timed) {
    return Reckoning{plan, session, lane, terms, amount, timed}.run();
}

} // namespace lengthwise::support
