#include "cli/values.hpp"

#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"

#include <charconv>
#include <string>

namespace lengthwise::cli {

namespace {

/// A reader for a text that includes nothing.
class NoFiles final : public grammar::Reader {
  public:
    std::variant<Text, Refusal> read(std::string const&, std::uint64_t) override { return Refusal{}; }
    std::variant<Path, Refusal> resolve_links(std::string const&) override { return Refusal{}; }
};

} // namespace

std::optional<std::uint32_t> number(std::string_view text, std::uint32_t low, std::uint32_t high) {
    std::uint32_t value = 0;
    auto const [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || value < low || value > high) {
        return std::nullopt;
    }
    return value;
}

/// Read by the notation's own doorway, so that there is one spelling.
std::optional<Pool> pool(std::string_view text) {
    if (text.find_first_of("\n#\"") != std::string_view::npos) {
        return std::nullopt;
    }
    NoFiles none;
    auto const bundle = grammar::bundle("--pool", "pool " + std::string{text} + "\n", std::nullopt, none);
    auto const resolved = plan::resolve(bundle);
    if (bundle.findings.has_errors() || resolved.findings.has_errors()) {
        return std::nullopt;
    }
    auto const& pool = resolved.plan.settings[resolved.plan.file_settings].pool;
    return pool && pool->has_length() ? pool : std::nullopt;
}

} // namespace lengthwise::cli
