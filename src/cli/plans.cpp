#include "cli/plans.hpp"

#include "check/register.hpp"
#include "check/too_long.hpp"
#include "grammar/limits.hpp"
#include "grammar/words.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace lengthwise::cli {

namespace {

constexpr std::string_view standard_input = "-";

/// A file beside the one that is not there, whose name is near to it.
std::string neighbour(std::string const& name, Files& files) {
    auto const slash = name.rfind('/');
    auto const folder =
        slash == std::string::npos ? std::string{"."} : name.substr(0, std::max<std::size_t>(slash, 1));
    auto const found = files.expand(folder);
    auto const* const there = std::get_if<std::vector<std::string>>(&found);
    if (there == nullptr) {
        return {};
    }
    auto const wanted = slash == std::string::npos ? name : name.substr(slash + 1);
    for (int distance = 1; distance <= 2; ++distance) {
        for (auto const& path : *there) {
            auto const file = path.substr(path.rfind('/') + 1);
            if (edit_distance(wanted, file, distance) <= distance) {
                return slash == std::string::npos ? file : name.substr(0, slash + 1) + file;
            }
        }
    }
    return {};
}

void say_refusal(std::string const& name, std::string const& reason, Files& files, Console& console) {
    if (reason != "no such file") {
        console.say(fmt::format("cannot read {}: {}", report::visible(name), reason));
        return;
    }
    auto const near = neighbour(name, files);
    console.say(near.empty() ? fmt::format("no file {}", report::visible(name))
                             : fmt::format("no file {}; did you mean {}?", report::visible(name),
                                           report::visible(near)));
}

/// The text of a scope's sessions, up to the next one or to the end of the file.
Span text_of_scope(Loaded const& loaded, report::Scope scope) {
    auto const& plan = loaded.plan();
    auto first = scope.index;
    auto end = first + 1;
    if (scope.kind == report::Scope::Kind::week) {
        first = plan.weeks[scope.index].sessions.first;
        end = plan.weeks[scope.index].sessions.end();
    }
    if (scope.kind == report::Scope::Kind::plan || first >= plan.sessions.size()) {
        return {0, UINT32_MAX};
    }
    return {plan.sessions[first].span.begin,
            end < plan.sessions.size() ? plan.sessions[end].span.begin : loaded.bundle.root().source.end()};
}

/// Stands there, or in a set that is used there.
bool is_in(Diagnostic const& finding, Span text) {
    auto const inside = [text](Span span) { return span.begin >= text.begin && span.begin < text.end; };
    return inside(finding.span) ||
           std::ranges::any_of(finding.related, [&](Related const& related) { return inside(related.span); });
}

} // namespace

void Console::say(std::string_view message) {
    err.write(fmt::format("lengthwise: {}\n", message));
}

report::Sources Loaded::sources() const {
    report::Sources sources;
    for (auto const& file : bundle.files) {
        sources.push_back(&file.source);
    }
    return sources;
}

Named named(std::vector<std::string> const& arguments, Files& files, Console& console) {
    Named named;
    if (arguments.empty() && console.typed) {
        console.say("which file? or - to type it here");
        named.code = misused;
        return named;
    }
    auto const names = arguments.empty() ? std::vector{std::string{standard_input}} : arguments;
    named.several = names.size() > 1;
    for (auto const& name : names) {
        if (name == standard_input) {
            named.files.push_back(name);
            continue;
        }
        auto found = files.expand(name);
        if (auto const* const refusal = std::get_if<grammar::Reader::Refusal>(&found)) {
            say_refusal(name, refusal->reason, files, console);
            named.code = misused;
            continue;
        }
        auto const& inside = std::get<std::vector<std::string>>(found);
        named.several = named.several || inside != std::vector{name};
        named.files.insert(named.files.end(), inside.begin(), inside.end());
    }
    return named;
}

std::optional<std::string> text_of(std::string const& name, Files& files, Console& console) {
    if (name == standard_input && console.typed) {
        console.say("reading what you type, end it with Ctrl-D");
        console.err.flush(); // before it waits
    }
    auto read = name == standard_input ? files.read_standard_input(limits::file_bytes)
                                       : files.read(name, limits::file_bytes);
    if (auto const* const refusal = std::get_if<grammar::Reader::Refusal>(&read)) {
        say_refusal(name, refusal->reason, files, console);
        return std::nullopt;
    }
    return std::move(std::get<grammar::Reader::Text>(read).bytes);
}

std::optional<Loaded> load(std::string const& name, Files& files, Console& console) {
    auto text = text_of(name, files, console);
    if (!text) {
        return std::nullopt;
    }
    auto const path = name == standard_input ? std::nullopt : std::optional{name};
    Loaded loaded{.name = name,
                  .bundle = grammar::bundle(name, std::move(*text), path, files),
                  .resolved = {},
                  .errors = {}};
    loaded.resolved = plan::resolve(loaded.bundle);
    loaded.errors.append(loaded.bundle.findings);
    loaded.errors.append(loaded.resolved.findings);
    if (!loaded.errors.has_errors()) {
        loaded.errors.append(check::too_long(loaded.plan()));
    }
    loaded.errors.sort_by_place();
    return loaded;
}

One load_one(std::string_view command, std::vector<std::string> const& arguments, Files& files,
             Console& console) {
    auto const named = cli::named(arguments, files, console);
    if (named.code != fine) {
        return {std::nullopt, named.code};
    }
    if (named.files.size() != 1) {
        console.say(fmt::format("{} takes one file", command));
        return {std::nullopt, misused};
    }
    auto loaded = load(named.files.front(), files, console);
    if (!loaded) {
        return {std::nullopt, misused};
    }
    if (loaded->errors.has_errors()) {
        say_errors(*loaded, console);
        return {std::nullopt, has_errors};
    }
    return {std::move(loaded), fine};
}

void say_errors(Loaded const& loaded, Console& console) {
    console.err.write(
        report::findings_text(loaded.errors, loaded.sources(), console.err_paint, style_of(console)));
    console.err.write(
        fmt::format("\n{}\n", report::errors_line(loaded.name, loaded.errors.count(Severity::error))));
}

void say_warnings(Loaded const& loaded, report::Scope scope, Console& console) {
    auto const found = check::check_on_the_way(loaded.plan());
    auto const text = text_of_scope(loaded, scope);
    Diagnostics findings;
    for (auto const& finding : found.kept()) {
        if (is_in(finding, text)) {
            findings.add(finding);
        }
    }
    if (scope.kind == report::Scope::Kind::plan) {
        findings = found; // with what was counted only
    }
    if (!findings.kept().empty()) {
        console.err.write(
            report::findings_text(findings, loaded.sources(), console.err_paint, style_of(console)));
    }
}

report::FindingsStyle style_of(Console const& console) {
    return {.width = console.width, .ascii = console.ascii};
}

} // namespace lengthwise::cli
