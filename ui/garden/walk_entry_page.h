// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

class QPushButton;

namespace withy::ui {

class FieldControl;
class TextLabel;
class WalkChanges;
class WalkEntryModel;
class WalkEntryTable;

/// A whole walk keyed in at one sitting, in walking order, with what was expected beside each count and
/// what the walk changes beside it all. Each figure is kept as it is typed, and undone by itself.
class WalkEntryPage : public SubPage {
    Q_OBJECT

public:
    explicit WalkEntryPage(Workbench& bench, QWidget* parent = nullptr);
    ~WalkEntryPage() override;

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;
    bool commit() override;

    [[nodiscard]] QWidget* tools() const override { return tools_; }

    [[nodiscard]] WalkEntryModel& sheet() const { return *model_; }

private:
    QWidget* makeTop();
    void layPage();
    /// The sentence by the date when it cannot be read.
    bool takeDay();
    void sayDay(const QString& sentence, bool wrong);
    /// What is wrong or odd at the cell in hand.
    void sayCell();
    void showChanges();
    /// Without a patch there is nothing to key in: only the way to the first.
    void showWhetherAny();
    /// Patches that are not in bloom stand behind a line below the sheet.
    void foldRows();

    WalkEntryModel* model_;
    std::unique_ptr<FieldControl> date_;
    TextLabel* daySays_;
    TextLabel* cellSays_;
    WalkEntryTable* table_;
    QPushButton* fold_;
    bool folded_ = true;
    WalkChanges* changes_;
    QPushButton* patchButton_;
    QWidget* both_ = nullptr;
    QWidget* tools_;
};

} // namespace withy::ui
