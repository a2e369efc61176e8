#include "cards_program/make_cards.hpp"

#include "cards/back.hpp"
#include "cards/card.hpp"
#include "cards/sheet.hpp"
#include "cards/svg.hpp"
#include "cards/test_sheet.hpp"
#include "cards_program/pick.hpp"
#include "cli/plans.hpp"
#include "paint/painter.hpp"
#include "report/card_views.hpp"
#include "report/width.hpp"
#include "tailor/swimmer.hpp"
#include "units/spell.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <memory>

namespace lengthwise::cli {
namespace {

constexpr double png_dots = 8; ///< to the mm, about 200 an inch
constexpr double highest_png = 30'000;
constexpr char const* no_day = "2000-01-01";

/// A card, on its front and perhaps its back.
struct Side {
    cards::Picture front;
    std::optional<cards::Picture> back;
};

/// The plan as each swimmer swims it who has a card of his own.
struct Own {
    struct Plan {
        plan::Plan plan;
        report::CardViews views{plan};
    };
    plan::Plan const& plan;
    std::map<plan::Index, std::unique_ptr<Plan>> known{};

    report::CardViews& views(plan::Index swimmer) {
        auto& own = known[swimmer];
        if (!own) {
            own.reset(new Plan{tailor::swum_by(plan, swimmer)});
        }
        return own->views;
    }
};

class Maker {
  public:
    Maker(Cards const& options, Files& files, Console& console, paint::Shaper& shaper)
        : options_(options), files_(files), console_(console), shaper_(shaper),
          paper_(options.letter ? cards::letter : cards::a4) {}

    int plan(Loaded const& loaded) {
        auto const picked = pick_cards(loaded.plan(), options_, console_.ascii);
        if (!picked.problem.empty()) {
            console_.say(picked.problem);
            return misused;
        }
        auto const& size = *cards::find_card_size(options_.size);
        auto const card = cards::size_on(size, paper_, options_.margin);
        grid_ = cards::impose(card, paper_, options_.margin);
        if (!grid_) {
            console_.say(fmt::format("no {} card fits inside this margin; try --margin 6mm or --size quarter",
                                     options_.size));
            return misused;
        }
        about_ = about(loaded.plan(), picked.cards.front());
        report::CardViews views{loaded.plan()};
        Own own{loaded.plan()};
        for (auto const& wanted : picked.cards) {
            auto const view = view_of(views, own, wanted);
            if (!lay_out(view, wanted, loaded)) {
                code_ = has_errors;
            }
            if (sides_.size() >= grid_->cards() && printed() && !options_.png && code_ == fine) {
                print(false);
            }
        }
        return finish();
    }

    int test_sheet() {
        about_ = {"Test sheet", "A bar of 50 mm", no_day};
        auto const picture = cards::test_sheet(paper_, options_.margin, shaper_);
        paint::PdfWriter pdf{shaper_, about_};
        pdf.add({paper_, {{&picture, {}, false}}, {}});
        console_.out.write(pdf.finish());
        return fine;
    }

  private:
    static paint::About about(plan::Plan const& plan, CardWish const& first) {
        auto const& date = plan.sessions[first.session].date;
        auto const title =
            plan.name.empty() ? report::session_label(plan, first.session) : report::visible(plan.name);
        return {title, "Cards for the pool", date ? spell::iso(*date) : no_day};
    }

    [[nodiscard]] report::Card view_of(report::CardViews& views, Own& own, CardWish const& wanted) const {
        auto& from = wanted.swimmer ? own.views(*wanted.swimmer) : views;
        auto const whose =
            wanted.swimmer ? report::visible(own.plan.swimmers[*wanted.swimmer].name) : std::string{};
        return from.card(wanted.session, wanted.lane, options_.back, whose);
    }

    bool lay_out(report::Card const& view, CardWish const& wanted, Loaded const& loaded) {
        cards::Wanted const how{grid_->card, options_.distance, options_.hole, view.back.has_value()};
        auto laid = cards::lay_out(view, how, shaper_);
        if (!laid.problem.empty()) {
            console_.say(fmt::format("{} {} {} cards that are read from {}\n"
                                     "      = try a larger --size or a shorter --distance",
                                     name_of(loaded, wanted), laid.problem, options_.size, distance()));
            return false;
        }
        if (first_.empty()) {
            first_ = laid.fronts;
        }
        std::vector<cards::Picture> backs;
        if (view.back) {
            backs = cards::backs_of(view, laid.strip, grid_->card, options_.distance, options_.hole, shaper_);
        }
        if (view.back && backs.empty()) {
            console_.say(fmt::format("the back of {} has no room on {} cards that are read from {}\n"
                                     "      = try a larger --size or a shorter --distance",
                                     name_of(loaded, wanted), options_.size, distance()));
            return false;
        }
        for (std::uint32_t copy = 0; copy < options_.copies; ++copy) {
            add_sides(laid.fronts, backs);
        }
        return true;
    }

