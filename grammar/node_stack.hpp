#pragma once

#include "tree.hpp"

#include <cstddef>
#include <cstdint>
#include <vector>

/// A tree's nodes while they are read: what is pushed may be dropped again. A push is
/// a store and a comparison; the vector itself grows in large steps.
namespace lengthwise::grammar {

class NodeStack {
  public:
    /// Builds in `store` what is read from `bytes` of text, which begins at offset `base`.
    NodeStack(std::vector<Node>& store, std::size_t bytes, std::uint32_t base)
        : store_(store), bytes_(bytes), base_(base) {}

    std::uint32_t push(Node node) {
        if (size_ == room_) [[unlikely]] {
            grow();
        }
        data_[size_] = node;
        return size_++;
    }
    [[nodiscard]] Node& operator[](std::uint32_t i) { return data_[i]; }
    [[nodiscard]] Node& back() { return data_[size_ - 1]; }
    [[nodiscard]] std::uint32_t size() const { return size_; }

    void drop_from(std::uint32_t size) { size_ = size; }

    /// Leaves in the vector what was pushed and not dropped.
    void finish() { store_.resize(size_); }

  private:
    void grow();

    /// Room for the nodes of the whole text, judged by those of the text so far.
    void make_room();

    std::vector<Node>& store_;
    std::size_t bytes_;
    std::uint32_t base_;
    Node* data_ = nullptr;
    std::uint32_t size_ = 0;
    std::uint32_t room_ = 0;
};

} // namespace lengthwise::grammar
