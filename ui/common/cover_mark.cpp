// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/cover_mark.h"

namespace withy::ui {

namespace {

Cover coverOf(plan::CoverStanding standing) {
    switch (standing) {
    case plan::CoverStanding::covered:
        return Cover::covered;
    case plan::CoverStanding::tight:
        return Cover::tight;
    case plan::CoverStanding::shortOf:
        return Cover::missing;
    case plan::CoverStanding::notKnown:
    case plan::CoverStanding::nothing:
        break;
    }
    return Cover::unknown;
}

} // namespace

JarMark coverMark(model::Standing standing, const std::optional<CoverFacts>& cover) {
    JarMark mark;
    mark.standing = standing;
    if (standing == model::Standing::settled || standing == model::Standing::lost) {
        mark.cover = Cover::settled;
    } else if (cover) {
        mark.cover = coverOf(cover->standing);
        mark.share = cover->share;
    }
    return mark;
}

int urgency(const JarMark& mark) {
    switch (mark.cover) {
    case Cover::missing:
        return 4;
    case Cover::tight:
        return 3;
    case Cover::unknown:
        return 2;
    case Cover::covered:
        return 1;
    case Cover::settled:
        break;
    }
    return 0;
}

} // namespace withy::ui
