// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style/mnemonics.h"

#include <QApplication>
#include <QKeyEvent>
#include <QWidget>

#include <utility>

namespace withy::ui {

namespace {

bool& shown() {
    static bool they = false;
    return they;
}

bool isAlt(const QEvent& event) {
    return static_cast<const QKeyEvent&>(event).key() == Qt::Key_Alt;
}

} // namespace

bool Mnemonics::areShown() {
    return shown();
}

int Mnemonics::textFlag() {
    return shown() ? Qt::TextShowMnemonic : Qt::TextHideMnemonic;
}

void Mnemonics::watch() {
    static bool watched = false;
    if (std::exchange(watched, true)) return;
    auto* program = QCoreApplication::instance();
    program->installEventFilter(new Mnemonics(program));
}

void Mnemonics::show(bool they) {
    if (shown() == they) return;
    shown() = they;
    for (auto* widget : QApplication::allWidgets())
        if (widget->isVisible()) widget->update();
}

bool Mnemonics::eventFilter(QObject*, QEvent* event) {
    switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::ShortcutOverride:
        if (isAlt(*event)) show(true);
        break;
    case QEvent::KeyRelease:
        // A menu that was opened with Alt keeps its letters until it is gone.
        if (isAlt(*event) && !QApplication::activePopupWidget()) show(false);
        break;
    case QEvent::Close:
    case QEvent::Hide:
        if (shown() && !QApplication::activePopupWidget() &&
            !QGuiApplication::queryKeyboardModifiers().testFlag(Qt::AltModifier))
            show(false);
        break;
    case QEvent::ApplicationDeactivate: // Alt went to another program
        show(false);
        break;
    default:
        break;
    }
    return false;
}

} // namespace withy::ui
