#include "cli/commands.hpp"
#include "cli/each_file.hpp"
#include "cli/plans.hpp"
#include "report/choose.hpp"
#include "report/choose_swimmer.hpp"
#include "report/swimmer_figures.hpp"
#include "report/tally_json.hpp"
#include "report/tally_text.hpp"
#include "tailor/swimmer.hpp"

namespace lengthwise::cli {

namespace {

int tally_errors(Loaded const& loaded, Tally const& options, bool several, Console& console) {
    say_errors(loaded, console);
    if (options.format == Format::json && several) {
        console.out.write(report::tally_json_errors(loaded.name, loaded.errors.count(Severity::error)));
    }
    return has_errors;
}

int tally_plan(Loaded const& loaded, Tally const& options, bool several, Console& console) {
    auto const who = report::pick_swimmer(loaded.plan(), options.wish);
    auto const picked = report::pick_scope(loaded.plan(), options.wish, console.ascii);
    if (!who.found() || !picked.found()) {
        console.say(who.found() ? picked.problem : who.problem);
        return misused;
    }
    if (auto const nobody = report::no_swimmers(loaded.plan(), who.lane);
        options.by_swimmer && !nobody.empty()) {
        console.say(nobody);
        return misused;
    }
    bool const one = who.index && !options.by_swimmer;
    auto const own = one ? std::optional{tailor::swum_by(loaded.plan(), *who.index)} : std::nullopt;
    auto const& plan = own ? *own : loaded.plan();
    report::TallyOptions shown{.scope = picked.scope, .lane = who.lane, .by = options.by};
    shown.by_swimmer = options.by_swimmer;
    shown.swimmer = who.index ? &loaded.plan().swimmers[*who.index] : nullptr;
    shown.width = console.width;
    shown.ascii = console.ascii;
    shown.file = several ? loaded.name : "";
    if (options.format == Format::json) {
        report::tally_json(plan, shown, [&](std::string_view text) { console.out.write(text); });
    } else {
        console.out.write(report::tally_text(plan, shown, console.out_paint));
    }
    say_warnings(loaded, picked.scope, console);
    return fine;
}

} // namespace

int tally(Tally const& options, Files& files, Console& console) {
    auto const named = cli::named(options.files, files, console);
    auto const one = [&](std::string const& name, Console& own) -> Outcome {
        auto const loaded = load(name, files, own);
        if (!loaded) {
            return {misused};
        }
        return {loaded->errors.has_errors() ? tally_errors(*loaded, options, named.several, own)
                                            : tally_plan(*loaded, options, named.several, own)};
    };
    return each_file("tally", named, console, one, {.between = options.format == Format::json ? "" : "\n"});
}

} // namespace lengthwise::cli
