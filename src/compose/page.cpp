#include "compose/page.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace lengthwise::compose {

namespace {

Laps laps_once(Line const& line) {
    return std::accumulate(line.reps.begin(), line.reps.end(), 0,
                           [](Laps sum, Rep const& rep) { return sum + rep.laps; });
}

int hard_halves(Rep const& rep) {
    if (rep.parts.empty()) {
        return rep.manner.effort == Effort::hard ? 2 * rep.laps : 0;
    }
    auto all = 0;
    auto hard = 0;
    for (auto const& part : rep.parts) {
        all += part.halves;
        hard += part.manner.effort == Effort::hard ? part.halves : 0;
    }
    return all == 0 ? 0 : hard * (2 * rep.laps / all);
}

int hard_reps(Line const& line) {
    switch (line.pattern) {
    case Pattern::odds_and_evens:
        return (line.odds == Effort::hard ? (line.count + 1) / 2 : 0) +
               (line.evens == Effort::hard ? line.count / 2 : 0);
    case Pattern::last:
        return (line.odds == Effort::hard ? line.count - 1 : 0) + (line.evens == Effort::hard ? 1 : 0);
    case Pattern::none:
        break;
    }
    return 0;
}

} // namespace

Laps laps(Line const& line) {
    return line.count * laps_once(line);
}

Laps laps(std::vector<Line> const& lines) {
    return std::accumulate(lines.begin(), lines.end(), 0,
                           [](Laps sum, Line const& line) { return sum + laps(line); });
}

int hard_halves(Line const& line) {
    if (line.pattern != Pattern::none) {
        return hard_reps(line) * 2 * line.reps.front().laps;
    }
    return line.count * std::accumulate(line.reps.begin(), line.reps.end(), 0,
                                        [](int sum, Rep const& rep) { return sum + hard_halves(rep); });
}

Laps longest_rep(Line const& line) {
    if (line.piece > 0) {
        return line.piece;
    }
    return std::ranges::max_element(line.reps, {}, &Rep::laps)->laps;
}

int rep_count(Line const& line) {
    return line.count * static_cast<int>(line.reps.size());
}

int rest_in(Line const& line) {
    auto const breaks = line.piece > 0 ? (line.reps.front().laps - 1) / line.piece * short_break : 0;
    auto const inner = std::accumulate(line.reps.begin(), line.reps.end(), 0,
                                       [](int sum, Rep const& rep) { return sum + rep.rest; });
    auto const behind =
        line.form == Line::Form::ladder ? rep_count(line) * line.rest : line.count * line.rest;
    return breaks + line.count * inner + behind;
}

bool alike(Line const& a, Line const& b) {
    auto const plain = [](Line const& line) {
        return line.form == Line::Form::reps && line.pattern == Pattern::none &&
               line.reps.front().parts.empty();
    };
    return plain(a) && plain(b) && a.reps.front().laps == b.reps.front().laps &&
           a.reps.front().manner == b.reps.front().manner && (a.piece > 0) == (b.piece > 0);
}

Section const* Session::section(SectionKind wanted) const {
    auto const found = std::ranges::find(sections, wanted, &Section::kind);
    return found == sections.end() ? nullptr : &*found;
}

Line reps(int count, Laps size, Manner manner, int rest, std::string note) {
    Line line;
    line.count = count;
    line.reps = {Rep{.laps = size, .manner = manner}};
    line.rest = rest;
    line.note = std::move(note);
    return line;
}

} // namespace lengthwise::compose
