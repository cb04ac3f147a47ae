// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/colour_control.h"

#include "ui/common/style.h"
#include "ui/logic/fields/colour_reading.h"
#include "ui/paint/spacing.h"

#include <QAction>
#include <QColorDialog>
#include <QCoreApplication>
#include <QFocusEvent>
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

/// Says the name of what it holds while nobody types in it.
class ColourLine : public QLineEdit {
public:
    using QLineEdit::QLineEdit;

    [[nodiscard]] QString held() const { return named_.isEmpty() || text() != named_ ? text() : held_; }

    void hold(const QString& typed) {
        named_.clear();
        setText(typed);
        if (!hasFocus()) sayName();
        setCursorPosition(0);
    }

protected:
    void focusInEvent(QFocusEvent* event) override {
        if (!isReadOnly() && !named_.isEmpty() && text() == named_) {
            const bool all = hasSelectedText();
            named_.clear();
            setText(held_);
            if (all) selectAll();
        }
        QLineEdit::focusInEvent(event);
    }

    void focusOutEvent(QFocusEvent* event) override {
        QLineEdit::focusOutEvent(event);
        sayName();
    }

private:
    void sayName() {
        const QString name = colourName(text());
        if (name == text()) return; // blank, a name already, or no colour at all
        held_ = text();
        named_ = name;
        setText(name);
        setCursorPosition(0);
    }

    QString held_;  ///< "#87345a"
    QString named_; ///< what stands there for it; empty while it is spelt
};

ColourControl::ColourControl(QWidget* parent)
    : LineControl(new ColourLine(parent))
    , colour_(static_cast<ColourLine*>(line_))
    , swatch_(line_->addAction(swatchIcon(std::nullopt), QLineEdit::LeadingPosition)) {
    swatch_->setText(QCoreApplication::translate("FieldControl", "Choose a colour"));
    QObject::connect(line_, &QLineEdit::textChanged, line_, [this] { showSwatch(); });
    QObject::connect(swatch_, &QAction::triggered, line_, [this] { openPopup(); });
}

QString ColourControl::text() const {
    return colour_->held();
}

void ColourControl::setText(const QString& text) {
    colour_->hold(text);
    showSwatch();
}

void ColourControl::showSwatch() {
    swatch_->setIcon(swatchIcon(readColour(text())));
}

void ColourControl::openPopup() {
    if (line_->isReadOnly()) return;
    choosing_ = true;
    auto* chooser = new QColorDialog(QColor(text()), line_); // a row laid anew takes both along
    chooser->setObjectName(QStringLiteral("colour.chooser"));
    chooser->setWindowTitle(swatch_->text());
    chooser->setOption(QColorDialog::DontUseNativeDialog);
    chooser->setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(chooser, &QColorDialog::finished, line_, [this, chooser](int result) {
        choosing_ = false;
        if (result != QDialog::Accepted) return;
        setText(chooser->selectedColor().name());
        if (picked) picked();
    });
    chooser->open();
}

} // namespace withy::ui
