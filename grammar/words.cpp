#include "words.hpp"

#include "synonyms.hpp"
#include "word_key.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace lengthwise {

namespace {

struct Spelling {
    std::string_view text;
    Word word;
};

/// Every spelling; a word's first is the one that `tidy` writes. Two words that
/// make one ("front crawl", "warm up", "pull buoy") are the grammar's.
constexpr auto spellings = std::to_array<Spelling>({
    {"crawl", Word::crawl},
    {"freestyle", Word::crawl},
    {"free", Word::crawl},
    {"back", Word::back},
    {"backstroke", Word::back},
    {"breast", Word::breast},
    {"breaststroke", Word::breast},
    {"fly", Word::fly},
    {"butterfly", Word::fly},
    {"medley", Word::medley},
    {"IM", Word::medley},
    {"choice", Word::choice},
    {"swim", Word::swim},
    {"kick", Word::kick},
    {"pull", Word::pull},
    {"tread", Word::tread},
    {"drill", Word::drill},
    {"easy", Word::easy},
    {"steady", Word::steady},
    {"moderate", Word::steady},
    {"threshold", Word::threshold},
    {"hard", Word::hard},
    {"fast", Word::hard},
    {"strong", Word::hard},
    {"sprint", Word::sprint},
    {"max", Word::sprint},
    {"at", Word::at},
    {"hold", Word::hold},
    {"rpe", Word::rpe},
    {"build", Word::build},
    {"descend", Word::descend},
    {"negative", Word::negative},
    {"split", Word::split},
    {"fins", Word::fins},
    {"paddles", Word::paddles},
    {"buoy", Word::buoy},
    {"board", Word::board},
    {"kickboard", Word::board},
    {"snorkel", Word::snorkel},
    {"band", Word::band},
    {"wetsuit", Word::wetsuit},
    {"nothing", Word::nothing},
    {"stops", Word::stops},
    {"super-sprint", Word::super_sprint},
    {"standard", Word::standard},
    {"olympic", Word::standard},
    {"middle", Word::middle},
    {"long", Word::long_course},
    {"warm-up", Word::warm_up},
    {"warmup", Word::warm_up},
    {"main", Word::main},
    {"cool-down", Word::cool_down},
    {"plan", Word::plan},
    {"race", Word::race},
    {"swimmer", Word::swimmer},
    {"before", Word::before},
    {"set", Word::set},
    {"include", Word::include},
    {"pool", Word::pool},
    {"rest", Word::rest},
    {"factor", Word::factor},
    {"limit", Word::limit},
    {"allow", Word::allow},
    {"week", Word::week},
    {"session", Word::session},
    {"pause", Word::pause},
    {"lane", Word::lane},
    {"if", Word::if_},
    {"time", Word::time},
    {"use", Word::use},
    {"with", Word::with},
    {"as", Word::as},
    {"broken", Word::broken},
    {"for", Word::for_},
    {"on", Word::on},
    {"off", Word::off},
    {"per", Word::per},
    {"in", Word::in},
    {"reserve", Word::reserve},
    {"about", Word::about},
    {"plus", Word::plus},
    {"minus", Word::minus},
    {"longest", Word::longest},
    {"distance", Word::distance},
    {"from", Word::from},
    {"open", Word::open},
    {"water", Word::water},
    {"needed", Word::needed},
    {"breaths", Word::breaths},
    {"breath", Word::breaths},
    {"x", Word::x},
    {"odds", Word::odds},
    {"evens", Word::evens},
    {"every", Word::every},
    {"first", Word::first},
    {"next", Word::next},
    {"last", Word::last},
    {"m", Word::metres},
    {"metre", Word::metres},
    {"metres", Word::metres},
    {"meter", Word::metres},
    {"meters", Word::metres},
    {"yd", Word::yards},
    {"yard", Word::yards},
    {"yards", Word::yards},
    {"lengths", Word::lengths},
    {"length", Word::lengths},
    {"s", Word::seconds},
    {"sec", Word::seconds},
    {"secs", Word::seconds},
    {"second", Word::seconds},
    {"seconds", Word::seconds},
    {"min", Word::minutes},
    {"mins", Word::minutes},
    {"minute", Word::minutes},
    {"minutes", Word::minutes},
    {"h", Word::hours},
    {"hour", Word::hours},
    {"hours", Word::hours},
    {"Mon", Word::mon},
    {"Monday", Word::mon},
    {"Tue", Word::tue},
    {"Tuesday", Word::tue},
    {"Wed", Word::wed},
    {"Wednesday", Word::wed},
    {"Thu", Word::thu},
    {"Thursday", Word::thu},
    {"Fri", Word::fri},
    {"Friday", Word::fri},
    {"Sat", Word::sat},
    {"Saturday", Word::sat},
    {"Sun", Word::sun},
    {"Sunday", Word::sun},
    {"front", Word::front},
    {"warm", Word::warm},
    {"cool", Word::cool},
    {"up", Word::up},
    {"down", Word::down},
});
static_assert(spellings.size() * 2 <= detail::word_slots, "a fuller table would search long");

constexpr auto words = static_cast<std::size_t>(Word::count_);

constexpr std::array<std::string_view, words> canonical = [] {
    std::array<std::string_view, words> result{};
    for (auto const& [text, word] : spellings) {
        auto& place = result[static_cast<std::size_t>(word)];
        place = place.empty() ? text : place;
    }
    return result;
}();

/// How far a typed word may be from one it is meant to be. Short words are near to
/// everything, so they get less.
constexpr int reach(std::string_view spelled) {
    return spelled.size() < 2 ? 0 : spelled.size() < 5 ? 1 : 2;
}

} // namespace

