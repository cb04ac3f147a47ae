// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/strip/bloom_strip.h"

#include "ui/paint/spacing.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

/// The strip under mouse and keyboard.
namespace withy::ui {

namespace {

constexpr double keyZoom = 1.5;
constexpr double wheelZoom = 1.25; ///< for one notch
constexpr double notch = 120;      ///< of a wheel, in Qt's eighths of a degree
constexpr double panShare = 0.1;   ///< of what is in view, for one notch

} // namespace

BloomStrip::Reading BloomStrip::readingAt(QPointF at) const {
    if (const auto mark = geometry_.markAt(at)) {
        const auto& pins = geometry_.marks[*mark].pins;
        return {figures_.pins[pins.front()].day, {}, pins};
    }
    if (!geometry_.isInView(at.x()) || figures_.days == 0) return {};
    const int day = static_cast<int>(std::floor(geometry_.dayOf(at.x())));
    return {std::clamp(day, 0, figures_.days - 1), bandAt(figures_, geometry_, at), {}};
}

void BloomStrip::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (pressed_ && (event->buttons() & Qt::LeftButton)) {
        const double by = at.x() - pressed_->x();
        dragging_ = dragging_ || std::abs(by) >= QApplication::startDragDistance();
        if (dragging_) return setSpan(panned(spanPressed_, figures_.days, -by / geometry_.dayWidth));
    }
    const Reading reading = readingAt(at);
    if (reading.band || !reading.pins.empty())
        setCursor(Qt::PointingHandCursor);
    else
        unsetCursor();
    read(reading);
}

void BloomStrip::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return event->ignore();
    pressed_ = event->position();
    spanPressed_ = span_;
    dragging_ = false;
}

void BloomStrip::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !pressed_) return event->ignore();
    pressed_.reset();
    if (!std::exchange(dragging_, false)) lead(readingAt(event->position()));
}

void BloomStrip::leaveEvent(QEvent*) {
    read({});
}

void BloomStrip::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    if (event->modifiers() & Qt::ControlModifier) {
        zoom(std::pow(wheelZoom, turned.y() / notch), geometry_.dayOf(event->position().x()));
        return event->accept();
    }
    const int along =
        turned.x() != 0 ? turned.x() : (event->modifiers() & Qt::ShiftModifier ? turned.y() : 0);
    if (along == 0) return event->ignore();
    setSpan(panned(span_, figures_.days, -along / notch * panShare * span_.days));
    event->accept();
}

int BloomStrip::startDay() const {
    const double middle = span_.from + span_.days / 2;
    return reading_.day.value_or(figures_.today.value_or(static_cast<int>(middle)));
}

void BloomStrip::stepDay(int by) {
    const int day = std::clamp(startDay() + (reading_.day ? by : 0), 0, figures_.days - 1);
    setSpan(showing(span_, figures_.days, day));
    read({day, reading_.band, {}});
}

/// From band to band among those in flower on the day; above the last and below the first: the day itself.
void BloomStrip::stepBand(int by) {
    const int day = startDay();
    std::vector<std::size_t> there;
    for (std::size_t i = 0; i < figures_.bands.size(); ++i)
        if (figures_.bands[i].days[static_cast<std::size_t>(day)].likely > 0) there.push_back(i);
    const auto n = static_cast<int>(there.size());
    const auto now = reading_.band
                         ? std::lower_bound(there.begin(), there.end(), *reading_.band) - there.begin()
                         : (by > 0 ? -1 : n);
    const auto next = now + by;
    Reading reading{day, {}, {}};
    if (next >= 0 && next < n) reading.band = there[static_cast<std::size_t>(next)];
    setSpan(showing(span_, figures_.days, day));
    read(reading);
}

void BloomStrip::stepPin(int by) {
    const auto n = static_cast<int>(figures_.pins.size());
    if (n == 0) return;
    int next = 0;
    if (!reading_.pins.empty()) {
        next = static_cast<int>(by > 0 ? reading_.pins.back() : reading_.pins.front()) + by;
    } else {
        const int day = startDay();
        while (next < n && figures_.pins[static_cast<std::size_t>(next)].day < day)
            ++next;
        if (by < 0) --next;
    }
    next = std::clamp(next, 0, n - 1);
    const int day = figures_.pins[static_cast<std::size_t>(next)].day;
    setSpan(showing(span_, figures_.days, day));
    read({day, {}, {static_cast<std::size_t>(next)}});
}

void BloomStrip::zoom(double factor, std::optional<double> about) {
    const double middle = span_.from + span_.days / 2;
    const double day = reading_.day ? *reading_.day + 0.5 : middle;
    setSpan(zoomed(span_, figures_.days, about.value_or(day), factor));
}

void BloomStrip::showAll() {
    setSpan({0, static_cast<double>(figures_.days)});
}

void BloomStrip::lead(const Reading& reading) {
    if (!reading.pins.empty()) {
        const int first = figures_.pins[reading.pins.front()].day;
        const int last = figures_.pins[reading.pins.back()].day;
        const bool parted = first == last || span_.days <= fewestDaysShown;
        // Several bookings under one jar: nearer first, so that they part.
        if (reading.pins.size() > 1 && !parted)
            return setSpan(within({first - 3.0, last - first + 7.0}, figures_.days));
        const auto id = figures_.pins[reading.pins.front()].booking;
        Q_EMIT leadTo({model::TableKind::bookings, id.value});
    } else if (reading.band) {
        Q_EMIT leadTo({model::TableKind::plants, figures_.bands[*reading.band].plant.value});
    }
}

bool BloomStrip::takeKey(int key, Qt::KeyboardModifiers modifiers) {
    const int days = modifiers & Qt::ControlModifier ? 7 : 1;
    switch (key) {
    case Qt::Key_Left:
        stepDay(-days);
        return true;
    case Qt::Key_Right:
        stepDay(days);
        return true;
    case Qt::Key_Up:
        stepBand(1);
        return true;
    case Qt::Key_Down:
        stepBand(-1);
        return true;
    case Qt::Key_PageUp:
        stepPin(-1);
        return true;
    case Qt::Key_PageDown:
        stepPin(1);
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(keyZoom, std::nullopt);
        return true;
    case Qt::Key_Minus:
        zoom(1 / keyZoom, std::nullopt);
        return true;
    case Qt::Key_Home:
        showAll();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        lead(reading_);
        return true;
    case Qt::Key_Escape:
        if (reading_ == Reading{}) return false;
        read({});
        return true;
    default:
        return false;
    }
}

void BloomStrip::keyPressEvent(QKeyEvent* event) {
    ringed_ = true;
    update();
    const auto plain = event->modifiers() & ~(Qt::ControlModifier | Qt::ShiftModifier | Qt::KeypadModifier);
    if (plain || figures_.days == 0 || !takeKey(event->key(), event->modifiers()))
        QWidget::keyPressEvent(event);
}

void BloomStrip::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    ringed_ = event->reason() != Qt::MouseFocusReason && event->reason() != Qt::ActiveWindowFocusReason;
    update();
}

void BloomStrip::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    read({});
    update();
}

} // namespace withy::ui
