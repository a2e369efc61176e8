#include "node_stack.hpp"

#include <algorithm>

namespace lengthwise::grammar {
namespace {

constexpr std::size_t step = 4096;    // these bytes are written twice, but while they are in the cache
constexpr std::size_t sample = 65536; // nodes after which the rest of a text is judged

} // namespace

void NodeStack::make_room() {
    if (size_ == 0) {
        store_.reserve(std::min<std::size_t>(bytes_ / 2 + 1, sample));
        return;
    }
    auto const read = std::max<std::size_t>(data_[size_ - 1].begin - base_, 1);
    auto const density = static_cast<double>(size_) / static_cast<double>(read);
    auto const whole = static_cast<std::size_t>(density * 1.01 * static_cast<double>(bytes_));
    auto const dense = bytes_ / 4; // a beginning may deceive
    store_.reserve(std::max<std::size_t>(std::min(whole, dense), size_ + size_ / 2) + step);
}

void NodeStack::grow() {
    if (size_ == store_.capacity()) {
        make_room();
    }
    store_.resize(std::min(size_ + step, store_.capacity()));
    data_ = store_.data();
    room_ = static_cast<std::uint32_t>(store_.size());
}

} // namespace lengthwise::grammar
