#include "fuzz/promise.hpp"
#include "fuzz/road.hpp"
#include "report/chart_svg.hpp"
#include "report/chart_text.hpp"
#include "report/plan_csv.hpp"
#include "report/plan_html.hpp"
#include "report/plan_ics.hpp"
#include "report/plan_json.hpp"
#include "report/plan_markdown.hpp"
#include "report/tally_json.hpp"
#include "report/tally_text.hpp"
#include "support/json_fault.hpp"
#include "support/unsafe_text.hpp"
#include "support/xml_fault.hpp"
#include "tailor/swimmer.hpp"

#include <array>
#include <optional>

namespace lengthwise::fuzz {
namespace {

/// What is shown, and to whom: chosen by the input.
struct View {
    report::Scope scope{};
    std::optional<int> lane{};
    plan::Swimmer const* swimmer = nullptr; ///< whose plan it is
    std::size_t width = 60;
    bool ascii = false;
};

std::string safe(std::string text, std::string_view what) {
    no_fault(support::unsafe_in(text), what);
    return text;
}

std::string tallies(plan::Plan const& plan, View const& view, std::uint64_t choice) {
    constexpr std::array kinds{calc::By::stroke, calc::By::mode, calc::By::effort, calc::By::gear,
                               calc::By::section};
    report::TallyOptions options{
        .scope = view.scope, .lane = view.lane, .width = view.width, .ascii = view.ascii};
    options.swimmer = view.swimmer;
    report::Paint const plain;
    auto text = report::tally_text(plan, options, plain);
    auto json = report::tally_json(plan, options);
    options.by_swimmer = !plan.swimmers.empty() && view.swimmer == nullptr && choice % 2 == 0;
    if (!options.by_swimmer) {
        options.by = kinds[choice % kinds.size()];
    }
    text += report::tally_text(plan, options, plain);
    no_fault(support::json_fault(json), "totals are JSON");
    auto const more = report::tally_json(plan, options);
    no_fault(support::json_fault(more), "totals by word or swimmer are JSON");
    return safe(text, "totals cannot steer a terminal") + json + more;
}

std::string charts(plan::Plan const& plan, View const& view) {
    auto const chart = report::chart_view(plan, {.lane = view.lane, .swimmer = view.swimmer});
    auto text = report::chart_text(chart, {.width = view.width, .ascii = view.ascii}, report::Paint{});
    auto const svg = report::chart_svg(chart, report::ChartGround::white);
    no_fault(support::xml_fault(svg), "a chart is well-formed XML");
    return safe(text, "a chart cannot steer a terminal") + svg;
}

/// Every line of a calendar ends in CR LF and has at most 75 octets (RFC 5545, section 3.1).
void is_folded(std::string_view calendar) {
    while (!calendar.empty()) {
        auto const end = calendar.find("\r\n");
        promise(end <= 75, "a line of a calendar has at most 75 octets, and an end", calendar.substr(0, 80));
        calendar.remove_prefix(end + 2);
    }
}

std::string exports(plan::Plan const& plan, View const& view) {
    report::ExportOptions options{.scope = view.scope, .lane = view.lane};
    options.swimmer = view.swimmer;
    options.source = "plan.swim";
    options.ascii = view.ascii;
    auto const made = [&](auto write) {
        std::string text;
        write([&text](std::string_view piece) { text += piece; });
        return text;
    };
    auto const json = made([&](auto sink) { report::plan_json(plan, options, sink); });
    no_fault(support::json_fault(json), "a plan is JSON");
    auto const html = made([&](auto sink) { report::plan_html(plan, options, sink); });
    no_fault(support::xml_fault(html), "a page is well-formed XML");
    auto const ics = made([&](auto sink) { report::plan_ics(plan, options, sink); });
    is_folded(ics);
    auto text = json + html + ics;
    for (auto const rows : {report::CsvRows::line, report::CsvRows::session, report::CsvRows::week}) {
        text += made([&](auto sink) { report::plan_csv(plan, options, rows, sink); });
    }
    auto const markdown = made([&](auto sink) { report::plan_markdown(plan, options, sink); });
    return text + safe(markdown, "what is written as Markdown cannot steer a terminal");
}

View chosen(plan::Plan const& plan, std::uint64_t choice) {
    View view{.width = 40 + choice % 60, .ascii = choice % 3 == 0};
    auto const lanes = calc::numbers(calc::lanes_of(plan));
    if (!lanes.empty() && choice % 2 == 1) {
        view.lane = lanes[choice % lanes.size()];
    }
    if (!plan.weeks.empty() && choice % 5 == 0) {
        view.scope = {report::Scope::Kind::week, static_cast<plan::Index>(choice % plan.weeks.size())};
    } else if (!plan.sessions.empty() && choice % 5 == 1) {
        view.scope = {report::Scope::Kind::session, static_cast<plan::Index>(choice % plan.sessions.size())};
    }
    return view;
}

std::string shown(plan::Plan const& plan, View const& view, std::uint64_t choice) {
    return tallies(plan, view, choice) + charts(plan, view) + exports(plan, view);
}

} // namespace

std::string plan_shown(plan::Plan const& plan, std::uint64_t choice) {
    auto text = shown(plan, {}, choice) + shown(plan, chosen(plan, choice), choice);
    if (!plan.swimmers.empty()) {
        auto const swimmer = static_cast<plan::Index>(choice % plan.swimmers.size());
        View view{.swimmer = &plan.swimmers[swimmer]};
        view.lane = plan.swimmers[swimmer].lane;
        text += shown(tailor::swum_by(plan, swimmer), view, choice);
    }
    return text;
}

} // namespace lengthwise::fuzz
