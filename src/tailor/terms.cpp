#include "tailor/terms.hpp"

#include "tailor/reading.hpp"

#include <optional>
#include <vector>

namespace lengthwise::tailor {
namespace {

using plan::Index;
using plan::Plan;
using plan::Terms;

/// A rep that changes, and what it is fitted to.
struct Step {
    Distance was;
    Distance now;
    Fit const& fit;
};

bool fit_split(Plan& plan, Terms& terms, Step const& rep) {
    auto const run = terms.parts;
    if (run.empty()) {
        return false;
    }
    std::vector<Distance> written;
    for (auto i = run.first; i < run.end(); ++i) {
        written.push_back(Distance::units(plan.parts[i].amount));
    }
    auto const dealt = parts(written, rep.was, rep.now, rep.fit);
    terms.parts = {static_cast<Index>(plan.parts.size()), dealt ? run.count : 0};
    bool other = !dealt;
    for (Index i = 0; i < terms.parts.count; ++i) {
        auto part = plan.parts[run.first + i];
        Reading const now{(*dealt)[i], unit_today(part.unit, (*dealt)[i], rep.fit.to)};
        other |= !same_reading({written[i], part.unit}, now, rep.fit);
        part.amount = now.amount.units();
        part.unit = now.unit;
        plan.parts.push_back(part);
    }
    return other;
}

bool fit_pieces(Terms& terms, Step const& rep) {
    if (terms.broken.piece == 0) {
        return false;
    }
    Reading const was{Distance::units(terms.broken.piece), terms.broken.unit};
    auto const length = piece(was.amount, rep.was, rep.now, rep.fit);
    if (!length) {
        terms.broken = {};
        return true;
    }
    Reading const now{*length, unit_today(was.unit, *length, rep.fit.to)};
    terms.broken.piece = now.amount.units();
    terms.broken.unit = now.unit;
    return !same_reading(was, now, rep.fit);
}

/// Fits a copy and points `index` to it.
bool fit_copy(Plan& plan, Index& index, Step const& rep, plan::Run selections) {
    auto terms = plan.terms[index];
    terms.selections = selections;
    bool other = fit_split(plan, terms, rep);
    other |= fit_pieces(terms, rep);
    index = static_cast<Index>(plan.terms.size());
    plan.terms.push_back(terms);
    return other;
}

} // namespace

bool fit_terms(Plan& plan, Index& terms, Distance was, Distance now, Fit const& fit) {
    Step const rep{was, now, fit};
    auto const& written = plan.terms[terms];
    if (written.parts.empty() && written.broken.piece == 0) {
        return false; // a selector adds neither
    }
    auto const run = written.selections;
    plan::Run const selections{static_cast<Index>(plan.selections.size()), run.count};
    bool other = false;
    for (auto i = run.first; i < run.end(); ++i) {
        auto selection = plan.selections[i];
        other |= fit_copy(plan, selection.terms, rep, {});
        plan.selections.push_back(selection);
    }
    other |= fit_copy(plan, terms, rep, selections);
    return other;
}

} // namespace lengthwise::tailor
