#include "support/card_checks.hpp"

#include "calc/totals.hpp"
#include "cards/back.hpp"
#include "cards/layout.hpp"
#include "cards/sheet.hpp"
#include "report/card_views.hpp"
#include "support/generate.hpp"
#include "support/read_plan.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace lengthwise::support {
namespace {

constexpr double hair = 0.02; ///< mm
constexpr double safe = 5;    ///< mm, written again here: the code's own figure is what is tested

/// A text's letters, from the highest to the lowest.
struct Box {
    double left, top, right, bottom;
    std::string const* words;
};

Box box_of(cards::Text const& text) {
    return {text.left(), text.at.y - 0.78 * text.em, text.right(), text.at.y + 0.2 * text.em, &text.words};
}

std::string place(Box const& box) {
    return fmt::format("\"{}\" ({:.2f}, {:.2f})-({:.2f}, {:.2f})", *box.words, box.left, box.top, box.right,
                       box.bottom);
}

bool overlap(Box const& a, Box const& b) {
    return a.left < b.right - hair && b.left < a.right - hair && a.top < b.bottom - hair &&
           b.top < a.bottom - hair;
}

using Letters = std::map<char, int>;

void count(Letters& letters, std::string_view text) {
    for (char const c : text) {
        if (c != ' ' && c != ',') {
            ++letters[c];
        }
    }
}

void count(Letters& letters, report::CardRow const& row, bool lengths) {
    count(letters, row.count);
    for (auto const& amount : row.amount) {
        count(letters, amount);
    }
    count(letters, row.recovery);
    for (auto const& how : row.how) {
        count(letters, how);
    }
    for (auto const& note : row.notes) {
        count(letters, note);
    }
    if (row.parts.empty()) {
        for (auto const& what : row.what) {
            count(letters, what);
        }
    }
    if (row.kind == report::CardRow::Kind::group && !row.count.empty()) {
        count(letters, "×");
    } else if (!row.count.empty()) {
        count(letters, "×");
    }
    if (lengths && row.kind == report::CardRow::Kind::set) {
        count(letters, row.lengths);
    }
    for (auto const& inner : row.rows) {
        count(letters, inner, lengths);
    }
}

} // namespace

double FakeMeasure::width(std::string_view words, cards::Weight weight) {
    double em = 0;
    for (char const c : words) {
        auto const byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 && byte < 0xC0) {
            continue; // inside a character
        }
        bool const narrow = c == ' ' || c == '.' || c == ',' || c == 'i' || c == 'l' || c == 't' || c == ':';
        em += byte >= 0xE3 ? 1.0 : narrow ? 0.3 : c == 'm' || c == 'w' || c == 'M' ? 0.9 : 0.62;
    }
    return weight == cards::Weight::semibold ? em * 1.04 : em;
}

std::string fault_of(cards::Picture const& picture, double distance, Hole hole) {
    auto const small = cards::height_of_arc(distance, 16) / 0.727;
    std::vector<Box> boxes;
    for (auto const& mark : picture.marks) {
        auto const* const text = std::get_if<cards::Text>(&mark);
        if (text == nullptr) {
            continue;
        }
        auto const box = box_of(*text);
        auto const& size = picture.size;
        if (box.left < safe - hair || box.top < safe - hair || box.right > size.width - safe + hair ||
            box.bottom > size.height - safe + hair) {
            return "outside: " + place(box);
        }
        bool const beside = (hole == Hole::right && box.right > size.width - 14 + hair) ||
                            (hole == Hole::left && box.left < 14 - hair);
        if (beside && text->at.y - 0.727 * text->em < 14 - hair) {
            return "in the hole: " + place(box);
        }
        if (text->em < small * 0.999) {
            return "too small: " + place(box);
        }
        boxes.push_back(box);
    }
    std::sort(boxes.begin(), boxes.end(), [](Box const& a, Box const& b) { return a.top < b.top; });
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        for (auto j = i + 1; j < boxes.size() && boxes[j].top < boxes[i].bottom; ++j) {
            if (overlap(boxes[i], boxes[j])) {
                return place(boxes[i]) + " and " + place(boxes[j]);
            }
        }
    }
    return {};
}

std::string lost_on(cards::Laid const& laid, report::Card const& card, bool caution) {
    Letters wanted;
    bool const lengths = cards::levels[laid.level].lengths;
    for (auto const& section : card.sections) {
        count(wanted, section.name);
        for (auto const& row : section.rows) {
            count(wanted, row, lengths);
        }
    }
    for (auto const& note : card.notes) {
        count(wanted, note);
    }
    count(wanted, card.title);
    count(wanted, card.total);
    count(wanted, card.lengths);
    count(wanted, caution ? card.caution : std::string{});
    for (auto const& front : laid.fronts) {
        for (auto const& mark : front.marks) {
            if (auto const* const text = std::get_if<cards::Text>(&mark)) {
                for (char const c : text->words) {
                    --wanted[c];
                }
            }
        }
    }
    for (auto const& [letter, missing] : wanted) {
        if (missing > 0) {
            return fmt::format("{} times '{}'", missing, letter);
        }
    }
    return {};
}

namespace {

/// One session in one size; gives what is wrong.
std::string check(report::Card const& card, cards::CardSize const& size, cards::Wanted wanted,
                  cards::Measure& measure, CardCount& count) {
    wanted.size = cards::size_on(size, cards::a4, cards::usual_margin);
    auto const laid = cards::lay_out(card, wanted, measure);
    if (!laid.problem.empty()) {
        count.refused.insert(std::string{size.name});
        ++count.refusals;
        return {};
    }
    for (auto const& front : laid.fronts) {
        if (auto fault = fault_of(front, wanted.distance, wanted.hole ? Hole::right : Hole::none);
            !fault.empty()) {
            return fault;
        }
    }
    ++count.laid;
    count.several += laid.fronts.size() > 1 ? 1 : 0;
    if (auto lost = lost_on(laid, card, !wanted.back); !lost.empty()) {
        return "lost: " + lost;
    }
    if (!wanted.back) {
        return {};
    }
    for (auto const& back :
         cards::backs_of(card, laid.strip, wanted.size, wanted.distance, wanted.hole, measure)) {
        ++count.backs;
        if (auto fault = fault_of(back, wanted.distance, wanted.hole ? Hole::left : Hole::none);
            !fault.empty()) {
            return "back, " + fault;
        }
    }
    return {};
}

} // namespace

CardCount check_cards(int sessions, std::uint64_t seed, cards::Measure& measure) {
    CardCount count;
    for (; count.sessions < sessions && count.fault.empty(); ++seed) {
        auto const read = read_plan(test::generate({.seed = seed}).text);
        count.fault = read.error();
        report::CardViews views{read.plan()};
        for (plan::Index i = 0; i < read.plan().sessions.size() && count.fault.empty(); ++i) {
            auto const lanes = calc::numbers(calc::lanes_of(read.plan(), read.plan().sessions[i]));
            auto const kind = i % 3 == 0 ? report::BackKind::overview : report::BackKind::pace;
            auto const card = views.card(i, lanes.empty() ? 0 : lanes.back(), kind);
            ++count.sessions;
            for (auto const& size : cards::card_sizes()) {
                cards::Wanted const wanted{{}, 700, i % 2 == 0, count.sessions % 2 == 0};
                if (auto fault = check(card, size, wanted, measure, count); !fault.empty()) {
                    count.fault = fmt::format("seed {}, session {}, {}: {}", seed, i, size.name, fault);
                }
            }
        }
    }
    return count;
}

} // namespace lengthwise::support
