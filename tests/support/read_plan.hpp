#pragma once

#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"
#include "support/memory_reader.hpp"

#include <map>
#include <memory>
#include <string>
#include <utility>

namespace lengthwise::support {

/// A text read as a plan, with all that the plan views. Files named by `include` stand in `files`, under
/// absolute paths; the plan is "/plan.swim".
struct ReadPlan {
    std::shared_ptr<grammar::Bundle const> bundle;
    plan::Resolved resolved;

    [[nodiscard]] plan::Plan const& plan() const { return resolved.plan; }

    /// The first error of reading or resolving; empty without one.
    [[nodiscard]] std::string error() const {
        for (auto const* findings : {&bundle->findings, &resolved.findings}) {
            if (!findings->kept().empty()) {
                return findings->kept().front().message;
            }
        }
        return {};
    }
};

[[nodiscard]] inline ReadPlan read_plan(std::string text, std::map<std::string, std::string> files = {}) {
    MemoryReader reader;
    reader.files = std::move(files);
    reader.files["/plan.swim"] = text;
    auto const bundle = std::make_shared<grammar::Bundle const>(
        grammar::bundle("plan.swim", std::move(text), "/plan.swim", reader));
    return {bundle, plan::resolve(*bundle)};
}

} // namespace lengthwise::support
