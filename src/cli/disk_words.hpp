#pragma once

#include <string>

#include <sys/types.h>

/// The system's errors and kinds of file in a coach's words.
namespace lengthwise::cli {

/// What an errno means behind a file's name: "no such file", "disk full".
[[nodiscard]] std::string words_of(int error);

/// What a file's mode says it is instead of a regular file: "is a directory".
[[nodiscard]] std::string kind_of(mode_t mode);

} // namespace lengthwise::cli
