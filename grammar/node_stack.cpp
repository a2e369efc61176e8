#include "node_stack.hpp"

namespace lengthwise::grammar {

void NodeStack::grow() {
    constexpr std::size_t step = 4096; // these bytes are written twice, but while they are in the cache
    store_.resize(size_ + step);
    data_ = store_.data();
    room_ = static_cast<std::uint32_t>(store_.size());
}

} // namespace lengthwise::grammar
