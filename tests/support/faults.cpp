#include "support/faults.hpp"

#include <cstdlib>

namespace lengthwise::support {

bool faults_can_be_made() {
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
    return false;
#elif defined(__has_feature)
    return !__has_feature(address_sanitizer) && !__has_feature(thread_sanitizer) &&
           !__has_feature(memory_sanitizer);
#else
    return true;
#endif
}

std::function<void()> making(Fault const& fault) {
    return [fault] {
        setenv("LD_PRELOAD", LENGTHWISE_FAULTS, 1);
        if (!fault.call.empty()) {
            setenv("FAULT", (fault.call + ":" + std::to_string(fault.at) + ":" + fault.what).c_str(), 1);
        }
        if (!fault.program.empty()) {
            setenv("FAULT_MEANT", fault.program.c_str(), 1);
        }
        if (!fault.meanwhile.empty()) {
            setenv("FAULT_RUN", fault.meanwhile.c_str(), 1);
        }
        if (!fault.clock.empty()) {
            setenv("FAULT_CLOCK", fault.clock.c_str(), 1);
        }
    };
}

} // namespace lengthwise::support
