#include "check/register.hpp"
#include "cli/commands.hpp"
#include "cli/plans.hpp"
#include "report/findings_json.hpp"
#include "report/ramp_text.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace lengthwise::cli {

namespace {

bool is_bad(Diagnostics const& findings, bool strict) {
    return findings.has_errors() || (strict && findings.count(Severity::warning) > 0);
}

std::string plural(std::size_t n, std::string_view singular) {
    return fmt::format("{} {}{}", n, singular, n == 1 ? "" : "s");
}

/// The answer first, then its proof.
std::string clean_text(Loaded const& loaded, Console const& console) {
    auto const& plan = loaded.plan();
    auto text = console.out_paint(report::Ink::bold,
                                  fmt::format("{}: nothing to mend", report::visible(loaded.name)));
    text += fmt::format("; {}, {}\n", plural(check::rules().size(), "rule"),
                        plural(plan.sessions.size(), "session"));
    if (auto const ramp = report::ramp_text(plan, console.out_paint, console.width, console.ascii);
        !ramp.empty()) {
        text += '\n' + ramp;
    }
    if (auto const sentence = report::race_rep_sentence(plan, console.ascii); !sentence.empty()) {
        text += '\n' + sentence + '\n';
    }
    return text;
}

/// The findings, the proof, and the verdict where the eye rests.
std::string findings_text(Loaded const& loaded, Diagnostics const& findings, bool several,
                          Console const& console) {
    auto const& plan = loaded.plan();
    auto text = report::findings_text(findings, loaded.sources(), console.out_paint, style_of(console));
    if (auto const ramp = report::ramp_text(plan, console.out_paint, console.width, console.ascii);
        !ramp.empty()) {
        text += '\n' + ramp;
    }
    auto verdict = report::counts(findings);
    if (several) {
        verdict = fmt::format("{}: {}", report::visible(loaded.name), verdict);
    }
    if (auto const missing = report::shortfall(plan, console.ascii);
        !missing.empty() && findings.has_errors()) {
        verdict += "; " + missing;
    }
    return text + '\n' + console.out_paint(report::Ink::bold, verdict) + '\n';
}

std::string unreadable_text(Loaded const& loaded, Console const& console) {
    auto const line = report::errors_line(loaded.name, loaded.errors.count(Severity::error));
    return report::findings_text(loaded.errors, loaded.sources(), console.out_paint, style_of(console)) +
           '\n' + console.out_paint(report::Ink::bold, line) + '\n';
}

/// One file; gives its exit code.
int check_file(Loaded const& loaded, Check const& options, bool several, Console& console) {
    auto const readable = !loaded.errors.has_errors();
    auto const findings = readable ? lengthwise::check::check(loaded.plan()) : loaded.errors;
    if (options.format == Format::json) {
        console.out.write(report::findings_json(
            findings, loaded.sources(),
            {.file = several ? std::string_view{loaded.name} : std::string_view{},
             .sessions =
                 readable ? std::optional<std::uint64_t>{loaded.plan().sessions.size()} : std::nullopt}));
    } else if (!readable) {
        console.out.write(unreadable_text(loaded, console));
    } else if (findings.kept().empty()) {
        console.out.write(clean_text(loaded, console));
    } else {
        console.out.write(findings_text(loaded, findings, several, console));
    }
    return is_bad(findings, options.strict) ? has_errors : fine;
}

} // namespace

int check(Check const& options, Files& files, Console& console) {
    auto const named = cli::named(options.files, files, console);
    auto code = named.code;
    auto first = true;
    for (auto const& name : named.files) {
        auto const loaded = load(name, files, console);
        if (!loaded) {
            code = misused;
            continue;
        }
        console.out.write(first || options.format == Format::json ? "" : "\n");
        first = false;
        code = std::max(code, check_file(*loaded, options, named.several, console));
    }
    return code;
}

} // namespace lengthwise::cli
