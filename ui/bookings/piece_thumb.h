// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

namespace withy::ui {

class PiecePictures;

/// One piece, as large as its row takes. The pictures are shared by all rows.
class PieceThumb : public QWidget {
    Q_OBJECT

public:
    PieceThumb(Workbench& bench, PiecePictures& pictures, Id<model::Design> design,
               QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Workbench& bench_;
    PiecePictures& pictures_;
    Id<model::Design> design_;
};

} // namespace withy::ui
