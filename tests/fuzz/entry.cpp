#include "fuzz/target.hpp"

#include <cstddef>
#include <cstdint>

/// Where libFuzzer comes in.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size) {
    lengthwise::fuzz::run({reinterpret_cast<char const*>(bytes), size});
    return 0;
}
