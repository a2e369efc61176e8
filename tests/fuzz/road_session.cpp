#include "calc/totals.hpp"
#include "fuzz/promise.hpp"
#include "fuzz/road.hpp"
#include "report/deck_text.hpp"
#include "report/deck_view.hpp"
#include "report/late_text.hpp"
#include "support/unsafe_text.hpp"
#include "tailor/late.hpp"
#include "tailor/pool.hpp"
#include "tailor/swimmer.hpp"

#include <array>

namespace lengthwise::fuzz {
namespace {

class SessionShower {
  public:
    SessionShower(plan::Plan const& plan, plan::Index session, std::uint64_t choice)
        : plan_(plan), session_(session), choice_(choice), ascii_(choice % 3 == 1), width_(40 + choice % 50) {
    }

    std::string all() {
        as_written();
        in_another_pool();
        for_a_swimmer();
        late(plan_, session_, false);
        no_fault(support::unsafe_in(text_), "what is shown of a session cannot steer a terminal");
        return text_;
    }

  private:
    void deck(report::Deck const& view) {
        text_ += report::deck_text(view, {.width = width_, .ascii = ascii_}, report::Paint{});
    }

    [[nodiscard]] report::DeckOptions options() const {
        report::DeckOptions options{.session = session_, .ascii = ascii_};
        auto const lanes = calc::numbers(calc::lanes_of(plan_, plan_.sessions[session_]));
        if (choice_ % 4 == 1 && !lanes.empty()) {
            options.lane = lanes[choice_ % lanes.size()];
        }
        if (choice_ % 4 == 2) {
            options.queue = report::DeckQueue{Duration::seconds(5), {}};
        }
        if (choice_ % 4 == 3) {
            options.queue = report::DeckQueue{Duration::seconds(static_cast<std::int64_t>(choice_ % 30) + 1),
                                              static_cast<int>(choice_ % 7) + 2};
        }
        return options;
    }

    void as_written() {
        deck(report::deck_view(plan_, {.session = session_}));
        deck(report::deck_view(plan_, options()));
    }

    [[nodiscard]] Pool pool() const {
        std::array const pools{Pool::of(Distance::yards(25), Unit::yard),
                               Pool::of(Distance::metres(50), Unit::metre),
                               Pool::of(Distance::units(1'000'000), Unit::metre), Pool::open_water()};
        return pools[choice_ % pools.size()];
    }

    /// Whole lengths there, and still a plan that adds up.
    void in_another_pool() {
        auto const tailored =
            tailor::fit(plan_, session_, {.pool = pool(), .percent = choice_ % 2 == 0 ? 100U : 73U});
        promise(tailored.plan.sessions.size() == 1, "a session made to fit is one session");
        add_up(tailored.plan);
        deck(report::deck_view(plan_, options(), tailored));
        late(tailored.plan, 0, true);
    }

    void for_a_swimmer() {
        if (plan_.swimmers.empty()) {
            return;
        }
        auto const swimmer = static_cast<plan::Index>(choice_ % plan_.swimmers.size());
        auto const own = tailor::swum_by(plan_, swimmer);
        auto shown = options();
        shown.lane = plan_.swimmers[swimmer].lane;
        shown.swimmer = &plan_.swimmers[swimmer];
        shown.swum = &own;
        add_up(own);
        deck(report::deck_view(plan_, shown, tailor::fit(plan_, session_, swimmer, {})));
        deck(report::deck_view(plan_, shown, tailor::fit(plan_, session_, swimmer, pool())));
    }

    void late(plan::Plan const& plan, plan::Index session, bool moved) {
        tailor::LateWish const wish{.session = session,
                                    .after = static_cast<int>(choice_ % 3),
                                    .left = Duration::minutes(static_cast<std::int64_t>(choice_ % 40) + 1)};
        auto const late = tailor::late(plan, wish);
        if (late.problem != tailor::Late::Problem::none) {
            text_ += report::late_problem(plan, wish, late, ascii_);
            return;
        }
        report::LateStyle const style{.width = width_, .ascii = ascii_, .moved = moved};
        text_ += report::late_text(plan, wish, late, style, report::Paint{});
        for (auto const& lane : late.lanes) {
            promise(lane.end.low <= lane.end.high, "a lane that is late is home at the slow end last");
        }
    }

    plan::Plan const& plan_;
    plan::Index session_;
    std::uint64_t choice_;
    bool ascii_;
    std::size_t width_;
    std::string text_;
};

} // namespace

std::string session_shown(plan::Plan const& plan, plan::Index session, std::uint64_t choice) {
    return SessionShower{plan, session, choice}.all();
}

} // namespace lengthwise::fuzz
