// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_plan.h"

#include "ui/paint/bunch.h"
#include "ui/paint/piece_layout.h"
#include "ui/paint/seeded.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

using model::PieceKind;
using model::Tier;

/// Neighbours in a sunflower's disc lie this far apart round it (Vogel 1979): no two heads in one line.
const double goldenAngle = std::numbers::pi * (3 - std::sqrt(5.0));
constexpr double leastHeadDrawn = 6; ///< px; smaller ones are dots

bool pointsOutwards(HeadForm form) {
    return form == HeadForm::leaf || form == HeadForm::trail || form == HeadForm::grass;
}

/// Tall heads stand inmost, low ones at the edge; leaves outmost of their tier.
int ringOf(const SlotDrawing& slot) {
    const int tier = slot.tier == Tier::tall ? 0 : slot.tier == Tier::middle ? 2 : 4;
    return tier + (pointsOutwards(slot.form) ? 1 : 0);
}

/// How long a spray lies, tip to foot, in its diameters.
double lengthOf(const SlotDrawing& slot) {
    return headReach(slot.form == HeadForm::trail ? HeadForm::leaf : slot.form);
}

/// What the eye sees of a head from straight above. Sprays are trimmed to the piece they stand in.
double acrossHead(const PieceDrawing& piece, const SlotDrawing& slot) {
    if (!pointsOutwards(slot.form)) return slot.head;
    return std::min(slot.head * 0.66, piece.spread * 0.42 / lengthOf(slot));
}

std::vector<const SlotDrawing*> inmostFirst(const PieceDrawing& piece) {
    std::vector<std::pair<double, const SlotDrawing*>> order;
    for (const auto& slot : piece.slots) {
        // Dealt out in turn within a tier, so that no colour gathers on one side.
        for (int i = 0; i < slot.count; ++i)
            order.emplace_back(ringOf(slot) + (i + 0.5) / slot.count, &slot);
    }
    std::stable_sort(order.begin(), order.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<const SlotDrawing*> out;
    for (const auto& [place, slot] : order)
        out.push_back(slot);
    return out;
}

/// Leaves lie under every face; of the rest the tallest is on top.
void drawnOrder(std::vector<HeadFromAbove>& heads) {
    std::reverse(heads.begin(), heads.end());
    std::stable_partition(heads.begin(), heads.end(),
                          [](const auto& h) { return pointsOutwards(h.slot->form); });
}

/// Filled evenly from the middle out, the outermost touching the spread.
std::vector<HeadFromAbove> inADisc(const PieceDrawing& piece) {
    const auto stems = inmostFirst(piece);
    std::vector<HeadFromAbove> out;
    const double start = Seeded(piece.seed).next() * 2 * std::numbers::pi;
    for (std::size_t i = 0; i < stems.size(); ++i) {
        const auto& slot = *stems[i];
        const double across = acrossHead(piece, slot);
        const double outer = pointsOutwards(slot.form) ? across * lengthOf(slot) : across / 2;
        const double share = std::sqrt((static_cast<double>(i) + 0.5) / static_cast<double>(stems.size()));
        const bool edge = i + 1 == stems.size() || pointsOutwards(slot.form);
        const double r = std::max(piece.spread / 2 - outer, 0.0) * (stems.size() == 1 ? 0 : edge ? 1 : share);
        const double a = start + static_cast<double>(i) * goldenAngle;
        const QPointF way(std::cos(a), std::sin(a));
        const double turn = std::atan2(way.x(), -way.y()) * 180 / std::numbers::pi;
        out.push_back({&slot, way * r, across, pointsOutwards(slot.form) ? turn : 0, i + 1});
    }
    drawnOrder(out);
    return out;
}

/// Round a ring, or along a line when the ring is cut open: a garland laid along the table. Leaves lie along.
std::vector<HeadFromAbove> inARow(const PieceDrawing& piece, bool ring) {
    const auto stems = dealt(piece);
    std::vector<HeadFromAbove> out;
    double widest = 20;
    for (const auto* s : stems)
        widest = std::max(widest, pointsOutwards(s->form) ? 0 : acrossHead(piece, *s));
    const double r = std::max((piece.spread - widest) / 2, piece.spread * 0.25);
    for (std::size_t i = 0; i < stems.size(); ++i) {
        const double t = (static_cast<double>(i) + 0.5) / static_cast<double>(stems.size());
        const bool leafy = pointsOutwards(stems[i]->form);
        const double across =
            leafy ? std::min(stems[i]->head * 0.5, widest * 0.6) : acrossHead(piece, *stems[i]);
        const double slant = i % 2 ? 14 : -14;
        if (ring) {
            const double a = t * 2 * std::numbers::pi;
            out.push_back({stems[i],
                           {std::cos(a) * r, std::sin(a) * r},
                           across,
                           leafy ? t * 360 + 180 + slant : 0,
                           i + 1});
        } else {
            const double half = leafy ? 0 : across / 2;
            const double along = (t - 0.5) * std::max(piece.spread - 2 * half, 0.0);
            out.push_back(
                {stems[i], {along, 0}, across, leafy ? 90 * (along < 0 ? -1 : 1) + slant : 0, i + 1});
        }
    }
    drawnOrder(out);
    return out;
}

QPainterPath square(double half) {
    QPainterPath p;
    p.addRect(-half, -half, 2 * half, 2 * half);
    return p;
}

QPainterPath capsule(double along, double across) {
    QPainterPath p;
    p.addRoundedRect(-along / 2, -across / 2, along, across, across / 2, across / 2);
    return p;
}

/// How deep a garland lies on the table: its widest head.
double garlandDepth(const PieceDrawing& piece) {
    double deepest = 40;
    for (const auto& slot : piece.slots)
        deepest = std::max(deepest, pointsOutwards(slot.form) ? 0 : acrossHead(piece, slot));
    return deepest;
}

QPainterPath spreadPath(const PieceDrawing& piece, Collar collar, double k) {
    const double half = acrossFromAbove(piece) / 2 * k;
    if (piece.kind == PieceKind::garland) return capsule(2 * half, garlandDepth(piece) * k);
    return collar == Collar::square ? square(half) : ellipseAt(0, 0, half, half);
}

QColor firstColour(const PieceDrawing& piece) {
    for (const auto& slot : piece.slots) {
        if (slot.purpose == model::Purpose::focal) return slot.bloom;
    }
    return piece.slots.empty() ? QColor::fromRgb(0x9FB09A) : piece.slots.front().bloom;
}

/// From above a spike is its own rosette; round heads show their face.
HeadForm formFromAbove(HeadForm form) {
    switch (form) {
    case HeadForm::spike:
    case HeadForm::florets:
    case HeadForm::bellSpike:
    case HeadForm::tulip:
    case HeadForm::bell:
    case HeadForm::pea:
        return HeadForm::layered;
    case HeadForm::plume:
    case HeadForm::umbel:
    case HeadForm::plate:
    case HeadForm::berry:
        return HeadForm::globe;
    case HeadForm::trail:
        return HeadForm::leaf;
    default:
        return form;
    }
}

/// Lace: what stands below shows through.
void addLace(Sketch& out, const HeadFromAbove& h, double k, const Palette& palette) {
    constexpr int clusters = 19;
    const double r = h.diameter / 2 * k;
    QPainterPath lace;
    lace.setFillRule(Qt::WindingFill);
    for (int i = 0; i < clusters; ++i) {
        const double from = std::sqrt((i + 0.5) / clusters) * r * 0.84, a = i * goldenAngle;
        const QPointF at = h.at * k + QPointF(std::cos(a) * from, std::sin(a) * from);
        lace.addEllipse(at, r * 0.15, r * 0.15);
    }
    out.push_back({lace, h.slot->bloom, palette.bloomEdge(h.slot->bloom), std::min(0.9, r * 0.04)});
}

void addHead(Sketch& out, const HeadFromAbove& h, double k, const Palette& palette) {
    const double px = h.diameter * k;
    if (px >= leastHeadDrawn && h.slot->form == HeadForm::umbel) return addLace(out, h, k, palette);
    if (px < leastHeadDrawn) {
        const double r = std::max(px / 2, 0.6);
        out.push_back({ellipseAt(h.at.x() * k, h.at.y() * k, r, r), h.slot->bloom,
                       palette.bloomEdge(h.slot->bloom), std::min(0.8, r * 0.4)});
        return;
    }
    auto head = headSketch({formFromAbove(h.slot->form), px, h.slot->bloom, h.slot->eye, h.turn, h.seed},
                           palette.theme);
    transform(head, QTransform::fromTranslate(h.at.x() * k, h.at.y() * k));
    append(out, std::move(head));
}

} // namespace

