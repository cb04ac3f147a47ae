// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

class QMenu;
class QStackedWidget;

namespace withy::ui {

class BookingList;
class BookingPage;
class CuttingDay;

/// The bookings: the list at the left, the chosen one at the right.
class BookingsPlace : public Place {
    Q_OBJECT

public:
    explicit BookingsPlace(Workbench& bench, QWidget* parent = nullptr);

    void addActions(Actions& actions) override;
    bool goTo(const model::Ref& ref) override;

    [[nodiscard]] QString helpPage() const override { return QStringLiteral("bookings"); }

    void enter() override;
    [[nodiscard]] std::optional<model::Ref> shown() const override;
    bool makeNext() override;
    void addTo(SeasonLook& look) const override;
    void lookAsLast(const SeasonLook& look) override;

    [[nodiscard]] std::optional<Id<model::Booking>> chosen() const { return chosen_; }

    void choose(Id<model::Booking> id);

    [[nodiscard]] BookingPage& page() const { return *page_; }

    [[nodiscard]] BookingList& list() const { return *list_; }

    /// Made when first wanted.
    CuttingDay& cuttingDayPage();
    [[nodiscard]] bool atTheCuttingDay() const;

    [[nodiscard]] bool wantsHeight() const override { return atTheCuttingDay(); }

    // Commands.
    void newBooking();
    void duplicate();
    void erase();
    void find();
    void step(int by);
    void hold();
    /// The tally of the chosen booking, over the list and the booking.
    void openCuttingDay();
    void leaveCuttingDay();

Q_SIGNALS:
    /// "Open the demo season" was pressed.
    void demoAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void comeForward();
    void openDemo();
    void show(std::optional<Id<model::Booking>> id);
    void afterChange();
    void arrange();
    void showCuttingList();
    void addTabActions(Actions& actions);
    [[nodiscard]] std::optional<Id<model::Booking>> first() const;
    [[nodiscard]] std::optional<Id<model::Booking>> bookingOf(const model::Ref& ref) const;
    bool take(const model::Edit& edit);

    std::optional<Id<model::Booking>> chosen_;
    QStackedWidget* pages_;
    QWidget* both_; ///< the list and the booking
    BookingList* list_;
    QWidget* line_;
    BookingPage* page_;
    QMenu* more_;
    CuttingDay* cutting_ = nullptr; ///< made when first wanted
    Actions* actions_ = nullptr;    ///< of the window
    bool finding_ = false; ///< in a narrow window the list has the whole room while one looks for something
};

} // namespace withy::ui
