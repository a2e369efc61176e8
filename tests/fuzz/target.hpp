#pragma once

#include <string_view>

/// A fuzz target is one function. Who calls it, libFuzzer or a program that runs files, is not its business.
namespace lengthwise::fuzz {

/// Any bytes. Comes back, or ends the process with a sentence (promise.hpp).
void run(std::string_view bytes);

} // namespace lengthwise::fuzz
