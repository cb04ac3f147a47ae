// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/table_from_above.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

using packing::PlaceSetting;
using packing::TableForm;
using packing::TableTop;

// True sizes of what lies at a place, common practice, no source; a narrower setting has a smaller plate.
constexpr double usualPlate = 230;
constexpr double plateFromEdge = 15;
constexpr double knife = 200;
constexpr double chairWidth = 400;
constexpr double chairDepth = 130; ///< of its back, what shows beyond the edge
constexpr double chairGap = 50;

double depthOf(const TableTop& table) {
    return table.form == TableForm::round ? asMm(table.length) : asMm(table.width.value_or(table.length));
}

double plateOf(const PlaceSetting& s) {
    return std::max(std::min({usualPlate, asMm(s.width) * 0.6, asMm(s.depth) - 2 * plateFromEdge}), 1.0);
}

/// From the edge to the middle of a plate.
double inwards(const PlaceSetting& s) {
    return plateFromEdge + plateOf(s) / 2;
}

/// `n` places evenly along a side; the guest looks along `degrees`.
void addSide(std::vector<CoverPlace>& out, std::int64_t n, double length, double fromMiddle, double degrees) {
    const auto turn = QTransform().rotate(degrees);
    for (std::int64_t i = 0; i < n; ++i) {
        const double along = ((static_cast<double>(i) + 0.5) / static_cast<double>(n) - 0.5) * length;
        out.push_back({turn.map(QPointF(along, fromMiddle)), degrees});
    }
}

QPainterPath line(QPointF from, QPointF to) {
    QPainterPath p(from);
    p.lineTo(to);
    return p;
}

/// At the origin, the guest below looking up.
Sketch settingSketch(const PlaceSetting& s, double k, const TablePlanLook& look) {
    const QColor edge = look.palette.of(Role::edge), hair = look.palette.of(Role::line);
    const double r = plateOf(s) / 2 * k;
    Sketch out{{ellipseAt(0, 0, r, r), look.palette.of(Role::sheet), edge, 1},
               {ellipseAt(0, 0, r * 0.66, r * 0.66), {}, hair, 0.8}};
    const double half = std::min(knife, plateOf(s) * 0.9) / 2 * k;
    const double step = std::min(25.0, (asMm(s.width) - plateOf(s)) / 6) * k;
    if (step < 1) return out; // two lines on one pixel say nothing
    out.push_back({line({-r - step, -half}, {-r - step, half}), {}, edge, 1});
    for (const double n : {1.0, 1.7})
        out.push_back({line({r + step * n, -half}, {r + step * n, half}), {}, edge, 1});
    return out;
}

Sketch chairSketch(const PlaceSetting& s, double k, const TablePlanLook& look) {
    QPainterPath p;
    const double width = std::min(chairWidth, asMm(s.width) * 0.9) * k;
    p.addRoundedRect(QRectF(-width / 2, (inwards(s) + chairGap) * k, width, chairDepth * k), 30 * k, 30 * k);
    return {{p, look.palette.of(Role::paper), look.palette.of(Role::edge), 1}};
}

QPainterPath topPath(const TableTop& table, double k) {
    const QRectF box = tableBoundsMm(table, false);
    QPainterPath p;
    const QRectF px(box.topLeft() * k, box.size() * k);
    if (table.form == TableForm::round)
        p.addEllipse(px);
    else
        p.addRect(px);
    return p;
}

void addMiddle(Sketch& out, const TableTop& table, const PlaceSetting& setting, double k,
               const TablePlanLook& look) {
    const auto middle = freeMiddleOf(table, setting);
    if (!middle || table.covers == 0) return;
    const QColor edge = look.palette.of(Role::edge);
    const QRectF px(middle->topLeft() * k, middle->size() * k);
    QPainterPath strip;
    if (table.form == TableForm::round) {
        strip.addEllipse(px);
        out.push_back({strip, look.palette.of(Role::mist), edge, 1, Qt::DashLine});
        return;
    }
    strip.addRect(px);
    out.push_back({strip, look.palette.of(Role::mist), {}, 0});
    const double end = asMm(table.length) / 2;
    const auto dashed = [&](QPointF a, QPointF b) { out.push_back({line(a, b), {}, edge, 1, Qt::DashLine}); };
    const double half = depthOf(table) / 2;
    if (middle->top() > -half) dashed(px.topLeft(), px.topRight());
    if (middle->bottom() < half) dashed(px.bottomLeft(), px.bottomRight());
    if (middle->left() > -end) dashed(px.topLeft(), px.bottomLeft());
    if (middle->right() < end) dashed(px.topRight(), px.bottomRight());
}

} // namespace

