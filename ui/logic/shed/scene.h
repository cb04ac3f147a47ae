// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "ui/paint/sketch.h"

#include <QString>
#include <QStringList>

/// A drawing with its words: the same for screen and paper. Pixels, y down.
namespace withy::ui {

struct SceneLabel {
    QPointF at; ///< of the words' middle in height
    QString words;
    double share = 0; ///< of the words that stands left of `at`: 0, 0.5, 1
    bool strong = false;
    Role role = Role::ink2;
};

struct Scene {
    Sketch sketch;
    std::vector<SceneLabel> labels;
    QSizeF size{0, 0};
    QString inWords; ///< for who cannot see it
};

struct SceneLook {
    Palette palette;
    bool lineOnly = false; ///< paper
};

/// A length in the scene's pixels: as given on paper, grown with the text on the screen.
double sized(const SceneLook& look, double onPaper, double onScreen);

void append(Scene& to, const Scene& more, QPointF at);
void addLine(Sketch& sketch, QPointF from, QPointF to, const QColor& colour, double width = 1,
             Qt::PenStyle dash = Qt::SolidLine);
void addBox(Sketch& sketch, const QRectF& box, const QColor& fill, const QColor& line, double width = 1,
            double radius = 0, Qt::PenStyle dash = Qt::SolidLine);
/// Slanting lines inside a box: what is taken, empty or kept clear, without a colour.
void addHatch(Sketch& sketch, const QRectF& box, double gap, const QColor& colour);
/// A measured length between two points, across or down, with slashed ends.
void addDimension(Sketch& sketch, QPointF from, QPointF to, const QColor& colour);

/// Words broken into lines, or cut to one, for a width: reckoned by letters, so that no font need be at hand.
QStringList wrapped(const QString& words, double width, const SceneLook& look);
QString shortened(const QString& words, double width, const SceneLook& look);
/// Height of one line of words.
double lineHeight(const SceneLook& look);

/// For a paper, `pxPerMm` of the scene's pixels to a millimetre of it.
papers::Drawing onPaper(const Scene& scene, double pxPerMm);

} // namespace withy::ui
