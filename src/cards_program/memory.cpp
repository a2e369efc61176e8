// The libraries that paint ask for memory by malloc, and each has its own way of doing without: one stops on
// an assertion, one falls, one paints another page and calls it done. So none of them hears of it: where
// memory ends, the program does. Only glibc can be asked beneath malloc; a sanitizer brings its own.
#include "cli/process.hpp"

#include <cstddef>
#include <cstdlib>

#if defined(__has_feature)
#if __has_feature(address_sanitizer) || __has_feature(thread_sanitizer) || __has_feature(memory_sanitizer)
#define LENGTHWISE_OTHER_MALLOC
#endif
#endif
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__) || !defined(__GLIBC__)
#define LENGTHWISE_OTHER_MALLOC
#endif

#ifndef LENGTHWISE_OTHER_MALLOC

extern "C" {

void* __libc_malloc(std::size_t size);                    // NOLINT: glibc's names
void* __libc_calloc(std::size_t count, std::size_t size); // NOLINT
void* __libc_realloc(void* memory, std::size_t size);     // NOLINT

namespace {

void* got(void* memory) {
    if (memory == nullptr) {
        lengthwise::cli::end_without_memory();
    }
    return memory;
}

} // namespace

void* malloc(std::size_t size) {
    return got(__libc_malloc(size));
}

void* calloc(std::size_t count, std::size_t size) {
    return got(__libc_calloc(count, size));
}

/// To no bytes is to free, and gives nothing.
void* realloc(void* memory, std::size_t size) {
    auto* const moved = __libc_realloc(memory, size);
    return moved == nullptr && (size > 0 || memory == nullptr) ? got(moved) : moved;
}

} // extern "C"

#endif
