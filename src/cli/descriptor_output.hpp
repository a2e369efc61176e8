#pragma once

#include "cli/console.hpp"

#include <string>
#include <string_view>

namespace lengthwise::cli {

/// An open file of the process: standard output or error. Keeps text back until there is
/// enough of it or `flush`, and remembers the first write that went wrong.
class DescriptorOutput final : public Output {
  public:
    explicit DescriptorOutput(int fd) : fd_(fd) {}
    ~DescriptorOutput() override { DescriptorOutput::flush(); }

    void write(std::string_view text) override;
    void flush() override;

    /// 0, or the errno of the first write that went wrong; nothing is written after it.
    [[nodiscard]] int error() const { return error_; }

  private:
    void put(std::string_view text);

    int fd_;
    int error_ = 0;
    std::string kept_;
};

/// Looks at the terminal and the environment.
[[nodiscard]] Surroundings surroundings();

} // namespace lengthwise::cli