std::vector<HeadFromAbove> headsFromAbove(const PieceDrawing& piece) {
    switch (piece.kind) {
    case PieceKind::crown:
    case PieceKind::wreath:
        return inARow(piece, true);
    case PieceKind::garland:
        return inARow(piece, false);
    default:
        return inADisc(piece);
    }
}

double acrossFromAbove(const PieceDrawing& piece) {
    return std::max(piece.spread, piece.vessel ? std::max(piece.vessel->width, piece.vessel->rim) : 0.0);
}

double footFromAbove(const PieceDrawing& piece) {
    switch (piece.kind) {
    case PieceKind::crown:
    case PieceKind::wreath:
    case PieceKind::garland:
    case PieceKind::sheaf:
    case PieceKind::spray:
        return 0;
    default:
        return piece.vessel ? piece.vessel->base : 2 * tiedNeck(piece, 1).half;
    }
}

Sketch pieceFromAbove(const PieceDrawing& piece, double k, const FromAboveLook& look) {
    Sketch out;
    const QColor ink = look.rim.isValid() ? look.rim
                       : look.lineOnly    ? QColor(Qt::black)
                                          : look.palette.of(Role::ink);
    const QColor fill = look.heads || look.lineOnly
                            ? look.palette.of(Role::sheet)
                            : mixed(look.palette.of(Role::sheet), firstColour(piece), 0.4);
    const auto spread = spreadPath(piece, look.collar, k);
    out.push_back({spread, fill, {}, 0});
    if (look.heads) {
        for (const auto& h : headsFromAbove(piece))
            addHead(out, h, k, look.palette);
    }
    if (look.lineOnly) out = inLine(std::move(out), {Qt::white, ink, 0, 0.9});
    if (look.collar != Collar::none)
        out.push_back({spread, {}, ink, look.collar == Collar::square ? 1.7 : 1.1});
    const double foot = footFromAbove(piece) / 2 * k;
    if (foot > 0) out.push_back({ellipseAt(0, 0, foot, foot), {}, ink, 1, Qt::DashLine});
    return out;
}

} // namespace withy::ui
