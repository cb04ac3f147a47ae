// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

class QHBoxLayout;
class QLineEdit;
class QListView;
class QMenu;
class QPushButton;
class QToolButton;

namespace withy::ui {

class BookingDelegate;
class BookingListModel;
class TextLabel;

/// The left side of the bookings: find, new, the list in weeks, and what it leaves out.
class BookingList : public QWidget {
    Q_OBJECT

public:
    explicit BookingList(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] BookingListModel& model() const { return *model_; }

    /// Marks the booking and makes it seen; never tells of a choice.
    void choose(std::optional<Id<model::Booking>> id);
    /// Only marks and days, in a column as wide as they need.
    void setNarrow(bool narrow);

    void beginFinding();
    void enter();

Q_SIGNALS:
    void chose(qint64 booking);
    void newAsked();
    /// Esc, or Enter in the find field: back to the page.
    void left();
    /// The find button of the narrow list.
    void findAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeTop();
    QWidget* makeFoot();
    void fillMenu(QMenu* menu);
    void showFoot();
    void pickCurrent();
    void showParts();
    QToolButton* narrowButton(const char* name, const QString& words);

    BookingListModel* model_;
    BookingDelegate* delegate_;
    QHBoxLayout* top_ = nullptr;
    QLineEdit* find_ = nullptr;
    QPushButton* new_ = nullptr;
    QToolButton* findNarrow_ = nullptr;
    QToolButton* newNarrow_ = nullptr;
    QListView* view_;
    TextLabel* empty_;
    QWidget* foot_ = nullptr;
    QPushButton* goneBy_ = nullptr;
    QPushButton* order_ = nullptr;
    std::optional<Id<model::Booking>> chosen_;
    bool narrow_ = false;
    bool marking_ = false;
};

} // namespace withy::ui
