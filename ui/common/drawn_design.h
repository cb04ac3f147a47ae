// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/paint/piece_pictures.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

namespace withy::ui {

/// One design drawn from the side, as large as its room allows; follows the season. The picture is made
/// beside the window's thread. Rows of a list share the pictures.
class DrawnDesign : public QWidget {
    Q_OBJECT

public:
    /// `shared` outlives this; null: pictures of its own.
    explicit DrawnDesign(Workbench& bench, PiecePictures* shared = nullptr, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);

    void setGround(bool on) { ground_ = on; }

    void setRoom(QSize room); ///< its size hint

    [[nodiscard]] QSize sizeHint() const override { return room_; }

protected:
    void paintEvent(QPaintEvent* event) override;

    /// The drawing has changed.
    virtual void redrawn() {}

    [[nodiscard]] bool isThere() const;

    [[nodiscard]] const PieceDrawing& piece() const { return piece_; }

    [[nodiscard]] const QRectF& bounds() const { return bounds_; }

    [[nodiscard]] PiecePictures::Picture picture(double scale, bool fromAbove = false);

    [[nodiscard]] Workbench& bench() const { return bench_; }

    [[nodiscard]] std::optional<Id<model::Design>> design() const { return design_; }

private:
    void refresh();

    [[nodiscard]] qint64 key() const { return design_ ? design_->value : 0; }

    Workbench& bench_;
    PiecePictures* pictures_;
    std::optional<Id<model::Design>> design_;
    PieceDrawing piece_;
    QRectF bounds_;
    QSize room_;
    bool ground_ = false;
};

} // namespace withy::ui
