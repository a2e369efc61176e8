#include "cli/commands.hpp"
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

/// Writes plan after plan as one text.
class Exporter {
  public:
    Exporter(Export const& options, bool several, Console& console)
        : options_(options), several_(several), console_(console),
          sink_([&console](std::string_view text) { console.out.write(text); }) {}

    int plan(Loaded const& loaded) {
        auto const who = report::pick_swimmer(loaded.plan(), options_.wish);
        auto const picked = report::pick_scope(loaded.plan(), options_.wish, console_.ascii);
        if (!who.found() || !picked.found()) {
            console_.say(who.found() ? picked.problem : who.problem);
            return misused;
        }
        auto const own = who.index ? std::optional{tailor::swum_by(loaded.plan(), *who.index)} : std::nullopt;
        report::ExportOptions shown{.scope = picked.scope, .lane = who.lane};
        shown.swimmer = who.index ? &loaded.plan().swimmers[*who.index] : nullptr;
        shown.source = loaded.name.substr(loaded.name.rfind('/') + 1);
        shown.ascii = console_.ascii;
        shown.file = several_ ? loaded.name : "";
        write(own ? *own : loaded.plan(), shown);
        first_ = false;
        return fine;
    }

    int errors(Loaded const& loaded) {
        say_errors(loaded, console_);
        if (options_.as == ExportKind::json && several_) {
            console_.out.write(report::plan_json_errors(loaded.name, loaded.errors.count(Severity::error)));
        }
        return has_errors;
    }

    /// What stands behind the last plan, and how it ends.
    int finish(int code) {
        if (options_.as != ExportKind::ics || first_) {
            return code;
        }
        sink_(events_ ? report::ics_end() : "");
        if (!events_ || undated_ > 0) {
            console_.say(report::undated_text(undated_, sessions_, events_));
        }
        return events_ ? code : std::max(code, has_errors);
    }

  private:
    void write(plan::Plan const& plan, report::ExportOptions const& shown) {
        switch (options_.as) {
        case ExportKind::json:
            report::plan_json(plan, shown, sink_);
            break;
        case ExportKind::csv:
            if (first_) {
                sink_(report::csv_head(options_.rows, several_));
            }
            report::plan_csv(plan, shown, options_.rows, sink_);
            break;
        case ExportKind::ics:
            calendar(plan, shown);
            break;
        case ExportKind::html:
            report::plan_html(plan, shown, sink_);
            break;
        case ExportKind::markdown:
            sink_(first_ ? "" : "\n");
            report::plan_markdown(plan, shown, sink_);
            break;
        }
    }

    void calendar(plan::Plan const& plan, report::ExportOptions const& shown) {
        auto const count = report::plan_ics(plan, shown, [&](std::string_view text) {
            sink_(events_ ? "" : report::ics_begin());
            sink_(text);
            events_ = true;
        });
        sessions_ += count.sessions;
        undated_ += count.undated;
    }

    Export const& options_;
    bool several_;
    Console& console_;
    report::TextSink sink_;
    bool first_ = true;
    bool events_ = false;
    std::uint64_t sessions_ = 0; ///< of all plans; those without a date are in no calendar
    std::uint64_t undated_ = 0;
};

} // namespace

int export_plans(Export const& options, Files& files, Console& console) {
    auto const named = cli::named(options.files, files, console);
    auto code = named.code;
    if (options.as == ExportKind::html && named.files.size() > 1) {
        console.say("a page holds one plan; name one file");
        return misused;
    }
    Exporter exporter{options, named.several, console};
    for (auto const& name : named.files) {
        auto const loaded = load(name, files, console);
        if (!loaded) {
            code = misused;
        } else {
            code = std::max(code,
                            loaded->errors.has_errors() ? exporter.errors(*loaded) : exporter.plan(*loaded));
        }
    }
    return exporter.finish(code);
}

} // namespace lengthwise::cli
