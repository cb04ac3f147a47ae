// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

class QMenu;

namespace withy::ui {

class BookingList;
class BookingPage;

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

    [[nodiscard]] std::optional<Id<model::Booking>> chosen() const { return chosen_; }

    void choose(Id<model::Booking> id);

    [[nodiscard]] BookingPage& page() const { return *page_; }

    [[nodiscard]] BookingList& list() const { return *list_; }

    // Commands.
    void newBooking();
    void duplicate();
    void erase();
    void find();
    void step(int by);
    void hold();

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
    void addTabActions(Actions& actions);
    [[nodiscard]] std::optional<Id<model::Booking>> first() const;
    [[nodiscard]] std::optional<Id<model::Booking>> bookingOf(const model::Ref& ref) const;
    bool take(const model::Edit& edit);

    std::optional<Id<model::Booking>> chosen_;
    BookingList* list_;
    QWidget* line_;
    BookingPage* page_;
    QMenu* more_;
    Actions* actions_ = nullptr; ///< of the window
    bool finding_ = false; ///< in a narrow window the list has the whole room while one looks for something
};

} // namespace withy::ui
