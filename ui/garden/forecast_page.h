// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

class QPushButton;
class QTableView;

namespace withy::ui {

class FigureButton;
struct ForecastRow;
class FindingRows;
class ForecastDelegate;
class ForecastHeads;
class ForecastModel;
class Segments;
class TextLabel;
class WorkingPanel;

/// What will be in flower: every patch's curve on one axis, why the season runs early or late, and beside
/// it the chosen patch's working and what wants looking at in the garden.
class ForecastPage : public SubPage {
    Q_OBJECT

public:
    explicit ForecastPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;

    [[nodiscard]] QWidget* tools() const override { return tools_; }

    [[nodiscard]] ForecastModel& rows() const { return *model_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeList();
    QWidget* makeLead();
    QWidget* makeDetail();
    [[nodiscard]] int firstInFlower() const;
    void refresh();
    void settle();
    [[nodiscard]] bool isNear(const ForecastRow& row) const;
    void foldRows();
    void showAxis();
    void showChosen();
    void dress();

    ForecastModel* model_;
    ForecastDelegate* delegate_;
    ForecastHeads* heads_;
    QTableView* table_;
    TextLabel* legend_;
    QPushButton* fold_;
    FigureButton* lead_;
    WorkingPanel* leadWorking_;
    TextLabel* warmth_;
    Segments* zoom_;
    TextLabel* name_;
    TextLabel* plant_;
    QPushButton* facts_;
    TextLabel* range_;
    TextLabel* datesHead_;
    WorkingPanel* dates_;
    TextLabel* stemsHead_;
    WorkingPanel* stems_;
    FindingRows* findings_;
    QWidget* tools_;
    QPushButton* patchButton_;
    QPushButton* walkButton_;
    QPushButton* sheetButton_;
    bool folded_ = true;
};

} // namespace withy::ui
