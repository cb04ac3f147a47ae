// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

class QPushButton;
class QTableView;

namespace withy::ui {

class FreeWeeksModel;
class Segments;
class TextLabel;

/// Free to promise: plants by weeks, one figure at a time at the cautious and the likely level; the cell with
/// the keyboard is told in full below. Enter leads to the plant.
class FreePage : public SubPage {
    Q_OBJECT

public:
    explicit FreePage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;
    [[nodiscard]] QWidget* tools() const override;

private:
    void refresh();
    void startThisWeek();
    void showAmounts();
    void foldRows();
    [[nodiscard]] int firstSeen() const;
    void tell();
    void follow();
    void copy();

    FreeWeeksModel* model_;
    QWidget* tools_;
    Segments* figures_;
    QTableView* view_;
    TextLabel* told_;
    TextLabel* empty_;
    QPushButton* fold_ = nullptr;
    bool folded_ = true;
    bool placed_ = false; ///< the view has once been taken to this week
};

} // namespace withy::ui
