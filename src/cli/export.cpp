#include "cli/commands.hpp"
#include "cli/each_file.hpp"
#include "cli/plans.hpp"
#include "report/choose_swimmer.hpp"
#include "report/plan_csv.hpp"
#include "report/plan_html.hpp"
#include "report/plan_ics.hpp"
#include "report/plan_json.hpp"
#include "report/plan_markdown.hpp"
#include "tailor/swimmer.hpp"

#include <algorithm>

namespace lengthwise::cli {

namespace {

/// Writes plan after plan as one text. Many threads ask it for different plans; what it counts, it counts
/// when a plan's turn has come.
class Exporter {
  public:
    Exporter(Export const& options, bool several) : options_(options), several_(several) {}

    Outcome plan(Loaded const& loaded, Console& console) {
        auto const who = report::pick_swimmer(loaded.plan(), options_.wish);
        auto const picked = report::pick_scope(loaded.plan(), options_.wish, console.ascii);
        if (!who.found() || !picked.found()) {
            console.say(who.found() ? picked.problem : who.problem);
            return {misused};
        }
        auto const own = who.index ? std::optional{tailor::swum_by(loaded.plan(), *who.index)} : std::nullopt;
        report::ExportOptions shown{.scope = picked.scope, .lane = who.lane};
        shown.swimmer = who.index ? &loaded.plan().swimmers[*who.index] : nullptr;
        shown.source = loaded.name.substr(loaded.name.rfind('/') + 1);
        shown.ascii = console.ascii;
        shown.file = several_ ? loaded.name : "";
        auto const calendar = write(own ? *own : loaded.plan(), shown, console);
        return {fine, [this, calendar](Console&) {
                    add(calendar);
                    return fine;
                }};
    }

    [[nodiscard]] Outcome errors(Loaded const& loaded, Console& console) const {
        say_errors(loaded, console);
        if (options_.as == ExportKind::json && several_) {
            console.out.write(report::plan_json_errors(loaded.name, loaded.errors.count(Severity::error)));
        }
        return {has_errors};
    }

    [[nodiscard]] std::string before_first() const {
        return options_.as == ExportKind::csv   ? report::csv_head(options_.rows, several_)
               : options_.as == ExportKind::ics ? report::ics_begin()
                                                : "";
    }
    [[nodiscard]] std::string between() const { return options_.as == ExportKind::markdown ? "\n" : ""; }

    /// What stands behind the last plan, and how it ends.
    int finish(int code, Console& console) const {
        if (options_.as != ExportKind::ics || !any_) {
            return code;
        }
        console.out.write(all_.events ? report::ics_end() : "");
        if (!all_.events || all_.count.undated > 0) {
            console.say(report::undated_text(all_.count.undated, all_.count.sessions, all_.events));
        }
        return all_.events ? code : std::max(code, has_errors);
    }

  private:
    /// What a calendar holds; sessions without a date are in none.
    struct Calendar {
        report::IcsCount count{};
        bool events = false;
    };

    [[nodiscard]] Calendar write(plan::Plan const& plan, report::ExportOptions const& shown,
                                 Console& console) const {
        report::TextSink const sink = [&console](std::string_view text) { console.out.write(text); };
        Calendar calendar;
        switch (options_.as) {
        case ExportKind::json:
            report::plan_json(plan, shown, sink);
            break;
        case ExportKind::csv:
            sink(""); // without a row there is still a head
            report::plan_csv(plan, shown, options_.rows, sink);
            break;
        case ExportKind::ics:
            calendar.count = report::plan_ics(plan, shown, [&](std::string_view text) {
                sink(text);
                calendar.events = true;
            });
            break;
        case ExportKind::html:
            report::plan_html(plan, shown, sink);
            break;
        case ExportKind::markdown:
            report::plan_markdown(plan, shown, sink);
            break;
        }
        return calendar;
    }

    void add(Calendar const& one) {
        any_ = true;
        all_.events = all_.events || one.events;
        all_.count.sessions += one.count.sessions;
        all_.count.undated += one.count.undated;
    }

    Export const& options_;
    bool several_;
    bool any_ = false; ///< plan that could be read
    Calendar all_;
};

} // namespace

int export_plans(Export const& options, Files& files, Console& console) {
    auto const named = cli::named(options.files, files, console);
    if (options.as == ExportKind::html && named.files.size() > 1) {
        console.say("a page holds one plan; name one file");
        return misused;
    }
    Exporter exporter{options, named.several};
    auto const one = [&](std::string const& name, Console& own) -> Outcome {
        auto const loaded = load(name, files, own);
        if (!loaded) {
            return {misused};
        }
        return loaded->errors.has_errors() ? exporter.errors(*loaded, own) : exporter.plan(*loaded, own);
    };
    auto const first = exporter.before_first();
    auto const between = exporter.between();
    auto const code = each_file("export", named, console, one, {.before_first = first, .between = between});
    return exporter.finish(code, console);
}

} // namespace lengthwise::cli
