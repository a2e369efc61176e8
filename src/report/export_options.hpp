#pragma once

#include "plan/plan.hpp"
#include "report/choose.hpp"

#include <optional>
#include <string>

namespace lengthwise::report {

/// What of a plan is exported. With `swimmer` the plan is what he swims (tailor/swimmer.hpp) already.
struct ExportOptions {
    Scope scope{};                          ///< from pick_scope
    std::optional<int> lane{};              ///< nothing: all
    plan::Swimmer const* swimmer = nullptr; ///< as the file names him
    std::string source{}; ///< its file's name without folders: it stands for a plan that has no name
    bool ascii = false;   ///< for texts to be read: no characters beyond ASCII but those of the file
    std::string file{};   ///< named where several files are exported; else empty
};

} // namespace lengthwise::report
