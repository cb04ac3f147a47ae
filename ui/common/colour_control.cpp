// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/colour_control.h"

#include "ui/common/style.h"
#include "ui/logic/fields/colour_reading.h"
#include "ui/paint/spacing.h"

#include <QAction>
#include <QColorDialog>
#include <QCoreApplication>
#include <QPainter>
#include <QPixmap>

namespace withy::ui {

namespace {

/// A filled round for a colour, a dashed one while there is none.
QIcon swatchIcon(const std::optional<Colour>& colour) {
    const int side = grid(4);
    QPixmap pixmap(side * 2, side * 2);
    pixmap.setDevicePixelRatio(2);
    pixmap.fill(Qt::transparent);
    QPainter p(&pixmap);
    p.setRenderHint(QPainter::Antialiasing);
    const QRectF round = QRectF(0, 0, side, side).adjusted(1.5, 1.5, -1.5, -1.5);
    if (colour) {
        const QColor fill = Palette::bloom(*colour);
        p.setPen(QPen(currentPalette().bloomEdge(fill), hairline));
        p.setBrush(fill);
    } else {
        p.setPen(QPen(currentPalette().of(Role::edge), hairline, Qt::DashLine));
    }
    p.drawEllipse(round);
    return QIcon(pixmap);
}

} // namespace

ColourControl::ColourControl(QWidget* parent)
    : LineControl(parent), swatch_(line_->addAction(swatchIcon(std::nullopt), QLineEdit::LeadingPosition)) {
    swatch_->setText(QCoreApplication::translate("FieldControl", "Choose a colour"));
    QObject::connect(line_, &QLineEdit::textChanged, line_, [this] { showSwatch(); });
    QObject::connect(swatch_, &QAction::triggered, line_, [this] { openPopup(); });
}

void ColourControl::setText(const QString& text) {
    LineControl::setText(text);
    showSwatch();
}

void ColourControl::showSwatch() {
    swatch_->setIcon(swatchIcon(readColour(line_->text())));
}

void ColourControl::openPopup() {
    if (line_->isReadOnly()) return;
    choosing_ = true;
    const QColor chosen = QColorDialog::getColor(QColor(line_->text()), line_->window(), swatch_->text(),
                                                 QColorDialog::DontUseNativeDialog);
    choosing_ = false;
    if (!chosen.isValid()) return;
    line_->setText(chosen.name());
    if (picked) picked();
}

} // namespace withy::ui