std::vector<CoverPlace> coverPlaces(const TableTop& table, const PlaceSetting& setting) {
    std::vector<CoverPlace> out;
    if (table.covers <= 0) return out;
    if (table.form == TableForm::round) {
        const double r = asMm(table.length) / 2 - inwards(setting);
        for (std::int64_t i = 0; i < table.covers; ++i) {
            const double degrees = 360.0 * static_cast<double>(i) / static_cast<double>(table.covers);
            out.push_back({QTransform().rotate(degrees).map(QPointF(0, r)), degrees});
        }
        return out;
    }
    const auto sides = table.covers - table.coversAtEnds;
    const double across = depthOf(table), from = across / 2 - inwards(setting);
    addSide(out, (sides + 1) / 2, asMm(table.length), from, 0);
    addSide(out, sides / 2, asMm(table.length), from, 180);
    const double endFrom = asMm(table.length) / 2 - inwards(setting);
    addSide(out, (table.coversAtEnds + 1) / 2, across, endFrom, 90);
    addSide(out, table.coversAtEnds / 2, across, endFrom, 270);
    return out;
}

std::optional<QRectF> freeMiddleOf(const TableTop& table, const PlaceSetting& setting) {
    const auto middle = packing::freeMiddle(table, setting);
    if (!middle.ok() || middle->width.value <= 0 || middle->length.value <= 0) return std::nullopt;
    const double w = asMm(middle->length), h = asMm(middle->width);
    // A cover alone sits below (or at the left): what it takes is taken there.
    const double up = table.form == TableForm::round ? 0 : (depthOf(table) - h) / 2;
    const double right = table.form == TableForm::round ? 0 : (asMm(table.length) - w) / 2;
    const bool oneSide = table.covers - table.coversAtEnds == 1, oneEnd = table.coversAtEnds == 1;
    return QRectF(-w / 2 + (oneEnd ? right : 0), -h / 2 - (oneSide ? up : 0), w, h);
}

std::vector<QPointF> piecePlaces(const TableTop& table, const PlaceSetting& setting, std::int64_t count,
                                 double footprint) {
    std::vector<QPointF> out;
    const auto middle = packing::freeMiddle(table, setting);
    if (!middle.ok() || count < 1) return out;
    const auto free = freeMiddleOf(table, setting);
    const QPointF at = free ? free->center() : QPointF();
    if (table.form == TableForm::rectangular) {
        const double length = asMm(middle->length);
        for (std::int64_t i = 0; i < count; ++i)
            out.push_back(
                at +
                QPointF(((static_cast<double>(i) + 0.5) / static_cast<double>(count) - 0.5) * length, 0));
        return out;
    }
    constexpr std::int64_t fromHereOneInside = 7; // as packing::fitOnTable() has it
    const auto ring = count == 1 ? 0 : count >= fromHereOneInside ? count - 1 : count;
    if (ring < count) out.emplace_back(0, 0);
    // As far out as leaves them the same room to the settings as to each other.
    const double width = asMm(middle->width);
    const double widest =
        ring > 0 ? width / (1 + 1 / std::sin(std::numbers::pi / static_cast<double>(ring))) : width;
    const double r = std::max((width - std::max(widest, footprint)) / 2, 0.0);
    for (std::int64_t i = 0; i < ring; ++i) {
        const double a = 2 * std::numbers::pi * (static_cast<double>(i) + 0.5) / static_cast<double>(ring);
        out.emplace_back(std::sin(a) * r, -std::cos(a) * r);
    }
    return out;
}

Sketch tableFromAbove(const TableTop& table, const PlaceSetting& setting, double k,
                      const TablePlanLook& look) {
    Sketch out;
    const auto covers = coverPlaces(table, setting);
    const auto place = [&](Sketch sketch, const CoverPlace& c) {
        transform(sketch, QTransform().translate(c.plate.x() * k, c.plate.y() * k).rotate(c.degrees));
        append(out, std::move(sketch));
    };
    if (look.chairs) {
        for (const auto& c : covers)
            place(chairSketch(setting, k, look), c);
    }
    const QColor edge = look.edge.isValid() ? look.edge : look.palette.of(Role::ink);
    out.push_back({topPath(table, k), look.palette.of(Role::sheet), {}, 0});
    if (look.middle) addMiddle(out, table, setting, k, look);
    if (look.settings) {
        for (const auto& c : covers)
            place(settingSketch(setting, k, look), c);
    }
    if (look.lineOnly) out = inLine(std::move(out), {Qt::white, Qt::black, 0, 0.8});
    out.push_back({topPath(table, k),
                   {},
                   look.lineOnly && !look.edge.isValid() ? QColor(Qt::black) : edge,
                   look.edgeWidth});
    return out;
}

Sketch tableWithPieces(const TableTop& table, const PlaceSetting& setting,
                       const std::vector<PlannedPiece>& pieces, double k, const TablePlanLook& look) {
    Sketch out = tableFromAbove(table, setting, k, look);
    for (const auto& p : pieces) {
        if (!p.piece) continue;
        auto sketch = pieceFromAbove(*p.piece, k, p.look);
        transform(sketch, QTransform::fromTranslate(p.at.x() * k, p.at.y() * k));
        append(out, std::move(sketch));
    }
    return out;
}

QRectF tableBoundsMm(const TableTop& table, bool chairs) {
    const double more = chairs ? chairGap + chairDepth : 0;
    const double w = asMm(table.length) + 2 * more, h = depthOf(table) + 2 * more;
    return {-w / 2, -h / 2, w, h};
}

} // namespace withy::ui
