// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QPointer>
#include <QWidget>

class QHBoxLayout;
class QPushButton;

namespace withy::ui {

class Segments;
class TallyPanel;
class TextLabel;

/// The page for the barn: the tally at the left, and what comes of it beside. In a narrow window one of the
/// two is in view.
class CuttingDay : public QWidget {
    Q_OBJECT

public:
    explicit CuttingDay(Workbench& bench, QWidget* parent = nullptr);

    void show(Id<model::Booking> booking);
    using QWidget::show;
    /// The panel at the right, which this page then owns; without one the tally has the whole width. It hears
    /// of the booking by bookingShown().
    void setBeside(QWidget* panel);

    [[nodiscard]] TallyPanel& tally() const { return *tally_; }

    [[nodiscard]] std::optional<Id<model::Booking>> booking() const;
    /// Keeps what is being typed; false when it was refused.
    bool commit();
    void enter();

Q_SIGNALS:
    void backAsked();
    /// The cutting list on paper.
    void listAsked();
    void refused(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);
    void bookingShown(qint64 booking);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeHead();
    void stepDay(int by);
    void showHead();
    void arrange();

    Workbench& bench_;
    TextLabel* facts_;
    QPushButton* earlier_;
    QPushButton* later_;
    TallyPanel* tally_;
    Segments* sides_ = nullptr; ///< made with the panel beside
    QPointer<QWidget> beside_;
    QWidget* line_;
    QHBoxLayout* panes_;
};

} // namespace withy::ui
