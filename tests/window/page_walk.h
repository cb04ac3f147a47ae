// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/segments.h"
#include "ui/print/paper_setter.h"
#include "ui/shell/actions.h"
#include "ui/shell/main_window.h"
#include "ui/shell/season_view.h"

#include <QApplication>
#include <QPointer>
#include <QPushButton>
#include <QTest>

#include <functional>

namespace withy::ui {

inline bool papersAreSet() {
    for (const auto* top : QApplication::topLevelWidgets())
        for (const auto* setter : top->findChildren<PaperSetter*>())
            if (setter->isBusy()) return false;
    return true;
}

/// Lets papers arrive and layouts come to rest: a scroll bar that appears narrows the words, which then need
/// more lines.
inline void settle() {
    QTest::qWait(0);
    [[maybe_unused]] const bool set = QTest::qWaitFor(papersAreSet, 20000);
    for (int pass = 0; pass < 4; ++pass)
        QTest::qWait(0);
}

/// Choices of page within a page, which say so of themselves.
inline void eachInner(const QString& page, Place* place, const QList<QPointer<Segments>>& outer,
                      const std::function<void(const QString&, QWidget*)>& visit) {
    for (auto* inner : place->findChildren<Segments*>()) {
        if (!inner->isVisible() || !inner->property("pages").toBool() || outer.contains(inner)) continue;
        const auto buttons = inner->findChildren<QPushButton*>();
        const int before = inner->current();
        for (int i = 0; i < buttons.size(); ++i) {
            if (i == before) continue;
            buttons[i]->click();
            settle();
            visit(page + QStringLiteral(" / ") + QString(buttons[i]->text()).remove(QLatin1Char('&')), place);
        }
        buttons[before]->click();
        settle();
    }
}

/// Goes through every place and every choice of page within it, as a person pressing each in turn.
/// `visit` gets the page's name ("Bookings / Stems") and its widget.
inline void eachPage(MainWindow& window, const std::function<void(const QString&, QWidget*)>& visit) {
    auto& view = *window.view();
    for (int i = 0; i < view.placeCount(); ++i) {
        view.showPlace(i);
        settle();
        Place* place = view.current();
        const QString name = place->helpPage();
        visit(name, place);
        if (name == QStringLiteral("bookings")) {
            window.actions().find(QStringLiteral("booking.cutting"))->trigger();
            settle();
            visit(name + QStringLiteral(" / Cutting day"), place);
            if (auto* back = place->findChild<QPushButton*>(QStringLiteral("cutting.back"))) back->click();
            settle();
        }
        QList<QPointer<Segments>> choices;
        for (auto* s : place->findChildren<Segments*>())
            choices << s;
        for (const auto& choice : choices) {
            if (!choice || !choice->isVisible()) continue;
            const int before = choice->current();
            for (auto* button : choice->findChildren<QPushButton*>()) {
                button->click();
                settle();
                const QString page =
                    name + QStringLiteral(" / ") + QString(button->text()).remove(QLatin1Char('&'));
                visit(page, place);
                eachInner(page, place, choices, visit);
            }
            if (choice && before >= 0 && before < choice->count()) {
                const auto buttons = choice->findChildren<QPushButton*>();
                buttons[before]->click();
                QApplication::processEvents();
            }
        }
    }
}

} // namespace withy::ui
