#include "plan/set_versions.hpp"

#include <algorithm>

namespace lengthwise::plan {
namespace {

class Collector {
  public:
    explicit Collector(Plan const& plan) : plan_(plan), found_(plan.sets.size()) {}

    std::vector<Versions<Item>> collect() {
        for (auto const& session : plan_.sessions) {
            for (auto i = session.sections.first; i < session.sections.end(); ++i) {
                items(plan_.sections[i].body, plan_.pool_of(session));
            }
        }
        return std::move(found_);
    }

  private:
    void items(Index first, Pool const& pool) {
        for (auto const& item : items_from(plan_, first)) {
            if (item.kind == Item::Kind::group) {
                items(item.body, pool);
            } else if (item.kind == Item::Kind::use) {
                use(item, pool);
            }
        }
    }

    /// A set's words are the same in every context, so one for each pool is enough.
    void use(Item const& item, Pool const& pool) {
        auto& versions = found_[plan_.uses[item.amount].set];
        auto const same_pool = [&](Version<Item> const& version) { return *version.pool == pool; };
        if (item.body == no_index || std::ranges::any_of(versions, same_pool)) {
            return;
        }
        versions.push_back({&plan_.items[item.body], &pool});
        items(item.body, pool);
    }

    Plan const& plan_;
    std::vector<Versions<Item>> found_;
};

} // namespace

std::vector<Versions<Item>> set_versions(Plan const& plan) {
    return Collector{plan}.collect();
}

} // namespace lengthwise::plan
