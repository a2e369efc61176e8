#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "report/choose_swimmer.hpp"
#include "report/plan_csv.hpp"
#include "report/plan_json.hpp"
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
        report::ExportOptions const shown{.scope = picked.scope,
                                          .lane = who.lane,
                                          .swimmer =
                                              who.index ? &loaded.plan().swimmers[*who.index] : nullptr,
                                          .file = several_ ? loaded.name : ""};
        write(own ? *own : loaded.plan(), shown);
        return fine;
    }

    int errors(Loaded const& loaded) {
        say_errors(loaded, console_);
        if (options_.as == ExportKind::json && several_) {
            console_.out.write(report::plan_json_errors(loaded.name, loaded.errors.count(Severity::error)));
        }
        return has_errors;
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
        }
        first_ = false;
    }

    Export const& options_;
    bool several_;
    Console& console_;
    report::TextSink sink_;
    bool first_ = true;
};

} // namespace

int export_plans(Export const& options, Files& files, Console& console) {
    auto const named = cli::named(options.files, files, console);
    auto code = named.code;
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
    return code;
}

} // namespace lengthwise::cli
