#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "report/chart_svg.hpp"
#include "report/chart_text.hpp"
#include "report/choose_swimmer.hpp"
#include "tailor/swimmer.hpp"

namespace lengthwise::cli {

int chart(Chart const& options, Files& files, Console& console) {
    auto const one = load_one("chart", options.files, files, console);
    if (!one.plan) {
        return one.code;
    }
    auto const& plan = one.plan->plan();
    auto const who = report::pick_swimmer(plan, options.wish);
    auto const lane = report::pick_scope(plan, options.wish, console.ascii);
    if (!who.found() || !lane.found()) {
        console.say(who.found() ? lane.problem : who.problem);
        return misused;
    }
    auto const own = who.index ? std::optional{tailor::swum_by(plan, *who.index)} : std::nullopt;
    auto const chart = report::chart_view(
        own ? *own : plan, {.lane = who.lane, .swimmer = who.index ? &plan.swimmers[*who.index] : nullptr});
    console.out.write(
        options.target.file
            ? report::chart_svg(chart, report::ChartGround::white)
            : report::chart_text(chart, {.width = console.width, .ascii = console.ascii}, console.out_paint));
    return fine;
}

} // namespace lengthwise::cli
