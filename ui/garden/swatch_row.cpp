// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/swatch_row.h"

#include "ui/common/style.h"
#include "ui/logic/fields/colour_reading.h"
#include "ui/paint/spacing.h"

#include <QPainter>
#include <QStringList>

namespace withy::ui {

SwatchRow::SwatchRow(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void SwatchRow::show(const model::Plant& plant) {
    colours_.clear();
    for (const auto& colour : {plant.colour1, plant.colour2, plant.colour3}) {
        if (colour) colours_.push_back(*colour);
    }
    QStringList words;
    for (const auto& c : colours_)
        words << colourName(c);
    setAccessibleName(tr("Bloom colours: %1").arg(words.join(QStringLiteral(", "))));
    setToolTip(words.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

QSize SwatchRow::sizeHint() const {
    return {grid(7) * static_cast<int>(colours_.size()), grid(7)};
}

void SwatchRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double size = grid(5);
    double x = grid(1);
    for (const auto& colour : colours_) {
        const QColor bloom = Palette::bloom(colour);
        painter.setPen(QPen(currentPalette().bloomEdge(bloom), hairline));
        painter.setBrush(bloom);
        painter.drawEllipse(QRectF(x, (height() - size) / 2, size, size));
        x += grid(7);
    }
}

} // namespace withy::ui
