#include "fuzz/reading.hpp"

#include "check/too_long.hpp"
#include "support/generate.hpp"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace lengthwise::fuzz {
namespace {

constexpr char const* plan_path = "/plan.swim";

/// The plan, and one other file: the first that is asked for.
class TwoFiles final : public grammar::Reader {
  public:
    explicit TwoFiles(Texts const& texts) : texts_(texts) {}

    std::variant<Text, Refusal> read(std::string const& path, std::uint64_t limit) override {
        auto const& text = path == plan_path ? texts_.plan : texts_.more;
        return text.size() <= limit ? std::variant<Text, Refusal>{Text{text}} : Refusal{"too large"};
    }

    std::variant<Path, Refusal> resolve_links(std::string const& path) override {
        auto const real = std::filesystem::path{path}.lexically_normal().string();
        if (other_.empty() && real != plan_path) {
            other_ = real;
        }
        return real == plan_path || real == other_ ? std::variant<Path, Refusal>{Path{real}}
                                                   : Refusal{"no such file"};
    }

  private:
    Texts const& texts_;
    std::string other_;
};

/// The first two bytes say how to write, the others what.
Texts generated(std::string_view bytes) {
    auto const at = [&](std::size_t i) {
        return i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0U;
    };
    test::Wanted wanted{.seed = at(1), .untidy = at(0) % 2 != 0, .include = at(0) % 8 == 7};
    wanted.bytes = bytes.substr(std::min<std::size_t>(bytes.size(), 2));
    wanted.weeks = 1;
    wanted.sessions = 2;
    wanted.lines = 3;
    auto made = test::generate(wanted);
    return {std::move(made.text), std::move(made.library)};
}

} // namespace

Texts texts_of(std::string_view bytes) {
    if (bytes.starts_with(generator_mark)) {
        return generated(bytes.substr(1));
    }
    auto const at = bytes.starts_with(divider) ? 0 : bytes.find("\n" + std::string{divider});
    if (at == std::string_view::npos) {
        return {std::string{bytes}, {}};
    }
    auto const end = bytes.starts_with(divider) ? 0 : at + 1;
    return {std::string{bytes.substr(0, end)}, std::string{bytes.substr(end + divider.size())}};
}

Reading read(Texts const& texts) {
    TwoFiles files{texts};
    Reading reading{std::make_shared<grammar::Bundle const>(
                        grammar::bundle("plan.swim", texts.plan, std::string{plan_path}, files)),
                    {},
                    {}};
    reading.resolved = plan::resolve(*reading.bundle);
    reading.errors.append(reading.bundle->findings);
    reading.errors.append(reading.resolved.findings);
    if (reading.clean()) {
        reading.errors.append(check::too_long(reading.plan()));
    }
    reading.errors.sort_by_place();
    return reading;
}

std::uint64_t number_of(std::string_view bytes) {
    std::uint64_t number = 0xcbf29ce484222325;
    for (char const c : bytes) {
        number = (number ^ static_cast<unsigned char>(c)) * 0x100000001b3;
    }
    return number;
}

} // namespace lengthwise::fuzz
