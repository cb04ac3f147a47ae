// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

#include <memory>

class QPushButton;

namespace withy::ui {

class TextLabel;

/// After an edit, what it moved in the booking that is shown: "24 to 30 jars: 60 stems more ...", and the
/// way back. Compares the plans, so that it speaks whoever made the edit.
class MovedLine : public QWidget {
    Q_OBJECT

public:
    explicit MovedLine(Workbench& bench, QWidget* parent = nullptr);

    /// Watches this booking from now on.
    void watch(std::optional<Id<model::Booking>> id);
    void clear();
    [[nodiscard]] QString words() const;

Q_SIGNALS:
    void undoAsked();

private:
    void compare();

    Workbench& bench_;
    std::optional<Id<model::Booking>> id_;
    model::Season season_; ///< as it was when plan_ was made
    std::shared_ptr<const plan::BookingPlan> plan_;
    TextLabel* words_;
    QPushButton* undo_;
};

} // namespace withy::ui
