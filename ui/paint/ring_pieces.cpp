// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/ring_pieces.h"

#include "ui/paint/ribbon_sketch.h"
#include "ui/paint/seeded.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

const QColor twine = QColor::fromRgb(0x4D6A3F);

/// The stems of all slots, dealt out in turn so that no colour gathers.
std::vector<const SlotDrawing*> dealt(const PieceDrawing& piece) {
    std::vector<std::pair<double, const SlotDrawing*>> order;
    for (const auto& slot : piece.slots) {
        for (int i = 0; i < slot.count; ++i)
            order.emplace_back((i + 0.5) / slot.count, &slot);
    }
    std::stable_sort(order.begin(), order.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<const SlotDrawing*> out;
    for (const auto& [place, slot] : order)
        out.push_back(slot);
    return out;
}

bool leafy(const SlotDrawing& slot) {
    return slot.form == HeadForm::leaf || slot.form == HeadForm::trail;
}

Sketch headAt(const SlotDrawing& slot, double diameter, QPointF at, double tilt, std::uint64_t seed,
              Theme theme) {
    const HeadForm form = slot.form == HeadForm::trail ? HeadForm::leaf : slot.form;
    auto head = headSketch({form, diameter, slot.bloom, slot.eye, tilt, seed}, theme);
    transform(head, QTransform::fromTranslate(at.x(), at.y()));
    return head;
}

void standOnGround(Sketch& out) {
    const QRectF box = boundsOf(out);
    if (!out.empty()) transform(out, QTransform::fromTranslate(-box.center().x(), -box.bottom()));
}

} // namespace

Sketch ringSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    const bool crown = piece.kind == model::PieceKind::crown;
    const auto stems = dealt(piece);
    const double rx = std::max(piece.spread * 0.42, 20.0) * k;
    const double ry = crown ? rx * 0.4 : rx;
    Sketch out{{ellipseAt(0, 0, rx, ry), {}, twine, std::max((crown ? 7 : 12) * k, 1.4)}};
    const auto n = stems.size();
    // Small enough that neighbours overlap by about half; leaves lie along the ring.
    const double room = n > 0 ? std::numbers::pi * (rx + ry) / static_cast<double>(n) * 3.2 : 0;
    Seeded seeded(piece.seed);

    struct Place {
        double angle;
        std::size_t stem;
    };

    std::vector<Place> places;
    for (std::size_t i = 0; i < n; ++i)
        places.push_back({2 * std::numbers::pi * (static_cast<double>(i) + 0.5) / static_cast<double>(n), i});
    std::stable_sort(places.begin(), places.end(), [&](const Place& a, const Place& b) {
        if (leafy(*stems[a.stem]) != leafy(*stems[b.stem])) return leafy(*stems[a.stem]);
        return std::sin(a.angle) < std::sin(b.angle);
    });
    for (const auto& [angle, i] : places) {
        const double depth = crown ? 0.8 + 0.2 * std::sin(angle) : 1;
        const double most = std::max(room, 14 * k);
        const double d = std::min(stems[i]->head * k * (leafy(*stems[i]) ? 0.5 : 0.8), most) * depth;
        const double along = angle * 180 / std::numbers::pi + (i % 2 ? 150 : 30);
        const double tilt = leafy(*stems[i]) ? along : std::cos(angle) * (crown ? 50 : 20) + seeded.around(8);
        append(out, headAt(*stems[i], d, {std::cos(angle) * rx, std::sin(angle) * ry}, tilt, i + 1,
                           palette.theme));
    }
    if (piece.ribbon) {
        auto bow = ribbonSketch(*piece.ribbon, piece.ribbon->width * 0.4 * k, k, (crown ? 90 : 1500) * k);
        transform(bow, QTransform::fromTranslate(crown ? rx * 0.92 : 0, crown ? ry * 0.3 : ry));
        append(out, std::move(bow));
    }
    standOnGround(out);
    return out;
}

Sketch garlandSketch(const PieceDrawing& piece, double k, const Palette& palette) {
    const auto stems = dealt(piece);
    const double length = std::max(piece.spread, 1000.0) * k;
    const double sag = length * 0.17;
    const auto at = [&](double t) { return QPointF((t - 0.5) * length, sag * 4 * t * (1 - t)); };
    QPainterPath line(at(0));
    line.quadTo(QPointF(0, sag * 2), at(1));
    Sketch out{{line, {}, twine, std::max(5 * k, 1.4)}};
    Seeded seeded(piece.seed);
    for (const bool leaves : {true, false}) {
        std::size_t i = 0, n = 0;
        for (const auto* s : stems)
            n += leafy(*s) == leaves ? 1U : 0U;
        for (const auto* s : stems) {
            if (leafy(*s) != leaves) continue;
            const double t = (static_cast<double>(i) + 0.5) / static_cast<double>(n);
            const QPointF p = at(t) + QPointF(0, leaves ? 0 : (i % 2 ? 14 : -10) * k);
            // Each leafy stem is laid both ways along the twine.
            if (leaves)
                append(out,
                       headAt(*s, s->head * 0.55 * k, p, -75 + seeded.around(20), 2 * i + 1, palette.theme));
            append(out, headAt(*s, s->head * (leaves ? 0.55 : 0.85) * k, p,
                               (leaves ? 78 : 0) + seeded.around(20), 2 * i + 2, palette.theme));
            ++i;
        }
    }
    for (const double t : {0.0, 1.0})
        out.push_back({ellipseAt(at(t).x(), at(t).y(), 2.4, 2.4), palette.of(Role::ink), {}, 0});
    standOnGround(out);
    return out;
}

} // namespace withy::ui
