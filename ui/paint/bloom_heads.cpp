// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/bloom_heads.h"

#include "ui/paint/head_look.h"
#include "ui/paint/head_maker.h"
#include "ui/paint/seeded.h"

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

using model::BloomShape;

bool darkEye(const model::Plant& p) {
    return p.colour2 && lightness(Palette::bloom(*p.colour2)) < 76;
}

HeadForm daisyForm(const model::Plant& p) {
    if (darkEye(p)) return HeadForm::darkEyed;
    if (p.headDiameterMm.value_or(60) < 45) return HeadForm::aster;
    return p.focal && !p.airy && !p.colour2 ? HeadForm::layered : HeadForm::daisy;
}

HeadForm globeForm(const model::Plant& p) {
    if (!p.focal) return HeadForm::globe;
    return p.headDiameterMm.value_or(90) < 85 ? HeadForm::cup : HeadForm::doubled;
}

void make(HeadMaker& maker, HeadForm form, bool left) {
    switch (form) {
    case HeadForm::doubled:
        return maker.doubled();
    case HeadForm::layered:
        return maker.layered();
    case HeadForm::daisy:
        return maker.daisy();
    case HeadForm::darkEyed:
        return maker.darkEyed();
    case HeadForm::aster:
        return maker.aster();
    case HeadForm::cup:
        return maker.cup();
    case HeadForm::tulip:
        return maker.tulip();
    case HeadForm::globe:
        return maker.globe();
    case HeadForm::trumpet:
        return maker.trumpet();
    case HeadForm::bell:
        return maker.bell();
    case HeadForm::spike:
        return maker.spike();
    case HeadForm::florets:
        return maker.florets();
    case HeadForm::bellSpike:
        return maker.bellSpike();
    case HeadForm::plume:
        return maker.plume();
    case HeadForm::pea:
        return maker.pea();
    case HeadForm::umbel:
        return maker.umbel();
    case HeadForm::plate:
        return maker.plate();
    case HeadForm::leaf:
        return maker.leaf();
    case HeadForm::trail:
        return maker.trail(left);
    case HeadForm::grass:
        return maker.grass();
    case HeadForm::berry:
        return maker.berry();
    }
}

/// Dark blooms on a dark page get a lighter edge, all others a darker one.
QColor edgeOf(const Head& head, Theme theme) {
    if (theme == Theme::dark && lightness(head.bloom) < 96)
        return lighter(head.bloom, head.diameter < 44 ? 0.1 : 0.3);
    return darker(head.bloom, 0.42);
}

constexpr double mostTurn = 0.12; ///< radians

Sketch sized(const HeadLook& look, double turn, double diameter, double degrees) {
    HeadMaker maker(look.bloom, look.eye, look.edge, turn);
    make(maker, look.form, look.left);
    Sketch out = maker.take();
    QTransform place;
    place.rotate(degrees);
    place.scale(diameter, diameter);
    transform(out, place);
    // Small heads would drown in their own lines.
    thinLines(out, std::clamp(diameter / 30, 0.36, 1.0));
    return out;
}

} // namespace

HeadForm headForm(const model::Plant& p) {
    switch (p.shape) {
    case BloomShape::daisy:
        return daisyForm(p);
    case BloomShape::globe:
        return globeForm(p);
    case BloomShape::umbel:
        return p.airy || p.foliage ? HeadForm::umbel : HeadForm::plate;
    case BloomShape::spike:
        return p.stemDiameterMm.value_or(6) < 6 ? HeadForm::florets : HeadForm::spike;
    case BloomShape::bell:
        if (p.spike) return HeadForm::bellSpike;
        return p.focal && !p.airy && !p.trailing ? HeadForm::tulip : HeadForm::bell;
    case BloomShape::trumpet:
        return HeadForm::trumpet;
    case BloomShape::plume:
        return p.trailing ? HeadForm::trail : HeadForm::plume;
    case BloomShape::pea:
        return HeadForm::pea;
    case BloomShape::leaf:
        return p.trailing ? HeadForm::trail : HeadForm::leaf;
    case BloomShape::grass:
        return HeadForm::grass;
    case BloomShape::berry:
        return HeadForm::berry;
    }
    return HeadForm::daisy;
}

HeadLook lookOf(const Head& head, Theme theme) {
    const auto turn = static_cast<int>(std::lround(Seeded(head.seed).around(headTurns)));
    return {head.form,           head.bloom, head.eye,
            edgeOf(head, theme), turn,       head.form == HeadForm::trail && head.tilt < 0};
}

double turnedBy(const Head& head) {
    return head.form == HeadForm::trail ? 0 : head.tilt;
}

Sketch uprightHead(const HeadLook& look, double diameter) {
    if (!(diameter > 0)) return {};
    return sized(look, look.turn * mostTurn / headTurns, diameter, 0);
}

Sketch headSketch(const Head& head, Theme theme) {
    if (!(head.diameter > 0)) return {};
    return sized(lookOf(head, theme), Seeded(head.seed).around(mostTurn), head.diameter, turnedBy(head));
}

double headReach(HeadForm form) {
    switch (form) {
    case HeadForm::spike:
        return 2.85;
    case HeadForm::florets:
        return 2.7;
    case HeadForm::bellSpike:
        return 3;
    case HeadForm::plume:
        return 1.9;
    case HeadForm::grass:
        return 2;
    case HeadForm::leaf:
        return 1.74;
    case HeadForm::pea:
        return 1.7;
    case HeadForm::berry:
        return 1.43;
    case HeadForm::umbel:
        return 0.42;
    case HeadForm::plate:
        return 0.24;
    case HeadForm::trail:
        return 0.1;
    default:
        return 0.5;
    }
}

bool growsFromFoot(HeadForm form) {
    return headReach(form) > 1 || form == HeadForm::umbel || form == HeadForm::plate;
}

QColor stemColour(HeadForm form, const QColor& bloom) {
    if (form == HeadForm::leaf || form == HeadForm::trail) return darker(bloom, 0.25);
    if (form == HeadForm::grass) return darker(bloom, 0.3);
    return QColor::fromRgb(0x5F8050);
}

} // namespace withy::ui
