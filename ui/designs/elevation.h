// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/measures.h"
#include "ui/paint/piece_painter.h"

#include <QRect>
#include <QString>

#include <array>
#include <optional>

namespace withy::ui {

/// What can be dragged on the drawing, and the design's field behind it.
enum class BenchHandle { tall, middle, low, neck, spread, lift };

inline constexpr std::array benchHandles{BenchHandle::tall, BenchHandle::middle, BenchHandle::low,
                                         BenchHandle::neck, BenchHandle::spread, BenchHandle::lift};

/// The numbers round a piece drawn from the side: rule, heights of its tiers, spread, water, lift.
/// Hairlines with slashed ends; labels keep clear of one another.
class Elevation {
public:
    Elevation(const PieceDrawing& piece, const QRectF& boundsMm, const QRect& room, const Palette& palette,
              Units units);

    [[nodiscard]] double scale() const { return scale_; }

    /// Where the middle of the piece's foot stands.
    [[nodiscard]] QPointF foot() const { return foot_; }

    /// Where a handle stands; nothing when the piece has no such length.
    [[nodiscard]] std::optional<QPointF> handleAt(BenchHandle handle) const;
    /// The length in millimetres that a handle pulled to `at` means; whole, never below nought.
    [[nodiscard]] std::int64_t lengthAt(BenchHandle handle, QPointF at) const;

    /// The top once its stems have grown on, in millimetres above the rim; nought: as made.
    void setGrownTop(double mm) { grownTop_ = mm; }

    void paintBehind(QPainter& painter) const;  ///< ground, rule and the tiers' dotted lines
    void paintNumbers(QPainter& painter) const; ///< everything that stands in front

private:
    struct Mark {
        double mm; ///< above the ground
        QString words;
    };

    [[nodiscard]] std::vector<Mark> tiers() const;

    [[nodiscard]] double y(double mm) const { return foot_.y() - mm * scale_; }

    /// Above the ground: the rim, or the tie of a bound piece.
    [[nodiscard]] double rim() const { return rim_; }

    [[nodiscard]] double insideBottom() const;
    [[nodiscard]] double tierEnd() const; ///< x where the tiers' dotted lines end
    [[nodiscard]] double liftLine() const;
    [[nodiscard]] bool hasTiers() const;
    void paintRuleAtLeft(QPainter& painter) const;
    void upright(QPainter& painter, double x, double from, double to, const QColor& colour) const;
    void level(QPainter& painter, double from, double to, double y, const QColor& colour) const;
    void paintSpread(QPainter& painter) const;
    void paintHeight(QPainter& painter) const;
    void paintWater(QPainter& painter) const;
    void paintLift(QPainter& painter) const;

    const PieceDrawing& piece_;
    QRectF mm_;
    QRect room_;
    Palette palette_;
    Units units_;
    double scale_ = 1;
    double rim_ = 0;
    double grownTop_ = 0;
    QPointF foot_;
};

/// The field of the design a handle changes, what it measures now, and its name in words.
const char* handleField(BenchHandle handle);
double handleLength(const PieceDrawing& piece, BenchHandle handle);
void setHandleLength(PieceDrawing& piece, BenchHandle handle, double mm);
QString handleWords(const PieceDrawing& piece, BenchHandle handle, Units units);

/// The same in a sentence, for those who cannot see the drawing.
QString elevationWords(const PieceDrawing& piece, Units units);

} // namespace withy::ui