    /// Short enough for a sentence.
    [[nodiscard]] std::string name_of(Loaded const& loaded, CardWish const& wanted) const {
        constexpr std::size_t most_cells = 40;
        return report::cut(report::session_label(loaded.plan(), wanted.session), most_cells, console_.ascii);
    }

    /// A back for which there is no front left becomes the front of one card more.
    void add_sides(std::vector<cards::Picture> const& fronts, std::vector<cards::Picture> const& backs) {
        for (std::size_t i = 0; i < std::max(fronts.size(), backs.size()); ++i) {
            bool const both = i < fronts.size() && i < backs.size();
            sides_.push_back(
                {i < fronts.size() ? fronts[i] : backs[i], both ? std::optional{backs[i]} : std::nullopt});
        }
    }

    [[nodiscard]] std::string distance() const {
        return options_.distance >= 1000 ? fmt::format("{}m", options_.distance / 1000)
                                         : fmt::format("{}cm", options_.distance / 10);
    }

    /// Only a preview was wanted where there is one and nothing else was said.
    [[nodiscard]] bool printed() const { return options_.target.file || !options_.preview; }

    /// Full sheets; at the end the last one too.
    void print(bool all) {
        if (!pdf_) {
            pdf_.emplace(shaper_, about_);
        }
        auto const each = grid_->cards();
        std::size_t at = 0;
        for (; at + each <= sides_.size() || (all && at < sides_.size()); at += each) {
            paint::Page front{grid_->paper, {}, cards::cut_marks(*grid_)};
            paint::Page back{grid_->paper, {}, {}};
            for (std::size_t i = 0; i < each && at + i < sides_.size(); ++i) {
                auto const& side = sides_[at + i];
                front.pictures.push_back({&side.front, cards::place(*grid_, i), false});
                if (side.back) {
                    auto const place = cards::back_place(*grid_, i);
                    back.pictures.push_back({&*side.back, place.at, place.upside_down});
                }
            }
            pdf_->add(front);
            if (options_.back != report::BackKind::none) {
                pdf_->add(back);
            }
        }
        sides_.erase(sides_.begin(),
                     sides_.begin() + static_cast<std::ptrdiff_t>(std::min(at, sides_.size())));
    }

    int finish() {
        if (code_ != fine) {
            return code_;
        }
        if (!preview()) {
            return misused;
        }
        std::string bytes;
        if (printed() && options_.png) {
            auto const picture = stacked();
            if (picture.size.height * png_dots > highest_png) {
                console_.say("these cards are too many for one picture; choose with --week and --session");
                return misused;
            }
            bytes = paint::png(picture, shaper_, png_dots);
        } else if (printed()) {
            print(true);
            bytes = pdf_->finish();
        }
        if (auto const lacking = missing(); !lacking.empty()) {
            console_.say(lacking);
            return has_errors;
        }
        console_.out.write(bytes);
        return fine;
    }

    /// A letter that no font has would be printed as a box.
    [[nodiscard]] std::string missing() const {
        std::string list;
        for (auto const letter : shaper_.missing()) {
            list += fmt::format("{}U+{:04X}", list.empty() ? "" : ", ", static_cast<std::uint32_t>(letter));
        }
        return list.empty() ? list
                            : fmt::format("no font here has the letter {}; install fonts-noto-core and "
                                          "fonts-noto-cjk, or write it otherwise",
                                          list);
    }

    bool preview() {
        if (!options_.preview) {
            return true;
        }
        auto const drawn = cards::svg(first_, about_.title);
        auto const existing = options_.target.force ? Existing::replace : Existing::keep;
        if (auto const refusal = files_.write(*options_.preview, drawn, existing)) {
            console_.say(
                fmt::format("cannot write {}: {}", report::visible(*options_.preview), refusal->reason));
            return false;
        }
        console_.err.write(fmt::format("wrote {}\n", report::visible(*options_.preview)));
        return true;
    }

    /// All cards one below the other.
    [[nodiscard]] cards::Picture stacked() const {
        cards::Picture all;
        for (auto const& side : sides_) {
            cards::append(all, side.front);
        }
        return all;
    }

    Cards const& options_;
    Files& files_;
    Console& console_;
    paint::Shaper& shaper_;
    cards::Size paper_;
    std::optional<cards::Grid> grid_;
    paint::About about_;
    std::vector<Side> sides_;
    std::vector<cards::Picture> first_;
    std::optional<paint::PdfWriter> pdf_;
    int code_ = fine;
};

} // namespace

int make_cards(Cards const& options, char const* fonts, Files& files, Console& console) {
    auto const one = options.test_sheet ? One{} : load_one("cards", options.files, files, console);
    if (one.code != fine) {
        return one.code;
    }
    auto own = paint::own_fonts(paint::font_folders(fonts));
    if (!own) {
        console.say(
            fmt::format("the font of the cards is not here; install the package {}", paint::font_package));
        return misused;
    }
    paint::Shaper shaper{std::move(*own)};
    Maker maker{options, files, console, shaper};
    return one.plan ? maker.plan(*one.plan) : maker.test_sheet();
}

} // namespace lengthwise::cli
