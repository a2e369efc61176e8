#pragma once

#include <unistd.h>
#include <utility>

namespace lengthwise::cli {

/// An open file that closes itself. -1 stands for none.
class Descriptor {
  public:
    explicit Descriptor(int fd) : fd_(fd) {}
    ~Descriptor() { close(); }
    Descriptor(Descriptor&& other) noexcept : fd_(std::exchange(other.fd_, -1)) {}
    Descriptor& operator=(Descriptor&&) = delete;
    Descriptor(Descriptor const&) = delete;
    Descriptor& operator=(Descriptor const&) = delete;

    [[nodiscard]] bool open() const { return fd_ >= 0; }
    [[nodiscard]] int number() const { return fd_; }

    /// False when the system only now reports that something could not be written.
    bool close() { return fd_ < 0 || ::close(std::exchange(fd_, -1)) == 0; }

  private:
    int fd_;
};

} // namespace lengthwise::cli
