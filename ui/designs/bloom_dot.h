// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QColor>
#include <QWidget>

namespace withy::ui {

/// A small round sample of a bloom's colour, with an edge so that white shows on white; a ring alone
/// where no colour is known.
class BloomDot : public QWidget {
public:
    explicit BloomDot(const QColor& colour, QWidget* parent = nullptr);
    void setColour(const QColor& colour);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QColor colour_;
};

void paintDot(QPainter& painter, const QRectF& box, const QColor& bloom);

/// Of the slot's best plant; invalid when it has none or the plant no colour.
QColor slotColour(const model::Season& season, Id<model::Slot> slot);

} // namespace withy::ui
