#include "heap.hpp"

#include <malloc.h>

#include <algorithm>
#include <cstdlib>
#include <new>

namespace lengthwise::bench {

namespace {

// One thread, so plain numbers do.
bool counting = false;
std::int64_t held = 0;
std::int64_t peak = 0;

void* counted(void* block) {
    if (counting && block != nullptr) {
        held += static_cast<std::int64_t>(malloc_usable_size(block));
        peak = std::max(peak, held);
    }
    return block;
}

void give_back(void* block) {
    if (counting) {
        held -= static_cast<std::int64_t>(malloc_usable_size(block));
    }
    std::free(block);
}

void* or_throw(void* block) {
    if (block == nullptr) {
        throw std::bad_alloc{};
    }
    return block;
}

void* aligned(std::size_t size, std::align_val_t alignment) {
    auto const step = static_cast<std::size_t>(alignment);
    return counted(std::aligned_alloc(step, (size + step - 1) / step * step));
}

} // namespace

void start_counting() {
    counting = true;
    held = peak = 0;
}

std::int64_t peak_heap() {
    return peak;
}

} // namespace lengthwise::bench

namespace bench = lengthwise::bench;

// NOLINTBEGIN(misc-new-delete-overloads): the array and sized forms of the library call these.
void* operator new(std::size_t size) {
    return bench::or_throw(bench::counted(std::malloc(size)));
}
void* operator new(std::size_t size, std::nothrow_t const&) noexcept {
    return bench::counted(std::malloc(size));
}
void* operator new(std::size_t size, std::align_val_t alignment) {
    return bench::or_throw(bench::aligned(size, alignment));
}
void* operator new(std::size_t size, std::align_val_t alignment, std::nothrow_t const&) noexcept {
    return bench::aligned(size, alignment);
}
void operator delete(void* block) noexcept {
    bench::give_back(block);
}
void operator delete(void* block, std::size_t) noexcept {
    bench::give_back(block);
}
void operator delete(void* block, std::align_val_t) noexcept {
    bench::give_back(block);
}
void operator delete(void* block, std::size_t, std::align_val_t) noexcept {
    bench::give_back(block);
}
// NOLINTEND(misc-new-delete-overloads)
