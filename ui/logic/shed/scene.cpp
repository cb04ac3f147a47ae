// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/scene.h"

#include "ui/logic/format.h"
#include "ui/logic/papers/sketch_on_paper.h"
#include "ui/paint/type.h"

#include <algorithm>

namespace withy::ui {

namespace {

/// Lato's letters are about half as wide as they are high, names with many capitals a little more.
int mostLetters(double width, const SceneLook& look) {
    const double letter = look.lineOnly ? 20.5 : 0.64 * textPoints();
    return std::max(4, static_cast<int>(width / letter));
}

} // namespace

void append(Scene& to, const Scene& more, QPointF at) {
    Sketch sketch = more.sketch;
    transform(sketch, QTransform::fromTranslate(at.x(), at.y()));
    append(to.sketch, std::move(sketch));
    for (auto label : more.labels) {
        label.at += at;
        to.labels.push_back(label);
    }
    to.size = to.size.expandedTo(QSizeF(at.x() + more.size.width(), at.y() + more.size.height()));
}

void addLine(Sketch& sketch, QPointF from, QPointF to, const QColor& colour, double width,
             Qt::PenStyle dash) {
    QPainterPath path(from);
    path.lineTo(to);
    sketch.push_back({path, {}, colour, width, dash, Qt::FlatCap});
}

void addBox(Sketch& sketch, const QRectF& box, const QColor& fill, const QColor& line, double width,
            double radius, Qt::PenStyle dash) {
    QPainterPath path;
    if (radius > 0)
        path.addRoundedRect(box, radius, radius);
    else
        path.addRect(box);
    sketch.push_back({path, fill, line, width, dash, Qt::FlatCap});
}

void addHatch(Sketch& sketch, const QRectF& box, double gap, const QColor& colour) {
    QPainterPath path;
    for (double at = gap; at < box.width() + box.height(); at += gap) {
        // The line x + y = at, from the box's top left corner, clipped to the box.
        const QPointF from(std::min(at, box.width()), std::max(0.0, at - box.width()));
        const QPointF to(std::max(0.0, at - box.height()), std::min(at, box.height()));
        path.moveTo(box.topLeft() + from);
        path.lineTo(box.topLeft() + to);
    }
    sketch.push_back({path, {}, colour, 0.8});
}

void addDimension(Sketch& sketch, QPointF from, QPointF to, const QColor& colour) {
    addLine(sketch, from, to, colour);
    constexpr double slash = 4;
    for (const QPointF end : {from, to})
        addLine(sketch, end + QPointF(-slash, slash), end + QPointF(slash, -slash), colour, 1.3);
}

double sized(const SceneLook& look, double onPaper, double onScreen) {
    return look.lineOnly ? onPaper : onScreen * textPoints() / 10.5;
}

double lineHeight(const SceneLook& look) {
    return look.lineOnly ? 50 : 1.6 * textPoints(); // 5 mm; a caption's line
}

QStringList wrapped(const QString& words, double width, const SceneLook& look) {
    const int most = mostLetters(width, look);
    QStringList lines;
    for (const auto& word : words.split(QLatin1Char(' '))) {
        if (lines.isEmpty() || lines.back().size() + 1 + word.size() > most)
            lines << word;
        else
            lines.back() += QLatin1Char(' ') + word;
    }
    return lines;
}

QString shortened(const QString& words, double width, const SceneLook& look) {
    const int most = mostLetters(width, look);
    return words.size() <= most ? words : words.left(most - 1).trimmed() + QStringLiteral("…");
}

papers::Drawing onPaper(const Scene& scene, double pxPerMm) {
    constexpr double mmPerLine = 0.22; // of a line one pixel wide
    papers::Drawing drawing;
    drawing.width = scene.size.width() / pxPerMm;
    drawing.height = scene.size.height() / pxPerMm;
    const auto toPaper = QTransform::fromScale(1 / pxPerMm, 1 / pxPerMm);
    for (const auto& mark : scene.sketch)
        addToPaper(drawing, {mark}, toPaper,
                   mark.line.isValid() ? std::max(0.12, mark.width * mmPerLine) : 0);
    for (const auto& label : scene.labels)
        drawing.labels.push_back(
            {label.at.x() / pxPerMm, label.at.y() / pxPerMm, utf8(label.words), label.share, label.strong});
    drawing.inWords = utf8(scene.inWords);
    return drawing;
}

} // namespace withy::ui
