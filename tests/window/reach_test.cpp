// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/window/page_walk.h"
#include "tests/window/window_fixture.h"
#include "ui/common/stepper.h"
#include "ui/logic/edits/shed_edits.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QButtonGroup>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QSet>
#include <QToolButton>

namespace withy::ui {

namespace {

/// Part of another control, which is what a person works with.
bool isPart(const QWidget* w) {
    const auto* parent = w->parentWidget();
    return w->objectName().startsWith(QStringLiteral("qt_")) ||
           qobject_cast<const QAbstractSpinBox*>(parent) || qobject_cast<const QComboBox*>(parent) ||
           qobject_cast<const QLineEdit*>(parent) || qobject_cast<const QHeaderView*>(w) ||
           qobject_cast<const QHeaderView*>(parent) ||
           (qobject_cast<const QAbstractItemView*>(parent) && qobject_cast<const QAbstractButton*>(w)) ||
           (qobject_cast<const Stepper*>(parent) && qobject_cast<const QAbstractButton*>(w));
}

/// Tab enters a group of choices at the chosen one; arrow keys go to the others.
bool isOneOfAGroup(const QWidget* w) {
    const auto* button = qobject_cast<const QAbstractButton*>(w);
    return button && button->group() && button->group()->exclusive() && button->group()->checkedButton() &&
           !button->isChecked();
}

bool isControl(const QWidget* w) {
    if (!w->isVisible() || isPart(w)) return false;
    return qobject_cast<const QLineEdit*>(w) || qobject_cast<const QPlainTextEdit*>(w) ||
           qobject_cast<const QAbstractSpinBox*>(w) || qobject_cast<const QComboBox*>(w) ||
           qobject_cast<const QAbstractButton*>(w) || qobject_cast<const QAbstractItemView*>(w);
}

std::string where(const QString& page, const QWidget* w) {
    QString words = page + QStringLiteral(": ") + QString::fromLatin1(w->metaObject()->className());
    if (!w->objectName().isEmpty()) words += QLatin1Char(' ') + w->objectName();
    const auto* label = qobject_cast<const QLabel*>(w);
    if (label) words += QStringLiteral(" “%1”").arg(label->text().left(60));
    const auto* button = qobject_cast<const QAbstractButton*>(w);
    if (button) words += QStringLiteral(" “%1”").arg(button->text().left(60));
    return words.toStdString();
}

/// What the keyboard reaches by pressing Tab until it comes round: each with what it stands in for.
QSet<const QWidget*> reachedByTab(Place* place) {
    QSet<const QWidget*> reached;
    place->enter();
    const QWidget* first = nullptr;
    for (int presses = 0; presses < 400; ++presses) {
        auto* at = QApplication::focusWidget();
        if (!at || at == first) break;
        if (!first) first = at;
        for (const QWidget* w = at; w && w != place; w = w->parentWidget())
            reached.insert(w);
        QTest::keyClick(at, Qt::Key_Tab);
    }
    return reached;
}

/// Words that do not fit into what shows them, and are not said to be shortened.
bool isClipped(const QWidget* w) {
    if (!w->isVisible() || w->visibleRegion().isEmpty() || isPart(w)) return false;
    if (const auto* label = qobject_cast<const QLabel*>(w); label && !label->text().isEmpty()) {
        if (label->wordWrap()) return label->heightForWidth(label->width()) > label->height() + 1;
        return label->sizeHint().width() > label->width() + 1 ||
               label->sizeHint().height() > label->height() + 2;
    }
    if (const auto* button = qobject_cast<const QAbstractButton*>(w); button && !button->text().isEmpty()) {
        const int words = button->fontMetrics().size(Qt::TextShowMnemonic, button->text()).width();
        return words > button->width();
    }
    return false;
}

} // namespace

class Reach : public WindowTest {
protected:
    void openDemo() { open(demoSeason(), Day::fromYmd(2027, 9, 6)); }
};

TEST_F(Reach, EveryControlHasANameAndTakesTheKeyboard) {
    openDemo();
    int seen = 0;
    eachPage(*window_, [&](const QString& page, QWidget* place) {
        const auto reached = reachedByTab(window_->view()->current());
        for (const auto* w : place->findChildren<QWidget*>()) {
            if (!isControl(w)) continue;
            ++seen;
            auto* face = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(w));
            ASSERT_NE(face, nullptr) << where(page, w);
            EXPECT_FALSE(face->text(QAccessible::Name).isEmpty()) << where(page, w) << " has no name";
            if (!w->isEnabled() || isOneOfAGroup(w)) continue;
            EXPECT_TRUE(w->focusPolicy() & Qt::TabFocus) << where(page, w) << " cannot be reached by Tab";
            EXPECT_TRUE(reached.contains(w)) << where(page, w) << " is not reached by pressing Tab";
        }
    });
    EXPECT_GT(seen, 200);
}

TEST_F(Reach, NothingIsClippedAtTheUsualSizeOfText) {
    openDemo();
    window_->resize(1280, 800);
    eachPage(*window_, [](const QString& page, QWidget* place) {
        for (const auto* w : place->findChildren<QWidget*>())
            EXPECT_FALSE(isClipped(w)) << where(page, w) << " is clipped";
    });
}

