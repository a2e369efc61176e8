#include "check/comparison.hpp"

#include <algorithm>

namespace lengthwise::check {

using plan::Item;

namespace {

bool holds(plan::Manner const& manner) {
    return manner.effort.kind == plan::Effort::Kind::hold;
}

} // namespace

bool Comparison::alike(plan::Terms const& a, plan::Terms const& b) const {
    if (a.shape != b.shape || a.stops != b.stops) {
        return false;
    }
    if (a.parts.empty()) {
        return a.manner == b.manner;
    }
    if ((holds(a.manner) || holds(b.manner)) && a.manner.effort != b.manner.effort) {
        return false; // a time for the whole rep, whatever its parts say
    }
    auto const first = plan_.parts.begin() + a.parts.first;
    return std::equal(first, first + a.parts.count, plan_.parts.begin() + b.parts.first,
                      [](plan::Part const& x, plan::Part const& y) { return x.manner == y.manner; });
}

bool Comparison::alike(plan::Index a, plan::Index b, bool single) {
    if (a == b || a == plan::no_index || b == plan::no_index) {
        return true;
    }
    std::pair const both{a, b};
    if (auto const known = known_.find(both); known != known_.end()) {
        return known->second;
    }
    return known_.emplace(both, compare(a, b, single)).first->second;
}

bool Comparison::compare(plan::Index a, plan::Index b, bool single) {
    for (;; a = plan_.after(a), b = plan_.after(b)) {
        if (!alike(plan_.items[a], plan_.items[b])) {
            return false;
        }
        if (single || plan_.items[a].last || plan_.items[b].last) {
            return true;
        }
    }
}

bool Comparison::alike(Item const& a, Item const& b) {
    if (!a.is_swum()) {
        return true;
    }
    if (a.is_leaf()) {
        return alike(plan_.terms[a.terms], plan_.terms[b.terms]);
    }
    return alike(a.body, b.body, a.kind == Item::Kind::use);
}

} // namespace lengthwise::check
