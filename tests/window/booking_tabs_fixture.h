// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/window/window_fixture.h"
#include "ui/bookings/booking_tab.h"
#include "ui/common/style.h"

#include <QVBoxLayout>

namespace withy::ui {

/// One tab of a booking's page by itself, on the demo season as it stands on 6 September 2027.
class TabTest : public WindowTest {
protected:
    static constexpr Id<model::Booking> supper{1};

    void openBench(const model::Season& season) {
        auto file =
            store::SeasonFile::create(folder_.filePath(QStringLiteral("tabs%1.withy").arg(++files_)), season);
        bench_ = std::make_unique<Workbench>(std::move(file), Day::fromYmd(2027, 9, 6));
        bench_->waitForPlan();
    }

    template <class T>
    T& showTab(QSize size = {900, 640}, Theme theme = Theme::light, double points = 10.5) {
        applyStyle(theme, points);
        holder_ = std::make_unique<QWidget>();
        auto* all = new QVBoxLayout(holder_.get());
        all->setContentsMargins(0, 0, 0, 0);
        auto* tab = new T(*bench_);
        all->addWidget(tab);
        QObject::connect(tab, &BookingTab::leadTo, holder_.get(), [this](const model::Ref& r) { led_ = r; });
        QObject::connect(tab, &BookingTab::refused, holder_.get(),
                         [this](const QString& s) { refused_ = s; });
        QObject::connect(tab, &BookingTab::said, holder_.get(), [this](const QString& s) { said_ = s; });
        holder_->resize(size);
        holder_->show();
        QApplication::setActiveWindow(holder_.get());
        EXPECT_TRUE(QTest::qWaitForWindowActive(holder_.get()));
        static_cast<BookingTab*>(tab)->show(supper);
        settle();
        return *tab;
    }

    void settle() {
        bench_->waitForPlan();
        for (int i = 0; i < 3; ++i)
            QApplication::processEvents();
    }

    template <class W>
    W* part(const QString& name) {
        auto* found = holder_->findChild<W*>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }

    /// The picture for a person to judge, when a folder for it is named.
    void picture(const char* name) {
        const QString folder = qEnvironmentVariable("WITHY_PICTURES");
        settle(); // labels that have just been filled take their room
        if (!folder.isEmpty()) holder_->grab().save(folder + QLatin1Char('/') + QString::fromUtf8(name));
    }

    int files_ = 0;
    std::unique_ptr<Workbench> bench_;
    std::unique_ptr<QWidget> holder_;
    std::optional<model::Ref> led_;
    QString refused_;
    QString said_;
};

} // namespace withy::ui
