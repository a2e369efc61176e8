#pragma once

#include "grammar/limits.hpp"
#include "grammar/span.hpp"

#include <cstdint>

namespace lengthwise::plan {

/// Counts how often shared nodes are read beyond their first time. A set or a chosen
/// round is read anew where something else comes down to it; sets of sets could do so
/// without end, so there is a bound for a session and one for the file.
class Readings {
  public:
    void begin_session() { session_ = 0; }

    /// While one lives, what is read was read before: in this session, or elsewhere in the file.
    class Again {
      public:
        Again(Readings& readings, bool in_session, bool in_file)
            : readings_(readings), session_(in_session ? 1 : 0), file_(in_file ? 1 : 0) {
            readings_.again_in_session_ += session_;
            readings_.again_in_file_ += file_;
        }
        Again(Again const&) = delete;
        Again& operator=(Again const&) = delete;
        ~Again() {
            readings_.again_in_session_ -= session_;
            readings_.again_in_file_ -= file_;
        }

      private:
        Readings& readings_;
        int session_;
        int file_;
    };

    /// One node is read. False once a bound is passed.
    [[nodiscard]] bool count() {
        session_ += again_in_session_ > 0 ? 1 : 0;
        file_ += again_in_file_ > 0 ? 1 : 0;
        return session_ <= limits::session_contexts && file_ <= limits::file_contexts;
    }

    [[nodiscard]] bool session_passed() const { return session_ > limits::session_contexts; }

  private:
    int again_in_session_ = 0;
    int again_in_file_ = 0;
    std::uint32_t session_ = 0;
    std::uint32_t file_ = 0;
};

} // namespace lengthwise::plan