TEST_F(Reach, NothingIsClippedAtOneAndAHalf) {
    openDemo();
    window_->viewSettings().setTextPercent(150);
    window_->resize(1280, 800);
    eachPage(*window_, [](const QString& page, QWidget* place) {
        for (const auto* w : place->findChildren<QWidget*>())
            EXPECT_FALSE(isClipped(w)) << where(page, w) << " is clipped";
    });
    EXPECT_LE(window_->minimumSizeHint().width(), 1280);
    EXPECT_LE(window_->minimumSizeHint().height(), 800);
    window_->viewSettings().setTextPercent(100);
}

TEST_F(Reach, EveryActionHasAnIdWordsAndIsFoundByTyping) {
    openDemo();
    QSet<QString> ids;
    QSet<QString> keys;
    for (const auto* action : window_->actions().all()) {
        EXPECT_FALSE(action->objectName().isEmpty());
        EXPECT_FALSE(action->text().isEmpty()) << action->objectName().toStdString();
        EXPECT_FALSE(action->toolTip().isEmpty()) << action->objectName().toStdString();
        EXPECT_FALSE(ids.contains(action->objectName())) << action->objectName().toStdString();
        ids.insert(action->objectName());
        const auto key = action->shortcut().toString();
        if (key.isEmpty()) continue;
        EXPECT_FALSE(keys.contains(key))
            << key.toStdString() << " twice: " << action->objectName().toStdString();
        keys.insert(key);
    }
    EXPECT_GT(ids.size(), 30);
}

/// Whatever stands in a menu is chosen by a letter.
TEST_F(Reach, EveryActionOfAMenuHasItsMnemonic) {
    openDemo();
    int seen = 0;
    for (const auto* menu : window_->menuBar()->actions()) {
        if (!menu->menu()) continue;
        for (const auto* action : menu->menu()->actions()) {
            if (action->isSeparator() || action->text().isEmpty()) continue;
            ++seen;
            EXPECT_FALSE(QKeySequence::mnemonic(action->text()).isEmpty())
                << action->objectName().toStdString() << ": " << action->text().toStdString();
        }
    }
    EXPECT_GT(seen, 60);
}

/// A key with two owners works for neither.
TEST_F(Reach, NoTwoThingsInViewShareAMnemonic) {
    openDemo();
    QHash<QString, QString> menus;
    for (const auto* menu : window_->menuBar()->actions())
        menus[QKeySequence::mnemonic(menu->text()).toString()] = menu->text();
    EXPECT_GE(menus.size(), 8);
    int seen = 0;
    eachPage(*window_, [&](const QString& page, QWidget* place) {
        auto taken = menus;
        for (const auto* w : place->findChildren<QWidget*>()) {
            if (!w->isVisible()) continue;
            const auto* button = qobject_cast<const QAbstractButton*>(w);
            const auto* label = qobject_cast<const QLabel*>(w);
            const QString words = button                    ? button->text()
                                  : label && label->buddy() ? label->text()
                                                            : QString();
            const auto key = QKeySequence::mnemonic(words).toString();
            if (key.isEmpty()) continue;
            ++seen;
            EXPECT_FALSE(taken.contains(key))
                << page.toStdString() << ": " << key.toStdString() << " of “" << words.toStdString()
                << "” and “" << taken.value(key).toStdString() << "”";
            taken[key] = words;
        }
    });
    EXPECT_GT(seen, 20);
}

/// A grower's own "&" is shown as typed: no button takes Alt and a blank for it, and none swallows it.
TEST_F(Reach, WordsOfTheGrowerMakeNoMnemonic) {
    auto season = demoSeason();
    const auto renamed = [](auto& table, auto name) {
        auto rows = std::vector(table.begin(), table.end());
        for (auto& row : rows) {
            (row.*name) += " & more";
            table.put(row);
        }
    };
    renamed(season.bookings, &model::Booking::title);
    renamed(season.designs, &model::Design::name);
    renamed(season.containers, &model::Container::name);
    renamed(season.plants, &model::Plant::name);
    renamed(season.venueTables, &model::VenueTable::label);
    renamed(season.ribbons, &model::Ribbon::name);
    open(season, Day::fromYmd(2027, 9, 6));
    int shown = 0;
    eachPage(*window_, [&](const QString& page, QWidget* place) {
        for (const auto* w : place->findChildren<QWidget*>()) {
            const auto* button = qobject_cast<const QAbstractButton*>(w);
            const auto* label = qobject_cast<const QLabel*>(w);
            if (!w->isVisible() || (!button && !(label && label->buddy()))) continue;
            const QString words = button ? button->text() : label->text();
            EXPECT_FALSE(
                QString(words).replace(QStringLiteral("&&"), QString()).contains(QStringLiteral("& ")))
                << where(page, w);
            shown += words.contains(QStringLiteral("&&")) ? 1 : 0;
        }
    });
    EXPECT_GT(shown, 5);
    auto& bench = window_->bench();
    EXPECT_TRUE(bench
                    .apply(edits::noteReturn(bench.season(), Id<model::Booking>(1), Id<model::Container>(1),
                                             {24, 20, 1}))
                    .isEmpty());
    QApplication::processEvents();
    const QString undo = window_->actions().find(QStringLiteral("edit.undo"))->text();
    EXPECT_TRUE(undo.contains(QStringLiteral("&& more"))) << undo.toStdString();
    bool told = false;
    for (const auto* button : window_->findChildren<QToolButton*>())
        told = told || (button->toolTip().startsWith(QStringLiteral("Undo")) &&
                        button->toolTip().contains(QStringLiteral(" & more")));
    EXPECT_TRUE(told) << "the rail's button says what it undoes, as it was typed";
}

} // namespace withy::ui
