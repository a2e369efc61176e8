#pragma once

#include <csignal>
#include <string_view>

/// What the process owes the system around it.
namespace lengthwise::cli {

/// To be called first in main.
/// - Gives descriptors 0 to 2 that came closed a stand-in which can be neither read from
///   nor written to, so that no plan is ever opened as standard output.
/// - Lets SIGINT, SIGTERM and SIGHUP remove the unfinished file before they end the process
///   as they always do (those that were ignored stay ignored).
/// - Makes a file size limit an error of the write instead of the process's end.
/// SIGPIPE keeps its meaning: who reads no further ends us quietly.
void prepare_process();

/// Says "out of memory", removes the unfinished file and ends the process with 2 at once, from whatever
/// thread; results that have been kept back go with it. Nothing is unwound: that can ask for memory again, in
/// places that may not throw.
[[noreturn]] void end_without_memory();

/// Once it is there, `new` that gets no memory does so. It has to be there before everything else, hence
/// beside main:
///     [[gnu::init_priority(101)]] EndsWithoutMemory const ends_without_memory;
class EndsWithoutMemory {
  public:
    EndsWithoutMemory();
};

/// Blocks the signals above while it lives, in this thread and in those that it starts meanwhile: they
/// come afterwards. Only the main thread ever takes them.
class SignalsHeld {
  public:
    SignalsHeld();
    ~SignalsHeld();
    SignalsHeld(SignalsHeld const&) = delete;
    SignalsHeld& operator=(SignalsHeld const&) = delete;

  private:
    sigset_t before_{};
};

/// While it lives a signal removes this file. There is one at a time; the handler reads a
/// fixed buffer and calls nothing but unlink, as a signal handler must.
class Unfinished {
  public:
    explicit Unfinished(std::string_view path);
    ~Unfinished();
    Unfinished(Unfinished const&) = delete;
    Unfinished& operator=(Unfinished const&) = delete;
};

} // namespace lengthwise::cli
