// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "ui/logic/models/tally_rows.h"
#endif
#include "ui/logic/workbench.h"

#include <QWidget>

#include <vector>

class QMenu;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace withy::ui {

class AnswerLabel;
class TallyRowView;
class TextLabel;

/// The tally of a booking's cutting, plant by plant in walking order. Every press is kept at once and undone
/// by itself; touch, mouse and number keys each do all of it.
class TallyPanel : public QWidget {
    Q_OBJECT

public:
    explicit TallyPanel(Workbench& bench, QWidget* parent = nullptr);

    /// Of a booking that is there, on the day that cuttingDay() proposes.
    void show(Id<model::Booking> booking);
    using QWidget::show;
    /// To another day of the same cutting.
    void setDay(Day day);

    [[nodiscard]] Day day() const { return day_; }

    [[nodiscard]] std::optional<Id<model::Booking>> booking() const { return booking_; }

    /// Keeps what is being typed; false when it was refused.
    bool keep();
    /// Takes back what was typed, or ends the counting of what was thrown away; false when there is neither.
    bool stepBack();
    /// The keyboard begins at the first row without a count.
    void enter();

    [[nodiscard]] const std::vector<TallyRowView*>& rows() const { return rows_; }

Q_SIGNALS:
    void refused(const QString& sentence);
    void leadTo(const withy::model::Ref& ref);
    void dayChanged();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeKeys();
    void refresh();
    void showRows(const std::vector<TallyRow>& rows);
    TallyRowView* makeRow();
    void choose(TallyRowView* row);
    void keepRow(TallyRowView* row, int goOn);
    bool take(const edits::TallyStep& step);
    void add(TallyRowView* row, qint64 stems);
    void setThrowing(bool throwing);
    void fillFound();
    void addFound(const FoundChoice& found);
    [[nodiscard]] edits::Cutting cutting() const;
    [[nodiscard]] edits::TallyCount counting() const;

    Workbench& bench_;
    std::optional<Id<model::Booking>> booking_;
    Day day_;
    bool throwing_ = false;
    bool stale_ = true;
    AnswerLabel* answer_;
    TextLabel* says_;
    QScrollArea* scroll_;
    QWidget* sheet_;
    QVBoxLayout* column_;
    std::vector<TallyRowView*> rows_;
    TallyRowView* chosen_ = nullptr;
    QPushButton* threw_;
    QPushButton* found_;
    QMenu* foundMenu_;
};

} // namespace withy::ui
