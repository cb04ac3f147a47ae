// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/held_frames.h"

#include "ui/logic/workbench.h"

#include <QEvent>
#include <QGuiApplication>

#include <algorithm>
#include <utility>

namespace withy::ui {

HeldFrames::HeldFrames(QObject* parent) : QObject(parent) {
    constexpr int aQuarterSecond = 250;
    slow_.setSingleShot(true);
    slow_.setInterval(aQuarterSecond);
    connect(&slow_, &QTimer::timeout, this, [this] {
        saidBusy_ = true;
        QGuiApplication::setOverrideCursor(Qt::BusyCursor);
    });
}

HeldFrames::~HeldFrames() {
    letGo();
}

void HeldFrames::watch(Workbench& bench) {
    connect(&bench, &Workbench::changed, this, [this, &bench] {
        if (bench.isWriting()) hold();
    });
    connect(&bench, &Workbench::written, this, &HeldFrames::letGo);
    connect(&bench, &QObject::destroyed, this, &HeldFrames::letGo);
}

void HeldFrames::hold() {
    if (std::exchange(holding_, true)) return;
    slow_.start();
    QCoreApplication::instance()->installEventFilter(this);
}

void HeldFrames::letGo() {
    if (!std::exchange(holding_, false)) return;
    slow_.stop();
    if (std::exchange(saidBusy_, false)) QGuiApplication::restoreOverrideCursor();
    QCoreApplication::instance()->removeEventFilter(this);
    for (const auto& window : std::exchange(waiting_, {}))
        if (window) QCoreApplication::postEvent(window, new QEvent(QEvent::UpdateRequest));
}

bool HeldFrames::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::UpdateRequest) return false;
    if (std::find(waiting_.begin(), waiting_.end(), watched) == waiting_.end())
        waiting_.emplace_back(watched);
    return true;
}

} // namespace withy::ui
