// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN // moc cannot read the table of records
#include "core/plan/run_up_plan.h"
#endif

#include "ui/common/run_up_layout.h"
#include "ui/logic/workbench.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLayout;
class QPushButton;
class QSpinBox;
class QTableView;

namespace withy::ui {

class FigureButton;
class RunUpTimeline;
class TextLabel;
class WeekStepsModel;
class WorkingPanel;

/// The run-up drawn, what can be said of the chosen step, and the same steps as a plain list.
class RunUpDesk : public QWidget {
    Q_OBJECT

public:
    /// `name` begins the names of its parts.
    RunUpDesk(Workbench& bench, BoardStyle style, const QString& name, QWidget* parent = nullptr);

    void showBooking(Id<model::Booking> booking);
    void showWeek(Day monday);

    [[nodiscard]] RunUpTimeline* timeline() const { return timeline_; }

    [[nodiscard]] QTableView* list() const { return list_; }

    [[nodiscard]] WeekStepsModel* steps() const { return model_; }

Q_SIGNALS:
    void leadTo(const withy::model::Ref& ref);
    void told(const QString& sentence);

protected:
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QLayout* makeWords();
    [[nodiscard]] QWidget* makeBar(const QString& name);
    [[nodiscard]] const plan::RunUpStep* step(std::optional<std::size_t> index) const;
    [[nodiscard]] model::StepMark said(const plan::RunUpStep& step) const;
    [[nodiscard]] const plan::RunUpStep* stepOf(const plan::StepKey& key) const;
    [[nodiscard]] const plan::RunUpStep* chosen() const;
    void show(Board board);
    void choose(std::optional<std::size_t> index);
    void fillBar();
    void fillFigure(const plan::RunUpStep* step);
    void fillWho(const plan::RunUpStep& step);
    void setRows();
    void follow(const QModelIndex& index);
    void tick();
    void keep();
    void giveTo(int place);

    Workbench& bench_;
    RunUpTimeline* timeline_;
    WeekStepsModel* model_;
    QTableView* list_;
    QWidget* bar_ = nullptr;
    TextLabel* title_ = nullptr;
    TextLabel* when_ = nullptr;
    TextLabel* limits_ = nullptr;
    FigureButton* minutes_ = nullptr;
    WorkingPanel* working_ = nullptr;
    QPushButton* tick_ = nullptr;
    QPushButton* keep_ = nullptr;
    QSpinBox* took_ = nullptr;
    QComboBox* who_ = nullptr;
    std::optional<plan::StepKey> key_; ///< of the chosen step
    bool filling_ = false;
};

} // namespace withy::ui
