// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/window/window_fixture.h"
#include "ui/bookings/booking_list.h"
#include "ui/bookings/booking_page.h"
#include "ui/bookings/bookings_place.h"
#include "ui/common/style.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/models/booking_list_model.h"
#include "ui/paint/type.h"
#include "ui/shell/actions.h"

#include <QAction>
#include <QVBoxLayout>

namespace withy::ui {

/// The place by itself in a bare window, with its commands.
class BookingsTest : public WindowTest {
protected:
    void openPlace(const model::Season& season, std::optional<Day> today = Day::parse("2027-09-06"),
                   QSize size = {1188, 760}) {
        bench_ = std::make_unique<Workbench>(
            store::SeasonFile::create(folder_.filePath(QStringLiteral("b.withy")), season), today);
        bench_->waitForPlan();
        host_ = std::make_unique<QWidget>();
        actions_ = std::make_unique<Actions>(host_.get());
        auto* rows = new QVBoxLayout(host_.get());
        rows->setContentsMargins(0, 0, 0, 0);
        place_ = new BookingsPlace(*bench_);
        rows->addWidget(place_);
        place_->addActions(*actions_);
        while (place_->makeNext()) {
        }
        QObject::connect(place_, &Place::refused, host_.get(), [this](const QString& s) { refused_ = s; });
        QObject::connect(place_, &Place::said, host_.get(), [this](const QString& s) { said_ = s; });
        host_->resize(size);
        host_->show();
        QApplication::setActiveWindow(host_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(host_.get()));
        settle();
    }

    void TearDown() override {
        actions_.reset(); // the host would take it along
        host_.reset();    // the place looks at the workbench
        bench_.reset();
    }

    void settle() {
        bench_->waitForPlan();
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    template <class W = QWidget>
    W* part(const QString& name) {
        auto* found = host_->findChild<W*>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        auto* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : host_.get(), key, modifiers);
        settle();
        ++presses_;
    }

    void typeWords(const char* words) {
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(words));
        ++presses_; // typing counts as one, however long
    }

    void clickOn(QWidget* widget) {
        ASSERT_NE(widget, nullptr);
        QTest::mouseClick(widget, Qt::LeftButton);
        settle();
        ++presses_;
    }

    void trigger(const char* id) {
        auto* action = actions_->find(QString::fromUtf8(id));
        ASSERT_NE(action, nullptr) << id;
        action->trigger();
        settle();
    }

    [[nodiscard]] const model::Season& now() const { return bench_->season(); }

    [[nodiscard]] const model::Booking& shown() const { return *now().bookings.find(*place_->chosen()); }

    std::unique_ptr<Workbench> bench_;
    std::unique_ptr<QWidget> host_;
    std::unique_ptr<Actions> actions_;
    BookingsPlace* place_ = nullptr;
    QString refused_;
    QString said_;
    int presses_ = 0;
};

} // namespace withy::ui
