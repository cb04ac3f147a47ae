// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bookings/booking_tab.h"

#ifndef Q_MOC_RUN
#include "ui/bookings/tabs.h"
#endif

class QMenu;
class QPushButton;
class QStackedWidget;

namespace withy::ui {

class MovedLine;
class Segments;
class TextLabel;
class TitleEdit;

/// The chosen booking: its name, when and where, and its tabs.
class BookingPage : public QWidget {
    Q_OBJECT

public:
    explicit BookingPage(Workbench& bench, QWidget* parent = nullptr);

    void show(std::optional<Id<model::Booking>> id);
    using QWidget::show;

    [[nodiscard]] int tabCount() const { return static_cast<int>(tabs_.size()); }

    [[nodiscard]] int currentTab() const;
    void showTab(int index);
    void showTab(const QString& id);
    /// The tab it shows first, once there are tabs; an id that none of them has changes nothing.
    void beginAt(const QString& id);
    [[nodiscard]] QString currentTabId() const;
    /// By one, round the end.
    void stepTab(int by);

    [[nodiscard]] const std::vector<TabEntry>& tabs() const { return tabs_; }

    void editTitle();
    /// What the "More" button offers, and what stands in the page while nothing is booked.
    void setMenu(QMenu* more);
    void enter();
    /// Makes one tab that nobody has looked at yet; false when all are made.
    bool makeNextTab();
    void addTabActions(Actions& actions);

Q_SIGNALS:
    void refused(const QString& sentence);
    void said(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);
    void newAsked();
    /// One of the commands of a tab was given: please show the page.
    void wanted();
    void demoAsked();

private:
    void begin();
    void make();
    QWidget* makeHead();
    QWidget* makeEmpty();
    void makeTabs();
    BookingTab& tab(int index); ///< made by now
    void refresh();
    void rename(const QString& title);
    void fillStandings(QMenu* menu);
    void showCurrentTab();
    void take(const model::Edit& edit);

    Workbench& bench_;
    std::optional<Id<model::Booking>> id_;
    std::vector<TabEntry> tabs_;
    int first_ = 0;                                        ///< tab
    std::vector<std::optional<Id<model::Booking>>> shown_; ///< by tab
    QMenu* menu_ = nullptr;
    QStackedWidget* outer_ = nullptr; ///< empty words, or the booking; none before the first picture
    TextLabel* emptyWords_ = nullptr;
    QWidget* emptyButtons_ = nullptr;
    TitleEdit* title_ = nullptr;
    TextLabel* facts_ = nullptr;
    QPushButton* standing_ = nullptr;
    QPushButton* more_ = nullptr;
    Segments* segments_ = nullptr;
    MovedLine* moved_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    Actions* actions_ = nullptr;
};

} // namespace withy::ui