namespace detail {

constinit std::array<WordSlot, word_slots> const word_table = [] {
    std::array<WordSlot, word_slots> table{};
    for (auto const& [text, word] : spellings) {
        auto const key = pack(text);
        auto at = slot_of(key);
        while (table[at].word != Word::none) {
            at = (at + 1) % word_slots;
        }
        table[at] = {key, word};
    }
    return table;
}();

} // namespace detail

Word find_word(std::string_view text) {
    return text.size() > detail::longest_word ? Word::none : detail::find_key(detail::pack(text));
}

std::string_view spelling(Word word) {
    return canonical[static_cast<std::size_t>(word)];
}

std::vector<std::string_view> synonyms(Word word) {
    std::vector<std::string_view> all;
    for (auto const& [text, of] : spellings) {
        if (of == word && text != spelling(word)) {
            all.push_back(text);
        }
    }
    return all;
}

SectionKind section_of(Word word) {
    switch (word) {
    case Word::warm_up:
        return SectionKind::warm_up;
    case Word::drill:
        return SectionKind::drill;
    case Word::cool_down:
        return SectionKind::cool_down;
    default:
        return SectionKind::main;
    }
}

Word word_of(SectionKind kind) {
    constexpr Word heads[] = {Word::warm_up, Word::drill, Word::main, Word::cool_down};
    return heads[static_cast<std::size_t>(kind)];
}

RaceKind race_of(Word word) {
    switch (word) {
    case Word::super_sprint:
        return RaceKind::super_sprint;
    case Word::standard:
        return RaceKind::standard;
    case Word::middle:
        return RaceKind::middle;
    case Word::long_course:
        return RaceKind::long_course;
    default:
        return RaceKind::sprint;
    }
}

Word word_of(RaceKind kind) {
    constexpr Word kinds[] = {Word::super_sprint, Word::sprint, Word::standard, Word::middle,
                              Word::long_course};
    return kinds[static_cast<std::size_t>(kind)];
}

std::optional<std::string_view> nearest_word(std::string_view text, bool (*wanted)(Word)) {
    WordSet set;
    for (std::size_t i = 1; i < words; ++i) {
        set.set(i, wanted(static_cast<Word>(i)));
    }
    return nearest_word(text, set);
}

std::optional<std::string_view> nearest_word(std::string_view text, WordSet const& wanted) {
    std::optional<std::string_view> best;
    int best_distance = 3;
    for (auto const& [spelled, word] : spellings) {
        if (!wanted.test(static_cast<std::size_t>(word))) {
            continue;
        }
        auto const limit = std::min(reach(spelled), best_distance - 1);
        auto const distance = edit_distance(text, spelled, limit);
        if (distance <= limit) {
            best = spelled;
            best_distance = distance;
        }
    }
    return best;
}

int edit_distance(std::string_view a, std::string_view b, int limit) {
    auto const width = static_cast<std::ptrdiff_t>(b.size());
    auto const height = static_cast<std::ptrdiff_t>(a.size());
    auto const given_up = limit + 1;
    if (limit < 0 || std::abs(width - height) > limit) {
        return given_up;
    }
    // Rows i-2, i-1 and i of the usual table, of which only the cells within `limit`
    // of the diagonal can lie on a short way; those beside them stay at `given_up`.
    auto before = std::vector<int>(b.size() + 2, given_up);
    auto above = before;
    auto here = before;
    for (std::ptrdiff_t j = 0; j <= std::min<std::ptrdiff_t>(width, limit); ++j) {
        above[static_cast<std::size_t>(j)] = static_cast<int>(j);
    }
    auto const letter = [](std::string_view text, std::ptrdiff_t i) {
        return detail::fold(text[static_cast<std::size_t>(i)]);
    };
    for (std::ptrdiff_t i = 1; i <= height; ++i) {
        auto const first = std::max<std::ptrdiff_t>(0, i - limit);
        auto const last = std::min(width, i + limit);
        auto nearest = given_up;
        for (auto j = first; j <= last; ++j) {
            auto const at = static_cast<std::size_t>(j);
            auto& cell = here[at];
            cell = std::min(above[at] + 1, given_up);
            if (j == 0) {
                nearest = std::min(nearest, cell);
                continue;
            }
            auto const changed = letter(a, i - 1) == letter(b, j - 1) ? 0 : 1;
            cell = std::min(cell, above[at - 1] + changed);
            if (j > first) {
                cell = std::min(cell, here[at - 1] + 1);
            }
            if (i > 1 && j > 1 && letter(a, i - 1) == letter(b, j - 2) &&
                letter(a, i - 2) == letter(b, j - 1)) {
                cell = std::min(cell, before[at - 2] + 1);
            }
            nearest = std::min(nearest, cell);
        }
        here[static_cast<std::size_t>(last) + 1] = given_up;
        if (nearest > limit) {
            return given_up;
        }
        std::swap(before, above);
        std::swap(above, here);
    }
    return std::min(above[b.size()], given_up);
}

} // namespace lengthwise
