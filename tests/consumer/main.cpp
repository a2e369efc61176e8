#include "grammar/bundle.hpp"
#include "plan/resolve.hpp"
#include "report/tally_text.hpp"

#include <cstdio>

using namespace lengthwise;

struct NoFiles : grammar::Reader {
    std::variant<Text, Refusal> read(std::string const&, std::uint64_t) override {
        return Refusal{"not here"};
    }
    std::variant<Path, Refusal> resolve_links(std::string const&) override { return Refusal{"not here"}; }
};

int main() {
    NoFiles none;
    auto const bundle =
        grammar::bundle("plan", "pool 25m\nsession Tue\nmain\n4 x 50 crawl\n", std::nullopt, none);
    auto const resolved = plan::resolve(bundle);
    std::fputs(report::tally_text(resolved.plan, {}, report::Paint{}).c_str(), stdout);
}
