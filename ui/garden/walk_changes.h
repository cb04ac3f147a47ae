// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#ifndef Q_MOC_RUN
#include "ui/logic/answers/walk_answers.h"
#endif

#include <QWidget>

namespace withy::ui {

class TextLabel;
class WorkingPanel;

/// What a walk changes: each counted patch's likely stems of the week, before and now, largest change
/// first; below it how the walk counts for the patch in hand.
class WalkChanges : public QWidget {
    Q_OBJECT

public:
    explicit WalkChanges(Workbench& bench, QWidget* parent = nullptr);
    void show(Day day, const WalkExpectations& expected, std::optional<Id<model::Patch>> inHand);
    using QWidget::show;

private:
    class Bars;

    void showWorking(std::optional<Id<model::Patch>> inHand);

    Workbench& bench_;
    Bars* bars_;
    TextLabel* nothing_;
    TextLabel* more_;
    TextLabel* outside_; ///< counted where nothing was expected
    TextLabel* workingHead_;
    WorkingPanel* working_;
};

} // namespace withy::ui
