// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/convert.h"

#include <cmath>

namespace withy::plan {

namespace {

constexpr Millimetres usualBelowTie{180};

std::optional<double> real(const std::optional<Millimetres>& v) {
    return v ? std::optional<double>(static_cast<double>(v->value)) : std::nullopt;
}

designs::Profile profileOf(model::ProfileKind kind) {
    switch (kind) {
    case model::ProfileKind::cylinder:
        return designs::Profile::cylinder;
    case model::ProfileKind::tapered:
        return designs::Profile::tapered;
    case model::ProfileKind::rounded:
        return designs::Profile::rounded;
    case model::ProfileKind::trough:
        return designs::Profile::trough;
    }
    return designs::Profile::cylinder;
}

Basis recutBasis(const model::Settings& s) {
    return s.recutMm == designs::usualRecut.value ? Basis::published : Basis::mine;
}

} // namespace

designs::ProfileShape shapeOf(const model::Container& c) {
    designs::ProfileShape shape;
    shape.kind = profileOf(c.profile);
    shape.rim = static_cast<double>(c.innerRim.value);
    shape.body = real(c.innerBody);
    shape.base = real(c.innerBase);
    shape.depth = static_cast<double>(c.innerDepth.value);
    shape.length = real(c.innerLength);
    shape.outerHeight = real(c.outerHeight);
    return shape;
}

designs::Tier tierOf(model::Tier tier) {
    switch (tier) {
    case model::Tier::low:
        return designs::Tier::low;
    case model::Tier::middle:
        return designs::Tier::middle;
    case model::Tier::tall:
        return designs::Tier::tall;
    }
    return designs::Tier::middle;
}

designs::Standing standingOf(const model::Design& d, const model::Container& c, const model::Settings& s) {
    return {c.innerDepth,
            d.lift,
            {d.heightLow, d.heightMiddle, d.heightTall},
            Millimetres(s.recutMm),
            recutBasis(s)};
}

designs::Bound boundOf(const model::Design& d, const model::Settings& s) {
    return {d.stemsBelowTie.value_or(usualBelowTie),
            {d.heightLow, d.heightMiddle, d.heightTall},
            Millimetres(s.recutMm),
            recutBasis(s)};
}

shed::Tie tieOf(const model::Design& d) {
    shed::Tie tie;
    tie.wraps = d.wraps;
    tie.overlap = d.overlap;
    switch (d.finish) {
    case model::RibbonFinish::none:
        tie.finish = shed::Finish::none;
        break;
    case model::RibbonFinish::plain:
        tie.finish = shed::Finish::plain;
        break;
    case model::RibbonFinish::knot:
        tie.finish = shed::Finish::knot;
        break;
    case model::RibbonFinish::bow:
        tie.finish = shed::Finish::bow;
        break;
    }
    tie.tail = d.tail;
    tie.loop = d.loop;
    tie.loops = d.loops;
    tie.trim = d.trim;
    return tie;
}

std::int64_t tenThousandths(double percent) {
    return std::llround(percent * 100);
}

} // namespace withy::plan
