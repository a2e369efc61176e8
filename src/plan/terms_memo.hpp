#pragma once

#include "plan/plan.hpp"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lengthwise::plan {

/// Remembers terms by the words that made them. Open addressing, and copies of the
/// words side by side: a large plan asks millions of times, and words left in its text
/// would be spread over all of the text's pages.
class TermsMemo {
  public:
    struct Key {
        std::string_view words;
        std::uint32_t context = 0;
        std::uint32_t count = 0; ///< reps and owner
    };

    /// The terms of these words, or no_index.
    [[nodiscard]] Index find(Key const& key) const {
        auto const hash = hash_of(key);
        for (auto place = hash & (slots_.size() - 1);; place = (place + 1) & (slots_.size() - 1)) {
            auto const& slot = slots_[place];
            if (slot.terms == no_index || (slot.hash == hash && is(slot, key))) {
                return slot.terms;
            }
        }
    }

    void remember(Key const& key, Index terms) {
        if (2 * ++used_ > slots_.size()) {
            grow();
        }
        Slot const slot{hash_of(key),
                        static_cast<std::uint32_t>(words_.size()),
                        static_cast<std::uint32_t>(key.words.size()),
                        key.context,
                        key.count,
                        terms};
        words_ += key.words;
        put(slot);
    }

  private:
    struct Slot {
        std::size_t hash = 0;
        std::uint32_t words = 0; ///< where they begin in words_
        std::uint32_t size = 0;
        std::uint32_t context = 0;
        std::uint32_t count = 0;
        Index terms = no_index;
    };

    [[nodiscard]] static std::size_t hash_of(Key const& key) {
        auto const rest = (std::uint64_t{key.context} << 32 | key.count) * 0x9E3779B97F4A7C15ULL;
        return std::hash<std::string_view>{}(key.words) ^ rest ^ rest >> 32;
    }
    [[nodiscard]] bool is(Slot const& slot, Key const& key) const {
        return slot.context == key.context && slot.count == key.count &&
               std::string_view{words_}.substr(slot.words, slot.size) == key.words;
    }
    void put(Slot const& slot) {
        auto place = slot.hash & (slots_.size() - 1);
        while (slots_[place].terms != no_index) {
            place = (place + 1) & (slots_.size() - 1);
        }
        slots_[place] = slot;
    }
    void grow() {
        auto const old = std::move(slots_);
        slots_.assign(old.size() * 2, {});
        for (auto const& slot : old) {
            if (slot.terms != no_index) {
                put(slot);
            }
        }
    }

    std::vector<Slot> slots_ = std::vector<Slot>(1024);
    std::size_t used_ = 0;
    std::string words_;
};

} // namespace lengthwise::plan
