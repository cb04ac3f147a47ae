// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/drawn_design.h"
#ifndef Q_MOC_RUN
#include "ui/designs/elevation.h"
#include "ui/paint/piece_parts.h"
#endif

#include <QPixmap>
#include <QTimer>

namespace withy::ui {

class BenchKnob;

/// The piece from the side, to scale, with its heights, spread and water beside it, and a knob at each length
/// that can be pulled. What is pulled is drawn at once; the season changes when it is let go. A piece whose
/// heads have no pictures yet is drawn in slices, so that no frame waits for it.
class DesignView : public DrawnDesign {
    Q_OBJECT

public:
    explicit DesignView(Workbench& bench, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

    /// Every head is drawn as it should be; while a piece is new to the screen, the next frames bring them.
    [[nodiscard]] bool isWhole() const { return whole_; }

    /// The top once its stems have grown on, in millimetres above the rim; nought: as made.
    [[nodiscard]] double grownTop() const { return grownTop_; }

    /// The next frame draws the piece anew, from the pictures of heads there are: for measuring.
    void forgetDrawn() { kept_ = {}; }

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
    void measureGrown();
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
    PieceParts parts_; ///< of kept_
    QPixmap picture_;
    bool whole_ = false; ///< every head is drawn as it should be
    int slices_ = 0;     ///< of the drawing under way
    QTimer goOn_;        ///< with the heads that are not
};

} // namespace withy::ui
