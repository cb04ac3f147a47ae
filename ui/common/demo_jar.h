// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/paint/piece_pictures.h"
#endif

#include <QThreadPool>
#include <QWidget>

#include <optional>

namespace withy::ui {

/// The demo season's first design on a ground line, an empty container of its kind beside it. The season is
/// read and the piece drawn beside the window's thread, once the page has been painted without them.
class DemoJar : public QWidget {
    Q_OBJECT

public:
    explicit DemoJar(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void read();

    PiecePictures pictures_;
    std::optional<PieceDrawing> piece_;
    QRectF bounds_;
    QThreadPool pool_; // last: its work looks at the others
};

} // namespace withy::ui
