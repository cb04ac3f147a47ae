// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/window_fixture.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QTabWidget>
#include <QTableWidget>

namespace withy::ui {

namespace {

/// A control a person works with, not a part that another control is made of.
bool isControl(const QWidget* w) {
    if (!w->isVisible() || w->objectName().startsWith(QStringLiteral("qt_"))) return false;
    if (qobject_cast<const QAbstractSpinBox*>(w->parentWidget()) ||
        qobject_cast<const QComboBox*>(w->parentWidget()))
        return false;
    if (qobject_cast<const QAbstractItemView*>(w->parentWidget()) && qobject_cast<const QAbstractButton*>(w))
        return false;
    return qobject_cast<const QLineEdit*>(w) || qobject_cast<const QAbstractSpinBox*>(w) ||
           qobject_cast<const QComboBox*>(w) || qobject_cast<const QAbstractButton*>(w) ||
           qobject_cast<const QListWidget*>(w) || qobject_cast<const QTableWidget*>(w);
}

} // namespace

class Reach : public WindowTest {};

TEST_F(Reach, EveryControlHasANameAndTakesFocus) {
    open(demoSeason(), Day::fromYmd(2027, 6, 1));
    auto* places = window_->findChild<QTabWidget*>();
    int seen = 0;
    for (int page = 0; page < places->count(); ++page) {
        places->setCurrentIndex(page);
        QApplication::processEvents();
        for (const auto* w : places->currentWidget()->findChildren<QWidget*>()) {
            if (!isControl(w)) continue;
            ++seen;
            auto* face = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(w));
            const auto where =
                std::string(w->metaObject()->className()) + " " + w->objectName().toStdString();
            ASSERT_NE(face, nullptr) << where;
            EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << where;
            EXPECT_NE(w->focusPolicy(), Qt::NoFocus) << where;
        }
    }
    EXPECT_GT(seen, 15);
}

} // namespace withy::ui
