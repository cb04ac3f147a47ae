// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/paint/piece_pictures.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

namespace withy::ui {

/// The piece from the side, to scale, with its heights, spread and water beside it.
class DesignView : public QWidget {
    Q_OBJECT

public:
    explicit DesignView(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();

    Workbench& bench_;
    std::optional<Id<model::Design>> design_;
    PieceDrawing piece_;
    QRectF bounds_;
    PiecePictures pictures_;
};

} // namespace withy::ui
