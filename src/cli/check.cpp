#include "check/outlook.hpp"
#include "check/register.hpp"
#include "check/rules.hpp"
#include "cli/commands.hpp"
#include "cli/each_file.hpp"
#include "cli/plans.hpp"
#include "grammar/codes.hpp"
#include "report/findings_json.hpp"
#include "report/outlook_text.hpp"
#include "report/ramp_text.hpp"
#include "report/sarif.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace lengthwise::cli {

namespace {

bool is_bad(Diagnostics const& findings, bool strict) {
    return findings.has_errors() || (strict && findings.count(Severity::warning) > 0);
}

std::string plural(std::size_t n, std::string_view singular) {
    return fmt::format("{} {}{}", n, singular, n == 1 ? "" : "s");
}

/// What stands below an answer: the way to the race, when it is reached or would be, what is waived.
std::string proof(Loaded const& loaded, std::optional<lengthwise::check::Outlook> const& outlook,
                  Console const& console) {
    auto const& plan = loaded.plan();
    std::string text;
    auto const add = [&text](std::string const& more) { text += more.empty() ? "" : '\n' + more; };
    add(report::ramp_text(plan, console.out_paint, console.width, console.ascii));
    auto const waivers = lengthwise::check::waivers(plan);
    auto const given_up = std::ranges::any_of(waivers, [](plan::Allow const* allow) {
        return plan::rules[allow->rule].name == lengthwise::check::race_rep.name;
    });
    if (outlook && (outlook->reached || !given_up)) {
        auto const sentence = report::outlook_sentence(plan, *outlook, console.ascii);
        add(sentence.empty() ? "" : report::fold(sentence, console.width, 0) + '\n');
    }
    add(report::waivers_text(plan, waivers, loaded.sources(), style_of(console)));
    return text;
}

/// The answer first, then its proof.
std::string clean_text(Loaded const& loaded, std::optional<lengthwise::check::Outlook> const& outlook,
                       Console const& console) {
    auto const answer = fmt::format("{}: nothing to mend", report::visible(loaded.name));
    return fmt::format("{}; {}, {}\n", console.out_paint(report::Ink::bold, answer),
                       plural(check::rules().size(), "rule"),
                       plural(loaded.plan().sessions.size(), "session")) +
           proof(loaded, outlook, console);
}

/// The findings, the proof, and the verdict where the eye rests.
std::string findings_text(Loaded const& loaded, Diagnostics const& findings,
                          std::optional<lengthwise::check::Outlook> const& outlook, bool several,
                          Console const& console) {
    auto text = report::findings_text(findings, loaded.sources(), console.out_paint, style_of(console)) +
                proof(loaded, outlook, console);
    auto verdict = report::counts(findings);
    if (several) {
        verdict = fmt::format("{}: {}", report::visible(loaded.name), verdict);
    }
    if (outlook && findings.has_errors()) {
        auto const missing = report::shortfall(loaded.plan(), *outlook, console.ascii);
        verdict += missing.empty() ? "" : "; " + missing;
    }
    return text + '\n' + console.out_paint(report::Ink::bold, verdict) + '\n';
}

std::string unreadable_text(Loaded const& loaded, Console const& console) {
    auto const line = report::errors_line(loaded.name, loaded.errors.count(Severity::error));
    return report::findings_text(loaded.errors, loaded.sources(), console.out_paint, style_of(console)) +
           '\n' + console.out_paint(report::Ink::bold, line) + '\n';
}

/// The findings of a file, and how it stands to its race.
struct Judged {
    explicit Judged(Loaded const& of)
        : loaded(of), readable(!of.errors.has_errors()),
          findings(readable ? lengthwise::check::check(of.plan()) : of.errors),
          outlook(readable ? lengthwise::check::outlook(of.plan()) : std::nullopt) {}

    Loaded const& loaded;
    bool readable;
    Diagnostics findings;
    std::optional<lengthwise::check::Outlook> outlook;
};

std::string json(Judged const& judged, bool several) {
    auto const* const plan = judged.readable ? &judged.loaded.plan() : nullptr;
    return report::findings_json(
        judged.findings, judged.loaded.sources(),
        {.file = several ? std::string_view{judged.loaded.name} : std::string_view{},
         .plan = plan,
         .outlook = judged.outlook,
         .waivers = plan != nullptr ? lengthwise::check::waivers(*plan) : lengthwise::check::Waivers{}});
}

std::string text(Judged const& judged, bool several, Console const& console) {
    return !judged.readable ? unreadable_text(judged.loaded, console)
           : judged.findings.kept().empty()
               ? clean_text(judged.loaded, judged.outlook, console)
               : findings_text(judged.loaded, judged.findings, judged.outlook, several, console);
}

/// A log that is one document, however many files.
std::optional<report::Sarif> log_for(Check const& options, Console& console) {
    if (options.format != Format::sarif) {
        return std::nullopt;
    }
    std::vector<report::Sarif::Code> codes;
    for (auto const& code : grammar::codes) {
        codes.emplace_back(code.code, code.meaning);
    }
    return std::optional<report::Sarif>{std::in_place,
                                        [&console](std::string_view piece) { console.out.write(piece); },
                                        LENGTHWISE_VERSION, codes};
}

/// Into the log when its turn has come; what is logged has to live until then.
Outcome logged(std::shared_ptr<Loaded const> const& loaded, Judged const& judged, int code,
               report::Sarif& log) {
    auto waived = judged.readable ? lengthwise::check::waived(loaded->plan()) : lengthwise::check::Waived{};
    return {code, [loaded, findings = judged.findings, waived = std::move(waived), &log](Console&) {
                log.file(findings, loaded->sources(), waived);
                return fine;
            }};
}

} // namespace

int check(Check const& options, Files& files, Console& console) {
    auto const named = cli::named(options.files, files, console);
    auto log = log_for(options, console);
    auto const one = [&](std::string const& name, Console& own) -> Outcome {
        auto found = load(name, files, own);
        if (!found) {
            return {misused};
        }
        auto const loaded = std::make_shared<Loaded const>(std::move(*found));
        Judged const judged{*loaded};
        auto const code = is_bad(judged.findings, options.strict) ? has_errors : fine;
        if (log) {
            return logged(loaded, judged, code, *log);
        }
        auto const as_json = options.format == Format::json;
        own.out.write(as_json ? json(judged, named.several) : text(judged, named.several, own));
        return {code};
    };
    auto const between = options.format == Format::text ? "\n" : "";
    auto const code = each_file("check", named, console, one, {.between = between});
    if (log) {
        log->finish(code != misused);
    }
    return code;
}

} // namespace lengthwise::cli
