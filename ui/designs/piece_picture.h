// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/paint/piece_pictures.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

namespace withy::ui {

/// One design drawn as large as its room allows, on the ground; follows the season.
class PiecePicture : public QWidget {
    Q_OBJECT

public:
    explicit PiecePicture(Workbench& bench, QWidget* parent = nullptr);
    void showDesign(std::optional<Id<model::Design>> design);
    [[nodiscard]] QSize sizeHint() const override;

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
