// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/style.h"

#include "ui/common/style/mnemonics.h"
#include "ui/common/style/withy_style.h"
#include "ui/paint/type.h"

#include <QApplication>
#include <QPalette>

namespace withy::ui {

namespace {

Palette& current() {
    static Palette palette;
    return palette;
}

QPalette qtPalette(const Palette& p) {
    QPalette q;
    q.setColor(QPalette::Window, p.of(Role::paper));
    q.setColor(QPalette::Base, p.of(Role::sheet));
    q.setColor(QPalette::AlternateBase, p.of(Role::mist));
    q.setColor(QPalette::Button, p.of(Role::sheet));
    q.setColor(QPalette::ToolTipBase, p.of(Role::mist));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText,
                            QPalette::BrightText})
        q.setColor(role, p.of(Role::ink));
    q.setColor(QPalette::PlaceholderText, p.of(Role::ink3));
    q.setColor(QPalette::Highlight, p.of(Role::wash));
    q.setColor(QPalette::HighlightedText, p.of(Role::ink));
    q.setColor(QPalette::Link, p.of(Role::green));
    q.setColor(QPalette::LinkVisited, p.of(Role::green));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        q.setColor(QPalette::Disabled, role, p.of(Role::ink3));
    q.setColor(QPalette::Light, p.of(Role::sheet));
    q.setColor(QPalette::Midlight, p.of(Role::line));
    q.setColor(QPalette::Mid, p.of(Role::edge));
    q.setColor(QPalette::Dark, p.of(Role::edge));
    q.setColor(QPalette::Shadow, p.of(Role::edge));
    return q;
}

} // namespace

const Palette& currentPalette() {
    return current();
}

Theme systemTheme() {
    // Asked once, before our own palette is set: Qt 6.4 tells a dark desktop by its colours only.
    static const Theme theme = QPalette(QApplication::palette()).color(QPalette::Window).lightness() < 128
                                   ? Theme::dark
                                   : Theme::light;
    return theme;
}

void applyStyle(Theme theme, double points) {
    static_cast<void>(systemTheme());
    setTextPoints(points);
    current().theme = theme;
    QApplication::setPalette(qtPalette(current()));
    QApplication::setFont(typeFont(TypeRole::text));
    // A desktop may give these a font of their own, which would not follow our size of text.
    for (const char* part : {"QMenuBar", "QMenu", "QTipLabel", "QMessageBox", "QHeaderView", "QComboMenuItem",
                             "QComboLineEdit", "QLabel", "QPushButton", "QToolButton", "QCheckBox",
                             "QRadioButton", "QAbstractItemView", "QListView"})
        QApplication::setFont(typeFont(TypeRole::text), part);
    Mnemonics::watch();
    QApplication::setStyle(new WithyStyle); // each part takes its colours and sizes anew
}

} // namespace withy::ui
