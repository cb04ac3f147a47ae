// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/day_control.h"

#include "ui/common/style.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/fields/day_reading.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/workbench.h"
#include "ui/paint/spacing.h"

#include <QAction>
#include <QCalendarWidget>
#include <QCoreApplication>
#include <QFrame>
#include <QPainter>
#include <QPixmap>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

/// A leaf of a calendar: an outline, a solid head, two hooks.
QIcon calendarIcon() {
    const int side = 64; // larger than it is ever shown: an icon is only made smaller
    QPixmap pixmap(side, side);
    pixmap.fill(Qt::transparent);
    QPainter p(&pixmap);
    p.setRenderHint(QPainter::Antialiasing);
    p.scale(side / 16.0, side / 16.0);
    const QColor ink = currentPalette().of(Role::ink3);
    p.setPen(QPen(ink, 1.2));
    p.drawRoundedRect(QRectF(2, 3.5, 12, 10.5), 1.5, 1.5);
    p.drawLine(QPointF(5.5, 1.5), QPointF(5.5, 4));
    p.drawLine(QPointF(10.5, 1.5), QPointF(10.5, 4));
    p.fillRect(QRectF(2, 4, 12, 2.5), ink);
    return QIcon(pixmap);
}

QDate dateOf(Day day) {
    return QDate(day.year(), day.month(), day.dayOfMonth());
}

} // namespace

DayControl::DayControl(Workbench& bench, const model::FieldInfo& field, QWidget* parent)
    : LineControl(parent)
    , bench_(bench)
    , field_(field)
    , button_(line_->addAction(QIcon(), QLineEdit::TrailingPosition)) {
    dressAgain(line_, [this] { button_->setIcon(calendarIcon()); });
    button_->setText(QCoreApplication::translate("FieldControl", "Calendar (Alt+Down)"));
    QObject::connect(button_, &QAction::triggered, line_, [this] { openPopup(); });
}

bool DayControl::isPopupOpen() const {
    return popup_ && popup_->isVisible();
}

void DayControl::openPopup() {
    if (line_->isReadOnly()) return;
    if (!popup_) {
        popup_ = new QFrame(line_, Qt::Popup);
        popup_->setFrameShape(QFrame::StyledPanel);
        auto* box = new QVBoxLayout(popup_);
        box->setContentsMargins(0, 0, 0, 0);
        calendar_ = new QCalendarWidget(popup_);
        calendar_->setFirstDayOfWeek(Qt::Monday);
        calendar_->setVerticalHeaderFormat(QCalendarWidget::ISOWeekNumbers);
        calendar_->setAccessibleName(button_->text());
        box->addWidget(calendar_);
        QObject::connect(calendar_, &QCalendarWidget::activated, line_,
                         [this](QDate d) { choose(d.year(), d.month(), d.day()); });
        QObject::connect(calendar_, &QCalendarWidget::clicked, line_,
                         [this](QDate d) { choose(d.year(), d.month(), d.day()); });
    }
    const auto& s = bench_.season().theSettings();
    const auto typed = readDay(splitDayAndClock(line_->text()).day, {s.firstDay, s.lastDay});
    calendar_->setSelectedDate(dateOf(typed.day.value_or(bench_.today().value_or(s.firstDay))));
    popup_->move(line_->mapToGlobal(QPoint(0, line_->height())));
    popup_->show();
    calendar_->setFocus();
}

void DayControl::choose(int year, int month, int dayOfMonth) {
    popup_->hide();
    const auto day = Day::fromYmd(year, month, dayOfMonth);
    if (!day) return;
    QString words = shortDay(*day) + QLatin1Char(' ') + QString::number(year);
    if (field_.kind == model::FieldKind::localTime) {
        const auto minute = splitDayAndClock(line_->text()).minute;
        if (minute) words += QStringLiteral(", ") + clock(LocalTime{*day, *minute % 1440});
    }
    line_->setText(words);
    line_->setFocus();
    if (picked) picked();
}

} // namespace withy::ui
