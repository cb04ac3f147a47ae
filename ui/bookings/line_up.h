// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#ifndef Q_MOC_RUN
#include "ui/paint/piece_pictures.h"
#endif

#include <QWidget>

namespace withy::ui {

/// A booking's pieces side by side at one scale on one ground line, with the height at which seated guests
/// look at each other. Equal pieces are drawn once, or as they stand on one table.
class LineUp : public QWidget {
    Q_OBJECT

public:
    explicit LineUp(Workbench& bench, QWidget* parent = nullptr);

    void showBooking(std::optional<Id<model::Booking>> id);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// One design as it stands: on the ground, or so many on a table.
    struct Stand {
        qint64 design = 0;
        PieceDrawing piece;
        QRectF bounds;    ///< of the piece, mm
        double base = 0;  ///< mm above the ground
        double table = 0; ///< mm wide; nought: none
        int drawn = 1;
        QString name;
        QString more;
        [[nodiscard]] double widthMm() const;
        [[nodiscard]] double topMm() const;
    };

    void gather();
    void say();
    [[nodiscard]] double scaleFor(const QRectF& area) const;
    void paintStand(QPainter& p, const Stand& stand, QPointF foot, double scale);
    void paintTable(QPainter& p, const Stand& stand, QPointF foot, double scale) const;
    void paintEyeLine(QPainter& p, double left, double right, double ground, double scale) const;
    void paintWords(QPainter& p, const Stand& stand, const QRectF& below) const;

    Workbench& bench_;
    PiecePictures pictures_;
    std::optional<Id<model::Booking>> id_;
    std::vector<Stand> stands_;
};

} // namespace withy::ui
