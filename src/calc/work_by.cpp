#include "calc/work_by.hpp"

#include "calc/band.hpp"
#include "calc/reps.hpp"

#include <algorithm>
#include <utility>

namespace lengthwise::calc {

WordTime& WordTimes::of(std::uint32_t key) {
    auto const at = std::ranges::lower_bound(words, key, {}, &WordTime::key);
    return at != words.end() && at->key == key
               ? *at
               : *words.insert(at, WordTime{.key = key, .swimming = {}, .estimated = {}});
}

void WordTimes::add(WordTimes const& more, std::int64_t rounds) {
    auto const times = [&](Duration sum, Duration once) {
        return std::min(sum + checked_mul(once, rounds).value_or(longest_time), longest_time);
    };
    for (auto const& word : more.words) {
        auto& sum = of(word.key);
        sum.swimming = figurewise(times, sum.swimming, word.swimming);
        sum.estimated = std::min(
            sum.estimated +
                Distance::units(checked_mul(word.estimated.units(), rounds).value_or(farthest.units())),
            farthest);
        sum.known = sum.known && word.known;
        sum.measured = sum.measured && word.measured;
    }
}

void WorkReader::Measure::add(plan::Plan const& plan, plan::Item const& item, Pool const&,
                              std::int64_t rounds, WordTimes& sum) const {
    each_rep(plan, item, [&](std::int64_t rep, plan::Terms const& terms, std::int64_t times) {
        WordTimes once;
        std::vector<std::pair<std::uint32_t, Exact>> ways; // by word
        for (auto const& part : part_times(plan, *pacing, terms, rep, item.is_timed())) {
            auto const key = key_of(by, *part.manner);
            auto& word = once.of(key);
            word.swimming += part.swim.value_or(Band<Duration>{});
            word.known = word.known && part.swim.has_value();
            word.measured = word.measured && (!item.is_timed() || part.goes.has_value());
            auto const way = std::ranges::find(ways, key, &std::pair<std::uint32_t, Exact>::first);
            if (part.goes && way != ways.end()) {
                way->second = way->second + *part.goes;
            } else if (part.goes) {
                ways.emplace_back(key, *part.goes);
            }
        }
        for (auto const& [key, way] : ways) {
            once.of(key).estimated = whole_lengths(way, pacing->pool());
        }
        sum.add(once, times * rounds);
    });
}

void WorkReader::add_session(plan::Session const& session, WordTimes& sum) {
    auto const pacing = paces_.of(session, lane_);
    auto const at = walks_.find(pacing);
    auto& walk =
        at != walks_.end()
            ? at->second
            : walks_.emplace(pacing, Walk<Measure>{plan_, Measure{by_, &paces_.at(pacing)}}).first->second;
    for (auto i = session.sections.first; i < session.sections.end(); ++i) {
        for (plan::Item const& item : items_from(plan_, plan_.sections[i].body)) {
            if (item.is_swum() && !item.optional && item.swum_by(lane_)) {
                walk.add(item, session.pool, 1, sum);
            }
        }
    }
}

} // namespace lengthwise::calc
