// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/window/window_fixture.h"
#include "ui/common/record_table.h"
#include "ui/common/style.h"
#include "ui/common/sub_pages.h"
#include "ui/common/text_label.h"
#include "ui/paint/type.h"
#include "ui/shell/actions.h"
#include "ui/shell/place.h"

#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QMainWindow>
#include <QTableView>
#include <QVBoxLayout>

namespace withy::ui {

/// One place alone in a bare window, on a fresh file.
class PlaceTest : public WindowTest {
protected:
    ~PlaceTest() override {
        place_.reset();
        actions_.reset(); // the window would take them along
        bare_.reset();
    }

    template <class P>
    void openPlace(const model::Season& season, std::optional<Day> today = Day::fromYmd(2027, 9, 6)) {
        place_.reset();
        actions_.reset();
        bare_.reset();
        bench_.reset();
        bench_ = std::make_unique<Workbench>(
            store::SeasonFile::create(folder_.filePath(QStringLiteral("%1.withy").arg(++files_)), season),
            today);
        bench_->waitForPlan();
        bare_ = std::make_unique<QWidget>();
        actions_ = std::make_unique<Actions>(bare_.get());
        place_.reset(new P(*bench_, bare_.get()));
        auto* column = new QVBoxLayout(bare_.get());
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(place_.get());
        place_->addActions(*actions_);
        while (place_->makeNext()) {
        }
        QObject::connect(place_.get(), &Place::refused, bare_.get(), [this](const QString& s) {
            if (!s.isEmpty()) refused_ = s;
        });
        QObject::connect(place_.get(), &Place::said, bare_.get(), [this](const QString& s) { said_ = s; });
        QObject::connect(place_.get(), &Place::leadTo, bare_.get(),
                         [this](const model::Ref& r) { led_ = r; });
        bare_->resize(1188, 640); // what the rail and the strip leave of 1280 x 800
        bare_->show();
        QApplication::setActiveWindow(bare_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(bare_.get()));
        place_->enter();
        QApplication::processEvents();
    }

    /// The lines of what is copied when the second row and the one below are chosen with the keys.
    static QStringList copiedFrom(QTableView& view) {
        view.setFocus();
        view.setCurrentIndex(view.model()->index(1, 1));
        QTest::keyClick(&view, Qt::Key_Down, Qt::ShiftModifier);
        QTest::keySequence(&view, QKeySequence::Copy);
        return QGuiApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    }

    template <class W>
    W* in(const char* name) {
        auto* found = bare_->findChild<W*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }

    void show(const char* action) {
        auto* a = actions_->find(QString::fromLatin1(action));
        ASSERT_NE(a, nullptr) << action;
        a->trigger();
        QApplication::processEvents();
    }

    /// Types into a cell as a person does: go there, type, Enter.
    void typeInto(RecordTable* table, int row, const char* field, const QString& words) {
        auto& records = table->records();
        table->setFocus();
        table->setCurrentIndex(records.index(row, records.columnOf(field)));
        QTest::keyClick(table, Qt::Key_F2);
        auto* editor = table->viewport()->findChild<QLineEdit*>();
        if (!editor) editor = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        ASSERT_NE(editor, nullptr) << field;
        editor->selectAll();
        editor->insert(words);
        QTest::keyClick(editor, Qt::Key_Return);
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    void press(const char* name) {
        auto* button = in<QWidget>(name);
        ASSERT_NE(button, nullptr);
        ASSERT_TRUE(button->isVisible()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
        QApplication::processEvents();
    }

    QString answer() {
        for (auto* label : bare_->findChildren<AnswerLabel*>()) {
            if (label->isVisible()) return label->plainWords();
        }
        return {};
    }

    const model::Season& held() { return bench_->season(); }

    int files_ = 0;
    QString refused_;
    QString said_;
    std::optional<model::Ref> led_;
    std::unique_ptr<Workbench> bench_;
    std::unique_ptr<QWidget> bare_;
    std::unique_ptr<Actions> actions_;
    std::unique_ptr<Place> place_;
};

} // namespace withy::ui
