#include "show.hpp"

#include "cards/card.hpp"
#include "cards/sheet.hpp"
#include "cards/svg.hpp"
#include "generator.hpp"
#include "measure.hpp"
#include "no_files.hpp"
#include "plan/resolve.hpp"
#include "report/card_views.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

namespace lengthwise::bench {

namespace {

constexpr std::uint64_t bytes = 380'000; // about a thousand sessions

/// All letters are as wide as the average one; asking a font is the painter's cost, not the layout's.
class EvenLetters final : public cards::Measure {
  public:
    double width(std::string_view words, cards::Weight /*weight*/) override {
        return 0.55 * static_cast<double>(words.size());
    }
};

void lay_out(Goals& goals) {
    NoFiles no_files;
    auto const bundle =
        grammar::bundle("cards.swim", generate(bytes, false).notation, std::nullopt, no_files);
    auto const plan = plan::resolve(bundle).plan;
    auto const size = cards::size_on(*cards::find_card_size("quarter"), cards::a4, cards::usual_margin);
    report::CardViews views{plan};
    EvenLetters letters;
    std::vector<double> times;
    for (plan::Index i = 0; i < plan.sessions.size(); ++i) {
        Watch const watch;
        auto const laid = cards::lay_out(views.card(i, 1), {size}, letters);
        if (laid.fronts.empty() || cards::svg(laid.fronts, "card").empty()) {
            throw std::runtime_error{"no card: " + laid.problem};
        }
        times.push_back(watch.took().core);
    }
    goals.add({"a card laid out and as SVG, ms", median(times) * 1e3});
}

void paint(Options const& options, Goals& goals) {
    Workshop const workshop;
    auto const pdf = workshop.at("cards.pdf").string();
    auto const make = [&](Generated const& plan) { // the first lane's, where there are several
        auto const file = workshop.at("plan.swim");
        write(file, plan.notation);
        std::vector<std::string> command{
            options.program.string(), "cards", file.string(), "--force", "-o", pdf};
        if (plan.notation.find("lane 1") != std::string::npos) {
            command.insert(command.end(), {"--lane", "1"});
        }
        return run_well(command);
    };
    auto const week = generate_week();
    auto const season = generate(bytes, false);
    std::vector<double> sheet;
    std::vector<double> thousand;
    std::int64_t resident = 0;
    (void)make(week);
    for (int i = 0; i < options.rounds; ++i) {
        sheet.push_back(make(week).took.core);
        auto const all = make(season);
        thousand.push_back(all.took.core * 1000 / static_cast<double>(season.sessions));
        resident = std::max(resident, all.resident);
    }
    goals.add({"a sheet of cards as PDF, ms", median(sheet) * 1e3, Bound::at_most, 50});
    goals.add({"1 000 cards as PDF, s of a core", median(thousand), Bound::at_most, 1});
    goals.add({"1 000 cards as PDF, MB resident", static_cast<double>(resident) / 1e6, Bound::at_most, 100});
}

} // namespace

void measure_cards(Options const& options, Goals& goals) {
    lay_out(goals);
    if (!options.program.empty() && !options.cards.empty()) {
        paint(options, goals);
    }
}

} // namespace lengthwise::bench
