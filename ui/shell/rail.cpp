// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/rail.h"

#include "ui/common/style.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QAction>
#include <QButtonGroup>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

/// Left of the buttons runs the stem.
int stemAt() {
    return grid(2.5);
}

/// Three slanted wraps around the stem: this is chosen.
void paintTie(QPainter& p, QPointF at, const QColor& green) {
    p.setPen(QPen(green, grid(1), Qt::SolidLine, Qt::FlatCap));
    const double w = grid(1.5);
    for (int wrap = -1; wrap <= 1; ++wrap) {
        const double y = at.y() + wrap * grid(1.6);
        p.drawLine(QPointF(at.x() - w, y + grid(0.5)), QPointF(at.x() + w, y - grid(0.5)));
    }
}

void paintBud(QPainter& p, QPointF at, const QColor& edge) {
    QPainterPath leaf(at);
    const double w = grid(2);
    leaf.cubicTo(at + QPointF(w * 0.2, -w * 0.7), at + QPointF(w * 0.8, -w * 0.8), at + QPointF(w, -w * 0.6));
    leaf.cubicTo(at + QPointF(w * 0.9, -w * 0.1), at + QPointF(w * 0.4, w * 0.1), at);
    p.setPen(QPen(edge, hairline));
    p.drawPath(leaf);
}

} // namespace

RailButton::RailButton(const QString& words, IconMaker icon, QWidget* parent)
    : QToolButton(parent), icon_(std::move(icon)) {
    setText(words);
    setAccessibleName(words);
    setCheckable(true);
    setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    dress();
}

void RailButton::dress() {
    setFont(typeFont(TypeRole::caption));
    setIconSize(QSize(grid(6), grid(6)));
    if (icon_) setIcon(icon_());
}

QSize RailButton::sizeHint() const {
    return {grid(17), grid(16)};
}

void RailButton::changeEvent(QEvent* event) {
    QToolButton::changeEvent(event);
    if (event->type() == QEvent::StyleChange) dress();
}

void RailButton::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
    if (isChecked() || underMouse()) {
        p.setPen(Qt::NoPen);
        p.setBrush(palette.of(Role::wash));
        p.drawRoundedRect(box, corner, corner);
    }
    if (hasFocus()) {
        p.setPen(QPen(palette.of(Role::green), focusRing));
        p.setBrush(Qt::NoBrush);
        p.drawRoundedRect(box, corner, corner);
    }
    const QRect words(0, height() - grid(6.5), width(), grid(5.5));
    icon().paint(&p, QRect((width() - grid(6)) / 2, words.top() - grid(6.5), grid(6), grid(6)));
    QFont f = font();
    f.setBold(isChecked());
    p.setFont(f);
    p.setPen(palette.of(isChecked() ? Role::ink : Role::ink2));
    p.drawText(words, Qt::AlignCenter, text());
}

Rail::Rail(QWidget* parent)
    : QWidget(parent), column_(new QVBoxLayout(this)), group_(new QButtonGroup(this)) {
    setProperty("look", QStringLiteral("mist"));
    setAccessibleName(tr("Places"));
    setFixedWidth(railWidth());
    column_->setContentsMargins(grid(4.5), grid(4), grid(1.5), grid(2));
    column_->setSpacing(grid(2)); // all of it, at half as large again, in a window 800 high
    undo_ = new QToolButton;
    undo_->setProperty("look", QStringLiteral("quiet"));
    undo_->setToolButtonStyle(Qt::ToolButtonTextOnly);
    undo_->setObjectName(QStringLiteral("rail.undo"));
    column_->addStretch(1);
    column_->addWidget(undo_, 0, Qt::AlignHCenter);
    connect(group_, &QButtonGroup::idClicked, this, &Rail::chosen);
}

void Rail::addPlace(const QString& words, RailButton::IconMaker icon, const QString& tip) {
    auto* button = new RailButton(words, std::move(icon));
    const int place = static_cast<int>(group_->buttons().size());
    button->setObjectName(QStringLiteral("rail.%1").arg(place));
    button->setToolTip(tip);
    group_->addButton(button, place);
    column_->insertWidget(place, button);
    if (place == 0) button->setChecked(true);
}

void Rail::setCurrent(int place) {
    if (auto* button = group_->button(place)) button->setChecked(true);
    update();
}

void Rail::setUndo(QAction* undo) {
    const auto show = [this, undo] {
        undo_->setText(tr("Undo\n%1").arg(undo->shortcut().toString(QKeySequence::NativeText)));
        undo_->setAccessibleName(withoutMnemonic(undo->text()));
        undo_->setToolTip(withoutMnemonic(undo->text()));
        undo_->setEnabled(undo->isEnabled());
    };
    connect(undo, &QAction::changed, undo_, show);
    connect(undo_, &QToolButton::clicked, undo, &QAction::trigger);
    show();
}

void Rail::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    auto* next = group_->button(group_->checkedId() + step);
    if (step == 0 || !next) return QWidget::keyPressEvent(event);
    next->setFocus(Qt::TabFocusReason);
    next->click();
}

void Rail::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    p.setPen(QPen(palette.of(Role::edge), iconLine));
    p.drawLine(QPointF(stemAt(), 0), QPointF(stemAt(), height()));
    for (const auto* button : group_->buttons()) {
        const QPointF at(stemAt(), button->geometry().center().y());
        if (button->isChecked())
            paintTie(p, at, palette.of(Role::green));
        else
            paintBud(p, at, palette.of(Role::edge));
    }
}

} // namespace withy::ui
