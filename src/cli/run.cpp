#include "cli/run.hpp"

#include "cli/commands.hpp"
#include "cli/options.hpp"
#include "cli/plans.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <new>

namespace lengthwise::cli {

namespace {

constexpr std::size_t usual_width = 80;
constexpr std::size_t least_width = 40;

bool colours(Colour asked, bool terminal, Surroundings const& around) {
    return asked == Colour::always || (asked == Colour::automatic && terminal && !around.no_colour);
}

std::size_t width(Look const& look, Surroundings const& around) {
    if (look.width) {
        return *look.width;
    }
    return around.columns == 0 ? usual_width : std::clamp(around.columns, least_width, usual_width);
}

/// `-o` with the plan's own file, whatever it is called there.
bool is_one_of(std::string const& target, std::vector<std::string> const& names, Files& files) {
    auto const path_of = [&files](std::string const& name) {
        auto found = files.resolve_links(name);
        auto* const path = std::get_if<grammar::Reader::Path>(&found);
        return path == nullptr ? std::string{} : std::move(path->absolute);
    };
    auto const path = path_of(target);
    return !path.empty() &&
           std::ranges::any_of(names, [&](std::string const& name) { return path_of(name) == path; });
}

/// Runs one command; with `-o` its results are gathered and put in place as a whole, if all went well.
class Runner {
  public:
    Runner(Files& files, Surroundings const& around, Output& out, Output& err, CardsCommand const& cards)
        : files_(files), around_(around), out_(out), err_(err), cards_(cards) {}

    int operator()(Answer const& answer) {
        out_.write(answer.text);
        return fine;
    }
    int operator()(Misuse const& misuse) {
        console(out_, {}, false).say(misuse.problem);
        return misused;
    }
    int operator()(Explain const& options) {
        auto console = this->console(out_, options.look, around_.out_is_terminal);
        return explain(options, console);
    }
    int operator()(Tidy const& options) {
        auto console = this->console(out_, options.look, around_.out_is_terminal);
        return tidy(options, files_, console);
    }
    int operator()(New const& options) { return targeted(options, new_plan); }
    int operator()(Tally const& options) { return targeted(options, tally); }
    int operator()(Deck const& options) { return targeted(options, deck); }
    int operator()(Chart const& options) { return targeted(options, chart); }
    int operator()(Export const& options) { return targeted(options, export_plans); }
    int operator()(Check const& options) { return targeted(options, check); }
    int operator()(Pace const& options) { return targeted(options, pace); }
    int operator()(Cards const& options) {
        if (!cards_) {
            console(out_, options.look, false).say("cards are not installed");
            return misused;
        }
        bool const to_screen = !options.target.file && !options.preview && around_.out_is_terminal;
        if (to_screen) {
            console(out_, options.look, false).say("cards go into a file: -o cards.pdf");
            return misused;
        }
        return targeted(options, cards_);
    }
    int operator()(Compose const& options) { return targeted(options, compose); }

  private:
    Console console(Output& out, Look const& look, bool terminal) {
        return {.out = out,
                .err = err_,
                .out_paint = report::Paint{colours(look.colour, terminal, around_)},
                .err_paint = report::Paint{colours(look.colour, around_.err_is_terminal, around_)},
                .width = width(look, around_),
                .ascii = look.ascii,
                .typed = around_.in_is_terminal,
                .watched = around_.err_is_terminal};
    }

    template <typename Command, typename Run>
    int targeted(Command const& options, Run const& command) {
        if (!options.target.file || *options.target.file == "-") {
            auto console = this->console(out_, options.look, around_.out_is_terminal);
            auto const code = command(options, files_, console);
            err_.write(console.summary.empty() ? "" : console.summary + '\n');
            err_.write(console.below);
            return code;
        }
        TextOutput gathered;
        auto console = this->console(gathered, options.look, false);
        auto const& target = *options.target.file;
        if (is_one_of(target, options.files, files_)) {
            console.say(fmt::format("{} is the plan itself; give -o another name", report::visible(target)));
            return misused;
        }
        auto const code = command(options, files_, console);
        return code == misused ? misused
                               : std::max(code, put(target, gathered.text, options.target.force, console));
    }

    int put(std::string const& target, std::string const& text, bool force, Console& console) {
        if (text.empty()) {
            return fine; // what stands in the way has been said
        }
        auto const& old = console.old;
        bool const renews = force && old && is_one_of(target, {old->name}, files_);
        auto const refusal = renews ? files_.replace(target, text, old->bytes)
                                    : files_.write(target, text, force ? Existing::replace : Existing::keep);
        if (refusal) {
            console.say(fmt::format("cannot write {}: {}", report::visible(target), refusal->reason));
            return misused;
        }
        auto const summary = console.summary.empty() ? console.summary : ": " + console.summary;
        err_.write(fmt::format("wrote {}{}\n{}", report::visible(target), summary, console.below));
        return fine;
    }

    Files& files_;
    Surroundings const& around_;
    Output& out_;
    Output& err_;
    CardsCommand const& cards_;
};

} // namespace

int run(std::vector<std::string> const& arguments, Files& files, Surroundings const& around, Output& out,
        Output& err, CardsCommand const& cards) {
    try {
        return std::visit(Runner{files, around, out, err, cards}, read_options(arguments));
    } catch (std::bad_alloc const&) {
        err.write("lengthwise: out of memory\n");
        return misused;
    }
}

} // namespace lengthwise::cli
