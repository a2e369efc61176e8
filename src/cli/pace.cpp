#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "cli/put_threshold.hpp"
#include "plan/spell.hpp"
#include "report/pace_json.hpp"
#include "report/pace_text.hpp"
#include "report/pace_words.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

namespace lengthwise::cli {

namespace {

/// The swim of a sprint triathlon, a first race as a rule.
constexpr auto sprint = Distance::metres(750);

calc::Trials trials_of(Pace const& options) {
    calc::Trials trials;
    trials.swims = options.swims;
    trials.course = calc::reference_course(options.swims, options.pool);
    trials.unit = calc::pace_unit(options.swims, trials.course);
    trials.stops = options.stops;
    trials.asked = options.predict;
    if (trials.asked.empty()) {
        trials.usual = {sprint};
    }
    return trials;
}

void say(std::vector<report::Saying> const& sayings, Console& console) {
    for (auto const& saying : sayings) {
        auto const text = report::saying_text(saying, console.err_paint);
        console.err.write(console.ascii ? report::in_ascii(text) : text);
    }
}

/// Written, read again, it has to be a plan with this threshold and nothing else changed for the worse.
bool is_sound(Loaded const& loaded, std::string const& text, plan::Threshold const& threshold, Files& files) {
    auto const bundle = grammar::bundle(loaded.name, text, loaded.name, files);
    auto const resolved = plan::resolve(bundle);
    if (bundle.findings.has_errors() || resolved.findings.has_errors()) {
        return false;
    }
    auto const& found = resolved.plan.settings[resolved.plan.file_settings].threshold;
    return found && plan::spell_line(*found) == plan::spell_line(threshold);
}

/// Puts the threshold into a plan.
int put(plan::Threshold const& threshold, std::string const& name, Files& files, Console& console) {
    auto const loaded = load(name, files, console);
    if (!loaded) {
        return misused;
    }
    if (loaded->errors.has_errors()) {
        say_errors(*loaded, console);
        console.say(fmt::format("{} stays as it is", report::visible(name)));
        return has_errors;
    }
    auto const& root = loaded->bundle.root();
    auto const shown = report::visible(name);
    auto const text = with_threshold(root, plan::spell_line(threshold));
    if (text == root.source.text()) {
        console.err.write(fmt::format("{} has it already\n", shown));
        return fine;
    }
    if (!is_sound(*loaded, text, threshold, files)) {
        console.say(fmt::format("{} stays as it is: with the threshold it could not be read, a fault of this "
                                "program",
                                shown));
        return misused;
    }
    if (auto const refusal = files.replace(name, text, root.source.text())) {
        console.say(fmt::format("cannot write {}: {}", shown, refusal->reason));
        return misused;
    }
    console.err.write(fmt::format("wrote {}\n", shown));
    return fine;
}

} // namespace

int pace(Pace const& options, Files& files, Console& console) {
    auto const trials = trials_of(options);
    auto const verdict = calc::judge(trials);
    say(report::sayings(trials, verdict, console.ascii), console);
    if (options.format == Format::json) {
        console.out.write(report::pace_json(trials, verdict));
    } else if (verdict.threshold) {
        console.out.write(report::pace_text(trials, verdict, console.out_paint,
                                            {.width = console.width, .ascii = console.ascii}));
    } else {
        console.err.write('\n' + report::fold(report::all_out_caution, console.width, 0) + '\n');
    }
    if (!verdict.threshold) {
        if (!options.files.empty()) {
            console.say("nothing was written");
        }
        return has_errors;
    }
    return options.files.empty()
               ? fine
               : put(calc::as_setting(trials, verdict), options.files.front(), files, console);
}

} // namespace lengthwise::cli
