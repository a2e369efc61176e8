#include "habits.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::grammar {

Lexeme const& Stuck::piece(int offset) const {
    static constexpr Lexeme nothing{};
    auto const i = static_cast<std::ptrdiff_t>(at) + offset;
    return i >= 0 && i < std::ssize(line) ? line[static_cast<std::size_t>(i)] : nothing;
}

std::string_view Stuck::text(int first, int last) const {
    auto const* const begin = piece(first).begin;
    auto const* const end = piece(last).end;
    return begin != nullptr && begin < end ? std::string_view{begin, static_cast<std::size_t>(end - begin)}
                                           : std::string_view{};
}

bool Stuck::behind(Word low, Word high) const {
    return std::any_of(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(at),
                       [&](Lexeme const& l) { return is_between(l.word, low, high); });
}

std::size_t Stuck::item_begin() const {
    for (auto i = at; i > 0; --i) {
        auto const& l = line[i - 1];
        if (l.is('(') || l.is('+') || l.is(':')) {
            return i;
        }
    }
    return 0;
}

bool is_x(Lexeme const& l) {
    return l.word == Word::x || (l.sort == Lexeme::Sort::other && l.text() == "\xC3\x97");
}

Complaint at_piece(Stuck const& s, std::string_view code, std::string message, std::string hint) {
    auto const& p = s.piece();
    return {
        .code = code, .from = p.begin, .to = p.end, .message = std::move(message), .hint = std::move(hint)};
}

namespace {

/// The first habit of a list that answers.
Answer ask(std::span<Habit const> habits, Stuck const& stuck) {
    for (auto const habit : habits) {
        if (auto complaint = habit(stuck)) {
            return complaint;
        }
    }
    return {};
}

/// The line cut into pieces, and the one where its reading ended.
Stuck stuck_in(Scene const& scene) {
    Stuck stuck{lex(scene.begin, scene.end), 0, scene.depth};
    for (; stuck.at + 1 < stuck.line.size() && stuck.line[stuck.at].end <= scene.trace.furthest; ++stuck.at) {
        auto const& l = stuck.line[stuck.at];
        if (l.is('(')) {
            ++stuck.depth;
        } else if (l.is(')') && stuck.depth > 0) {
            --stuck.depth;
        }
    }
    return stuck;
}

} // namespace

std::optional<Complaint> complain_of_habit(Scene const& scene) {
    auto const stuck = stuck_in(scene);
    auto complaint = ask(habits_anywhere(), stuck);
    auto const is_item = scene.form == Form::item || scene.form == Form::unknown ||
                         (scene.form == Form::head && stuck.line.front().word == Word::set);
    for (auto const habits : {habits_of_rests(), habits_of_figures(), habits_of_joints()}) {
        if (is_item && !complaint) {
            complaint = ask(habits, stuck);
        }
    }
    return complaint;
}

} // namespace lengthwise::grammar
