// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/drawn_design.h"
#ifndef Q_MOC_RUN
#include "ui/designs/elevation.h"
#endif

#include <QPixmap>

namespace withy::ui {

class BenchKnob;

/// The piece from the side, to scale, with its heights, spread and water beside it, and a knob at each length
/// that can be pulled. What is pulled is drawn at once; the season changes when it is let go.
class DesignView : public DrawnDesign {
    Q_OBJECT

public:
    explicit DesignView(Workbench& bench, QWidget* parent = nullptr);
    [[nodiscard]] QSize minimumSizeHint() const override;

    /// The length being pulled, or as it stands.
    [[nodiscard]] double length(BenchHandle handle) const;

Q_SIGNALS:
    void refused(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void redrawn() override;

private:
    void pull(BenchHandle handle, QPointF to);
    void nudge(BenchHandle handle, int millimetres);
    void showLength(BenchHandle handle, double millimetres);
    void keep(BenchHandle handle);
    void giveBack();
    void placeKnobs();
    [[nodiscard]] Elevation elevation() const;

    /// What the kept picture shows.
    struct Kept {
        PieceDrawing piece;
        double scale = 0;
        QPointF foot{};
        QSize size{};
        Theme theme = Theme::light;
        double ratio = 1;
        friend bool operator==(const Kept&, const Kept&) = default;
    };

    const QPixmap& drawnPiece(const Elevation& drawn);

    [[nodiscard]] const PieceDrawing& shown() const { return pulled_ ? *pulled_ : piece(); }

    std::vector<BenchKnob*> knobs_;
    std::optional<PieceDrawing> pulled_; ///< while a knob is held: not in the season yet
    QRectF frame_;                       ///< bounds while a knob is held, so that the scale stays
    double grownTop_ = 0;
    Kept kept_;
    QPixmap picture_;
};

} // namespace withy::ui
