#pragma once

#include <functional>

#include <sys/types.h>

namespace lengthwise::support {

/// Runs `work` in a process of its own and gives what it returned, or minus the signal that
/// ended it. For what must not happen to the test itself: signals, limits, another user.
int in_child(std::function<int()> const& work);

/// The same without waiting.
pid_t start_child(std::function<int()> const& work);
int wait_for(pid_t child);

/// In a child: from now on a user who owns nothing. True if that worked or root was not us anyway.
bool become_nobody();

} // namespace lengthwise::support
